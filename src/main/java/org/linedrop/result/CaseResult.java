package org.linedrop.result;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Limit;
import org.linedrop.circuit.Pump;
import org.linedrop.circuit.Regulator;
import org.linedrop.circuit.Service;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.fluid.Band;
import org.linedrop.network.Bores;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.solver.Outcome;

/**
 * One case of a circuit solved three times - with usual, smallest and largest bores of what was not measured - and its
 * limits judged over the three; where the fluid decides as much as a bore does (cold oil, suction), also over both ends
 * of the fluid's class.
 */
public final class CaseResult implements Serializable {
    private static final long serialVersionUID = 1;

    /** At usual bores. */
    private final Result usual;

    /** At the smallest bores. */
    private final Result smallest;

    /** At the largest bores. */
    private final Result largest;

    /** What became of the limits; an immutable list. */
    @SuppressWarnings("serial")
    private final List<LimitRow> limits;

    private CaseResult(Result usual, Result smallest, Result largest) {
        this.usual = usual;
        this.smallest = smallest;
        this.largest = largest;
        List<LimitRow> rows = new ArrayList<>();
        for (Limit limit : usual.circuit().limits()) {
            rows.add(judge(limit));
        }
        this.limits = List.copyOf(rows);
    }

    /**
     * Solves a circuit, in the case it is in.
     *
     * @param circuit the circuit
     * @return three results and the limits judged
     */
    public static CaseResult of(Circuit circuit) {
        CircuitNetwork.Setting setting = CircuitNetwork.Setting.USUAL;
        return new CaseResult(
                Result.of(circuit, setting),
                Result.of(circuit, setting.with(Bores.SMALLEST)),
                Result.of(circuit, setting.with(Bores.LARGEST)));
    }

    /**
     * The result at usual bores.
     *
     * @return the one that tables show
     */
    public Result usual() {
        return usual;
    }

    /**
     * The result at the smallest bores sold.
     *
     * @return a result of the same circuit
     */
    public Result smallest() {
        return smallest;
    }

    /**
     * The result at the largest bores sold.
     *
     * @return a result of the same circuit
     */
    public Result largest() {
        return largest;
    }

    /**
     * The circuit solved.
     *
     * @return the circuit in its case
     */
    public Circuit circuit() {
        return usual.circuit();
    }

    /**
     * How the solve at usual bores ended.
     *
     * @return converged or the reason
     */
    public Outcome outcome() {
        return usual.outcome();
    }

    /**
     * Its limits, judged.
     *
     * @return in the order of the file
     */
    public List<LimitRow> limits() {
        return limits;
    }

    /**
     * Whether every limit that can be judged holds at all bores of the bands, and no pump draws vapour.
     *
     * @return false when the case did not converge
     */
    public boolean holds() {
        return outcome() == Outcome.CONVERGED
                && usual.boilingAtPump().isEmpty()
                && limits.stream()
                        .allMatch(row -> row.verdict() == Verdict.HOLDS || row.verdict() == Verdict.NOT_JUDGED);
    }

    /** The quantity at the ends of the bands that decide it: bores always, the fluid's class where it matters. */
    private List<Quantities.Value> others(Limit limit) {
        List<Quantities.Value> others = new ArrayList<>();
        others.add(Quantities.of(smallest, limit));
        others.add(Quantities.of(largest, limit));
        if (fluidDecides(limit)) {
            CircuitNetwork.Setting usualBores = CircuitNetwork.Setting.USUAL;
            for (Band band : List.of(Band.THIN, Band.THICK)) {
                others.add(Quantities.of(Result.of(circuit(), usualBores.with(band)), limit));
            }
        }
        return others;
    }

    /** Cold oil and suction: limits that the viscosity or the volatility class decides as much as a bore does. */
    private boolean fluidDecides(Limit limit) {
        Service service = circuit().service();
        boolean oil =
                service == Service.ENGINE_OIL || service == Service.GEARBOX_OIL || service == Service.POWER_STEERING;
        return oil || limit.quantity().startsWith("inlet");
    }

    private LimitRow judge(Limit limit) {
        LimitText bound = limit.bound();
        if (bound.kind() == LimitText.Kind.STATE) {
            return judgeState(limit);
        }
        Quantities.Value value = Quantities.of(usual, limit);
        String unit = bound.dimension().si();
        if (Double.isNaN(value.value())) {
            return new LimitRow(
                    limit,
                    Verdict.NOT_JUDGED,
                    Double.NaN,
                    Double.isInfinite(bound.low()) ? bound.high() : bound.low(),
                    unit,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    value.reason(),
                    "");
        }
        double margin = bound.margin(value.value());
        double least = margin;
        double most = margin;
        boolean known = true;
        for (Quantities.Value other : others(limit)) {
            known &= !Double.isNaN(other.value());
            if (!Double.isNaN(other.value())) {
                least = Math.min(least, bound.margin(other.value()));
                most = Math.max(most, bound.margin(other.value()));
            }
        }
        Verdict verdict = most < 0 ? Verdict.BROKEN : least >= 0 ? Verdict.HOLDS : Verdict.UNSURE;
        if (!known && verdict == Verdict.HOLDS) {
            verdict = Verdict.UNSURE;
        }
        String reason = "";
        if (verdict == Verdict.BROKEN && knownByOnePoint()) {
            verdict = Verdict.UNSURE;
            reason = "the pump is known by one point, and gives at least what is shown";
        }
        return new LimitRow(
                limit, verdict, value.value(), bound.nearest(value.value()), unit, margin, least, most, reason, "");
    }

    private boolean knownByOnePoint() {
        return circuit().devices().stream().anyMatch(device -> device instanceof Pump pump && pump.bound());
    }

    /** A state holds where the device is in it at all bores of the bands; a regulator tells how far it is from leaving it. */
    private LimitRow judgeState(Limit limit) {
        String wanted = limit.bound().words();
        String state = Quantities.state(usual, limit);
        double value = Quantities.of(usual, limit).value();
        double least = value;
        double most = value;
        int holding = 0;
        List<Result> all = List.of(usual, smallest, largest);
        for (Result each : all) {
            double margin = Quantities.of(each, limit).value();
            least = Math.min(least, margin);
            most = Math.max(most, margin);
            holding += Quantities.state(each, limit).equals(wanted) ? 1 : 0;
        }
        String reason = "";
        Verdict verdict = holding == all.size() ? Verdict.HOLDS : holding == 0 ? Verdict.BROKEN : Verdict.UNSURE;
        double bound = Double.NaN;
        Device device = circuit().device(limit.subject()).orElse(null);
        if (device instanceof Regulator regulator) {
            bound = regulator.holds().pressurePa().value();
            if (verdict == Verdict.HOLDS && regulator.bypass() && regulator.wideOpen() == null) {
                verdict = Verdict.UNSURE;
                reason = "what it loses wide open is not given: write wide open: 35 kPa at 400 L/h";
            }
        }
        if (state.isEmpty()) {
            verdict = Verdict.NOT_JUDGED;
            reason = usual.outcome() == Outcome.CONVERGED
                    ? limit.subject() + " is part of no run"
                    : "the circuit was not solved: " + usual.outcome().word();
        }
        return new LimitRow(limit, verdict, value, bound, "Pa", value, least, most, reason, state);
    }
}
