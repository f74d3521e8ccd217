package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Darby's three-constant coefficients of pipe fittings: {@code K = K1/Re + Ki (1 + Kd/D^0.3)} with the nominal size
 * {@code D} in inches. Meant for commercial pipe; in small smooth bores the bend values read half again too high, so that
 * hose ends use {@link SweptBend} and {@link MitreElbow} and only K1 is taken from here.
 */
enum ThreeK {
    /** Threaded 90-degree elbow. */
    ELBOW_90_THREADED(800, 0.14, 4.0),
    /** Threaded 90-degree elbow, long radius. */
    ELBOW_90_THREADED_LONG(800, 0.071, 4.2),
    /** 90-degree bend, R/D 1. */
    BEND_90_RADIUS_1(800, 0.091, 4.0),
    /** 90-degree bend, R/D 2. */
    BEND_90_RADIUS_2(800, 0.056, 3.9),
    /** 90-degree bend, R/D 4. */
    BEND_90_RADIUS_4(800, 0.066, 3.9),
    /** 90-degree bend, R/D 6. */
    BEND_90_RADIUS_6(800, 0.075, 4.2),
    /** One 90-degree mitre. */
    MITRE_90(1000, 0.27, 4.0),
    /** Threaded 45-degree elbow. */
    ELBOW_45_THREADED(500, 0.071, 4.2),
    /** 45-degree elbow, long radius. */
    ELBOW_45_LONG(500, 0.052, 4.0),
    /** One 45-degree mitre. */
    MITRE_45(500, 0.086, 4.0),
    /** Threaded close return. */
    RETURN_THREADED(1000, 0.23, 4.0),
    /** Flanged close return. */
    RETURN_FLANGED(1000, 0.12, 4.0),
    /** Return bend, R/D 1.5. */
    RETURN_RADIUS_1_5(1000, 0.10, 4.0),
    /** Turn into or out of the branch of a threaded tee. */
    TEE_BRANCH_THREADED(500, 0.274, 4.0),
    /** Turn into or out of the branch of a flanged tee. */
    TEE_BRANCH_FLANGED(800, 0.28, 4.0),
    /** Straight through a threaded tee. */
    TEE_RUN_THREADED(200, 0.091, 4.0),
    /** Straight through a flanged tee. */
    TEE_RUN_FLANGED(150, 0.05, 4.0),
    /** Globe valve, open. */
    GLOBE_VALVE(1500, 1.70, 3.6),
    /** Gate valve, open. */
    GATE_VALVE(300, 0.037, 3.9),
    /** Ball valve, open. */
    BALL_VALVE(300, 0.015, 3.5),
    /** Plug valve, straight through. */
    PLUG_VALVE(300, 0.084, 3.9),
    /** Diaphragm valve, open. */
    DIAPHRAGM_VALVE(1000, 0.69, 4.9),
    /** Swing check valve. */
    SWING_CHECK(1500, 0.46, 4.0),
    /** Lift check valve. */
    LIFT_CHECK(2000, 2.85, 3.8);

    /** Darby's form. */
    public static final Formula FORMULA = new Formula(
            "3-K",
            "K = K1/Re + Ki (1 + Kd/D^0.3), D in inches",
            new Source(
                    "R. Darby, Chemical Engineering Fluid Mechanics, 2nd ed., 2001, table of 3-K constants",
                    "",
                    Status.PUBLISHED),
            "commercial pipe; half again too high for bends in small smooth bores");

    private static final double INCH = 0.0254;

    private final double k1;
    private final double ki;
    private final double kd;

    ThreeK(double k1, double ki, double kd) {
        this.k1 = k1;
        this.ki = ki;
        this.kd = kd;
    }

    /**
     * Numerator of the low Reynolds number term.
     *
     * @return K1
     */
    public double k1() {
        return k1;
    }

    /**
     * Coefficient at high Reynolds number.
     *
     * @param nominalSizeM nominal size in m, over zero
     * @return {@code Ki (1 + Kd/D^0.3)}
     */
    public double turbulentK(double nominalSizeM) {
        return ki * (1 + kd / Math.pow(nominalSizeM / INCH, 0.3));
    }
}
