package org.linedrop.catalogue;

/** How a connection seals. */
public enum Seat {
    /** Metal cone of 37 degrees under a straight thread (dash sizes). */
    FLARE_37("37-degree flare"),
    /** Metal cone of 45 degrees under a straight thread (sized by the tube). */
    FLARE_45("45-degree flare"),
    /** O-ring under the head of a straight thread (dash sizes). */
    O_RING_BOSS("O-ring boss"),
    /** Taper thread with sealant (NPT). */
    TAPER_PIPE("taper pipe"),
    /** Parallel pipe thread with washer or bonded seal (BSPP). */
    PARALLEL_PIPE("parallel pipe"),
    /** Metric parallel thread with O-ring or washer. */
    METRIC("metric"),
    /** Ring between two washers under a drilled bolt. */
    BANJO("banjo"),
    /** Push-together coupling on a bead tube end. */
    QUICK_CONNECT("quick-connect"),
    /** Hose pushed over a barb or bead and clamped. */
    BARB("barb"),
    /** Nobody said; nothing can be checked. */
    NOT_STATED("not stated");

    private final String word;

    Seat(String word) {
        this.word = word;
    }

    /**
     * The name used in the data and in messages.
     *
     * @return words, for example {@code O-ring boss}
     */
    public String word() {
        return word;
    }

    /**
     * The seat of a data row.
     *
     * @param word its name
     * @return the seat
     */
    static Seat of(String word) {
        for (Seat seat : values()) {
            if (seat.word.equals(word)) {
                return seat;
            }
        }
        throw new IllegalArgumentException("no seat is called \"" + word + "\"");
    }
}
