package org.linedrop.units;

import static org.linedrop.units.Dimension.ABSOLUTE_PRESSURE;
import static org.linedrop.units.Dimension.ACCELERATION;
import static org.linedrop.units.Dimension.ANGLE;
import static org.linedrop.units.Dimension.AREA;
import static org.linedrop.units.Dimension.DENSITY;
import static org.linedrop.units.Dimension.DISPLACEMENT;
import static org.linedrop.units.Dimension.DYNAMIC_VISCOSITY;
import static org.linedrop.units.Dimension.FUEL_PER_POWER;
import static org.linedrop.units.Dimension.GAUGE_PRESSURE;
import static org.linedrop.units.Dimension.KINEMATIC_VISCOSITY;
import static org.linedrop.units.Dimension.LENGTH;
import static org.linedrop.units.Dimension.MASS;
import static org.linedrop.units.Dimension.MASS_FLOW;
import static org.linedrop.units.Dimension.MODULUS;
import static org.linedrop.units.Dimension.PER_TEMPERATURE;
import static org.linedrop.units.Dimension.POWER;
import static org.linedrop.units.Dimension.PRESSURE_DIFFERENCE;
import static org.linedrop.units.Dimension.RATIO;
import static org.linedrop.units.Dimension.ROTATION;
import static org.linedrop.units.Dimension.SPECIFIC_HEAT;
import static org.linedrop.units.Dimension.SPEED;
import static org.linedrop.units.Dimension.TEMPERATURE;
import static org.linedrop.units.Dimension.TEMPERATURE_DIFFERENCE;
import static org.linedrop.units.Dimension.TIME;
import static org.linedrop.units.Dimension.VOLTAGE;
import static org.linedrop.units.Dimension.VOLUME;
import static org.linedrop.units.Dimension.VOLUME_FLOW;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Every unit that is read, with its spellings. Sources of the factors: the international yard and pound of 1959
 * (inch 25.4 mm, pound 0.45359237 kg) and the standard acceleration 9.80665 m/s2, as in the SI brochure and NIST SP
 * 811 appendix B; UK gallon 4.54609 L (Weights and Measures Act 1985), US gallon 231 in3; water column at 1000 kg/m3
 * and mercury at 13595.1 kg/m3 (conventional, NIST SP 811); horsepower 745.700 W (550 ft lbf/s rounded as the trade
 * does) and PS 735.499 W (75 kgf m/s, rounded).
 */
final class UnitTable {
    private static final String POUND = "0.45359237";
    private static final String US_GALLON = "0.003785411784";
    private static final String UK_GALLON = "0.00454609";
    private static final String US_PINT = "0.000473176473";
    private static final String UK_PINT = "0.00056826125";
    /** Pi to 40 places, enough for one rounding to a double. */
    private static final String PI = "3.1415926535897932384626433832795028841971";

    /** The units by dimension and spelling, in table order. */
    private static final Map<Dimension, Map<String, Unit>> BY_DIMENSION = build();

    private UnitTable() {}

    /** The unit of this spelling in this dimension, or null. */
    static @Nullable Unit find(String spelling, Dimension dimension) {
        return of(dimension).get(spelling);
    }

    /** Spellings and units of a dimension, in table order. */
    static Map<String, Unit> of(Dimension dimension) {
        return BY_DIMENSION.getOrDefault(dimension, Map.of());
    }

    private static Map<Dimension, Map<String, Unit>> build() {
        Map<Dimension, Map<String, Unit>> table = new EnumMap<>(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            table.put(dimension, new LinkedHashMap<>());
        }
        geometry(table);
        pressures(table);
        temperatures(table);
        volumesAndFlows(table);
        fluids(table);
        machines(table);
        Map<Dimension, Map<String, Unit>> fixed = new EnumMap<>(Dimension.class);
        table.forEach((dimension, units) -> fixed.put(dimension, Collections.unmodifiableMap(units)));
        return Collections.unmodifiableMap(fixed);
    }

