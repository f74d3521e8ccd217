package org.linedrop.catalogue;

/** Which half of a connection it is. */
public enum Gender {
    /** Outside thread, cone or barb. */
    MALE("male"),
    /** Inside thread in a nut that turns on its part: hose ends and flared tubes. */
    SWIVEL("swivel nut"),
    /** Inside thread or bore that does not turn: ports. */
    FEMALE("female"),
    /** Sold in both; the half that fits its neighbour is meant. */
    EITHER("either");

    private final String word;

    Gender(String word) {
        this.word = word;
    }

    /**
     * The word for messages.
     *
     * @return for example {@code swivel nut}
     */
    String word() {
        return word;
    }

    /**
     * Whether two halves go into each other.
     *
     * @param other the neighbour's half
     * @return true when one is male and the other is not, or one is sold in both
     */
    boolean fits(Gender other) {
        return this == EITHER || other == EITHER || (this == MALE) != (other == MALE);
    }
}
