package org.linedrop.network;

import org.linedrop.hydraulics.Tee;
import org.linedrop.hydraulics.Transition;

/** Tees of circuits for networks that have no circuit behind them. */
public final class TestTees {
    private TestTees() {}

    /**
     * A square tee whose centre has the pressure of port 0, or of the branch as in a Y block.
     *
     * @param block 0 or 1
     */
    public static JunctionLaw of(double runBoreM, double branchBoreM, double density, double viscosity, int block) {
        return new TeeLaw(
                Tee.of(runBoreM, branchBoreM, Math.PI / 2, 0),
                runBoreM,
                new Stream(293.15, density, viscosity, Double.NaN, Transition.DEFAULT),
                2 * block,
                1);
    }
}
