package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Valve sizes: {@code Kv} is the flow in m3/h of water of 1000 kg/m3 at 1 bar, {@code Cv} the flow in US gallons a minute
 * at 1 psi. Both mean {@code dp = (rho/1000) (Q/Kv)^2} bar, taken exactly.
 */
public final class FlowCoefficient {
    /** Kv and Cv. */
    public static final Formula FORMULA = new Formula(
            "flow coefficient",
            "dp = (rho/1000 kg/m3) (Q/Kv)^2 bar, Q and Kv in m3/h; Kv = 0.865 Cv",
            new Source("IEC 60534-2-1, Table 1: N1 = 0.865", "", Status.PUBLISHED),
            "turbulent incompressible flow");

    /** One Cv in Kv: 3.785411784e-3 m3 x 60 by the root of 0.06894757293168 bar. */
    public static final double KV_PER_CV = 3.785411784e-3 * 60 / Math.sqrt(0.06894757293168);

    private static final double REFERENCE_DENSITY = 1000;
    private static final double BAR = 1e5;
    private static final double HOUR = 3600;

    private FlowCoefficient() {}

    /**
     * Loss coefficient of a valve on a bore of one's choice.
     *
     * @param kv    Kv in m3/h at 1 bar, over zero
     * @param boreM bore the coefficient shall refer to in m, over zero
     * @return K on the velocity head of that bore
     */
    public static double lossCoefficient(double kv, double boreM) {
        double velocity = Reynolds.velocityMPerS(kv / HOUR, boreM);
        return 2 * BAR / (REFERENCE_DENSITY * velocity * velocity);
    }
}
