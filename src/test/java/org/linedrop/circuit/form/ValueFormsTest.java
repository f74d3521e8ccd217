package org.linedrop.circuit.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;

class ValueFormsTest {
    private static final List<String> STATES = List.of("shut", "in control", "wide open");

    /** Form name to its reader. */
    private static final Map<String, Function<String, Object>> READ = new LinkedHashMap<>();

    static {
        READ.put("ends", Ends::read);
        READ.put("bends", Bends::read);
        READ.put("tube", TubeChoice::read);
        READ.put("size", SizeChoice::read);
        READ.put("hose", text -> SizeChoice.readHose(text, dash -> ""));
        READ.put("adapter", AdapterChoice::read);
        READ.put("rated", RatedPoint::read);
        READ.put("rise", Rise::read);
        READ.put("span", text -> Span.read(text, Dimension.TEMPERATURE, Dimension.RATIO));
        READ.put("over", Over::read);
        READ.put("motion", Motion::read);
        READ.put("factor", Factor::read);
        READ.put(
                "limit",
                text -> LimitText.read(text, Dimension.GAUGE_PRESSURE, Dimension.RATIO, Dimension.TEMPERATURE));
        READ.put("state", text -> LimitText.readState(text, STATES));
        READ.put("dash", Dash::read);
    }

    private static Object read(String form, String text) {
        return READ.getOrDefault(form, t -> t).apply(text);
    }