    private static void geometry(Map<Dimension, Map<String, Unit>> t) {
        add(t, LENGTH, "1", "1", "m", "metre", "metres", "meter", "meters");
        add(t, LENGTH, "0.001", "1", "mm", "millimetre", "millimetres");
        add(t, LENGTH, "0.01", "1", "cm");
        add(t, LENGTH, "0.0254", "1", "in", "\"", "inch", "inches");
        add(t, LENGTH, "0.3048", "1", "ft", "'", "foot", "feet");
        add(t, LENGTH, "0.000001", "1", "um", "\u00b5m", "\u03bcm");
        add(t, LENGTH, "1000", "1", "km");
        add(t, AREA, "0.000001", "1", "mm2");
        add(t, AREA, "0.0001", "1", "cm2");
        add(t, AREA, "1", "1", "m2");
        add(t, AREA, "0.00064516", "1", "in2");
        add(t, ANGLE, PI, "180", "deg", "\u00b0", "degree", "degrees");
        add(t, ANGLE, "1", "1", "rad");
        add(t, RATIO, "1", "1", "", "-");
        add(t, RATIO, "0.01", "1", "%", "percent", "per cent");
        add(t, RATIO, "1", "1", "x", "\u00d7", "times");
    }

    private static void pressures(Map<Dimension, Map<String, Unit>> t) {
        pressure(t, "1000", "1", "kPa", "kpa", "KPa", "Kpa", "KPA");
        pressure(t, "100000", "1", "bar", "Bar", "BAR");
        pressure(t, "4.4482216152605", "0.00064516", "psi", "Psi", "PSI", "lb/in2", "lbf/in2");
        pressure(t, "1", "1", "Pa");
        pressure(t, "100", "1", "mbar");
        pressure(t, "100", "1", "hPa");
        pressure(t, "1000000", "1", "MPa");
        pressure(t, "3386.388640341", "1", "inHg", "in Hg", "\"Hg");
        pressure(t, "133.322387415", "1", "mmHg", "mm Hg");
        pressure(t, "9806.65", "1", "mH2O", "m H2O", "mWC");
        pressure(t, "9.80665", "1", "mmH2O", "mm H2O");
        pressure(t, "249.08891", "1", "inH2O", "in H2O", "inWC");
        pressure(t, "101325", "1", "atm");
        add(t, MODULUS, "1000000", "1", "MPa");
        add(t, MODULUS, "1000000000", "1", "GPa");
        add(t, MODULUS, "1", "1", "Pa");
        add(t, MODULUS, "4.4482216152605", "0.00064516", "psi", "PSI");
    }

    /** A pressure unit in its four readings; the suffix says which, bare it is gauge or difference by the key. */
    private static void pressure(
            Map<Dimension, Map<String, Unit>> t, String factor, String divisor, String symbol, String... others) {
        List<String> spellings = new ArrayList<>(List.of(symbol));
        spellings.addAll(List.of(others));
        add(t, PRESSURE_DIFFERENCE, factor, divisor, spellings.toArray(new String[0]));
        List<String> gauge = new ArrayList<>(spellings);
        List<String> absolute = new ArrayList<>();
        List<String> vacuum = new ArrayList<>();
        for (String spelling : spellings) {
            gauge.add(spelling + " gauge");
            gauge.add(spelling + " g");
            gauge.add(spelling + "g");
            absolute.add(spelling + " abs");
            absolute.add(spelling + " absolute");
            absolute.add(spelling + " a");
            absolute.add(spelling + "a");
            vacuum.add(spelling + " vacuum");
            vacuum.add(spelling + " vac");
        }
        add(t, GAUGE_PRESSURE, factor, divisor, gauge.toArray(new String[0]));
        add(t, GAUGE_PRESSURE, "-" + factor, divisor, vacuum.toArray(new String[0]));
        add(t, ABSOLUTE_PRESSURE, factor, divisor, absolute.toArray(new String[0]));
    }

