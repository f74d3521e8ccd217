package org.linedrop.hydraulics;

import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Coefficients of parts that have one number and a band: {@code K + K1/Re} on the nominal bore ({@link LocalLoss}). The
 * band is the spread of what is published; K1 comes from the nearest kind in Darby's or Hooper's tables.
 */
public enum FittingLoss {
    /** Union, coupling or straight adapter without a change of bore. */
    UNION(0, 0.2, 0.8, 200, "measured push-connect coupling 0.007; screwed couplings +-50 %", Status.COMMON_PRACTICE),
    /** Quick coupling without data of its own; a warning belongs to it. */
    QUICK_COUPLING(9, 15, 19, 2000, "limits of ISO 14541 give 9 to 19", Status.DERIVED),
    /** Banjo or cross-drilled swivel. */
    BANJO(3, 4.5, 6, 1000, "tube-fitting maker's technical page: 3 to 6 by position of the holes", Status.PUBLISHED),
    /** Ball valve of full bore, open. */
    BALL_VALVE(0.05, 0.08, 0.3, 300, "3 fT at 1/2 inch; 2-K and 3-K 0.1 to 0.3", Status.PUBLISHED),
    /** Gate valve, open. */
    GATE_VALVE(0.1, 0.2, 0.3, 300, "textbook 0.19; 3-K at 1/2 inch 0.21", Status.PUBLISHED),
    /** Globe valve, open. */
    GLOBE_VALVE(7, 10, 13, 1500, "textbook 10; 3-K at 1/2 inch 9.2", Status.PUBLISHED),
    /** Swing check valve, open, forward. */
    SWING_CHECK(1.5, 3, 5.4, 1500, "screwed 2 to 4, scatter +200/-80 % (Hydraulic Institute)", Status.PUBLISHED),
    /** Lift check valve, open, forward. */
    LIFT_CHECK(8, 12, 18, 2000, "2-K 10 (1 + 1/D), 3-K at 1/2 inch 16", Status.PUBLISHED),
    /** Foot valve without strainer, open, forward. */
    FOOT_VALVE(0.5, 0.8, 1.5, 1500, "Hydraulic Institute chart", Status.PUBLISHED);

    private final double lowK;
    private final double turbulentK;
    private final double highK;
    private final double k1;
    private final String source;
    private final Status status;

    FittingLoss(double lowK, double turbulentK, double highK, double k1, String source, Status status) {
        this.lowK = lowK;
        this.turbulentK = turbulentK;
        this.highK = highK;
        this.k1 = k1;
        this.source = source;
        this.status = status;
    }

    /**
     * Lowest coefficient that published data support.
     *
     * @return K on the nominal bore
     */
    public double bandLow() {
        return lowK;
    }

    /**
     * Coefficient at high Reynolds number.
     *
     * @return K on the nominal bore
     */
    public double turbulentK() {
        return turbulentK;
    }

    /**
     * Highest coefficient that published data support.
     *
     * @return K on the nominal bore
     */
    public double bandHigh() {
        return highK;
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
     * Where value and band come from.
     *
     * @return the source
     */
    public Source source() {
        return Source.of(source, status);
    }
}
