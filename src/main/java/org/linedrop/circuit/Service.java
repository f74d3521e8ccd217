package org.linedrop.circuit;

/** What kind of circuit it is; picks the usual limits. */
public enum Service {
    /** Pressure-fed injection. */
    INJECTED_FUEL("injected fuel"),
    /** Float-bowl carburettors. */
    CARBURETTOR_FUEL("carburettor fuel"),
    /** Lubrication. */
    ENGINE_OIL("engine oil"),
    /** Gearbox lubrication and cooling. */
    GEARBOX_OIL("gearbox oil"),
    /** Engine or machine cooling. */
    COOLANT("coolant"),
    /** Steering hydraulics. */
    POWER_STEERING("power steering"),
    /** Brakes: quantities only, never a verdict. */
    BRAKE("brake");

    private final String word;

    Service(String word) {
        this.word = word;
    }

    /**
     * The words of the circuit file.
     *
     * @return lower-case words
     */
    public String word() {
        return word;
    }

    /**
     * Whether the circuit feeds an engine with fuel.
     *
     * @return true for both fuel services
     */
    public boolean fuel() {
        return this == INJECTED_FUEL || this == CARBURETTOR_FUEL;
    }
}
