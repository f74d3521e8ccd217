package org.linedrop.units;

import java.util.List;

/**
 * What a number is a measure of. Three kinds of pressure and two of temperature are kept apart on purpose: a gauge
 * reading taken for an absolute one is wrong by an atmosphere.
 */
public enum Dimension {
    /** Length in m. */
    LENGTH("a length", "m", "Metres", "m", "mm", "m", "in", "ft"),
    /** Pressure over the surrounding air in Pa. */
    GAUGE_PRESSURE("a gauge pressure", "Pa", "Kilopascals", "kPa", "kPa", "bar", "psi", "inHg vacuum"),
    /** Pressure over vacuum in Pa. */
    ABSOLUTE_PRESSURE("an absolute pressure", "Pa", "Kilopascals", "kPa abs", "kPa abs", "bar abs", "psia"),
    /** Difference of two pressures in Pa. */
    PRESSURE_DIFFERENCE("a pressure difference", "Pa", "Kilopascals", "kPa", "kPa", "bar", "psi", "inHg"),
    /** Temperature in K. */
    TEMPERATURE("a temperature", "K", "Celsius", "C", "C", "F", "K"),
    /** Difference of two temperatures in K. */
    TEMPERATURE_DIFFERENCE("a temperature difference", "K", "Kelvin", "K", "K", "C", "F"),
    /** Volume flow in m3/s. */
    VOLUME_FLOW("a volume flow", "m3/s", "Litres per hour", "L/h", "L/h", "L/min", "US gal/h", "UK gal/h"),
    /** Mass flow in kg/s. */
    MASS_FLOW("a mass flow", "kg/s", "Kilograms per hour", "kg/h", "kg/h", "g/s", "lb/h"),
    /** Kinematic viscosity in m2/s. */
    KINEMATIC_VISCOSITY("a kinematic viscosity", "m2/s", "Centistokes", "cSt", "cSt", "mm2/s"),
    /** Dynamic viscosity in Pa s. */
    DYNAMIC_VISCOSITY("a dynamic viscosity", "Pa s", "Millipascal seconds", "mPa s", "mPa s", "cP"),
    /** Density in kg/m3. */
    DENSITY("a density", "kg/m3", "Kilograms per cubic metre", "kg/m3", "kg/m3", "kg/L", "lb/US gal"),
    /** Volume in m3. */
    VOLUME("a volume", "m3", "Litres", "L", "L", "mL", "US gal", "UK gal"),
    /** Mass in kg. */
    MASS("a mass", "kg", "Kilograms", "kg", "kg", "g", "lb"),
    /** Time in s. */
    TIME("a time", "s", "Seconds", "s", "s", "min", "h"),
    /** Speed in m/s. */
    SPEED("a speed", "m/s", "Metres per second", "m/s", "m/s", "km/h", "mph", "ft/s"),
    /** Rotational speed in revolutions (not radians) per second, so that it multiplies a displacement per revolution. */
    ROTATION("a rotational speed", "rev/s", "Revolutions per minute", "rpm", "rpm", "rev/s"),
    /** Volume moved per revolution in m3/rev. */
    DISPLACEMENT("a volume per revolution", "m3/rev", "Millilitres per revolution", "mL/rev", "mL/rev", "in3/rev"),
    /** Voltage in V. */
    VOLTAGE("a voltage", "V", "Volts", "V", "V"),
    /** Power in W. */
    POWER("a power", "W", "Kilowatts", "kW", "kW", "hp", "PS"),
    /** Fuel burnt for the work done, in kg/J. */
    FUEL_PER_POWER("a specific fuel consumption", "kg/J", "Pounds per hp and hour", "lb/hp/h", "lb/hp/h", "g/kW/h"),
    /** Acceleration in m/s2. */
    ACCELERATION("an acceleration", "m/s2", "In g", "g", "g", "m/s2"),
    /** Angle in rad. */
    ANGLE("an angle", "rad", "Degrees", "deg", "deg", "rad"),
    /** Pure number; bare, in per cent or as a multiple. */
    RATIO("a ratio", "", "A multiple", "x", "%", "x"),
    /** Heat per mass and temperature in J/kg/K. */
    SPECIFIC_HEAT("a specific heat", "J/kg/K", "Joules", "J/kg/K", "J/kg/K", "kJ/kg/K"),
    /** Area in m2. */
    AREA("an area", "m2", "Square millimetres", "mm2", "mm2", "cm2", "m2", "in2"),
    /** Elastic or bulk modulus in Pa. */
    MODULUS("a modulus", "Pa", "Megapascals", "MPa", "MPa", "GPa", "psi"),
    /** Change per degree in 1/K. */
    PER_TEMPERATURE("a change per degree", "1/K", "Per kelvin", "1/K", "1/K", "%/K");

    private final String words;
    private final String si;
    private final String guess;
    private final String guessUnit;
    /** With commas between; an enum holds nothing that could change. */
    private final String suggested;

    Dimension(String words, String si, String guess, String guessUnit, String... suggested) {
        this.words = words;
        this.si = si;
        this.guess = guess;
        this.guessUnit = guessUnit;
        this.suggested = String.join(", ", suggested);
    }

    /**
     * The dimension in words, with its article.
     *
     * @return for example {@code a length}
     */
    public String words() {
        return words;
    }

    /**
     * The dimension in words, without article.
     *
     * @return for example {@code length}
     */
    String noun() {
        return words.substring(words.indexOf(' ') + 1);
    }

    /**
     * The unit numbers of this dimension have inside the library.
     *
     * @return for example {@code m}; empty for a ratio
     */
    public String si() {
        return si;
    }

    /**
     * The units a message names, the usual one first.
     *
     * @return symbols that {@link Units} reads for this dimension
     */
    public List<String> suggested() {
        return List.of(suggested.split(", ", -1));
    }

    /**
     * What the difference of two values of this dimension is a measure of.
     *
     * @return a pressure or temperature difference for pressures and temperatures, else this dimension
     */
    public Dimension ofDifference() {
        if (this == GAUGE_PRESSURE || this == ABSOLUTE_PRESSURE) {
            return PRESSURE_DIFFERENCE;
        }
        return this == TEMPERATURE ? TEMPERATURE_DIFFERENCE : this;
    }

    /** The name of the unit most likely meant when none was written, and its symbol. */
    String guess() {
        return guess;
    }

    String guessUnit() {
        return guessUnit;
    }
}
