package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;

/** A circuit is well formed, but holds something that no law is written for yet. */
public final class NotSolvableException extends RuntimeException {
    private static final long serialVersionUID = 1;
    /** One sentence for each thing. */
    private final List<String> reasons;

    private NotSolvableException(List<String> reasons) {
        super(String.join("; ", reasons));
        this.reasons = new ArrayList<>(reasons);
    }

    /**
     * What stands in the way.
     *
     * @return a sentence for each device or draw, in the order of the file
     */
    public List<String> reasons() {
        return List.copyOf(reasons);
    }

    /**
     * Refuses a circuit that cannot be solved yet.
     *
     * @param circuit the circuit
     * @throws NotSolvableException when it holds a device or draw without a law
     */
    public static void check(Circuit circuit) {
        List<String> reasons = new ArrayList<>();
        for (Point point : circuit.points()) {
            if (point instanceof Draw draw && draw.takes() instanceof Demand.AtPressure) {
                reasons.add(point.id() + ": a draw by the law of " + draw.law()
                        + " is read but cannot be solved yet. Give a plain flow: takes: 40 L/min");
            }
        }
        for (Device device : circuit.devices()) {
            if (device instanceof OtherDevice other) {
                reasons.add(other.id() + ": " + other.what() + " is read but cannot be solved yet");
            }
        }
        if (!reasons.isEmpty()) {
            throw new NotSolvableException(reasons);
        }
    }
}
