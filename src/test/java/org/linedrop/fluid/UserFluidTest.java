package org.linedrop.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Status;

/** Fluids a user describes: two viscosity points, tables, constants, one property of a catalogue fluid replaced. */
class UserFluidTest {
    private static final Given.TwoPoints POINTS = new Given.TwoPoints(313.15, 64e-6, 373.15, 11e-6);

    private static List<String> texts(Fluid fluid, double temperatureK) {
        return fluid.notices(temperatureK).stream().map(Notice::text).toList();
    }

    @Test
    void twoPointsAndADensityMakeAnOil() {
        UserFluid oil = UserFluid.oil("club oil", OilFluids.ENGINE, POINTS, new Given.DensityAt(288.15, 855));
        FluidState hot = oil.at(373.15);
        FluidState same = Fluids.find("engine oil 5W-30").at(373.15);
        assertThat(hot).isEqualTo(same);
        assertThat(hot.kinematicViscosityM2PerS()).isCloseTo(11e-6, within(1e-16));
        assertThat(oil.properties().get(1).source().status()).isEqualTo(Status.GIVEN);
        assertThat(oil.grade()).isEqualTo(Grade.B);
        assertThat(oil.id()).isEqualTo("club-oil");
    }

    @Test
    void densityAtAnotherTemperatureIsBroughtBack() {
        double at60 = Fluids.find("engine oil 5W-30").at(333.15).densityKgPerM3();
        UserFluid oil = UserFluid.oil("club oil", OilFluids.ENGINE, POINTS, new Given.DensityAt(333.15, at60));
        assertThat(oil.at(333.15).densityKgPerM3()).isCloseTo(at60, within(1e-9));
        assertThat(oil.at(288.15).densityKgPerM3()).isCloseTo(855, within(1e-6));
    }

    @Test
    void onePropertyOfACatalogueFluidIsReplaced() {
        Fluid base = Fluids.find("petrol summer");
        UserFluid fuel =
                UserFluid.replacing("track fuel", base, new Given.Constant(PropertyKind.KINEMATIC_VISCOSITY, 0.48e-6));
        FluidState state = fuel.at(313.15);
        FluidState original = base.at(313.15);
        assertThat(state.kinematicViscosityM2PerS()).isCloseTo(0.48e-6, within(1e-18));
        assertThat(state.densityKgPerM3()).isEqualTo(original.densityKgPerM3());
        assertThat(state.vapourPressurePa()).isEqualTo(original.vapourPressurePa());
        assertThat(fuel.family()).isEqualTo("petrol E0");
        assertThat(texts(fuel, 313.15))
                .anyMatch(t -> t.contains("kinematic viscosity of track fuel is the same at every temperature"));
        UserFluid denser = UserFluid.replacing("denser", base, new Given.Constant(PropertyKind.DENSITY, 770));
        assertThat(denser.at(313.15).dynamicViscosityPaS()).isEqualTo(original.dynamicViscosityPaS());
        UserFluid again = UserFluid.replacing("again", denser, new Given.Constant(PropertyKind.VAPOUR_PRESSURE, 60e3));
        assertThat(again.at(313.15).densityKgPerM3()).isEqualTo(770);
        assertThat(again.at(313.15, Band.THIN).vapourPressurePa()).isEqualTo(60e3);
    }

    @Test
    void tablesAreMetAtTheirRowsAndExtrapolatedWithANotice() {
        List<Double> t = List.of(253.15, 293.15, 353.15);
        UserFluid fluid = new UserFluid(
                "sheet fluid",
                "",
                null,
                List.of(
                        new Given.Table(PropertyKind.DENSITY, t, List.of(900.0, 870.0, 830.0)),
                        new Given.Table(PropertyKind.DYNAMIC_VISCOSITY, t, List.of(0.9, 0.1, 0.01))));
        for (int i = 0; i < t.size(); i++) {
            assertThat(fluid.at(t.get(i)).dynamicViscosityPaS()
                            / List.of(0.9, 0.1, 0.01).get(i))
                    .isCloseTo(1, within(1e-9));
        }
        assertThat(fluid.at(273.15).densityKgPerM3()).isCloseTo(885, within(1e-9));
        assertThat(fluid.at(273.15).dynamicViscosityPaS()).isBetween(0.1, 0.9);
        assertThat(fluid.at(293.15).vapourPressurePa()).isNaN();
        assertThat(texts(fluid, 293.15)).anyMatch(s -> s.startsWith("vapour pressure of sheet fluid is not known"));
        assertThat(texts(fluid, 363.15))
                .anyMatch(s -> s.contains("density of sheet fluid is used at 90 C, 10 K above its range"));
        assertThat(fluid.refusal(353.15 + 31)).contains("sheet fluid at 111 C: no state is given");
    }

    @Test
    void constantsAloneMakeAFluidForTextbooks() {
        UserFluid fluid = new UserFluid(
                "textbook water",
                "",
                null,
                List.of(
                        new Given.Constant(PropertyKind.DENSITY, 1000),
                        new Given.Constant(PropertyKind.KINEMATIC_VISCOSITY, 1e-6)));
        assertThat(fluid.at(300).dynamicViscosityPaS()).isCloseTo(1e-3, within(1e-15));
        assertThat(fluid.at(300)).isEqualTo(new FluidState(300, 1000, 1000 * 1e-6, Double.NaN, Double.NaN, Double.NaN));
    }

