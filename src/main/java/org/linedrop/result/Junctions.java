package org.linedrop.result;

import java.util.List;
import org.linedrop.fact.Explanation;
import org.linedrop.hydraulics.Tee;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.network.JunctionLaw;
import org.linedrop.network.Stream;
import org.linedrop.network.Trace;
import org.linedrop.solver.Solution;

/**
 * What the legs of tees and Y blocks lose. The network keeps the centre at the pressure of one and the same port; a reader
 * wants the leg that carries the whole flow to lose nothing, so here the centre is that leg's port.
 */
final class Junctions {
    private final CircuitNetwork network;
    private final Solution solution;

    Junctions(CircuitNetwork network, Solution solution) {
        this.network = network;
        this.solution = solution;
    }

    /** Total pressure of a point; in a tee or Y block that of the leg with the whole flow. */
    double totalPressurePa(int point) {
        double pressure = solution.totalPressurePa(point);
        for (Trace.JunctionTrace junction : network.junctions()) {
            if (junction.centre() == point) {
                double[] drop =
                        new double[network.network().junction(junction.number()).legs()];
                pressure += drop[evaluate(junction.number(), drop)];
            }
        }
        return pressure;
    }

    /** Fall of total pressure over a leg in the sense of its run. */
    double dropPa(Trace.Leg leg) {
        double[] drop = new double[network.network().junction(leg.junction()).legs()];
        int common = evaluate(leg.junction(), drop);
        return leg.sense() * (drop[leg.leg()] - drop[common]);
    }

    /** How the loss of a leg comes about. */
    Explanation.Group group(Trace.Leg leg, String name) {
        Trace.JunctionTrace junction = network.junctions().get(leg.junction());
        JunctionLaw law = network.network().junction(leg.junction());
        double[] drop = new double[law.legs()];
        int common = evaluate(leg.junction(), drop);
        int first = network.network().firstLeg(leg.junction());
        double whole = solution.massFlowKgPerS(first + common);
        double share = solution.massFlowKgPerS(first + leg.leg()) / whole;
        double lost = dropPa(leg);
        Stream stream = junction.stream();
        double head = stream.velocityHeadPa(whole, junction.runBoreM());
        boolean isCommon = leg.leg() == common;
        double band = isCommon ? 0 : Tee.BAND.absolute() * head;
        Explanation.Step step = new Explanation.Step(
                isCommon ? "common leg" : "leg",
                isCommon ? "has the whole flow; the losses of the others count from it" : "with {q} of the whole flow",
                isCommon
                        ? List.of()
                        : List.of(new Explanation.Quantity("q", "share of the whole flow", Math.abs(share), "")),
                head > 0 ? lost / head : Double.NaN,
                lost,
                lost - band,
                lost + band,
                isCommon ? null : Tee.BAND.source(),
                Tee.FORMULA);
        double reynolds = stream.reynolds(whole, junction.runBoreM());
        return new Explanation.Group(
                name,
                whole > 0 ? "dividing" : "combining",
                junction.runBoreM(),
                stream.velocityMPerS(whole, junction.runBoreM()),
                reynolds,
                reynolds > stream.transition().toReynolds()
                        ? "turbulent"
                        : reynolds > stream.transition().fromReynolds() ? "mixed" : "laminar",
                head,
                List.of(step));
    }

    /** Evaluates the law at the solved flows and tells the common leg. */
    private int evaluate(int number, double[] drop) {
        JunctionLaw law = network.network().junction(number);
        double[] flow = new double[law.legs()];
        for (int i = 0; i < flow.length; i++) {
            flow[i] = solution.massFlowKgPerS(network.network().firstLeg(number) + i);
        }
        return law.commonLeg(law.evaluate(flow, drop, new double[flow.length * flow.length]));
    }
}
