package org.linedrop.study;

import java.io.Serializable;
import java.util.Optional;
import org.linedrop.circuit.Circuit;
import org.linedrop.units.Display;

/**
 * The largest draw at which every limit of one case holds: engine power or flow where points take shares of the engine,
 * else the flow of the one point that takes a given one.
 *
 * @param knob      the key that says the draw, with the value it has now
 * @param usualSi   the largest value that holds at usual bores, in SI
 * @param leastSi   the largest that holds over all bores that are sold and all classes of the fluid, in SI; NaN where no
 *                  value that is worth trying does
 * @param ends      name of the limit that breaks first beyond it, or why nothing can be said there
 */
public record LargestDraw(Knob knob, double usualSi, double leastSi, String ends) implements Serializable {
    private static final int DIGITS = 3;
    /** Closer than matters to anybody who draws. */
    private static final double SAME = 0.02;

    /**
     * Looks for it between a quarter and four times of what is drawn now.
     *
     * @param circuit a circuit in the case that is meant
     * @return empty where nothing takes a given flow, several points take one each, no limit can be judged, or where the
     *     end of that range is reached first
     */
    public static Optional<LargestDraw> of(Circuit circuit) {
        return DrawSearch.of(circuit);
    }

    /**
     * The largest draw in words.
     *
     * @param display the units to write
     * @return for example {@code 405 kW (543 hp), surely to 389 kW (521 hp)}
     */
    String words(Display display) {
        String usual = knob.shown(usualSi, display, DIGITS);
        if (Double.isNaN(leastSi)) {
            return usual + ", but not surely";
        }
        return leastSi < usualSi * (1 - SAME) ? usual + ", surely to " + knob.shown(leastSi, display, DIGITS) : usual;
    }
}
