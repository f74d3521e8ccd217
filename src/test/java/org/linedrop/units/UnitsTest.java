package org.linedrop.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {

    private static double read(String text, Dimension dimension) {
        return Units.read(text, dimension).si();
    }

    private static UnitException refused(String text, Dimension... allowed) {
        UnitException e = catchThrowableOfType(UnitException.class, () -> Units.read(text, allowed));
        assertThat(e).as(text).isNotNull();
        return e;
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '~',
            delimiter = '|',
            value = {
                "LENGTH|0.60 m|0.6",
                "LENGTH|450 mm|0.45",
                "LENGTH|2.5cm|0.025",
                "LENGTH|3/8 in|0.009525",
                "LENGTH|9.525 mm|0.009525",
                "LENGTH|3/8\"|0.009525",
                "LENGTH|3/8\u201d|0.009525",
                "LENGTH|\u215c in|0.009525",
                "LENGTH|1-1/2 in|0.0381",
                "LENGTH|1 1/2 in|0.0381",
                "LENGTH|1\u00bd in|0.0381",
                "LENGTH|3 ft 6 in|1.0668",
                "LENGTH|3' 6\"|1.0668",
                "LENGTH|3 ft 6-1/2 in|1.0795",
                "LENGTH|.028 in|0.0007112",
                "LENGTH|1.5e2 mm|0.15",
                "LENGTH|-250 mm|-0.25",
                "LENGTH|\u2212250 mm|-0.25",
                "LENGTH|7 \u00b5m|7e-6",
                "GAUGE_PRESSURE|300 kPa|300000",
                "GAUGE_PRESSURE|300 kpa|300000",
                "GAUGE_PRESSURE|10 bar|1000000",
                "GAUGE_PRESSURE|250 mbar|25000",
                "GAUGE_PRESSURE|2 inHg vacuum|-6772.777280682",
                "GAUGE_PRESSURE|10 kPa vacuum|-10000",
                "GAUGE_PRESSURE|-65 kPa|-65000",
                "GAUGE_PRESSURE|1 atm|101325",
                "ABSOLUTE_PRESSURE|110 kPa abs|110000",
                "ABSOLUTE_PRESSURE|1 bar abs|100000",
                "PRESSURE_DIFFERENCE|1 mH2O|9806.65",
                "PRESSURE_DIFFERENCE|10 inH2O|2490.8891",
                "PRESSURE_DIFFERENCE|760 mmHg|101325.0144354",
                "TEMPERATURE|40 C|313.15",
                "TEMPERATURE|40 degC|313.15",
                "TEMPERATURE|40 \u00b0C|313.15",
                "TEMPERATURE|40\u00baC|313.15",
                "TEMPERATURE|104 F|313.15",
                "TEMPERATURE|-40 F|233.15",
                "TEMPERATURE|300 K|300",
                "TEMPERATURE_DIFFERENCE|18 F|10",
                "VOLUME_FLOW|3600 L/h|0.001",
                "VOLUME_FLOW|60 L/min|0.001",
                "VOLUME_FLOW|60 l/min|0.001",
                "VOLUME_FLOW|3.6 m3/h|0.001",
                "VOLUME_FLOW|3.6 m\u00b3/h|0.001",
                "VOLUME_FLOW|1 L/s|0.001",
                "VOLUME_FLOW|1000 US gal/h|0.00105150327333333333",
                "VOLUME_FLOW|1000 UK gal/h|0.0012628027777777779",
                "VOLUME_FLOW|1 UK pint/min|9.471020833333334e-06",
                "VOLUME_FLOW|600 cc/min|1e-5",
                "MASS_FLOW|36 kg/h|0.01",
                "MASS_FLOW|12 g/s|0.012",
                "MASS_FLOW|1000 lb/h|0.12599788055555555",
                "KINEMATIC_VISCOSITY|14 cSt|0.000014",
                "KINEMATIC_VISCOSITY|14 mm2/s|0.000014",
                "KINEMATIC_VISCOSITY|14 mm\u00b2/s|0.000014",
                "DYNAMIC_VISCOSITY|0.5 cP|0.0005",
                "DYNAMIC_VISCOSITY|0.5 mPa s|0.0005",
                "DYNAMIC_VISCOSITY|0.5 mPa.s|0.0005",
                "DYNAMIC_VISCOSITY|2 Pa s|2",
                "DENSITY|0.74 kg/L|740",
                "VOLUME|1 UK gal|0.00454609",
                "VOLUME|1 US gal|0.003785411784",
                "ROTATION|6000 rpm|100",
                "DISPLACEMENT|9.5 mL/rev|9.5e-6",
                "VOLTAGE|13.5 V|13.5",
                "POWER|520 hp|387764",
                "POWER|100 PS|73549.9",
                "POWER|1.5 kW|1500",
                "FUEL_PER_POWER|0.70 lb/hp/h|1.1827613837855557e-07",
                "FUEL_PER_POWER|270 g/kW/h|7.5e-8",
                "FUEL_PER_POWER|270 g/kWh|7.5e-8",
                "ACCELERATION|0.9 g|8.825985",
                "MASS|12 g|0.012",
                "SPEED|36 km/h|10",
                "RATIO|15 %|0.15",
                "RATIO|5 x|5",
                "RATIO|5|5",
                "TIME|2 min|120",
                "SPECIFIC_HEAT|2 kJ/kg/K|2000",
            })
    void readsToTheNearestDouble(Dimension dimension, String text, double si) {
        assertThat(read(text, dimension)).isEqualTo(si);
    }

    @Test
    void psiIsTheExactQuotientOfPoundForceAndSquareInch() {
        assertThat(read("1 psi", Dimension.GAUGE_PRESSURE)).isEqualTo(6894.757293168362);
        assertThat(read("14.5 psia", Dimension.ABSOLUTE_PRESSURE))
                .isEqualTo(read("14.5 psi", Dimension.PRESSURE_DIFFERENCE));
    }

    @Test
    void threeSpellingsOfOneLengthAreOneDouble() {
        double inch = read("3/8 in", Dimension.LENGTH);
        assertThat(read("9.525 mm", Dimension.LENGTH)).isEqualTo(inch);
        assertThat(read("0.009525 m", Dimension.LENGTH)).isEqualTo(inch);
        assertThat(read("90 deg", Dimension.ANGLE)).isEqualTo(Math.PI / 2);
    }

    @Test
    void theFirstAllowedDimensionWithTheUnitIsTaken() {
        assertThat(Units.read("10 L/h", Dimension.MASS_FLOW, Dimension.VOLUME_FLOW)
                        .dimension())
                .isEqualTo(Dimension.VOLUME_FLOW);
        assertThat(Units.read("5 kPa abs", Dimension.GAUGE_PRESSURE, Dimension.ABSOLUTE_PRESSURE)
                        .dimension())
                .isEqualTo(Dimension.ABSOLUTE_PRESSURE);
        assertThat(Units.read("5 kPa", Dimension.PRESSURE_DIFFERENCE, Dimension.GAUGE_PRESSURE)
                        .dimension())
                .isEqualTo(Dimension.PRESSURE_DIFFERENCE);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '~',
            delimiter = '|',
            value = {
                "LENGTH|0.45|\"0.45\" has no unit. Metres? Write 0.45 m. (mm, m, in, ft are read)",
                "LENGTH|450|\"450\" has no unit. Millimetres? Write 450 mm. (mm, m, in, ft are read)",
                "LENGTH|3/8|\"3/8\" has no unit. Inches? Write 3/8 in. (mm, m, in, ft are read)",
                "LENGTH|0,45 m|\"0,45 m\": a comma is not a decimal point here. Write 0.45 m",
                "VOLUME_FLOW|1,000 L/h|\"1,000 L/h\": a comma is not a decimal point here. Write 1.000 L/h, or 1000 L/h if the comma marks thousands",
                "LENGTH|NaN m|\"NaN m\" is not a number. Write for example 0.6 m",
                "LENGTH|-Infinity m|\"-Infinity m\" is not a number. Write for example 0.6 m",
                "LENGTH|1e999 m|\"1e999 m\": \"1e999\" is no number of this world. At most 60 digits and an exponent up to 330",
                "LENGTH|1e-330 m|\"1e-330 m\": \"1E-330 m\" is no number of this world. A double holds 5e-324 to 1.8e308 in m",
                "LENGTH|long|\"long\" is not a length. Write for example 0.6 m",
                "LENGTH|0.45 mt|\"0.45 mt\": \"mt\" is no unit of length. Did you mean m? (mm, m, in, ft are read)",
                "LENGTH|0.45 MM|\"0.45 MM\": \"MM\" is no unit of length. Did you mean mm? (mm, m, in, ft are read)",
                "LENGTH|0.45 kg|\"0.45 kg\" is a mass, but a length is needed. Write for example 0.6 m. (mm, m, in, ft are read)",
                "VOLUME_FLOW|0.9 g|\"0.9 g\" is a mass, but a volume flow is needed. Write for example 300 L/h. (L/h, L/min, US gal/h, UK gal/h are read)",
                "VOLUME|5 gal|\"5 gal\": gal may be US or UK (a UK gallon is 1.2 US gallons). Write 5 US gal or 5 UK gal",
                "VOLUME_FLOW|60 gph|\"60 gph\": gph may be US or UK (a UK gallon is 1.2 US gallons). Write 60 US gal/h or 60 UK gal/h",
                "VOLUME_FLOW|1 pint/min|\"1 pint/min\": pint/min may be US or UK (a UK gallon is 1.2 US gallons). Write 1 US pint/min or 1 UK pint/min",
                "GAUGE_PRESSURE|110 kPa abs|\"110 kPa abs\" is an absolute pressure, but a gauge pressure is needed. Write the reading over air: 100 kPa abs is near 0 kPa",
                "ABSOLUTE_PRESSURE|110 kPa|\"110 kPa\" is a gauge pressure, but an absolute pressure is needed. Write abs behind it, if it is one: 110 kPa abs",
                "PRESSURE_DIFFERENCE|2 inHg vacuum|\"2 inHg vacuum\" is a gauge pressure, but a pressure difference is needed. A difference is neither gauge nor vacuum: leave that word out",
                "GAUGE_PRESSURE|-2 inHg vacuum|\"-2 inHg vacuum\": vacuum already means below the air. Write 2 inHg vacuum",
                "ABSOLUTE_PRESSURE|-2 kPa abs|\"-2 kPa abs\" is below absolute zero. If you mean a gauge pressure, leave out abs",
                "TEMPERATURE|-300 C|\"-300 C\" is below absolute zero. -273.15 C is the lowest temperature there is",
                "TEMPERATURE|60|\"60\" has no unit. Celsius? Write 60 C. (C, F, K are read)",
                "VOLUME|1/2 L|\"1/2 L\": fractions are read in inches and feet only. Write a decimal",
                "LENGTH|3/0 in|\"3/0 in\": \"3/0\" divides by zero. Write for example 3/8 in",
                "LENGTH|-3 ft 6 in|\"-3 ft 6 in\": feet and inches with a minus. Write it in inches alone",
                "LENGTH|~~|\"\" is empty: a length is needed. Write for example 0.6 m",
            })
    void refusesInWordsThatHelp(Dimension dimension, String text, String line) {
        assertThat(refused(text, dimension)).hasMessage(line);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1 2 m",
                "1..2 m",
                "--1 m",
                "1 m m",
                "m",
                "1e m",
                "0x10 m",
                "1_000 m",
                "1 m 2",
                "\u0663 m",
                "1d m"
            })
    void refusesWhatIsNoNumberWithAUnit(String text) {
        refused(text, Dimension.LENGTH);
    }

    @Test
    void everyProblemOfALongTextIsShort() {
        assertThat(refused("9".repeat(5000) + " m", Dimension.LENGTH).getMessage())
                .hasSizeLessThan(200);
        assertThat(refused("9".repeat(100) + " m", Dimension.LENGTH).getMessage())
                .contains("no number of this world");
    }

    @Test
    void aListHasOneUnitAtTheEnd() {
        assertThat(Units.readList("0 200 300.5 kPa", Dimension.PRESSURE_DIFFERENCE))
                .extracting(Quantity::si)
                .containsExactly(0.0, 200000.0, 300500.0);
        assertThat(Units.readList("-6 -8 -10", Dimension.RATIO))
                .extracting(Quantity::si)
                .containsExactly(-6.0, -8.0, -10.0);
        assertThat(Units.readList("7.9 10.2 12.8mm", Dimension.LENGTH)).hasSize(3);
        assertThat(Units.readList("1/4 3/8 1-1/2 in", Dimension.LENGTH))
                .extracting(Quantity::si)
                .containsExactly(0.00635, 0.009525, 0.0381);
        assertThat(Units.readList("100 200 UK gal/h", Dimension.VOLUME_FLOW)).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 200 300|\"0 200 300\" has no unit. Kilopascals? Write 0 200 300 kPa. (kPa, bar, psi, inHg are read)",
                "0 kPa 200 kPa|\"0 kPa 200 kPa\" has a unit inside the list. One unit at the end: 0 200 300 kPa",
                "0, 200, 300 kPa|\"0, 200, 300 kPa\" has commas. Write numbers without commas; in a list spaces between them and one unit at the end",
                "kPa|\"kPa\" is not a pressure difference. Write for example 12 kPa",
                "0 200 L/h|\"0 200 L/h\" is a volume flow, but a pressure difference is needed. Write for example 12 kPa. (kPa, bar, psi, inHg are read)",
            })
    void refusesOtherLists(String text, String line) {
        UnitException e =
                catchThrowableOfType(UnitException.class, () -> Units.readList(text, Dimension.PRESSURE_DIFFERENCE));
        assertThat(e).hasMessage(line);
    }

    @Test
    void writesTheShortestText() {
        assertThat(Units.write(0.009525, Units.unit("mm"))).isEqualTo("9.525 mm");
        assertThat(Units.write(0.009525, Units.unit("in"))).isEqualTo("0.375 in");
        assertThat(Units.write(0.6, Units.unit("m"))).isEqualTo("0.6 m");
        assertThat(Units.write(300000, Units.unit("kPa"))).isEqualTo("300 kPa");
        assertThat(Units.write(273.15, Units.unit("C"))).isEqualTo("0 C");
        assertThat(Units.write(313.15, Units.unit("F"))).isEqualTo("104 F");
        assertThat(Units.write(-0.0, Units.unit("m"))).isEqualTo("0 m");
        assertThat(Units.write(0.1 + 0.2, Units.unit("m"))).isEqualTo("0.30000000000000004 m");
        assertThat(Units.write(1e-12, Units.unit("m"))).isEqualTo("1e-12 m");
        assertThat(Units.write(2.5e20, Units.unit("m"))).isEqualTo("2.5e20 m");
        assertThat(Units.write(-6772.777280682, Units.unit("inHg vacuum"))).isEqualTo("2 inHg vacuum");
        assertThat(Units.write(5, Units.unit("", Dimension.RATIO))).isEqualTo("5");
        assertThat(Units.writeList(new double[] {0, 2e5, 3e5}, Units.unit("kPa")))
                .isEqualTo("0 200 300 kPa");
        assertThatIllegalArgumentException().isThrownBy(() -> Units.write(Double.NaN, Units.unit("m")));
    }

    @Test
    void fixedDecimalsRoundHalfUpWithoutLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(Units.fixed(1234.5, Units.unit("m"), 2)).isEqualTo("1234.50");
        } finally {
            Locale.setDefault(before);
        }
        assertThat(Units.fixed(0.125, Units.unit("m"), 2)).isEqualTo("0.13");
        assertThat(Units.fixed(-0.001, Units.unit("m"), 2)).isEqualTo("0.00");
        assertThat(Units.fixed(-0.006, Units.unit("m"), 2)).isEqualTo("-0.01");
        assertThat(Units.fixed(0.001, Units.unit("L/h"), 0)).isEqualTo("3600");
        assertThatIllegalArgumentException().isThrownBy(() -> Units.fixed(1, Units.unit("m"), 21));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Units.fixed(Double.POSITIVE_INFINITY, Units.unit("m"), 1));
    }

    @Test
    void convertsBothWays() {
        assertThat(Units.to(0.001, Units.unit("L/h"))).isEqualTo(3600);
        assertThat(Units.from(3600, Units.unit("L/h"))).isEqualTo(0.001);
        // 313.15 is no double: its nearest neighbour is 2.3e-14 K off, which is what stands in the answer.
        assertThat(Units.to(313.15, Units.unit("F"))).isCloseTo(104.0, within(1e-13));
        assertThat(Units.metric(0.0102, Dimension.LENGTH).symbol()).isEqualTo("mm");
        assertThat(Units.metric(0.6, Dimension.LENGTH).symbol()).isEqualTo("m");
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everySuggestedUnitIsReadForItsDimension(Dimension dimension) {
        List<Unit> units = Units.units(dimension);
        assertThat(units).isNotEmpty().allSatisfy(u -> assertThat(u.dimension()).isEqualTo(dimension));
        assertThat(dimension.suggested())
                .allSatisfy(symbol -> assertThat(Units.unit(symbol, dimension)).isNotNull());
        assertThat(Units.unit(dimension.guessUnit(), dimension)).isNotNull();
        assertThat(Units.metric(1, dimension).dimension()).isEqualTo(dimension);
        Quantity si =
                Units.read(dimension == Dimension.ABSOLUTE_PRESSURE ? "2 Pa abs" : "2 " + dimension.si(), dimension);
        assertThat(si.si()).isEqualTo(2.0);
        UnitException e = refused("x", dimension);
        String example = e.hint().replace("Write for example ", "");
        assertThat(Units.read(example, dimension).dimension()).isEqualTo(dimension);
    }

    @Test
    void unitsAreFoundBySymbol() {
        assertThat(Units.unit("kPa").dimension()).isEqualTo(Dimension.GAUGE_PRESSURE);
        assertThat(Units.unit("C").dimension()).isEqualTo(Dimension.TEMPERATURE);
        UnitException e = catchThrowableOfType(UnitException.class, () -> Units.unit("furlong", Dimension.LENGTH));
        assertThat(e).hasMessageStartingWith("\"furlong\" is no unit of length");
        assertThat(catchThrowableOfType(UnitException.class, () -> Units.unit("furlong")))
                .hasMessageStartingWith("\"furlong\" is no unit of ours");
    }

    /** The limits that messages and Javadoc state are read themselves; one more is refused. */
    @Test
    void limitsAreInclusive() {
        assertThat(read("0." + "1".repeat(58) + " m", Dimension.LENGTH)).isEqualTo(1.0 / 9);
        assertThat(refused("0." + "1".repeat(59) + " m", Dimension.LENGTH)).hasMessageContaining("At most 60 digits");
        assertThat(read("1e+0307 m", Dimension.LENGTH)).isEqualTo(1e307);
        assertThat(refused("1e330 m", Dimension.LENGTH)).hasMessageContaining("A double holds 5e-324 to 1.8e308 in m");
        assertThat(refused("1e331 m", Dimension.LENGTH)).hasMessageContaining("an exponent up to 330");
        assertThat(refused("1e000001 m", Dimension.LENGTH)).hasMessageContaining("an exponent up to 330");
        assertThat(read("1 m" + " ".repeat(5000), Dimension.LENGTH)).isEqualTo(1);
        assertThat(refused("m".repeat(4000), Dimension.LENGTH)).hasMessageContaining("is not a length");
        assertThat(refused("m".repeat(4001), Dimension.LENGTH)).hasMessageContaining("4001 characters. at most 4000");
        assertThat(Units.readList("1 ".repeat(1000) + "m", Dimension.LENGTH)).hasSize(1000);
        UnitException e = catchThrowableOfType(
                UnitException.class, () -> Units.readList("1 ".repeat(1001) + "m", Dimension.LENGTH));
        assertThat(e).hasMessageContaining("1001 numbers");
    }

    @Test
    void nothingIsAsMuchAsAnything() {
        assertThat(read("0 ft 6 in", Dimension.LENGTH)).isEqualTo(0.1524);
        assertThat(read("3 ft 0 in", Dimension.LENGTH)).isEqualTo(0.9144);
        assertThat(refused("3 ft -6 in", Dimension.LENGTH)).hasMessageContaining("feet and inches with a minus");
        assertThat(read("0 K", Dimension.TEMPERATURE)).isZero();
        assertThat(read("0 kPa abs", Dimension.ABSOLUTE_PRESSURE)).isZero();
        assertThat(Units.write(0, Units.unit("C"))).isEqualTo("-273.15 C");
        assertThat(Units.write(0, Units.unit("inHg vacuum"))).isEqualTo("0 inHg vacuum");
    }

    @Test
    void commasAndGuesses() {
        assertThat(refused(",1,2 m", Dimension.LENGTH)).hasMessageContaining("has commas");
        assertThat(refused("5", Dimension.LENGTH)).hasMessageContaining("Millimetres? Write 5 mm");
        assertThat(refused("4.99", Dimension.LENGTH)).hasMessageContaining("Metres? Write 4.99 m");
        assertThat(read("1/2 ft", Dimension.LENGTH)).isEqualTo(0.1524);
        assertThat(refused("1/2 m", Dimension.LENGTH)).hasMessageContaining("in inches and feet only");
    }

    /** Up to four dimensions are named, of more only that they are ours. */
    @Test
    void dimensionsAreNamedWhileTheyAreFew() {
        assertThat(refused("1 furlong", Dimension.LENGTH, Dimension.MASS, Dimension.TIME, Dimension.SPEED))
                .hasMessageContaining("is no unit of length or mass or time or speed");
        assertThat(refused(
                        "1 furlong", Dimension.LENGTH, Dimension.MASS, Dimension.TIME, Dimension.SPEED, Dimension.AREA))
                .hasMessageContaining("is no unit of ours");
    }

    /** Powers of ten are written once more than 15 digits or six zeros would be needed. */
    @Test
    void longNumbersArePowersOfTen() {
        assertThat(Units.write(1e-6, Units.unit("m"))).isEqualTo("0.000001 m");
        assertThat(Units.write(1.5e-6, Units.unit("m"))).isEqualTo("0.0000015 m");
        assertThat(Units.write(9e-7, Units.unit("m"))).isEqualTo("9e-7 m");
        assertThat(Units.write(1.5e-7, Units.unit("m"))).isEqualTo("1.5e-7 m");
        assertThat(Units.write(1e14, Units.unit("m"))).isEqualTo("100000000000000 m");
        assertThat(Units.write(1.25e14, Units.unit("m"))).isEqualTo("125000000000000 m");
        assertThat(Units.write(1e15, Units.unit("m"))).isEqualTo("1e15 m");
        assertThat(Units.write(1.25e15, Units.unit("m"))).isEqualTo("1.25e15 m");
    }

    @Test
    void twentyDecimalsAreTheMost() {
        assertThat(Units.fixed(0.5, Units.unit("m"), 20)).isEqualTo("0.50000000000000000000");
        assertThatIllegalArgumentException().isThrownBy(() -> Units.fixed(0.5, Units.unit("m"), -1));
    }

    /** Metres from 100 mm on, litres from one on, and for nothing; a minus changes nothing. */
    @ParameterizedTest
    @CsvSource({
        "LENGTH, 0.1, m", "LENGTH, 0.0999, mm", "LENGTH, -0.0999, mm", "LENGTH, 0, m",
        "VOLUME, 0.001, L", "VOLUME, 0.000999, mL", "VOLUME, 0, L", "FUEL_PER_POWER, 1e-7, g/kW/h",
    })
    void metricUnitByTheSizeOfTheFigure(Dimension dimension, double si, String symbol) {
        assertThat(Units.metric(si, dimension).symbol()).isEqualTo(symbol);
    }

    @Test
    void aUnitHasAFactorAndASymbol() {
        BigDecimal one = BigDecimal.ONE;
        BigDecimal zero = BigDecimal.ZERO;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Unit("x", Dimension.LENGTH, zero, one, zero))
                .withMessageContaining("factor of zero");
        assertThatIllegalArgumentException().isThrownBy(() -> new Unit("x", Dimension.LENGTH, one, zero, zero));
        assertThatIllegalArgumentException().isThrownBy(() -> new Unit("x", Dimension.LENGTH, one, one.negate(), zero));
        assertThat(Units.unit("inHg vacuum")).hasToString("inHg vacuum");
        assertThat(Units.read("3/8 in", Dimension.LENGTH).text()).isEqualTo("0.375 in");
    }

    @Test
    void whatIsShownOfALongTextEndsInDots() {
        assertThat(Spelling.shown("x".repeat(60))).isEqualTo("x".repeat(60));
        assertThat(Spelling.shown("x".repeat(61))).isEqualTo("x".repeat(60) + " ...");
    }
}
