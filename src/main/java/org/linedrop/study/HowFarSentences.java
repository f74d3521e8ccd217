package org.linedrop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.units.Display;

/** Writes how far a key can be moved as sentences. */
final class HowFarSentences {
    private final HowFar answer;
    private final Display display;
    private final StringBuilder text = new StringBuilder();

    private HowFarSentences(HowFar answer, Display display) {
        this.answer = answer;
        this.display = display;
    }

    static String of(HowFar answer, Display display) {
        return new HowFarSentences(answer, display).write();
    }

    private String write() {
        if (!answer.question().target().isEmpty()) {
            target();
        } else {
            limits();
        }
        answer.notes().forEach(note -> text.append(' ').append(note));
        return text.toString();
    }

    private String shown(double si) {
        return answer.knob().shown(si, display);
    }

    private void target() {
        Optional<HowFar.Edge> nearest = answer.nearest();
        String wanted = answer.question().target();
        if (nearest.isEmpty()) {
            text.append("NOT FOUND: no ")
                    .append(answer.knob().path())
                    .append(" between ")
                    .append(shown(answer.from()))
                    .append(" and ")
                    .append(shown(answer.to()))
                    .append(" gives ")
                    .append(wanted)
                    .append("; nearest is ")
                    .append(shown(answer.best().si()))
                    .append('.');
            trouble(answer.best());
            return;
        }
        HowFar.Edge edge = nearest.get();
        text.append(answer.knob().path())
                .append(' ')
                .append(shown(edge.inside()))
                .append(" gives ")
                .append(wanted)
                .append(
                        answer.holdsNow()
                                ? ", as it is now."
                                : "; it is " + shown(answer.knob().si()) + " now.");
        if (answer.edges().size() > 1) {
            List<String> others = new ArrayList<>();
            for (HowFar.Edge other : answer.edges()) {
                if (!other.equals(edge)) {
                    others.add(shown(other.inside()));
                }
            }
            text.append(" It is not the only one: ")
                    .append(String.join(", ", others))
                    .append(" gives the same.");
        }
    }

    private void limits() {
        Optional<HowFar.Stretch> found = answer.stretch();
        if (found.isEmpty()) {
            nothing();
            return;
        }
        HowFar.Stretch stretch = found.get();
        text.append(answer.holdsNow() ? "" : "Not as it is: ")
                .append(answer.knob().path())
                .append(answer.holdsNow() ? " can be " : " must be ")
                .append(range(stretch))
                .append(" (")
                .append(shown(answer.knob().si()))
                .append(" now)")
                .append('.');
        if (stretch.low() == null && stretch.high() == null) {
            text.append(" Nothing that was tried breaks a limit.");
        }
        edge(stretch.high(), "More");
        edge(stretch.low(), "Less");
        others(stretch);
    }

    private String range(HowFar.Stretch stretch) {
        if (stretch.low() != null && stretch.high() != null) {
            return shown(stretch.from()) + " to " + shown(stretch.to());
        }
        if (stretch.high() != null) {
            return "at most " + shown(stretch.to());
        }
        return stretch.low() != null
                ? "at least " + shown(stretch.from())
                : "anything from " + shown(stretch.from()) + " to " + shown(stretch.to());
    }

    private void edge(HowFar.@Nullable Edge edge, String more) {
        if (edge == null) {
            return;
        }
        HowFar.Trial out = edge.decides();
        text.append(' ').append(more);
        switch (edge.kind()) {
            case ROOT -> text.append(" breaks ").append(out.decides()).append(at(out));
            case JUMP ->
                text.append(" makes ").append(out.decides()).append(at(out)).append(" jump over its bound");
            default -> text.append(" is refused").append(at(out)).append(": ").append(out.trouble());
        }
        text.append('.');
        if (edge.kind() == HowFar.Kind.ROOT && !(edge.atLeastSi() == edge.inside())) {
            if (Double.isNaN(edge.atLeastSi())) {
                text.append(" With the worst of the bores sold no value on this side holds.");
            } else {
                text.append(" With the worst of the bores sold it is ")
                        .append(shown(edge.atLeastSi()))
                        .append('.');
            }
        }
    }

    private String at(HowFar.Trial trial) {
        return trial.caseName().equals(Circuit.UNNAMED_CASE) ? "" : " at " + trial.caseName();
    }

    private void others(HowFar.Stretch counted) {
        List<String> others = new ArrayList<>();
        for (HowFar.Stretch other : answer.stretches()) {
            if (!other.equals(counted)) {
                others.add(range(other));
            }
        }
        if (!others.isEmpty()) {
            text.append(" It is not the only stretch: ")
                    .append(String.join(", ", others))
                    .append(" holds too, and what lies between does not.");
        }
    }

    private void nothing() {
        HowFar.Trial best = answer.best();
        text.append("NOT FOUND: no ")
                .append(answer.knob().path())
                .append(" between ")
                .append(shown(answer.from()))
                .append(" and ")
                .append(shown(answer.to()))
                .append(" holds every limit");
        if (Double.isNaN(best.score())) {
            text.append('.');
        } else {
            text.append("; nearest is ")
                    .append(shown(best.si()))
                    .append(", where ")
                    .append(best.decides())
                    .append(at(best))
                    .append(" is still ")
                    .append(String.format(Locale.ROOT, "%.1f", -100 * best.score()))
                    .append(" % off.");
        }
        trouble(best);
    }

    private void trouble(HowFar.Trial trial) {
        if (!trial.trouble().isEmpty()) {
            text.append(' ').append(trial.trouble()).append('.');
        }
    }
}