    @Test
    void twoPointsSpreadInTheCold() {
        UserFluid oil = UserFluid.oil("club oil", OilFluids.ENGINE, POINTS, new Given.DensityAt(288.15, 855));
        double usual = oil.at(278.15).dynamicViscosityPaS();
        assertThat(oil.at(278.15, Band.THICK).dynamicViscosityPaS() / usual).isCloseTo(1.4, within(1e-12));
        assertThat(oil.at(278.15, Band.THIN).dynamicViscosityPaS() * 1.4 / usual)
                .isCloseTo(1, within(1e-12));
        assertThat(oil.at(333.15, Band.THICK).dynamicViscosityPaS())
                .isEqualTo(oil.at(333.15).dynamicViscosityPaS());
    }

    @Test
    void aVeryHighViFluidOfTheUserIsNotCarriedIntoTheCold() {
        UserFluid fluid = UserFluid.oil(
                "mine",
                OilFluids.HYDRAULIC,
                new Given.TwoPoints(313.15, 19e-6, 373.15, 6.1e-6),
                new Given.DensityAt(288.15, 830));
        assertThatThrownBy(() -> fluid.at(263.15))
                .isInstanceOf(FluidRangeException.class)
                .hasMessageContaining("mine at -10 C: no state is given (a very-high-VI fluid is not extrapolated");
        UserFluid measured = UserFluid.replacing(
                "measured",
                fluid,
                new Given.Table(
                        PropertyKind.KINEMATIC_VISCOSITY,
                        List.of(243.15, 273.15, 313.15, 373.15),
                        List.of(900e-6, 95e-6, 19e-6, 6.1e-6)));
        assertThat(measured.at(263.15).kinematicViscosityM2PerS()).isBetween(95e-6, 900e-6);
    }

    @Test
    void equalWhenMadeOfTheSame() throws Exception {
        UserFluid a = UserFluid.oil("club oil", OilFluids.ENGINE, POINTS, new Given.DensityAt(288.15, 855));
        UserFluid b = UserFluid.oil(
                "club oil",
                OilFluids.ENGINE,
                new Given.TwoPoints(313.15, 64e-6, 373.15, 11e-6),
                new Given.DensityAt(288.15, 855));
        assertThat(a).isEqualTo(b).hasSameHashCodeAs(b);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(a);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            assertThat(in.readObject()).isEqualTo(a);
        }
    }

    @Test
    void badInputSaysWhatIsAllowed() {
        assertThatThrownBy(() -> new Given.TwoPoints(373.15, 11e-6, 313.15, 64e-6))
                .hasMessageContaining("Give the colder point first");
        assertThatThrownBy(() -> new Given.TwoPoints(313.15, 11e-6, 373.15, 64e-6))
                .hasMessageContaining("viscosity rises from 1.1E-5 m2/s at 40 C");
        assertThatThrownBy(() -> new Given.TwoPoints(313.15, 64, 373.15, 11))
                .hasMessageContaining("kinematic viscosity is 64.0 m2/s; allowed are 0.21 mm2/s to 1 m2/s");
        assertThatThrownBy(() -> new Given.TwoPoints(313.15, Double.NaN, 373.15, 11e-6))
                .hasMessageContaining("kinematic viscosity is NaN");
        assertThatThrownBy(() -> new Given.DensityAt(288.15, 0.855)).hasMessageContaining("Give the density in kg/m3");
        assertThatThrownBy(() -> new Given.DensityAt(15, 855)).hasMessageContaining("allowed are -100 to 400 C");
        assertThatThrownBy(() -> new Given.Constant(PropertyKind.BULK_MODULUS, 1.5))
                .hasMessageContaining("bulk modulus is 1.5 Pa; allowed are 10000.0 to");
        assertThatThrownBy(() -> new Given.Table(PropertyKind.DENSITY, List.of(300.0, 290.0), List.of(1.0, 2.0)))
                .hasMessageContaining("must rise, but 16.9 C follows 26.9 C. Sort the rows");
        assertThatThrownBy(() ->
                        new Given.Table(PropertyKind.KINEMATIC_VISCOSITY, List.of(290.0, 300.0), List.of(1e-6, 2e-6)))
                .hasMessageContaining("a liquid gets thinner when hot");
        assertThatThrownBy(() -> new Given.Table(PropertyKind.DENSITY, List.of(), List.of()))
                .hasMessageContaining("give the same number of each");
        assertThatThrownBy(() -> new UserFluid(" ", "", Fluids.find("water"), List.of()))
                .hasMessageContaining("has no name");
        assertThatThrownBy(() -> new UserFluid("x", "", null, List.of(new Given.DensityAt(288.15, 800))))
                .hasMessageContaining("x needs a density and a viscosity; the viscosity is missing");
        assertThatThrownBy(() -> new UserFluid(
                        "x",
                        "",
                        Fluids.find("water"),
                        List.of(
                                new Given.Constant(PropertyKind.KINEMATIC_VISCOSITY, 1e-6),
                                new Given.Constant(PropertyKind.DYNAMIC_VISCOSITY, 1e-3))))
                .hasMessageContaining("dynamic viscosity of x is given twice");
    }
}