    private static void temperatures(Map<Dimension, Map<String, Unit>> t) {
        add(t, new Unit("C", TEMPERATURE, new BigDecimal("1"), new BigDecimal("1"), new BigDecimal("273.15")), "degC");
        add(
                t,
                new Unit("F", TEMPERATURE, new BigDecimal("5"), new BigDecimal("9"), new BigDecimal("459.67")),
                "degF",
                "\u00b0F");
        also(t, TEMPERATURE, "C", "\u00b0C", "deg C", "\u00b0 C", "\u2103", "Celsius");
        also(t, TEMPERATURE, "F", "deg F", "\u00b0 F", "\u2109", "Fahrenheit");
        add(t, TEMPERATURE, "1", "1", "K");
        add(t, TEMPERATURE_DIFFERENCE, "1", "1", "K");
        add(t, TEMPERATURE_DIFFERENCE, "1", "1", "C", "degC", "\u00b0C", "deg C");
        add(t, TEMPERATURE_DIFFERENCE, "5", "9", "F", "degF", "\u00b0F", "deg F");
        add(t, PER_TEMPERATURE, "1", "1", "1/K", "/K");
        add(t, PER_TEMPERATURE, "0.01", "1", "%/K");
    }

    private static void volumesAndFlows(Map<Dimension, Map<String, Unit>> t) {
        volume(t, "0.001", "L", "l", "litre", "litres", "liter", "liters");
        volume(t, "0.000001", "mL", "ml", "cc", "cm3");
        volume(t, "1", "m3");
        volume(t, UK_GALLON, "UK gal", "gal UK", "imp gal");
        volume(t, US_GALLON, "US gal", "gal US");
        volume(t, UK_PINT, "UK pint", "UK pt", "pint UK");
        volume(t, US_PINT, "US pint", "US pt", "pint US");
        volume(t, "0.000946352946", "US qt", "US quart");
        volume(t, "0.0011365225", "UK qt", "UK quart");
        volume(t, "0.000016387064", "in3", "cu in");
        volume(t, "0.028316846592", "ft3", "cu ft");
        also(t, VOLUME_FLOW, "L/min", "lpm", "LPM");
        also(t, VOLUME_FLOW, "L/h", "lph", "LPH");
        mass(t, "1", "kg");
        mass(t, "0.001", "g");
        mass(t, POUND, "lb", "lbs");
        mass(t, "0.000001", "mg");
    }

    /** A volume, its flows and its displacement per revolution. */
    private static void volume(Map<Dimension, Map<String, Unit>> t, String factor, String... spellings) {
        add(t, VOLUME, factor, "1", spellings);
        flows(t, VOLUME_FLOW, factor, spellings);
        add(t, DISPLACEMENT, factor, "1", with(spellings, "/rev"));
    }

    private static void mass(Map<Dimension, Map<String, Unit>> t, String factor, String... spellings) {
        add(t, MASS, factor, "1", spellings);
        flows(t, MASS_FLOW, factor, spellings);
    }

    private static void flows(
            Map<Dimension, Map<String, Unit>> t, Dimension dimension, String factor, String... spellings) {
        add(t, dimension, factor, "3600", with(spellings, "/h"));
        add(t, dimension, factor, "60", with(spellings, "/min"));
        add(t, dimension, factor, "1", with(spellings, "/s"));
    }

    private static String[] with(String[] spellings, String suffix) {
        String[] longer = new String[spellings.length];
        for (int i = 0; i < spellings.length; i++) {
            longer[i] = spellings[i] + suffix;
        }
        return longer;
    }

    private static void fluids(Map<Dimension, Map<String, Unit>> t) {
        add(t, KINEMATIC_VISCOSITY, "0.000001", "1", "cSt", "cst", "CST");
        add(t, KINEMATIC_VISCOSITY, "0.000001", "1", "mm2/s");
        add(t, KINEMATIC_VISCOSITY, "1", "1", "m2/s");
        add(t, KINEMATIC_VISCOSITY, "0.0001", "1", "St");
        add(t, DYNAMIC_VISCOSITY, "0.001", "1", "mPa s", "mPas");
        add(t, DYNAMIC_VISCOSITY, "0.001", "1", "cP", "cp");
        add(t, DYNAMIC_VISCOSITY, "1", "1", "Pa s", "Pas");
        add(t, DENSITY, "1", "1", "kg/m3");
        add(t, DENSITY, "1000", "1", "kg/L", "kg/l");
        add(t, DENSITY, "1000", "1", "g/cm3", "g/mL", "g/ml", "g/cc");
        add(t, DENSITY, "1", "1", "g/L", "g/l");
        add(t, DENSITY, POUND, "0.028316846592", "lb/ft3");
        add(t, DENSITY, POUND, US_GALLON, "lb/US gal");
        add(t, SPECIFIC_HEAT, "1", "1", "J/kg/K", "J/kgK", "J/(kg K)");
        add(t, SPECIFIC_HEAT, "1000", "1", "kJ/kg/K", "kJ/kgK", "kJ/(kg K)");
    }

