package org.linedrop.fluid;

import java.util.List;

/** Petrol, its blends with ethanol, and aviation gasoline. */
final class SparkFuels {
    private SparkFuels() {}

    private static final double PSI = 6894.757293168;
    /** The Reid vapour pressure of petrol with 10 % ethanol is about 1 psi above that of its base (from memory). */
    private static final double ETHANOL_LIFT_PA = PSI;

    /**
     * A volatility class of petrol.
     *
     * @param name     canonical name
     * @param lowPa    least vapour pressure at 37.8 C
     * @param usualPa  what is taken as usual
     * @param highPa   greatest allowed
     * @param rho15    density at 15 C
     */
    record PetrolClass(String name, double lowPa, double usualPa, double highPa, double rho15) {}

    static final PetrolClass SUMMER = new PetrolClass("petrol summer", 45e3, 9.0 * PSI, 9.0 * PSI, 745);
    static final PetrolClass WINTER = new PetrolClass("petrol winter", 60e3, 13.5 * PSI, 13.5 * PSI, 735);

    /**
     * The classes of ASTM D4814 (maxima published; a fuel under the next lower class's maximum would be of that class)
     * and of EN 228 (ranges published). Densities follow the two grades above, in a straight line over vapour pressure
     * between them.
     */
    static final List<PetrolClass> CLASSES = List.of(
            SUMMER,
            WINTER,
            new PetrolClass("petrol D4814 AA", 45e3, 54e3, 54e3, 745),
            new PetrolClass("petrol D4814 A", 54e3, 62e3, 62e3, 745),
            new PetrolClass("petrol D4814 B", 62e3, 69e3, 69e3, 742.7),
            new PetrolClass("petrol D4814 C", 69e3, 79e3, 79e3, 739.5),
            new PetrolClass("petrol D4814 D", 79e3, 93e3, 93e3, 735),
            new PetrolClass("petrol D4814 E", 93e3, 103e3, 103e3, 735),
            new PetrolClass("petrol EN 228 A", 45e3, 60e3, 60e3, 745),
            new PetrolClass("petrol EN 228 D", 60e3, 90e3, 90e3, 736));

    static CatalogueFluid petrol(PetrolClass c) {
        return hydrocarbon(
                c.name(),
                c.rho15(),
                pressure(c.usualPa(), c.lowPa(), c.highPa(), 3, Grade.B, "2.5 % once the Reid pressure is known"),
                Grade.B,
                0.12,
                "petrol E0",
                List.of());
    }

    static CatalogueFluid aviation() {
        return hydrocarbon(
                "avgas 100LL",
                715,
                pressure(6.4 * PSI, 38e3, 49e3, 2, Grade.C, "class 38 to 49 kPa at 37.8 C (ASTM D910, from memory)"),
                Grade.C,
                0.20,
                "petrol E0",
                List.of());
    }

    private static CatalogueFluid hydrocarbon(
            String name,
            double rho15,
            Property vapour,
            Grade grade,
            double spread,
            String family,
            List<String> remarks) {
        PropertyLaw density = PetroleumLaws.ExpandedDensity.fuel(rho15);
        PropertyLaw viscosity = new Combinations.Dynamic(new PetroleumLaws.AndradeViscosity(-3.7146, 913.68), density);
        return new CatalogueFluid(
                name,
                family,
                Property.of(
                        PropertyKind.DENSITY,
                        density,
                        -20,
                        90,
                        Sources.API_DENSITY,
                        grade,
                        0.98,
                        1.02,
                        "0.1 % once the density at 15 C is known; between fuels 2 %"),
                Property.of(
                        PropertyKind.DYNAMIC_VISCOSITY,
                        viscosity,
                        -30,
                        60,
                        Sources.DOE_PETROL,
                        grade,
                        1 - spread,
                        1 + spread,
                        Text.number(100 * spread) + " %"),
                vapour,
                Property.of(
                        PropertyKind.BULK_MODULUS,
                        new PetroleumLaws.Modulus(rho15),
                        -30,
                        90,
                        Sources.API_MODULUS,
                        Grade.C,
                        1,
                        1.4,
                        "10 to 30 % below handbook figures"),
                Property.of(
                        PropertyKind.SPECIFIC_HEAT,
                        new PetroleumLaws.SpecificHeat(rho15),
                        0,
                        200,
                        Sources.CRAGOE,
                        grade,
                        0.98,
                        1.02,
                        "2 %"),
                Range.celsius(-40, 90),
                remarks);
    }

    private static Property pressure(
            double usualPa, double lowPa, double highPa, double slope, Grade grade, String error) {
        return Property.of(
                        PropertyKind.VAPOUR_PRESSURE,
                        new PetroleumLaws.GasolinePressure(usualPa, slope),
                        0,
                        50,
                        Sources.AP42,
                        grade,
                        1,
                        1,
                        error)
                .between(
                        new PetroleumLaws.GasolinePressure(lowPa, slope),
                        new PetroleumLaws.GasolinePressure(highPa, slope));
    }

    /** Petrol with 10 % of ethanol. */
    static CatalogueFluid e10(String name, PetrolClass base) {
        return blend(
                name,
                base,
                0.10,
                0.10,
                0.10,
                pressure(
                        base.usualPa() + ETHANOL_LIFT_PA,
                        base.lowPa() + ETHANOL_LIFT_PA,
                        base.highPa() + ETHANOL_LIFT_PA,
                        3,
                        Grade.B,
                        "as petrol; 1 psi above the base at 37.8 C (from memory)"),
                "petrol E10",
                0.12,
                List.of());
    }

