package org.linedrop.network;

/** Magnitudes of a network, found once when it is built, so that solving starts without a search. */
final class Scales {
    /** Flow at which an inversion starts, kg/s; any positive number would do. */
    private static final double FIRST_GUESS_KG_PER_S = 0.05;
    /** Steps of an inversion; a power law needs one or two. */
    private static final int MOST_STEPS = 60;
    /** An inversion only sets scales and starts, so a per cent is plenty. */
    private static final double ENOUGH = 0.01;
    /** A law that is still flat here has a drop that does not depend on flow. */
    private static final double MOST_FLOW_KG_PER_S = 1e12;

    /** Least scale over the largest given pressure: 1e-9 of it is then a few roundings of that pressure. */
    private static final double ROUNDING = 1e-6;

    final double pressurePa;
    final double nominalPa;
    final double[] flowKgPerS;
    final double[] slopePaPerKgPerS;
    final double leastFlowKgPerS;

    Scales(Network network) {
        double[] out = new double[Law.SLOTS];
        pressurePa = givenPressure(network, out);
        int branches = network.branchCount();
        double draws = 0;
        for (int i = 0; i < network.pointCount(); i++) {
            draws += Math.abs(network.drawKgPerS(i));
        }
        nominalPa = pressurePa > 1 || draws == 0 ? pressurePa : drawnPressure(network, draws, out);
        flowKgPerS = new double[branches];
        slopePaPerKgPerS = new double[branches];
        double least = Double.POSITIVE_INFINITY;
        double leastOfDevices = Double.POSITIVE_INFINITY;
        for (int b = 0; b < branches; b++) {
            flowKgPerS[b] = switch (network.kind(b)) {
                case LAW -> flowAt(network.law(b), nominalPa, out);
                case DEVICE -> nominalPa / network.device(b).wideOpenSlopePaPerKgPerS();
                case LEG -> nominalPa / network.junction(network.junctionOf(b)).typicalSlopePaPerKgPerS();
            };
            slopePaPerKgPerS[b] = nominalPa / flowKgPerS[b];
            if (network.kind(b) == Network.Kind.LAW) {
                double driven = nominalPa == pressurePa ? flowKgPerS[b] : flowAt(network.law(b), pressurePa, out);
                least = Math.min(least, driven);
            } else {
                leastOfDevices = Math.min(leastOfDevices, flowKgPerS[b]);
            }
        }
        // where there are devices alone: all of them may be shut, and no flow at all is no scale
        double unforced = leastOfDevices < Double.POSITIVE_INFINITY ? leastOfDevices : Double.MIN_NORMAL;
        leastFlowKgPerS = least < Double.POSITIVE_INFINITY ? least : draws > 0 ? draws : unforced;
    }

    private static double givenPressure(Network network, double[] out) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < network.pointCount(); i++) {
            if (network.fixed(i)) {
                low = Math.min(low, network.fixedPressurePa(i));
                high = Math.max(high, network.fixedPressurePa(i));
            }
        }
        double scale = Math.max(1, high - low);
        if (high >= low) {
            scale = Math.max(scale, ROUNDING * Math.max(Math.abs(high), Math.abs(low)));
        }
        for (int b = 0; b < network.branchCount(); b++) {
            if (network.kind(b) == Network.Kind.LAW) {
                network.law(b).evaluate(0, out);
                scale = Math.max(scale, Math.abs(out[0]));
            } else if (network.kind(b) == Network.Kind.DEVICE) {
                scale = Math.max(scale, network.device(b).pressureScalePa());
            }
        }
        return scale;
    }

    /** Drop of all the draws together through the widest branch: a network fed by flow alone has no given pressure. */
    private static double drawnPressure(Network network, double draws, double[] out) {
        double least = Double.POSITIVE_INFINITY;
        for (int b = 0; b < network.branchCount(); b++) {
            if (network.kind(b) == Network.Kind.LAW) {
                network.law(b).evaluate(0, out);
                double atRest = out[0];
                network.law(b).evaluate(draws, out);
                double drop = out[0] - atRest;
                if (drop > 0) {
                    least = Math.min(least, drop);
                }
            }
        }
        return least < Double.POSITIVE_INFINITY ? Math.max(least, Double.MIN_NORMAL) : 1;
    }

    /** Flow at which the drop has risen by the given pressure: Newton in logarithms, exact for power laws. */
    private static double flowAt(Law law, double pressurePa, double[] out) {
        law.evaluate(0, out);
        double atRest = out[0];
        double flow = FIRST_GUESS_KG_PER_S;
        for (int i = 0; i < MOST_STEPS && flow < MOST_FLOW_KG_PER_S; i++) {
            law.evaluate(flow, out);
            double rise = out[0] - atRest;
            if (!(rise > 0)) {
                flow *= 8; // the rising side of a humped pump table, or a flat law
                continue;
            }
            double ratio = pressurePa / rise;
            if (Math.abs(ratio - 1) <= ENOUGH) {
                return flow;
            }
            double exponent = Math.min(4, Math.max(0.5, flow * out[1] / rise));
            flow *= Math.exp(Math.max(-12, Math.min(12, Math.log(ratio) / exponent)));
        }
        return flow < MOST_FLOW_KG_PER_S ? flow : Double.POSITIVE_INFINITY;
    }
}
