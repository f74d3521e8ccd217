package org.linedrop.result;

/** What became of a limit. */
public enum Verdict {
    /** Holds at usual, smallest and largest bores. */
    HOLDS("holds"),
    /** Broken at usual bores and at both ends of their band. */
    BROKEN("broken"),
    /** Holds at some bores of the band and not at others. */
    UNSURE("unsure"),
    /** Not enough is known, or it is not for us to judge. */
    NOT_JUDGED("not judged");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /**
     * The word printed.
     *
     * @return lower-case words
     */
    public String word() {
        return word;
    }
}
