package org.linedrop.study;

import java.io.Serializable;

/**
 * One thing that is not known exactly, with how it spreads.
 *
 * @param kind   what it is
 * @param name   what of the circuit: hose, end, material, device, path of a key; empty where it is of all
 * @param low    lowest value, SI; of a fluid 0
 * @param usual  usual value
 * @param high   highest value
 * @param source where the band is from
 */
public record Uncertain(Kind kind, String name, double low, double usual, double high, String source)
        implements Serializable {
    /** Weight of either end of three points: Keefer and Bodily 1983, extended Pearson-Tukey, for 5, 50 and 95 %. */
    private static final double END_WEIGHT = 0.185;

    /** What is not known exactly. */
    public enum Kind {
        /** Bore of a hose of one family and size: one roll for all of it. */
        HOSE_BORE("bore of"),
        /** Nipple bore of the ends of one family and size: one make for all of them. */
        END_BORE("end bore of"),
        /** Through bore of an adapter or bulkhead of one size. */
        FITTING_BORE("bore of"),
        /** Wall roughness of a hose or a tube. */
        ROUGHNESS("roughness of"),
        /** A figure that the file gives with a band. */
        FIGURE(""),
        /** Friction of all plumbing over what its law says. */
        FRICTION("law of friction"),
        /** Local losses of all plumbing over what their laws say. */
        LOCAL("laws of ends, fittings and bends"),
        /** Class of the fluid: thin, usual or thick. */
        FLUID("class of the fluid"),
        /** Flow of a pump over that of its table. */
        PUMP("flow of");

        private final String word;

        Kind(String word) {
            this.word = word;
        }
    }

    /**
     * It in words.
     *
     * @return for example {@code bore of race PTFE -6}
     */
    public String words() {
        return (kind.word + " " + name).strip();
    }

    /**
     * How it spreads.
     *
     * @return the distribution in words
     */
    public String distribution() {
        return kind == Kind.FLUID ? "three points at 5, 50 and 95 %" : "triangle from lowest over usual to highest";
    }

    /**
     * Its value at a probability.
     *
     * @param probability 0 to 1
     * @return SI; of a fluid -1 for thin, 0 for usual, 1 for thick
     */
    double at(double probability) {
        if (kind == Kind.FLUID) {
            return probability < END_WEIGHT ? -1 : probability >= 1 - END_WEIGHT ? 1 : 0;
        }
        double width = high - low;
        double turn = (usual - low) / width;
        return probability < turn
                ? low + Math.sqrt(probability * width * (usual - low))
                : high - Math.sqrt((1 - probability) * width * (high - usual));
    }
}