    private static String written(Object form) {
        try {
            return (String) form.getClass().getMethod("write").invoke(form);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }

    private static Object copied(Object form) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
                out.writeObject(form);
            }
            try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
                return in.readObject();
            }
        } catch (java.io.IOException | ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "ends|90 forged to straight|90 forged to straight",
                "ends|45 to 90|45 to 90",
                "ends|45 deg to 90\u00b0 swept|45 to 90",
                "ends|banjo M12 to quick-connect 3/8 in|banjo M12 to quick-connect 3/8 in",
                "ends|banjo m12x1.5 to quick connect 9.525 mm|banjo M12x1.5 to quick-connect 3/8 in",
                "ends|banjo 7/16 in to Straight|banjo 7/16 in to straight",
                "ends|male to barb|male to barb",
                "ends|none|none",
                "ends|none to 180|none to 180",
                "ends|90 machined to 90 low-profile|90 forged to 90 forged",
                "bends|4 x 90|4 x 90",
                "bends|4x90|4 x 90",
                "bends|4 \u00d7 90 deg|4 x 90",
                "bends|2 x 90 at 150 mm|2 x 90 at 0.15 m",
                "bends|2 x 22.5 at 3 in|2 x 22.5 at 76.2 mm",
                "tube|steel 5/16 in x 0.028 in|steel 5/16 in x 0.028 in",
                "tube|steel 5/16\" x 0.028\"|steel 5/16 in x 0.028 in",
                "tube|aluminium 1/2 in x 0.035 in|aluminium 1/2 in x 0.035 in",
                "tube|stainless steel 8 mm x 1 mm|stainless steel 8 mm x 1 mm",
                "tube|copper-nickel 3/16 x 0.028 in|copper-nickel 3/16 in x 0.028 in",
                "tube|steel 10 x 1.5 mm|steel 10 mm x 1.5 mm",
                "size|race PTFE -8|race PTFE -8",
                "size|race PTFE -8AN|race PTFE -8",
                "size|race PTFE AN8|race PTFE -8",
                "size|race PTFE AN-8|race PTFE -8",
                "size|race PTFE -08|race PTFE -8",
                "size|race PTFE #8|race PTFE -8",
                "size|MIL-H-8794 -10|MIL-H-8794 -10",
                "size|100R14 tube-size -6|100R14 tube-size -6",
                "size|fuel hose 5/16 in|fuel hose 5/16 in",
                "size|fuel hose 5/16\"|fuel hose 5/16 in",
                "size|fuel hose 7.9375 mm|fuel hose 5/16 in",
                "size|coolant hose 1-1/4 in|coolant hose 1-1/4 in",
                "size|coolant hose 1 1/4 in|coolant hose 1-1/4 in",
                "size|coolant hose 32 mm|coolant hose 32 mm",
                "adapter|-6 to -5|-6 to -5",
                "adapter|-6AN to AN8|-6 to -8",
                "adapter|M22x1.5 to -12|M22x1.5 to -12",
                "adapter|m22 x 1.5 to -12|M22x1.5 to -12",
                "adapter|ORB -8 to -8|ORB -8 to -8",
                "adapter|-8 ORB to 1/4 npt|ORB -8 to 1/4 NPT",
                "adapter|NPT 3/8 to G 3/8|3/8 NPT to G 3/8",
                "adapter|45-degree 3/8 to barb 3/8 in|45-degree 3/8 to barb 3/8 in",
                "rated|55 kPa at 45 L/min with 14 cSt|55 kPa at 2700 L/h with 14 cSt",
                "rated|55 kPa at 45 L/min with 14 cSt from sheet|55 kPa at 2700 L/h with 14 cSt from sheet",
                "rated|6 kPa at 300 L/h|6 kPa at 300 L/h",
                "rated|40 L/min at 350 kPa with 14 cSt|350 kPa at 2400 L/h with 14 cSt",
                "rated|6 kPa +/- 1 kPa at 300 L/h measured|6 kPa +/- 1 kPa at 300 L/h measured",
                "rise|23 kPa from 20 to 400 L/h|23 kPa from 20 L/h to 400 L/h",
                "rise|23 kPa from 1 L/min to 400 L/h measured|23 kPa from 60 L/h to 400 L/h measured",
                "span|80 to 92 C|80 C to 92 C",
                "span|80 C to 92 C from sheet|80 C to 92 C from sheet",
                "span|2000 to 3000|2000 to 3000",
                "over|300 kPa over manifold|300 kPa over manifold",
                "over|3 bar over air measured|300 kPa over air measured",
                "over|300 kPa +/- 5 kPa over left rail|300 kPa +/- 5 kPa over left rail",
                "motion|launch 0.9 g|launch 0.9 g",
                "motion|left turn 0.5 g and launch 0.9 g|launch 0.9 g and left turn 0.5 g",
                "motion|braking 1.1 g and right turn 4.903325 m/s2|braking 1.1 g and right turn 0.5 g",
                "motion|none|none",
                "factor|5 x|5 x",
                "factor|5x|5 x",
                "factor|0.8 x engine|0.8 x engine",
                "factor|5 x +/- 1 x guessed|5 x +/- 1 guessed",
                "size|-6|-6",
                "size|AN8|-8",
                "limit|at least 375 kPa|at least 375 kPa",
                "limit|at most 10 bar from sheet|at most 1000 kPa from sheet",
                "limit|between 80 and 92 C|between 80 C and 92 C",
                "limit|between 300 kPa and 4 bar guessed|between 300 kPa and 400 kPa guessed",
                "limit|at least 15 %|at least 15 %",
                "limit|at least 10 kPa per 1000 rpm|at least 10 kPa per 1000 rpm",
                "limit|at least 10 kPa per 1000 rpm from sheet|at least 10 kPa per 1000 rpm from sheet",
                "limit|off because the gauge sits elsewhere|off because the gauge sits elsewhere",
                "state|in control|in control",
                "state|off because measured|off because measured",
            })
    void readsWritesAndSerialises(String form, String text, String written) {
        Object value = read(form, text);
        String back = written(value);
        assertThat(back).isEqualTo(written);
        assertThat(read(form, back)).as("reads back equal").isEqualTo(value).hasSameHashCodeAs(value);
        assertThat(copied(value)).as("serialises").isEqualTo(value);
        assertThat(read(form, "  " + text.replace(" ", "  ") + " "))
                .as("spaces do not count")
                .isEqualTo(value);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "ends|90|\"90\": two ends are needed, first the one at \"from\": 90 to ?",
                "ends|120 forged to 90|\"120 forged\": forged hose ends are made in 45 and 90 (30 and 60 rarely). Write 120 (swept)",
                "ends|75 to 90|\"75\": hose ends are made straight and in 30 45 60 90 120 150 180. Write the nearest",
                "ends|straigt to 90|\"straigt\" is no hose end. Did you mean straight? Write straight, 30 45 60 90 120 150 180, 45 forged, 90 forged, banjo M12, quick-connect 3/8 in, male, barb or none",
                "ends|90 forgd to 90|\"90 forgd\" is no hose end. Did you mean forged? Write straight, 30 45 60 90 120 150 180, 45 forged, 90 forged, banjo M12, quick-connect 3/8 in, male, barb or none",
                "ends|45/90|\"45/90\": the two ends are joined by \"to\". Write 45 to 90",
                "ends|45 and 90 forged|\"45 and 90 forged\": the two ends are joined by \"to\". Write 45 to 90 forged",
                "ends|45 to 90 to 45|\"45 to 90 to 45\" has more than two ends. Write for example 45 to 90",
                "ends|banjo to 90|\"banjo\": on which bolt?. Write for example banjo M12",
                "ends|quick-connect to 90|\"quick-connect\": of which size?. Write for example quick-connect 3/8 in",
                "ends|~~|\"\" is empty: a hose needs its ends. Write straight to 90, or none for a bare piece",
                "bends|90|\"90\": how many of them?. Write for example 4 x 90, or 2 x 90 at 150 mm",
                "bends|four|\"four\" does not say how many bends of which angle. Write for example 4 x 90, or 2 x 90 at 150 mm",
                "bends|4 x 0|\"4 x 0\": a bend turns more than 0 and at most 360 degrees. Write for example 4 x 90",
                "bends|0 x 90|\"0 x 90\" has 0 bends: 1 to 200 are read. Leave bends out for a straight piece",
                "bends|2 x 90 at 150|\"150\" has no unit. Millimetres? Write 150 mm. (mm, m, in, ft are read)",
                "bends|2 x 90 at 0 mm|\"2 x 90 at 0 mm\": the radius must be above 0. Measure it at the centre line of the bend",
                "tube|5/16 in x 0.028 in|\"5/16 in x 0.028 in\": of which material?. Write for example steel 5/16 in x 0.028 in",
                "tube|steel 5/16 in|\"steel 5/16 in\": the wall is missing. Write for example steel 5/16 in x 0.028 in",
                "tube|steel|\"steel\" is no tube: material, outside diameter x wall are needed. Write for example steel 5/16 in x 0.028 in",
                "tube|steel 0.028 in x 5/16 in|\"steel 0.028 in x 5/16 in\": a wall of 0.3125 in leaves no bore. The outside diameter stands first: steel 5/16 in x 0.028 in",
                "tube|steel 8 x 1|\"1\" has no unit. Metres? Write 1 m. (mm, m, in, ft are read)",
                "hose|-8|\"-8\": which hose? The bore of -8 differs by family. For example race PTFE -8; see: linedrop catalogue hoses --dash 8",
                "hose|AN8|\"AN8\": which hose? The bore of -8 differs by family. For example race PTFE -8; see: linedrop catalogue hoses --dash 8",
                "size|race PTFE|\"race PTFE\" has no size. Write for example race PTFE -8. If you wrote #8: YAML drops everything after \" #\"",
                "size|race PTFE 8|\"race PTFE 8\": is 8 the dash size? Write race PTFE -8",
                "size|race PTFE -99|\"race PTFE -99\": there is no dash size 99. They go from -2 to -48, for example -8",
                "hose|5/16 in|\"5/16 in\": which hose? Write for example fuel hose 5/16 in",
                "size|fuel hose 5/16|\"fuel hose 5/16\" has no unit. Inches? Write fuel hose 5/16 in",
                "size|race PTFE - 8|\"race PTFE - 8\" has no size. Write -8 without a space",
                "size|fuel hose 0 mm|\"fuel hose 0 mm\": the inside diameter must be above 0. Write for example fuel hose 5/16 in",
                "adapter|-6|\"-6\": an adapter has two sides. Write for example -6 to -5, in flow order",
                "adapter|-6 to -5 to -4|\"-6 to -5 to -4\" has more than two sides. Write for example -6 to -5, in flow order",
                "adapter|6 to -5|\"6 to -5\": is 6 a dash size? Write -6",
                "adapter|ORB big to -6|\"big\" is no dash size. Write for example -8",
                "rated|55 kPa|\"55 kPa\": at what? A pressure and a flow belong together. Write for example 55 kPa at 45 L/min with 14 cSt",
                "rated|55 kPa at 45 kPa|\"45 kPa\" is a gauge pressure, but a volume flow is needed. Write for example 300 L/h. (L/h, L/min, US gal/h, UK gal/h are read)",
                "rated|55 kPa at 0 L/h|\"55 kPa at 0 L/h\": the flow must be above 0. Write for example 55 kPa at 45 L/min with 14 cSt",
                "rated|55 kPa at 45 L/min with 0 cSt|\"55 kPa at 45 L/min with 0 cSt\": the viscosity must be above 0. Write for example 55 kPa at 45 L/min with 14 cSt",
                "rise|23 kPa|\"23 kPa\": between which flows?. Write for example 23 kPa from 20 to 400 L/h",
                "rise|23 kPa from 400 to 20 L/h|\"23 kPa from 400 to 20 L/h\": the pressure rises from the smaller to the larger flow, none of them negative. Write for example 23 kPa from 20 to 400 L/h",
                "span|80 C|\"80 C\": from where to where?. Write two values, for example 80 to 92 C",
                "span|92 to 80 C|\"92 to 80 C\" does not rise. Write the lower value first",
                "over|300 kPa|\"300 kPa\": over air or over manifold? Write 300 kPa over manifold (hose on the regulator's nipple) or over air",
                "over|300 kPa over|\"300 kPa over\": over air or over manifold? Write 300 kPa over manifold (hose on the regulator's nipple) or over air",
                "over|lots|\"lots\" is not a pressure difference. Write for example 12 kPa",
                "motion|launch|\"launch\": how much?. Write for example launch 0.9 g",
                "motion|lunch 0.9 g|\"lunch 0.9 g\" is no motion. Did you mean launch? Write launch, braking, left turn or right turn, then 0.9 g",
                "motion|launch -0.9 g|\"launch -0.9 g\" is negative. Write braking without a minus",
                "motion|launch 0.9|\"0.9\" has no unit. In g? Write 0.9 g. (g, m/s2 are read)",
                "motion|launch 1 g and braking 1 g|\"launch 1 g and braking 1 g\" launches or brakes twice. Write one along and one across: launch 0.9 g and left turn 0.5 g",
                "factor|5|\"5\" is no factor. Write 5 x",
                "factor|0.5 x|\"0.5 x\" is under 1. Write for example 5 x",
                "factor|-1 x engine|\"-1 x engine\" is negative. Write for example 5 x",
                "limit|375 kPa|\"375 kPa\": at least or at most? Write at least 375 kPa or at most 375 kPa",
                "limit|>= 375 kPa|\">= 375 kPa\" is not read as a limit. Write \"at least 375 kPa\"",
                "limit|< 375 kPa|\"< 375 kPa\" is not read as a limit. Write \"at most 375 kPa\"",
                "limit|max 375 kPa|\"max 375 kPa\" is not read as a limit. Write \"at most 375 kPa\"",
                "limit|enough|\"enough\" is no limit. Write at least, at most, or between a and b, for example at least 375 kPa",
                "limit|between 400 and 300 kPa|\"between 400 and 300 kPa\" does not rise. Write the lower value first",
                "limit|at least 10 kPa per 0 rpm|\"at least 10 kPa per 0 rpm\": the speed must be above 0. Write for example at least 10 psi per 1000 rpm",
                "limit|at least 5 kPa +/- 1 kPa|\"at least 5 kPa +/- 1 kPa\": a limit has no spread. Write between a and b, or one bound",
                "limit|off|\"off\": why?. Write off because, and the reason; it is printed",
                "state|controlled|\"controlled\" is no state of it. Write shut or in control or wide open",
                "state|in contrl|\"in contrl\" is no state of it. Did you mean in control? Write shut or in control or wide open",
                "dash|8|\"8\" is no dash size. Write -8",
                "dash|big|\"big\" is no dash size. Write for example -8",
            })
    void refusesInWordsThatHelp(String form, String text, String line) {
        assertThatExceptionOfType(UnitException.class)
                .isThrownBy(() -> read(form, text))
                .withMessage(line.replace("?.", "?"));
    }

    @Test
    void numbersAreSi() {
        assertThat(Motion.read("launch 0.9 g and left turn 0.5 g")).isEqualTo(new Motion(0.9 * 9.80665, 0.5 * 9.80665));
        assertThat(Motion.read("braking 2 m/s2 and right turn 1 m/s2")).isEqualTo(new Motion(-2, -1));
        assertThat(Rise.read("23 kPa from 20 to 400 L/h").slopePaPerM3PerS())
                .isEqualTo(23000 / (400 / 3.6e6 - 20 / 3.6e6));
        assertThat(TubeChoice.read("steel 10 mm x 1.5 mm").boreM()).isEqualTo(0.01 - 2 * 0.0015);
        LimitText limit = LimitText.read("at least 10 kPa per 1000 rpm", Dimension.GAUGE_PRESSURE);
        assertThat(limit.perRevPerS()).isEqualTo(1000 / 60.0);
        assertThat(limit.atSpeed(50).low()).isCloseTo(30e3, within(1e-8));
        assertThat(limit.atSpeed(50).high()).isEqualTo(Double.POSITIVE_INFINITY);
        LimitText between = LimitText.read("between 80 and 92 C", Dimension.TEMPERATURE);
        assertThat(between.margin(353.15 + 5)).isCloseTo(5, within(1e-9));
        assertThat(between.nearest(353.15 + 5)).isEqualTo(353.15);
        assertThat(between.margin(360 + 10)).isNegative();
        assertThat(LimitText.readState("in control", STATES).margin(0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(Over.read("3 bar over air from sheet").pressurePa().status()).isEqualTo(Status.FROM_SHEET);
        assertThat(EndChoice.read("45 forged")).isEqualTo(new EndChoice(EndChoice.FORGED, 45, ""));
        assertThat(RatedPoint.read("40 L/min at 350 kPa with 14 cSt").writeFlowFirst())
                .isEqualTo("2400 L/h at 350 kPa with 14 cSt");
        assertThat(SizeChoice.read("race PTFE -8AN").dash()).hasValue(8);
        assertThat(SizeChoice.read("fuel hose 5/16\"").insideM()).hasValue(0.0079375);
        assertThat(SizeChoice.read("fuel hose 5/16\"").dash()).isEmpty();
        assertThat(Bends.read("4 x 90").radiusM()).isNaN();
        assertThat(Dash.write(Dash.read("-8AN"))).isEqualTo("-8");
    }

    @Test
    void aDashAloneNamesTheBoresOnSale() {
        assertThatExceptionOfType(UnitException.class)
                .isThrownBy(() -> SizeChoice.readHose("-8", dash -> "9.9 to 12.7 mm"))
                .withMessage("\"-8\": which hose? The bore of -8 is 9.9 to 12.7 mm by family. For example race PTFE -8;"
                        + " see: linedrop catalogue hoses --dash 8");
    }

    /** Whatever is typed gives a value or a message. */
    @Test
    void anyTextGivesAValueOrAMessage() {
        SplittableRandom random = new SplittableRandom(5);
        String[] pieces = {
            "90", "-8", " to ", " x ", " at ", " of ", "launch", " and ", "0.9 g", "kPa", " L/h", "in", "3/8", "\"",
                    " with ",
            " over ", "from ", "measured", " +/- ", "none", "banjo", "M12", "steel", " ", "-", "/", "0", "1e999", "NaN",
                    ",",
            "between ", "at least ", "off because", "\u0000", "\u00d7", "%", "#"
        };
        for (int i = 0; i < 5000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(0, 7); n > 0; n--) {
                text.append(pieces[random.nextInt(pieces.length)]);
            }
            READ.forEach((form, reader) -> {
                try {
                    Object value = reader.apply(text.toString());
                    if (!form.equals("dash")) {
                        assertThat(reader.apply(written(value)))
                                .as(form + " " + text)
                                .isEqualTo(value);
                    }
                } catch (UnitException e) {
                    assertThat(e.message()).startsWith("\"");
                }
            });
        }
    }
}
