package org.linedrop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Demand;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Draw;
import org.linedrop.circuit.Engine;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Rail;

/** Steps away from the present draw until holding begins or ends, and closes in there. */
final class DrawSearch {
    /** A trial is so much larger than the one before. */
    private static final double GROWTH = 1.25;
    /** How far from the present draw an answer is worth having. */
    private static final double FARTHEST = 4;

    private static final double RELATIVE = 1e-6;

    private final Knob knob;
    private final Judge judge;

    private DrawSearch(Knob knob, Judge judge) {
        this.knob = knob;
        this.judge = judge;
    }

    static Optional<LargestDraw> of(Circuit circuit) {
        String path = path(circuit);
        if (path == null) {
            return Optional.empty();
        }
        Knob knob = Knob.of(circuit, path);
        List<String> thisCase = List.of(circuit.caseName());
        Judge usual = new Judge(circuit, knob, thisCase, null, false);
        if (!(knob.si() > 0) || !usual.judgesAnything()) {
            return Optional.empty();
        }
        HowFar.Trial[] end = new DrawSearch(knob, usual).end(usual.trial(knob.si()));
        if (end == null) {
            return Optional.empty();
        }
        HowFar.Trial beyond = end[1];
        Judge everyBore = new Judge(circuit, knob, thisCase, null, true);
        HowFar.Trial atEnd = everyBore.trial(end[0].si());
        double least = end[0].si();
        if (!atEnd.holds()) {
            HowFar.Trial[] surely = new DrawSearch(knob, everyBore).end(atEnd);
            least = surely == null ? Double.NaN : surely[0].si();
        }
        return Optional.of(new LargestDraw(
                knob, end[0].si(), least, beyond.decides().isEmpty() ? beyond.trouble() : beyond.decides()));
    }

    /** The key that says how much is drawn; null where none does, or where several do. */
    private static @Nullable String path(Circuit circuit) {
        List<String> given = new ArrayList<>();
        boolean ofEngine = false;
        for (Point point : circuit.points()) {
            if (point instanceof Draw draw) {
                ofEngine |= draw.takes() instanceof Demand.OfEngine;
                given(point.id(), draw.takes(), given);
            }
        }
        for (Device device : circuit.devices()) {
            if (device instanceof Rail rail) {
                ofEngine |= rail.takes() instanceof Demand.OfEngine;
                given(rail.id(), rail.takes(), given);
            }
        }
        Engine engine = circuit.engine();
        if (ofEngine && engine != null) {
            return given.isEmpty() ? engine.powerW() != null ? "engine.power" : "engine.flow" : null;
        }
        return given.size() == 1 ? given.get(0) : null;
    }

    private static void given(String id, Demand takes, List<String> given) {
        if (takes instanceof Demand.ByVolume || takes instanceof Demand.ByMass) {
            given.add(id + ".takes");
        }
    }

    /** The last value that holds and the first beyond it that does not; null where the range ends first. */
    private HowFar.Trial @Nullable [] end(HowFar.Trial now) {
        boolean up = now.holds();
        HowFar.Trial last = now;
        double reach = Math.log(FARTHEST) / Math.log(GROWTH);
        for (int i = 1; i <= reach; i++) {
            double value = now.si() * Math.pow(GROWTH, up ? i : -i);
            if (value > knob.most() || value < knob.least()) {
                return null;
            }
            HowFar.Trial next = judge.trial(value);
            if (next.holds() != up) {
                return up ? between(last, next) : between(next, last);
            }
            last = next;
        }
        return null;
    }

    private HowFar.Trial[] between(HowFar.Trial holds, HowFar.Trial fails) {
        double root = judge.root(holds, fails, RELATIVE, AllowedSolution.ABOVE_SIDE);
        return Double.isNaN(root)
                ? judge.halved(holds, fails, RELATIVE)
                : new HowFar.Trial[] {judge.trial(root), fails};
    }
}
