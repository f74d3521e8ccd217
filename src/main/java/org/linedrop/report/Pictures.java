package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.TradeUnits;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.FeedCheck;
import org.linedrop.study.FlowPath;
import org.linedrop.units.Display;

/** The pictures of a checked circuit: functions of its results that compute nothing. */
public final class Pictures {
    private Pictures() {}

    /**
     * All pictures. Those of one case show the worst that was solved.
     *
     * @param check   the cases, at least one
     * @param asked   units
     * @return circuit, pressure along each way, losses, pumps, bands, liners: as far as there is something to draw
     */
    public static List<Picture> of(FeedCheck check, Display asked) {
        List<CaseCheck> cases = check.cases();
        Display display = TradeUnits.of(circuit(cases), asked);
        List<Picture> pictures = new ArrayList<>();
        shown(cases).ifPresent(worst -> {
            pictures.addAll(CircuitPicture.of(worst, display));
            pictures.addAll(ways(worst, display));
            pictures.addAll(LossPicture.of(worst, display));
        });
        pictures.addAll(PumpPicture.of(cases, display));
        pictures.addAll(BandPicture.of(cases, display));
        pictures.addAll(LinerPicture.of(cases, display));
        return List.copyOf(pictures);
    }

    static Circuit circuit(List<CaseCheck> cases) {
        return cases.get(0).result().circuit();
    }

    /** The worst case that has figures. */
    static Optional<CaseCheck> shown(List<CaseCheck> cases) {
        return Standing.worstFirst(cases).stream().filter(Standing::solved).findFirst();
    }

    private static List<Picture> ways(CaseCheck check, Display display) {
        List<Picture> pictures = new ArrayList<>();
        List<FlowPath> paths = FlowPath.of(check.result().usual());
        for (FlowPath path : paths) {
            boolean twin = paths.stream()
                            .filter(other -> other.places().equals(path.places()))
                            .count()
                    > 1;
            pictures.add(StairPicture.of(check, path, pictures.size() + 1, twin, display));
        }
        return pictures;
    }
}
