package org.linedrop.fact;

/**
 * How a figure is known, from the strongest word to the weakest. The words are what reports and JSON print.
 */
public enum Status {
    /** Measured by the user on the part itself. */
    MEASURED("measured"),
    /** Fixed by a standard or a government manual. */
    STANDARD("standard"),
    /** Read in a publication. */
    PUBLISHED("published"),
    /** Computed from published coefficients or by a reference library. */
    COMPUTED("computed"),
    /** Arithmetic on the rows named in the source. */
    DERIVED("derived"),
    /** From the sheet that came with the part, as the user typed it. */
    FROM_SHEET("from sheet"),
    /** Typed by the user without a word on where it comes from. */
    GIVEN("given"),
    /** Known only as the custom of the trade. */
    COMMON_PRACTICE("common practice"),
    /** Nobody looked it up. */
    FROM_MEMORY("from memory"),
    /** The user said it is a guess. */
    GUESSED("guessed"),
    /** Made up for a demonstration. */
    INVENTED("invented");

    private final String word;

    Status(String word) {
        this.word = word;
    }

    /**
     * The word printed for this status.
     *
     * @return lower-case words, for example {@code from memory}
     */
    public String word() {
        return word;
    }

    /**
     * Whether a report marks figures of this status with a question mark.
     *
     * @return true for figures from memory, guessed or invented
     */
    public boolean doubtful() {
        return this == FROM_MEMORY || this == GUESSED || this == INVENTED;
    }

    /**
     * The weaker of two statuses: a figure made of several is only as good as the worst of them.
     *
     * @param a one status
     * @param b another
     * @return the one further down the list
     */
    public static Status weaker(Status a, Status b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
