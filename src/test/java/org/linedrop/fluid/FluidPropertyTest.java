package org.linedrop.fluid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every fluid from its lowest to its highest temperature: finite, positive, monotone except where physics differs. */
class FluidPropertyTest {
    private static final double STEP_K = 0.5;

    /** Where a property may go the other way, and why. */
    private record Departure(String name, PropertyKind kind, BiPredicate<Fluid, Double> where, String why) {}

    private static final List<Departure> EXCEPTIONS = List.of(
            new Departure(
                    "water is densest at 4 C",
                    PropertyKind.DENSITY,
                    (f, t) -> watery(f, 15) && t < 273.15 + 4.5,
                    "structure of cold water; a little glycol only weakens it"),
            new Departure(
                    "water is stiffest near 47 C",
                    PropertyKind.BULK_MODULUS,
                    (f, t) -> watery(f, 30) && t < 273.15 + 47.4,
                    "structure of water; below 30 % glycol interpolated to it"),
            new Departure(
                    "water's specific heat is least near 36 C",
                    PropertyKind.SPECIFIC_HEAT,
                    (f, t) -> watery(f, 30) && t < 273.15 + 40.4,
                    "structure of water; the fit, good to 0.08 %, has its least at 39.9 C; below 30 % glycol interpolated"),
            new Departure(
                    "air thickens when hot",
                    PropertyKind.DYNAMIC_VISCOSITY,
                    (f, t) -> f.name().equals("air"),
                    "a gas's viscosity rises with temperature"),
            new Departure(
                    "air's specific heat is least near -18 C",
                    PropertyKind.SPECIFIC_HEAT,
                    (f, t) -> f.name().equals("air") && t < 273.15 - 17,
                    "flat minimum of the real gas at atmospheric pressure"));

    private static boolean watery(Fluid fluid, double mostPercent) {
        if (fluid.name().equals("water")) {
            return true;
        }
        return fluid.name().contains("glycol")
                && Double.parseDouble(fluid.name().replaceAll("[^0-9.]", "")) < mostPercent;
    }

