package org.linedrop.fluid;

/** The properties of a fluid, with the word and the SI unit they are reported by. */
public enum PropertyKind {
    /** Density. */
    DENSITY("density", "kg/m3"),
    /** Dynamic viscosity. */
    DYNAMIC_VISCOSITY("dynamic viscosity", "Pa s"),
    /** Kinematic viscosity: dynamic viscosity over density. A way to give viscosity, not stored beside it. */
    KINEMATIC_VISCOSITY("kinematic viscosity", "m2/s"),
    /** Vapour pressure, absolute. */
    VAPOUR_PRESSURE("vapour pressure", "Pa"),
    /** Bulk modulus. */
    BULK_MODULUS("bulk modulus", "Pa"),
    /** Specific heat at constant pressure. */
    SPECIFIC_HEAT("specific heat", "J/(kg K)");

    private final String word;
    private final String unit;

    PropertyKind(String word, String unit) {
        this.word = word;
        this.unit = unit;
    }

    /**
     * The property's name in a sentence.
     *
     * @return lower-case words
     */
    public String word() {
        return word;
    }

    /**
     * The property's SI unit.
     *
     * @return unit text
     */
    public String unit() {
        return unit;
    }

    /**
     * The property of {@link FluidState} this one decides.
     *
     * @return dynamic viscosity for kinematic viscosity, else itself
     */
    public PropertyKind stored() {
        return this == KINEMATIC_VISCOSITY ? DYNAMIC_VISCOSITY : this;
    }
}