    /** The volatility classes of ASTM D5798: 51 to 83 % of ethanol. */
    static CatalogueFluid e85(boolean summer) {
        PropertyLaw usual = classPressure(summer ? 50e3 : 80e3, summer);
        Property vapour = Property.of(
                        PropertyKind.VAPOUR_PRESSURE,
                        usual,
                        0,
                        50,
                        Sources.D5798,
                        Grade.C,
                        1,
                        1,
                        "class band only; slope with temperature is an estimate")
                .between(
                        classPressure((summer ? 5.5 : 9.5) * PSI, summer),
                        classPressure((summer ? 9.0 : 15.0) * PSI, summer));
        return blend(
                summer ? "E85 summer" : "E85 winter",
                summer ? SUMMER : WINTER,
                summer ? 0.83 : 0.70,
                0.51,
                0.83,
                vapour,
                "E85",
                0.03,
                List.of((summer ? "E85 summer is taken as 83 % ethanol" : "E85 winter is taken as 70 % ethanol")
                        + "; pump E85 holds 51 to 83 % (ASTM D5798). If the content is measured, write for example"
                        + " \"ethanol 74 %\""));
    }

    private static PropertyLaw classPressure(double at37C, boolean summer) {
        return new SimpleLaws.ExponentialPressure(at37C, PropertyLaw.ZERO_C_K + 37.8, summer ? 4300 : 3800);
    }

    /**
     * Petrol with any share of ethanol.
     *
     * @param percent ethanol by volume, above 0 to under 100
     * @param summer  which petrol is the rest
     */
    static CatalogueFluid ethanolBlend(double percent, boolean summer) {
        double share = percent / 100;
        PetrolClass base = summer ? SUMMER : WINTER;
        String family = share <= 0.15 ? "petrol E10" : share < 0.95 ? "E85" : "ethanol";
        return blend(
                "ethanol " + Text.exact(percent) + " %" + (summer ? "" : " winter"),
                base,
                share,
                share,
                share,
                blendPressure(share, summer),
                family,
                0.05,
                List.of("the other " + Text.number(100 - percent) + " % is taken as " + base.name()));
    }

    /** Logarithm of the pressure, straight over the share between petrol, E10, the E85 class and ethanol. */
    private static Property blendPressure(double share, boolean summer) {
        PetrolClass base = summer ? SUMMER : WINTER;
        double classShare = summer ? 0.83 : 0.70;
        PropertyLaw e0 = petrol(base).vapour().usual();
        PropertyLaw e10 = e10("E10", base).vapour().usual();
        PropertyLaw e85 = e85(summer).vapour().usual();
        PropertyLaw law;
        if (share < 0.10) {
            law = new Combinations.WeightedLogSum(e0, e10, share / 0.10);
        } else if (share < classShare) {
            law = new Combinations.WeightedLogSum(e10, e85, (share - 0.10) / (classShare - 0.10));
        } else {
            law = new Combinations.WeightedLogSum(
                    e85, AlcoholFluids.ethanol().vapour().usual(), (share - classShare) / (1 - classShare));
        }
        return Property.of(
                PropertyKind.VAPOUR_PRESSURE,
                law,
                0,
                50,
                Sources.BLEND_PRESSURE,
                Grade.C,
                0.8,
                1.2,
                "20 %, our estimate");
    }

    private static CatalogueFluid blend(
            String name,
            PetrolClass base,
            double share,
            double leastShare,
            double mostShare,
            Property vapour,
            String family,
            double spread,
            List<String> remarks) {
        CatalogueFluid petrol = petrol(base);
        CatalogueFluid ethanol = AlcoholFluids.ethanol();
        Property viscosity = Property.of(
                        PropertyKind.DYNAMIC_VISCOSITY,
                        thickness(petrol, ethanol, share),
                        -30,
                        60,
                        Sources.BLEND,
                        Grade.B,
                        1,
                        1,
                        leastShare < mostShare
                                ? "3 % at 20 C for the content taken; band over 51 to 83 % ethanol"
                                : Text.number(100 * spread) + " %")
                .between(
                        new Combinations.Scaled(thickness(petrol, ethanol, Math.min(share, leastShare)), 1 - spread),
                        new Combinations.Scaled(thickness(petrol, ethanol, Math.max(share, mostShare)), 1 + spread));
        return new CatalogueFluid(
                name,
                family,
                blended(
                        PropertyKind.DENSITY,
                        new Combinations.WeightedSum(
                                petrol.density().usual(), ethanol.density().usual(), share),
                        -20,
                        Grade.B,
                        "0.3 % for the components taken"),
                viscosity,
                vapour,
                blended(
                        PropertyKind.BULK_MODULUS,
                        new Combinations.WeightedInverseSum(
                                petrol.bulk().usual(), ethanol.bulk().usual(), share),
                        -30,
                        Grade.C,
                        "petrol's part 10 to 30 % below handbook figures"),
                blended(
                        PropertyKind.SPECIFIC_HEAT,
                        new Combinations.MassWeightedSum(
                                petrol.heat().usual(),
                                ethanol.heat().usual(),
                                petrol.density().usual(),
                                ethanol.density().usual(),
                                share),
                        0,
                        Grade.B,
                        "3 %"),
                Range.celsius(-40, 90),
                remarks);
    }

    private static Property blended(PropertyKind kind, PropertyLaw law, double lowC, Grade grade, String error) {
        double highC = kind == PropertyKind.SPECIFIC_HEAT ? 80 : 90;
        return Property.of(kind, law, lowC, highC, Sources.BLEND, grade, 1, 1, error);
    }

    private static PropertyLaw thickness(CatalogueFluid petrol, CatalogueFluid ethanol, double share) {
        return new Combinations.WeightedLogSum(
                petrol.viscosity().usual(), ethanol.viscosity().usual(), share);
    }
}
