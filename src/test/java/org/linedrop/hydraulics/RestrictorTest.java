package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RestrictorTest {
    private static final double HOLE = 0.0015;
    private static final double DENSITY = 860;
    private static final double VESSEL = Double.POSITIVE_INFINITY;

    private final double[] out = new double[2];

    private double drop(Restrictor law, double flow, double viscosity) {
        law.pressureDrop(flow, Transition.DEFAULT, DENSITY, viscosity, out);
        return out[0];
    }

    /** In creeping flow the short hole loses Sampson's 24 mu Q/d^3 and the long part Poiseuille's, exactly. */
    @Test
    void creepingFlowIsTheExactSolution() {
        double viscosity = 1.0;
        double flow = 1e-9;
        double sampson = 24 * viscosity * flow / Math.pow(HOLE, 3);
        assertThat(drop(Restrictor.of(VESSEL, HOLE, 0, VESSEL), flow, viscosity))
                .isCloseTo(sampson, within(1e-4 * sampson));
        double poiseuille = 128 * viscosity * 1.5 * HOLE * flow / (Math.PI * Math.pow(HOLE, 4));
        assertThat(drop(Restrictor.of(VESSEL, HOLE, 1.5 * HOLE, VESSEL), flow, viscosity))
                .isCloseTo(sampson + poiseuille, within(1e-4 * sampson));
        Orifice.of(VESSEL, HOLE).pressureDrop(flow, DENSITY, viscosity, out);
        assertThat(out[0]).isCloseTo(sampson, within(1e-4 * sampson));
    }

    @Test
    void longRestrictorIsTheDischargeLawAboveItsJoin() {
        double flow = 2e-5;
        double viscosity = 4e-3;
        double reynolds = Reynolds.of(flow, HOLE, DENSITY, viscosity);
        assertThat(reynolds).isBetween(3000.0, 4000.0);
        double cd = Restrictor.longDischargeCoefficient(5, reynolds);
        double expected = Reynolds.velocityHeadPa(flow, HOLE, DENSITY) / (cd * cd);
        assertThat(drop(Restrictor.of(VESSEL, HOLE, 5 * HOLE, VESSEL), flow, viscosity))
                .isCloseTo(expected, within(1e-9 * expected));
    }

    /** Unjoined, the published law leaves a drop at rest; continued it is straight through zero. */
    @Test
    void longRestrictorIsStraightAtLowReynoldsNumber() {
        Restrictor law = Restrictor.of(VESSEL, HOLE, 5 * HOLE, VESSEL);
        double viscosity = 0.3;
        double one = drop(law, 1e-7, viscosity);
        assertThat(drop(law, 2e-7, viscosity)).isCloseTo(2 * one, within(1e-6 * one));
        law.lowPressureDrop(1e-7, Transition.DEFAULT, DENSITY, viscosity, out);
        assertThat(out[0]).isBetween(one / 4, one);
    }

    @Test
    void badShapesAreRefused() {
        assertThatThrownBy(() -> Restrictor.of(0.001, HOLE, 0, VESSEL)).hasMessageContaining("not wider than either");
        assertThatThrownBy(() -> Restrictor.of(0.01, HOLE, Double.NaN, VESSEL)).hasMessageContaining("length NaN");
        assertThatThrownBy(() -> Orifice.of(HOLE, HOLE)).hasMessageContaining("narrower than the bore");
        assertThatThrownBy(() -> SweptBend.of(Math.PI / 2, 0.5)).hasMessageContaining("bend radius over bore 0.5");
        assertThatThrownBy(() -> SweptBend.of(4, 2)).hasMessageContaining("bend angle in rad 4.0");
        assertThatThrownBy(() -> MitreElbow.turbulentK(Double.NaN)).hasMessageContaining("elbow angle");
        assertThatThrownBy(() -> CurvedBore.frictionFactor(1e4, 0, 0.9, Transition.DEFAULT, out))
                .hasMessageContaining("bend radius over bore radius 0.9");
    }
}