    static List<Fluid> fluids() {
        List<Fluid> fluids = new ArrayList<>(Fluids.all());
        for (double percent : new double[] {0.5, 2, 5, 10, 15, 20, 25, 29.9, 30, 35, 40, 45, 50, 55, 60}) {
            fluids.add(Fluids.ethyleneGlycol(percent));
            fluids.add(Fluids.propyleneGlycol(percent));
        }
        for (double percent = 1; percent < 100; percent += 7) {
            fluids.add(Fluids.ethanolBlend(percent, true));
            fluids.add(Fluids.ethanolBlend(percent, false));
        }
        fluids.add(UserFluid.oil(
                "my oil",
                OilFluids.ENGINE,
                new Given.TwoPoints(313.15, 92e-6, 373.15, 14.1e-6),
                new Given.DensityAt(288.15, 861)));
        return fluids;
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void finitePositiveAndMonotone(Fluid fluid) {
        for (Band band : Band.values()) {
            FluidState before = null;
            for (double t = fluid.lowestK(); t <= fluid.highestK(); t += STEP_K) {
                FluidState now = fluid.at(t, band);
                for (PropertyInfo info : fluid.properties()) {
                    double value = FluidCases.value(now, info.kind());
                    if (!info.known()) {
                        assertThat(value).isNaN();
                        continue;
                    }
                    String place = fluid.name() + " " + info.kind().word() + " " + band + " at " + Text.celsius(t);
                    assertThat(value > 0).as(place).isTrue();
                    assertThat(value).as(place).isFinite();
                    if (before != null && !excepted(fluid, info.kind(), t)) {
                        double change = (value - FluidCases.value(before, info.kind())) * direction(info.kind());
                        assertThat(change >= 0).as(place + " is not monotone").isTrue();
                    }
                }
                before = now;
            }
        }
    }

    private static int direction(PropertyKind kind) {
        return switch (kind) {
            case DENSITY, DYNAMIC_VISCOSITY, KINEMATIC_VISCOSITY, BULK_MODULUS -> -1;
            case VAPOUR_PRESSURE, SPECIFIC_HEAT -> 1;
        };
    }

    private static boolean excepted(Fluid fluid, PropertyKind kind, double t) {
        return EXCEPTIONS.stream().anyMatch(e -> e.kind() == kind && e.where().test(fluid, t));
    }

    /** An exception nobody needs would hide a fault. */
    @Test
    void everyExceptionIsNeeded() {
        for (Departure e : EXCEPTIONS) {
            boolean needed = false;
            for (Fluid fluid : Fluids.all()) {
                for (double t = fluid.lowestK() + STEP_K; t <= fluid.highestK(); t += STEP_K) {
                    if (e.where().test(fluid, t)) {
                        double rise = FluidCases.value(fluid.at(t), e.kind())
                                - FluidCases.value(fluid.at(t - STEP_K), e.kind());
                        needed |= rise * direction(e.kind()) < 0;
                    }
                }
            }
            assertThat(needed).as(e.name() + ": " + e.why()).isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void thinAndThickEncloseTheUsualFluid(Fluid fluid) {
        boolean wide = false;
        for (double t = fluid.lowestK(); t <= fluid.highestK(); t += 5) {
            FluidState usual = fluid.at(t);
            FluidState thin = fluid.at(t, Band.THIN);
            FluidState thick = fluid.at(t, Band.THICK);
            assertThat(thin.dynamicViscosityPaS()).isLessThanOrEqualTo(usual.dynamicViscosityPaS());
            assertThat(thick.dynamicViscosityPaS()).isGreaterThanOrEqualTo(usual.dynamicViscosityPaS());
            if (!Double.isNaN(usual.vapourPressurePa())) {
                assertThat(thin.vapourPressurePa()).isGreaterThanOrEqualTo(usual.vapourPressurePa());
                assertThat(thick.vapourPressurePa()).isLessThanOrEqualTo(usual.vapourPressurePa());
            }
            assertThat(thin.densityKgPerM3()).isEqualTo(usual.densityKgPerM3());
            wide |= thick.dynamicViscosityPaS() > thin.dynamicViscosityPaS();
        }
        assertThat(wide).as(fluid.name()).isTrue();
    }

    /** Glycol concentration moves everything without a jump, and thicker means more glycol. */
    @Test
    void glycolIsContinuousInConcentration() {
        for (double t : new double[] {283.15, 323.15, 363.15}) {
            FluidState water = Fluids.find("water").at(t);
            for (boolean ethylene : new boolean[] {true, false}) {
                FluidState before = water;
                for (double percent = 0.5; percent <= 60; percent += 0.5) {
                    FluidState now =
                            (ethylene ? Fluids.ethyleneGlycol(percent) : Fluids.propyleneGlycol(percent)).at(t);
                    assertThat(now.dynamicViscosityPaS() / before.dynamicViscosityPaS())
                            .isBetween(1.0, 1.04);
                    // hot propylene glycol hardly changes water's density: it may fall by a hair
                    assertThat(now.densityKgPerM3() / before.densityKgPerM3()).isBetween(0.9995, 1.002);
                    assertThat(now.vapourPressurePa()).isLessThan(before.vapourPressurePa());
                    before = now;
                }
            }
        }
    }

    /** Ethanol blends meet the named fluids at their own content, and move without a jump. */
    @Test
    void ethanolBlendsMeetTheNamedFluids() {
        for (double t : new double[] {263.15, 293.15, 333.15}) {
            assertSame(Fluids.ethanolBlend(10, true).at(t), Fluids.find("E10").at(t));
            assertSame(
                    Fluids.ethanolBlend(83, true).at(t),
                    Fluids.find("E85 summer").at(t));
            assertSame(
                    Fluids.ethanolBlend(70, false).at(t),
                    Fluids.find("E85 winter").at(t));
            FluidState before = Fluids.find("petrol summer").at(t);
            for (double percent = 0.5; percent <= 100; percent += 0.5) {
                FluidState now = Fluids.ethanolBlend(percent, true).at(t);
                assertThat(now.vapourPressurePa() / before.vapourPressurePa()).isBetween(0.94, 1.01);
                assertThat(now.dynamicViscosityPaS()).isGreaterThan(before.dynamicViscosityPaS());
                before = now;
            }
        }
    }

    private static void assertSame(FluidState a, FluidState b) {
        for (PropertyKind kind : PropertyKind.values()) {
            assertThat(FluidCases.value(a, kind) / FluidCases.value(b, kind)).isBetween(1 - 1e-12, 1 + 1e-12);
        }
    }
}