    private static void machines(Map<Dimension, Map<String, Unit>> t) {
        add(t, TIME, "1", "1", "s", "sec");
        add(t, TIME, "60", "1", "min");
        add(t, TIME, "3600", "1", "h", "hr");
        add(t, TIME, "0.001", "1", "ms");
        add(t, SPEED, "1", "1", "m/s");
        add(t, SPEED, "1000", "3600", "km/h", "kph");
        add(t, SPEED, "1609.344", "3600", "mph");
        add(t, SPEED, "0.3048", "1", "ft/s");
        add(t, ROTATION, "1", "60", "rpm", "RPM", "rev/min", "r/min", "1/min");
        add(t, ROTATION, "1", "1", "rev/s", "1/s");
        add(t, VOLTAGE, "1", "1", "V", "v", "volt", "volts");
        add(t, VOLTAGE, "0.001", "1", "mV");
        add(t, POWER, "1000", "1", "kW", "kw");
        add(t, POWER, "745.700", "1", "hp", "HP", "bhp");
        add(t, POWER, "735.499", "1", "PS");
        add(t, POWER, "1", "1", "W");
        // lb/(hp h) over 745.700 W x 3600 s; g/(kW h) over 1000 W x 3600 s.
        add(t, FUEL_PER_POWER, POUND, "2684520", "lb/hp/h", "lb/(hp h)", "lb/hp h", "lb/hph", "lb/hp-h");
        add(t, FUEL_PER_POWER, "0.001", "3600000", "g/kW/h", "g/(kW h)", "g/kW h", "g/kWh", "g/kW-h");
        add(t, FUEL_PER_POWER, "1", "3600000", "kg/kW/h", "kg/(kW h)", "kg/kWh");
        add(t, FUEL_PER_POWER, "1", "1", "kg/J");
        add(t, ACCELERATION, "9.80665", "1", "g");
        add(t, ACCELERATION, "1", "1", "m/s2");
        add(t, ACCELERATION, "0.3048", "1", "ft/s2");
    }

    private static void add(
            Map<Dimension, Map<String, Unit>> t,
            Dimension dimension,
            String factor,
            String divisor,
            String... spellings) {
        Unit unit = new Unit(spellings[0], dimension, new BigDecimal(factor), new BigDecimal(divisor), BigDecimal.ZERO);
        add(t, unit, spellings);
    }

    @SuppressWarnings("ReferenceEquality") // equals of a record would cost every start of a program 10 ms
    private static void add(Map<Dimension, Map<String, Unit>> t, Unit unit, String... spellings) {
        Map<String, Unit> units = t.get(unit.dimension());
        if (units == null) {
            throw new IllegalStateException(unit.dimension().name());
        }
        List<String> all = new ArrayList<>(List.of(unit.symbol()));
        all.addAll(List.of(spellings));
        for (String spelling : all) {
            Unit other = units.putIfAbsent(spelling, unit);
            if (other != null && other != unit) {
                throw new IllegalStateException(
                        "two units of " + unit.dimension().noun() + " are spelt " + spelling);
            }
        }
    }

    private static void also(
            Map<Dimension, Map<String, Unit>> t, Dimension dimension, String symbol, String... spellings) {
        Unit unit = t.getOrDefault(dimension, Map.of()).get(symbol);
        if (unit == null) {
            throw new IllegalStateException("no unit " + symbol);
        }
        add(t, unit, spellings);
    }
}
