package org.linedrop.network;

/**
 * A device that passes one flow whatever the pressures, such as an ideal fixed-displacement pump. It ties no pressures
 * together: both its sides need a given pressure of their own.
 *
 * @param massFlowKgPerS               the flow in kg/s, positive from inlet to outlet
 * @param wideOpenSlopePaPerKgPerS a typical slope of the lines around it in Pa/(kg/s), above 0; decides speed only
 */
public record FixedFlow(double massFlowKgPerS, double wideOpenSlopePaPerKgPerS) implements DeviceLaw {

    /** Checks both numbers. */
    public FixedFlow {
        Prescribed.finite("flow in kg/s", massFlowKgPerS);
        Prescribed.aboveZero("typical slope in Pa/(kg/s)", wideOpenSlopePaPerKgPerS);
    }

    @Override
    public int evaluate(double flow, double inletPa, double outletPa, double referencePa, double[] out) {
        out[0] = wideOpenSlopePaPerKgPerS * (flow - massFlowKgPerS);
        out[1] = wideOpenSlopePaPerKgPerS;
        out[2] = 0;
        out[3] = 0;
        out[4] = 0;
        return IN_CONTROL;
    }

    @Override
    public double leastFlowKgPerS() {
        return massFlowKgPerS;
    }

    @Override
    public double mostFlowKgPerS() {
        return massFlowKgPerS;
    }

    @Override
    public boolean relatesPressures() {
        return false;
    }
}
