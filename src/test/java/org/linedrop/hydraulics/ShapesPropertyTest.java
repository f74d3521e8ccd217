package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Laws over their shapes: no jump anywhere, and inside their bounds. */
class ShapesPropertyTest {
    private static final double BORE = 0.008;
    private static final double DENSITY = 800;
    private static final double VISCOSITY = 2e-3;
    private static final double RADIAN = Math.PI / 180;
    private static final double VESSEL = Double.POSITIVE_INFINITY;

    /** Jumps in shape parameters. */
    @Test
    void shapesNeverJump() {
        noJump("mitre", 0, Math.PI, MitreElbow::turbulentK);
        noJump("mitre smooth", 0, Math.PI, OtherLaws::mitreSmoothWall);
        noJump("mitre K1", 0, Math.PI, MitreElbow::k1);
        noJump("expansion", 0, 1, AreaChange::expansionK);
        noJump("contraction", 0, 0.999, AreaChange::contractionK);
        noJump("rounded entrance", 0, 0.3, OtherLaws::roundedEntrance);
        noJump("critical", 1.01, 3000, CurvedBore::criticalReynolds);
        for (double beta : new double[] {0, 0.4, 0.9}) {
            noJump("cone up", 0.001, Math.PI, angle -> OtherLaws.coneUp(beta, angle));
            noJump("cone down", 0.001, Math.PI, angle -> OtherLaws.coneDown(beta, angle));
        }
        double[] out = new double[6];
        for (double reynolds : new double[] {1, 300, 2500, 9000, 5e4, 1e6}) {
            noJump("swept by angle", 0, Math.PI, angle -> {
                SweptBend.of(angle, 1.7).excess(reynolds, out);
                return out[0];
            });
            noJump("swept by radius", 1, 50, radius -> {
                SweptBend.of(1.4, radius).excess(reynolds, out);
                return out[0];
            });
            noJump("curved by radius", 1.01, 2500, ratio -> {
                CurvedBore.frictionFactor(reynolds, 1e-4, ratio, Transition.DEFAULT, out);
                return out[0];
            });
            double flow = reynolds / Reynolds.of(1, BORE, DENSITY, VISCOSITY);
            noJump("nipple by length", 0, 4 * BORE, length -> {
                Nipple.pressureDrop(flow, 0.01, BORE, length, 0.012, 0, Transition.DEFAULT, DENSITY, VISCOSITY, out);
                return out[0];
            });
            noJump("nipple by neighbour", 0.5 * BORE, 4 * BORE, bore -> {
                Nipple.pressureDrop(flow, bore, BORE, 0.01, 0.012, 0, Transition.DEFAULT, DENSITY, VISCOSITY, out);
                return out[0];
            });
            noJump("restrictor by length", 0, 20 * BORE, length -> {
                Restrictor.of(0.02, BORE, length, VESSEL)
                        .pressureDrop(flow, Transition.DEFAULT, DENSITY, VISCOSITY, out);
                return out[0];
            });
            noJump("orifice by bore", 1.001 * BORE, 0.2, bore -> {
                Orifice.of(bore, BORE).pressureDrop(flow, DENSITY, VISCOSITY, out);
                return out[0];
            });
            noJump("tee by angle", 31 * RADIAN, 149 * RADIAN, angle -> {
                Tee.of(BORE, 0.9 * BORE, angle, 0).evaluate(-0.4 * flow, flow, DENSITY, VISCOSITY, out);
                return out[1];
            });
        }
    }

    private static void noJump(String what, double from, double to, DoubleUnaryOperator function) {
        int intervals = 300;
        for (int i = 0; i < intervals; i++) {
            double low = from + (to - from) * i / intervals;
            double high = from + (to - from) * (i + 1) / intervals;
            assertThat(LawsPropertyTest.steepest(function, low, high))
                    .as(() -> String.format(Locale.ROOT, "%s between %.6g and %.6g", what, low, high))
                    .isLessThan(1e-12);
        }
    }

    @Test
    void boundsHoldEverywhere() {
        double[] out = new double[2];
        for (double reynolds = 1e-3; reynolds < 1e8; reynolds *= 1.1) {
            for (double radius = 1; radius <= 50; radius *= 1.3) {
                for (double degrees = 1; degrees <= 180; degrees += 13) {
                    SweptBend.of(degrees * RADIAN, radius).excess(reynolds, out);
                    assertThat(out[0])
                            .as("excess at %s degrees, R/D %s, Re %s", degrees, radius, reynolds)
                            .isPositive();
                }
            }
            for (double ratio = 1.5; ratio < 3000; ratio *= 1.4) {
                CurvedBore.turbulentRatio(reynolds, ratio, out);
                assertThat(out[0]).isBetween(1.0, 1.35);
                CurvedBore.laminarRatio(reynolds / Math.sqrt(ratio), out);
                assertThat(out[0]).isGreaterThanOrEqualTo(1);
            }
        }
    }
}
