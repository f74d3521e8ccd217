package org.linedrop.report.draw;

import java.util.List;

/**
 * The colours of pictures, made for this project. Shares run from light straw to dark plum, each step darker than the
 * one before by at least a half in contrast, so that they can be told apart without seeing colour, and in a grey print.
 */
public final class Shades {
    /** Letters. */
    public static final String INK = "#1d232b";
    /** Lesser letters; 6 to 1 and more against the page. */
    public static final String MUTED = "#515b66";
    /** Lines that only guide the eye. */
    public static final String GRID = "#d5dae0";
    /** The page. */
    public static final String PAPER = "#ffffff";
    /** Areas that carry no figure. */
    public static final String WASH = "#f3f5f7";
    /** Limits. */
    public static final String LIMIT = "#a3123a";
    /** What is given rather than found. */
    public static final String GIVEN = "#155a8a";
    /** Height. */
    public static final String HEIGHT = "#9aa7b4";

    private static final List<String> STEPS = List.of("#f6e7bd", "#e7b866", "#c9793b", "#8f3b3c", "#451a36");
    private static final double[] FROM = {0, 0.02, 0.05, 0.15, 0.40};
    private static final List<String> WORDS = List.of("under 2 %", "2 to 5 %", "5 to 15 %", "15 to 40 %", "over 40 %");

    private Shades() {}

    /**
     * The colour of a share.
     *
     * @param share 0 to 1; anything else counts as the nearer end
     * @return a colour
     */
    public static String ofShare(double share) {
        int step = 0;
        while (step + 1 < FROM.length && share >= FROM[step + 1]) {
            step++;
        }
        return STEPS.get(step);
    }

    /**
     * The colours of shares.
     *
     * @return from the least to the largest share
     */
    public static List<String> steps() {
        return STEPS;
    }

    /**
     * What each colour stands for.
     *
     * @return as many as {@link #steps}
     */
    public static List<String> words() {
        return WORDS;
    }
}
