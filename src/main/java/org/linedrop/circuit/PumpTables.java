package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Tables of a pump between the volts or speeds at which they were taken. */
final class PumpTables {
    private PumpTables() {}

    /**
     * The table at a figure between those of the curves: flow interpolated linearly at equal pressure, where both
     * neighbours have one; outside them the nearest by the affinity laws, which the caller asks for speeds only.
     *
     * @param curves sorted by {@code at}
     */
    static Pump.Curve at(List<Pump.Curve> curves, double at) {
        for (int i = 0; i < curves.size(); i++) {
            if (curves.get(i).at() == at) {
                return curves.get(i);
            }
            if (curves.get(i).at() > at) {
                return i == 0 ? byAffinity(curves.get(0), at) : between(curves.get(i - 1), curves.get(i), at);
            }
        }
        return byAffinity(curves.get(curves.size() - 1), at);
    }

    /** Flow goes with the speed and pressure with its square. */
    private static Pump.Curve byAffinity(Pump.Curve curve, double at) {
        double ratio = at / curve.at();
        return new Pump.Curve(
                at,
                curve.risePa().stream().map(rise -> rise * ratio * ratio).toList(),
                curve.flowM3PerS().stream().map(flow -> flow * ratio).toList());
    }

    private static Pump.Curve between(Pump.Curve low, Pump.Curve high, double at) {
        double share = (at - low.at()) / (high.at() - low.at());
        double top = Math.min(last(low.risePa()), last(high.risePa()));
        TreeSet<Double> rises = new TreeSet<>();
        rises.addAll(low.risePa());
        rises.addAll(high.risePa());
        List<Double> rise = new ArrayList<>();
        List<Double> flow = new ArrayList<>();
        for (double pressure : rises) {
            if (pressure <= top) {
                rise.add(pressure);
                flow.add((1 - share) * flow(low, pressure) + share * flow(high, pressure));
            }
        }
        return new Pump.Curve(at, rise, flow);
    }

    private static double last(List<Double> values) {
        return values.get(values.size() - 1);
    }

    private static double flow(Pump.Curve curve, double rise) {
        List<Double> x = curve.risePa();
        List<Double> y = curve.flowM3PerS();
        int i = 1;
        while (i < x.size() - 1 && x.get(i) < rise) {
            i++;
        }
        double share = (rise - x.get(i - 1)) / (x.get(i) - x.get(i - 1));
        return y.get(i - 1) + share * (y.get(i) - y.get(i - 1));
    }
}
