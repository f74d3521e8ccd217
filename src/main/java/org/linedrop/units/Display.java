package org.linedrop.units;

import java.util.EnumMap;
import java.util.Map;

/** The units a report is printed in. */
public enum Display {
    /** Millimetres, kilopascals, litres per hour, degrees Celsius. */
    METRIC("metric"),
    /** Inches, psi, US gallons per hour, degrees Fahrenheit. */
    US("us");

    private record Shown(Unit unit, int decimals) {}

    private final String word;
    private final Map<Dimension, Shown> shown = new EnumMap<>(Dimension.class);

    Display(String word) {
        this.word = word;
        boolean us = word.equals("us");
        put(Dimension.GAUGE_PRESSURE, us ? "psi" : "kPa", us ? 2 : 1);
        put(Dimension.ABSOLUTE_PRESSURE, us ? "psia" : "kPa abs", us ? 2 : 1);
        put(Dimension.PRESSURE_DIFFERENCE, us ? "psi" : "kPa", us ? 2 : 1);
        put(Dimension.VOLUME_FLOW, us ? "US gal/h" : "L/h", us ? 1 : 0);
        put(Dimension.MASS_FLOW, us ? "lb/h" : "kg/h", 0);
        put(Dimension.LENGTH, us ? "ft" : "m", 2);
        put(Dimension.SPEED, us ? "ft/s" : "m/s", 2);
        put(Dimension.TEMPERATURE, us ? "F" : "C", 0);
        put(Dimension.DENSITY, us ? "lb/ft3" : "kg/m3", us ? 1 : 0);
        put(Dimension.KINEMATIC_VISCOSITY, us ? "cSt" : "mm2/s", 2);
        put(Dimension.RATIO, "%", 0);
        put(Dimension.POWER, us ? "hp" : "kW", 0);
        put(Dimension.VOLTAGE, "V", 1);
    }

    private void put(Dimension dimension, String symbol, int decimals) {
        shown.put(dimension, new Shown(Units.unit(symbol, dimension), decimals));
    }

    /**
     * The word of the command line.
     *
     * @return {@code metric} or {@code us}
     */
    public String word() {
        return word;
    }

    /**
     * The unit of a dimension.
     *
     * @param dimension one that reports print
     * @return its unit
     * @throws IllegalArgumentException when reports never print the dimension
     */
    public Unit unit(Dimension dimension) {
        return of(dimension).unit();
    }

    /**
     * A figure with its unit, at the usual number of decimals.
     *
     * @param si        the value in SI; NaN prints as a dash
     * @param dimension what it measures
     * @return for example {@code 375.0 kPa}
     */
    public String text(double si, Dimension dimension) {
        return number(si, dimension) + " " + of(dimension).unit().symbol();
    }

    /**
     * A figure without its unit, at the usual number of decimals.
     *
     * @param si        the value in SI; NaN prints as a dash
     * @param dimension what it measures
     * @return for example {@code 375.0}
     */
    public String number(double si, Dimension dimension) {
        return Double.isFinite(si)
                ? Units.fixed(si, of(dimension).unit(), of(dimension).decimals())
                : "-";
    }

    private Shown of(Dimension dimension) {
        Shown known = shown.get(dimension);
        if (known == null) {
            throw new IllegalArgumentException("reports do not print " + dimension.words());
        }
        return known;
    }
}
