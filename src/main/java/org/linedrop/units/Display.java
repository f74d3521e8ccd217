package org.linedrop.units;

/** The units a report is printed in. */
public enum Display {
    /** Millimetres, kilopascals, litres per hour, degrees Celsius. */
    METRIC("metric"),
    /** Inches, psi, US gallons per hour, degrees Fahrenheit. */
    US("us"),
    /** As metric, flows in litres per minute: oil and coolant. */
    METRIC_PER_MINUTE("metric"),
    /** As US, flows in US gallons per minute: oil and coolant. */
    US_PER_MINUTE("us");

    /** Under this a flow per minute shows a digit more: the jet of a turbo takes half a litre. */
    private static final double SMALL_FLOW = 1;

    /** A unit with the decimals a figure in it usually has. */
    private record Shown(Unit unit, int decimals) {}

    private final String word;

    Display(String word) {
        this.word = word;
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
     * Whether it is one of the two with US units.
     *
     * @return false for metric units
     */
    public boolean us() {
        return this == US || this == US_PER_MINUTE;
    }

    /**
     * The same units with flows as the trade says them.
     *
     * @param minutes true for flows per minute, as of oil and coolant; false for flows per hour, as of fuel
     * @return the units
     */
    public Display perMinute(boolean minutes) {
        return us() ? minutes ? US_PER_MINUTE : US : minutes ? METRIC_PER_MINUTE : METRIC;
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
        return Double.isFinite(si) ? Units.fixed(si, of(dimension).unit(), decimals(si, dimension)) : "-";
    }

    /**
     * How many decimals a figure usually has.
     *
     * @param si        the value in SI, not NaN
     * @param dimension what it measures
     * @return decimals behind the figure in {@link #unit}
     */
    public int decimals(double si, Dimension dimension) {
        Shown shown = of(dimension);
        boolean small = dimension == Dimension.VOLUME_FLOW
                && si != 0
                && this != perMinute(false)
                && Math.abs(Units.to(si, shown.unit())) < SMALL_FLOW;
        return shown.decimals() + (small ? 1 : 0);
    }

    private Shown of(Dimension dimension) {
        boolean us = us();
        return switch (dimension) {
            case GAUGE_PRESSURE, PRESSURE_DIFFERENCE -> shown(dimension, us ? "psi" : "kPa", us ? 2 : 1);
            case ABSOLUTE_PRESSURE -> shown(dimension, us ? "psia" : "kPa abs", us ? 2 : 1);
            case VOLUME_FLOW ->
                this == perMinute(false)
                        ? shown(dimension, us ? "US gal/h" : "L/h", us ? 1 : 0)
                        : shown(dimension, us ? "US gal/min" : "L/min", us ? 2 : 1);
            case MASS_FLOW -> shown(dimension, us ? "lb/h" : "kg/h", 0);
            case LENGTH -> shown(dimension, us ? "ft" : "m", 2);
            case SPEED -> shown(dimension, us ? "ft/s" : "m/s", 2);
            case TEMPERATURE -> shown(dimension, us ? "F" : "C", 0);
            case TEMPERATURE_DIFFERENCE -> shown(dimension, us ? "F" : "K", 1);
            case DENSITY -> shown(dimension, us ? "lb/ft3" : "kg/m3", us ? 1 : 0);
            case KINEMATIC_VISCOSITY -> shown(dimension, us ? "cSt" : "mm2/s", 2);
            case RATIO -> shown(dimension, "%", 0);
            case POWER -> shown(dimension, us ? "hp" : "kW", 0);
            case VOLTAGE -> shown(dimension, "V", 1);
            default -> throw new IllegalArgumentException("reports do not print " + dimension.words());
        };
    }

    private static Shown shown(Dimension dimension, String symbol, int decimals) {
        return new Shown(Units.unit(symbol, dimension), decimals);
    }
}
