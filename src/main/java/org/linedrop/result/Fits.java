package org.linedrop.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.linedrop.catalogue.Compatibility;
import org.linedrop.catalogue.RatingResult;
import org.linedrop.catalogue.Ratings;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** Whether a hose fits what flows in it: liner against fluid, ratings against pressures. */
final class Fits {
    private Fits() {}

    static Optional<Notice> fluid(Circuit circuit, Hose hose) {
        String family = circuit.surroundings().fluid().family();
        if (family.isEmpty()) {
            return Optional.empty();
        }
        Compatibility row = circuit.catalogue().compatibility(hose.size().liner(), family);
        String name = hose.size().family() + " (" + hose.size().liner() + ") in "
                + circuit.surroundings().fluid().name();
        return switch (row.grade()) {
            case RECOMMENDED ->
                row.askFor().isEmpty()
                        ? Optional.empty()
                        : Optional.of(Notice.of(
                                "liner-ask-for",
                                hose.id(),
                                name + " suits if it is the right kind: " + row.askFor(),
                                row.source()));
            case LIMITED ->
                Optional.of(Notice.of("liner-limited", hose.id(), name + ": limited. " + row.note(), row.source()));
            case NOT_RECOMMENDED ->
                Optional.of(Notice.of(
                        "liner-not-recommended", hose.id(), name + ": not recommended. " + row.note(), row.source()));
            case UNKNOWN ->
                Optional.of(Notice.of(
                        "liner-unknown", hose.id(), name + ": nothing known here; ask the hose maker", row.source()));
        };
    }

    static List<Notice> ratings(Result result, Hose hose) {
        double most = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (PartRow row : result.rows()) {
            if (row.part().equals(hose.id())) {
                most = Math.max(most, Math.max(row.staticPressureInPa(), row.staticPressureOutPa()));
                least = Math.min(least, Math.min(row.staticPressureInPa(), row.staticPressureOutPa()));
            }
        }
        Figure own =
                hose.temperatureK() == null ? result.circuit().surroundings().temperatureK() : hose.temperatureK();
        List<Notice> notices = new ArrayList<>();
        for (RatingResult rating : Ratings.check(hose.size(), most, least, own.value(), own.value())) {
            boolean pressure = rating.quantity().equals("working pressure")
                    || rating.quantity().equals("vacuum");
            if (rating.verdict() == RatingResult.Verdict.OVER
                    || (rating.verdict() == RatingResult.Verdict.NOT_JUDGED && pressure)) {
                notices.add(new Notice(
                        rating.verdict() == RatingResult.Verdict.OVER ? "over-rating" : "rating-not-judged",
                        hose.id(),
                        rating.text(),
                        rating.value(),
                        rating.rating() == null ? Double.NaN : rating.rating().value(),
                        rating.quantity().contains("temperature") ? "K" : "Pa",
                        rating.rating() == null
                                ? Source.of("no figure known", Status.GIVEN)
                                : rating.rating().source()));
            }
        }
        return notices;
    }
}
