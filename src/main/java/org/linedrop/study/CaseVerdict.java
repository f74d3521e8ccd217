package org.linedrop.study;

/** What is to be said of a feed in one case; the first that applies is the one. */
public enum CaseVerdict {
    /** A regulator cannot hold what it is set to, and no line is to blame. */
    OUT_OF_CONTROL("out of control"),
    /** The fluid boils in the line to the pump. */
    SHORT_AT_THE_INLET("short at the inlet"),
    /** A bypass regulator is wide open, and its return line is why. */
    RETURN_LIMITED("return-limited"),
    /** The pump cannot pass what is drawn, even through lines that lose nothing. */
    PUMP_SHORT("pump short"),
    /** Height or acceleration takes what the line needed. */
    STARVED("starved"),
    /** A limit is broken and lines that lose nothing would mend it. */
    UNDERSIZED("undersized"),
    /** A limit holds at some bores that are sold and not at others. */
    UNSURE("unsure"),
    /** Every limit also holds one dash smaller everywhere. */
    OVERSIZED("oversized"),
    /** Every limit holds. */
    ADEQUATE("adequate");

    private final String word;

    CaseVerdict(String word) {
        this.word = word;
    }

    /**
     * The words of JSON.
     *
     * @return lower-case words; the sentence writes them in capitals
     */
    public String word() {
        return word;
    }
}
