package org.linedrop.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Route;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tube;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** Finds hoses and tubes too short for their ends and bends to lose what each would lose alone. */
final class CloseCoupled {
    private static final double LEAST_BORES = 10;
    private static final Source SOURCE = Source.of(
            "D. S. Miller, Internal Flow Systems: bends in series disturb each other when some ten bores apart or less",
            Status.FROM_MEMORY);

    private CloseCoupled() {}

    static Optional<Notice> notice(Circuit circuit) {
        List<String> found = new ArrayList<>();
        double least = LEAST_BORES;
        for (Run run : circuit.runs()) {
            for (int i = 0; i < run.parts().size(); i++) {
                double bores = bores(run.parts(), i);
                if (bores < LEAST_BORES) {
                    found.add(run.parts().get(i).id());
                    least = Math.min(least, bores);
                }
            }
        }
        if (found.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Notice(
                "close-coupled",
                String.join(", ", found),
                "under 10 bores of straight hose or tube between two ends, fittings or bends: together they may lose"
                        + " less or more than the sum of both, which is what stands here",
                least,
                LEAST_BORES,
                "",
                SOURCE));
    }

    /** Bores of straight length between what stands at its ends and its bends; infinite where it has no two of them. */
    private static double bores(List<Part> parts, int index) {
        Part part = parts.get(index);
        if (part instanceof Hose hose) {
            int ends = (hose.fromEnd() == null ? 0 : 1) + (hose.toEnd() == null ? 0 : 1);
            return bores(hose.lengthM().value(), hose.size().boreM().value(), hose.bends(), ends);
        }
        if (part instanceof Tube tube) {
            int ends = (index == 0 ? 0 : 1) + (index == parts.size() - 1 ? 0 : 1);
            return bores(tube.lengthM().value(), tube.size().boreM().value(), tube.bends(), ends);
        }
        return Double.POSITIVE_INFINITY;
    }

    private static double bores(double lengthM, double boreM, @Nullable Route bends, int ends) {
        int count = bends == null ? 0 : bends.count();
        if (ends + count < 2) {
            return Double.POSITIVE_INFINITY;
        }
        double bent = bends == null ? 0 : count * bends.angleRad() * bends.radiusM();
        return Math.max(0, lengthM - bent) / (count + 1) / boreM; // bends taken as evenly spread
    }
}
