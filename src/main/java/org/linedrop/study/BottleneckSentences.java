package org.linedrop.study;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.TradeUnits;
import org.linedrop.result.LimitRow;
import org.linedrop.solver.Outcome;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Units;

/** Writes where the loss sits as sentences. */
final class BottleneckSentences {
    private final Bottleneck answer;
    private final Display display;
    private final StringBuilder text = new StringBuilder();

    private BottleneckSentences(Bottleneck answer, Display display) {
        this.answer = answer;
        this.display = TradeUnits.of(answer.check().result().circuit(), display);
    }

    static String of(Bottleneck answer, Display display) {
        return new BottleneckSentences(answer, display).write();
    }

    private String write() {
        if (answer.check().result().outcome() != Outcome.CONVERGED) {
            return answer.check().sentence(display);
        }
        if (answer.things().isEmpty()) {
            return "Nothing is lost" + on() + ".";
        }
        lost();
        Bottleneck.Thing first = answer.things().get(0);
        String name = first.words().equals(first.place()) ? first.place() : first.words() + " (" + first.place() + ")";
        boolean lifted = answer.liftPa() > answer.plumbingPa() + answer.devicesPa();
        text.append(lifted ? " Height and acceleration take most, and no hose gives that back; of the rest " : " ")
                .append(lifted ? name : capital(name))
                .append(" takes ")
                .append(percent(first.share()))
                .append(lifted ? " %." : " % of what plumbing and devices lose.");
        mend();
        measure();
        return text.toString();
    }

    private void lost() {
        String name = answer.check().caseName();
        text.append(name.equals(Circuit.UNNAMED_CASE) ? "" : name + ": ")
                .append(pressure(answer.lostPa()))
                .append(' ')
                .append(display.unit(Dimension.PRESSURE_DIFFERENCE).symbol())
                .append(" lost")
                .append(on())
                .append(": ")
                .append(pressure(answer.plumbingPa()))
                .append(" in plumbing");
        if (answer.devicesPa() != 0) {
            text.append(", ").append(pressure(answer.devicesPa())).append(" in devices");
        }
        if (answer.liftPa() != 0) {
            text.append(", ").append(pressure(answer.liftPa())).append(" to height and acceleration");
        }
        text.append('.');
    }

    private String on() {
        return answer.subject().isEmpty()
                ? ""
                : " on the way to the " + answer.subject()
                        + (Bottleneck.beyond(answer.output()) ? " and on from it" : "");
    }

    private String pressure(double pa) {
        double shown = Units.to(pa, display.unit(Dimension.PRESSURE_DIFFERENCE));
        return String.format(Locale.ROOT, Math.abs(shown) < 10 ? "%.2f" : "%.1f", shown);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f", 100 * share);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** The thing whose next size gives most, and whether that is enough. */
    private void mend() {
        Output output = answer.output();
        Optional<Bottleneck.Thing> best = answer.things().stream()
                .filter(thing -> thing.gives() > 0)
                .max(Comparator.comparingDouble(Bottleneck.Thing::gives));
        if (output == null || best.isEmpty()) {
            text.append(output == null ? "" : " No one size up of a hose or tube gives anything.");
            return;
        }
        Bottleneck.Thing thing = best.get();
        text.append(" One size up that gives most: ")
                .append(thing.place())
                .append(" in ")
                .append(thing.larger())
                .append(": ")
                .append(output.id())
                .append(' ')
                .append(display.text(thing.then(), output.dimension()));
        LimitRow limit = answer.check().decisive();
        if (limit != null) {
            boolean heldBefore = answer.check().result().limits().stream().noneMatch(row -> row.margin() < 0);
            text.append(thing.holds() ? heldBefore ? "" : ", which holds" : ", not enough alone");
        }
        text.append('.');
    }

    private void measure() {
        Output output = answer.output();
        if (output == null
                || answer.measures().isEmpty()
                || !(answer.measures().get(0).decides() > noise(output))) {
            return;
        }
        Bottleneck.Measure first = answer.measures().get(0);
        text.append(" Worth measuring first: ")
                .append(first.words())
                .append(" (")
                .append(first.status().word())
                .append("), which decides ")
                .append(difference(first.decides(), output))
                .append('.');
    }

    /** A draw that takes what it takes has slopes of rounding. */
    private double noise(Output output) {
        return 1e-9 * Math.abs(output.of(answer.check().result().usual()));
    }

    private String difference(double si, Output output) {
        return display.text(si, output.dimension().ofDifference());
    }
}
