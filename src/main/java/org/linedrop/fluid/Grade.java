package org.linedrop.fluid;

/** How far a property of a fluid may be trusted. */
public enum Grade {
    /** Within 3 % (viscosity 5 %) of published or computed tables. */
    A("within 3 % (viscosity 5 %) of published tables"),
    /** Typical of its class: the level lies within the class band, the form is checked. */
    B("typical of its class"),
    /** From memory, estimated or interpolated far: used with an explicit warning. */
    C("from memory or estimated");

    private final String meaning;

    Grade(String meaning) {
        this.meaning = meaning;
    }

    /**
     * What the letter means.
     *
     * @return a few words
     */
    public String meaning() {
        return meaning;
    }

    /**
     * The worse of two grades.
     *
     * @param a one grade
     * @param b another
     * @return the one further down the list
     */
    static Grade worse(Grade a, Grade b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
