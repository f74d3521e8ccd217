package org.linedrop.study;

import java.io.Serializable;
import java.util.List;

/**
 * How uncertain a circuit is taken to be. Bands of bores, roughness and figures are those of the catalogue and the file.
 *
 * @param cases         names of cases
 * @param points        how many sets of values are solved in each case, 16 to 65536
 * @param frictionShare half width of friction over its law, 0 to 0.9
 * @param localShare    half width of local losses over their laws, 0 to 0.9
 * @param pumpShare     half width of a pump's flow over its table, 0 to 0.9
 */
public record BandQuestion(List<String> cases, int points, double frictionShare, double localShare, double pumpShare)
        implements Serializable {
    /** How many sets of values are solved unless it is said otherwise. */
    public static final int USUAL_POINTS = 512;

    /** Friction within this of its law. */
    static final double USUAL_FRICTION = 0.10;

    /** Local losses within this of their laws. */
    static final double USUAL_LOCAL = 0.25;

    /** Pumps within this of their tables. */
    static final double USUAL_PUMP = 0.05;

    static final String FRICTION_SOURCE = "charts of friction are good to 10 to 15 %, from memory";
    static final String LOCAL_SOURCE = "published coefficients of one fitting differ by about a quarter, from memory";
    static final String PUMP_SOURCE = "spread between pumps of one type, common practice, from memory";

    private static final int LEAST_POINTS = 16;
    private static final int MOST_POINTS = 65_536;
    private static final double MOST_SHARE = 0.9;

    /** Copies the list and checks the figures. */
    public BandQuestion {
        cases = List.copyOf(cases);
        if (!(points >= LEAST_POINTS && points <= MOST_POINTS)) {
            throw new IllegalArgumentException(
                    "points must be " + LEAST_POINTS + " to " + MOST_POINTS + ", but are " + points);
        }
        for (double share : new double[] {frictionShare, localShare, pumpShare}) {
            if (!(share >= 0 && share <= MOST_SHARE)) {
                throw new IllegalArgumentException("a half width must be 0 to 90 %, but is " + 100 * share + " %");
            }
        }
    }

    /**
     * The usual question.
     *
     * @param cases names of cases
     * @return the question
     */
    public static BandQuestion of(List<String> cases) {
        return new BandQuestion(cases, USUAL_POINTS, USUAL_FRICTION, USUAL_LOCAL, USUAL_PUMP);
    }
}
