package org.linedrop.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.hydraulics.Transition;
import org.linedrop.solver.Solution;
import org.linedrop.solver.Solver;

/**
 * Oil feeds of a turbocharger through a drilled restrictor against figures computed by hand from the same invented data. The
 * restrictor has the law of those figures, Cd = 0.70/(1 + (30/Re)^0.7) on its hole, which no circuit file offers: its own
 * restrictors follow published coefficients and lose 5 to 10 per cent more (thin edge) or less (short bore).
 */
class TurboFeedValidationTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // case, hole mm, gallery kPa, mm2/s, kg/m3, L/min, restrictor kPa, turbo kPa
        "5b, 1.5, 400, 11.0, 817.3, 0.98, 82.7, 308",
        "5c, 1.0, 400, 11.0, 817.3, 0.66, 187.7, 206",
        "5d, 0.8, 400, 11.0, 817.3, 0.48, 245.4, 150",
        "5e, 1.0, 550, 11.0, 817.3, 0.82, 285.5, 257",
        "5f, 1.5, 500, 11.0, 817.3, 1.18, 117.9, 370",
        "5i, 1.0, 150, 7.44, 804.9, 0.39, 65.3, 82",
        "5j, 1.0, 550, 170, 866.9, 0.10, 33.6, 501"
    })
    void matches(
            String name,
            double holeMm,
            double galleryKPa,
            double viscosityMm2PerS,
            double density,
            double litresPerMinute,
            double restrictorKPa,
            double turboKPa) {
        double viscosity = viscosityMm2PerS * 1e-6 * density;
        Stream oil = new Stream(
                373.15, density, viscosity, Double.NaN, new Transition(2300, 4000, Transition.Shape.SMOOTHSTEP));
        double hole = holeMm / 1000;
        Law restrictor = (flow, out) -> {
            double size = Math.max(Math.abs(flow), 1e-12);
            out[0] = drop(size, hole, density, viscosity);
            out[1] = (drop(size * 1.000001, hole, density, viscosity) - out[0]) / (size * 1e-6);
            out[0] *= Math.signum(flow);
        };
        NetworkBuilder builder = Network.builder();
        int gallery = builder.fixedPoint(galleryKPa * 1000);
        int before = builder.freePoint(0);
        int turbo = builder.freePoint(0);
        builder.branch(
                gallery,
                before,
                new Series(
                        List.of(
                                Prescribed.loss(2.55, 0.00475, density),
                                new PlumbingLaws(oil)
                                        .friction("hose", 0.00475, 0.75, 1.5e-6)
                                        .law()),
                        0));
        builder.branch(before, turbo, restrictor);
        // ball bearings: 250 kPa at 0.8 L/min of 11 mm2/s, in proportion to flow and viscosity
        double perKg = 250_000 / (0.8e-3 / 60 * density) * viscosityMm2PerS / 11.0;
        builder.branch(turbo, builder.fixedPoint(0), Prescribed.pressurePower(perKg, 1));
        Solution solution = Solver.usual().solve(builder.build());
        assertThat(solution.massFlowKgPerS(0) / density * 60_000).isCloseTo(litresPerMinute, within(0.0075));
        assertThat(solution.totalPressurePa(turbo) / 1000).isCloseTo(turboKPa, within(0.01 * turboKPa));
        assertThat((solution.totalPressurePa(before) - solution.totalPressurePa(turbo)) / 1000)
                .isCloseTo(restrictorKPa, within(0.012 * restrictorKPa));
    }

    private static double drop(double massFlow, double holeM, double density, double viscosity) {
        double reynolds = 4 * massFlow / (Math.PI * holeM * viscosity);
        double discharge = 0.70 / (1 + Math.pow(30 / reynolds, 0.7));
        double velocity = massFlow / density / (Math.PI / 4 * holeM * holeM) / discharge;
        return density * velocity * velocity / 2;
    }
}
