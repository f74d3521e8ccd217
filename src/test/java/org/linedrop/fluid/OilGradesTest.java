package org.linedrop.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every oil keeps the limits of the grade it is named after. */
class OilGradesTest {

    /** Kinematic viscosity windows in mm2/s at 100 C: SAE J300 Jan 2015 (60 from memory), SAE J306 Feb 2019. */
    private record Window(String grade, double least, double under) {}

    private static final List<Window> ENGINE = List.of(
            new Window("20", 6.9, 9.3),
            new Window("30", 9.3, 12.5),
            new Window("40", 12.5, 16.3),
            new Window("50", 16.3, 21.9),
            new Window("60", 21.9, 26.1));

    private static final List<Window> GEAR = List.of(new Window("90", 13.5, 18.5), new Window("140", 24.0, 32.5));

    static List<String> engineOils() {
        return Fluids.names().stream().filter(n -> n.startsWith("engine oil")).toList();
    }

    static List<String> gearOils() {
        return Fluids.names().stream().filter(n -> n.startsWith("gear oil")).toList();
    }

    static List<String> hydraulicOils() {
        return Fluids.names().stream()
                .filter(n -> n.startsWith("hydraulic oil"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("engineOils")
    void engineOilsKeepSaeJ300(String name) {
        check(name, ENGINE);
    }

    @ParameterizedTest
    @MethodSource("gearOils")
    void gearOilsKeepSaeJ306(String name) {
        check(name, GEAR);
    }

    private static void check(String name, List<Window> windows) {
        String grade = name.substring(Math.max(name.lastIndexOf('-'), name.lastIndexOf(' ')) + 1);
        Window window = windows.stream()
                .filter(w -> w.grade().equals(grade))
                .findFirst()
                .orElseThrow();
        double nu = 1e6 * Fluids.find(name).at(373.15).kinematicViscosityM2PerS();
        assertThat(nu).as(name).isGreaterThanOrEqualTo(window.least()).isLessThan(window.under());
    }

    /** ISO 3448: the number is the mid-point in mm2/s at 40 C, within 10 %. */
    @ParameterizedTest
    @MethodSource("hydraulicOils")
    void hydraulicOilsKeepIso3448(String name) {
        double grade = Double.parseDouble(name.substring(name.lastIndexOf(' ') + 1));
        double nu = 1e6 * Fluids.find(name).at(313.15).kinematicViscosityM2PerS();
        assertThat(nu / grade).as(name).isCloseTo(1, within(0.1));
    }

    /** A colder winter grade of the same hot grade has a flatter line. */
    @Test
    void winterGradesAreInOrder() {
        List<String> hot30 = List.of("engine oil 0W-30", "engine oil 5W-30", "engine oil 10W-30", "engine oil SAE 30");
        List<String> hot40 = List.of(
                "engine oil 0W-40", "engine oil 5W-40", "engine oil 10W-40", "engine oil 15W-40", "engine oil SAE 40");
        List<String> hot50 = List.of("engine oil 5W-50", "engine oil 15W-50", "engine oil 20W-50", "engine oil SAE 50");
        for (List<String> family : List.of(hot30, hot40, hot50)) {
            double before = Double.POSITIVE_INFINITY;
            for (String name : family) {
                double index = index(name);
                assertThat(index).as(name).isLessThan(before);
                before = index;
            }
        }
    }

    /** Only the synthetic power-steering fluid of the catalogue is too flat to be carried into the cold. */
    @Test
    void onlyVeryHighViFluidsAreRefusedInTheCold() {
        for (String name : Fluids.names()) {
            Fluid fluid = Fluids.find(name);
            boolean oil = List.of(OilFluids.ENGINE, OilFluids.GEAR, OilFluids.HYDRAULIC)
                    .contains(fluid.family());
            if (!oil) {
                continue;
            }
            boolean veryHigh = index(name) > ViscosityIndex.VERY_HIGH;
            assertThat(veryHigh).as(name).isEqualTo(name.equals("power steering fluid synthetic"));
            String refusal = fluid.refusal(273.15 - 20);
            if (veryHigh) {
                assertThat(refusal)
                        .contains("power steering fluid synthetic at -20 C: no state is given")
                        .contains("very-high-VI")
                        .contains("0 C to 130 C");
            } else {
                assertThat(refusal).isNull();
            }
        }
    }

    private static double index(String name) {
        Fluid fluid = Fluids.find(name);
        return ViscosityIndex.of(
                fluid.at(313.15).kinematicViscosityM2PerS(), fluid.at(373.15).kinematicViscosityM2PerS());
    }

    /** The ranges of the standard's equations join: the index moves by under half a point (1 per cent at the first). */
    @Test
    void viscosityIndexIsContinuous() {
        for (double y : new double[] {4.4, 5, 6.4, 7, 7.7, 9, 12, 15, 18, 22, 28, 40, 55, 70}) {
            double below = ViscosityIndex.of(y * 6e-6, (y - 1e-9) * 1e-6);
            double above = ViscosityIndex.of(y * 6e-6, (y + 1e-9) * 1e-6);
            assertThat(above).isCloseTo(below, within(0.4));
        }
        assertThat(ViscosityIndex.of(5e-6, 1.9e-6)).isNaN();
        assertThat(ViscosityIndex.of(5e-6, Double.NaN)).isNaN();
    }
}
