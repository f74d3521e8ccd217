package org.linedrop.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Service;

/** What every report ends with. */
final class Safety {
    private static final List<String> LINES = List.of(
            "This says where pressure goes. It does not say that a hose is strong, legal or safe.",
            "Planning estimate: steady, single-phase, as accurate as the bores you gave.",
            "Brake hose, ratings and road or competition rules belong to standards, makers, local codes and licensed"
                    + " practice.");
    private static final String PUMP =
            "With the engine stopped or rolled over the fuel pump must stop; this report cannot see whether yours does.";

    private Safety() {}

    /**
     * The three lines at the end of every report.
     *
     * @return three sentences
     */
    static List<String> lines() {
        return LINES;
    }

    /**
     * What a report on a service has to say besides.
     *
     * @param service what kind of circuit, null when not said
     * @return sentences, possibly none
     */
    static List<String> cautions(@Nullable Service service) {
        return service != null && service.fuel() ? List.of(PUMP) : List.of();
    }
}
