package org.linedrop.fluid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Turns what a user gives into properties and a range. */
final class UserProperties {
    private UserProperties() {}

    /** How far below the lower of two viscosity points they count as covered: 40 C reaches to 0 C, as for our oils. */
    private static final double BELOW_POINTS_K = 40;
    /** How far above the upper point: 100 C reaches to 150 C. */
    private static final double ABOVE_POINTS_K = 50;
    /** How much further into the cold an oil is evaluated with a warning. */
    private static final double COLD_EXTENSION_K = 30;

    /** Constants say nothing of temperature: any a hose may see. */
    private static final double LEAST_C = -60;

    private static final double MOST_C = 200;

    private static final List<PropertyKind> ORDER = List.of(
            PropertyKind.DENSITY,
            PropertyKind.DYNAMIC_VISCOSITY,
            PropertyKind.VAPOUR_PRESSURE,
            PropertyKind.BULK_MODULUS,
            PropertyKind.SPECIFIC_HEAT);

    static void check(String name, @Nullable Fluid base, List<Given> givens) {
        PropertyLaw density = property(PropertyKind.DENSITY, base, givens, "").usual();
        for (Given given : givens) {
            if (given instanceof Given.Table table && table.kind() == PropertyKind.DYNAMIC_VISCOSITY) {
                for (int i = 0; i < table.values().size(); i++) {
                    Checks.viscosity(table.values().get(i)
                            / density.at(table.temperaturesK().get(i)));
                }
            }
            if (given instanceof Given.Table table && table.kind() == PropertyKind.KINEMATIC_VISCOSITY) {
                table.values().forEach(Checks::viscosity);
            }
        }
    }

    static List<Property> list(UserFluid fluid) {
        List<Property> list = new ArrayList<>();
        for (PropertyKind kind : ORDER) {
            list.add(property(kind, fluid.base(), fluid.givens(), fluid.family()));
        }
        return list;
    }

    static List<String> remarks(UserFluid fluid) {
        List<String> remarks = new ArrayList<>();
        if (fluid.base() instanceof CatalogueFluid c) {
            remarks.addAll(c.remarks());
        }
        for (Given given : fluid.givens()) {
            if (given instanceof Given.Constant c && c.kind().stored() == PropertyKind.DYNAMIC_VISCOSITY) {
                remarks.add(c.kind().word() + " of " + fluid.name() + " is the same at every temperature, as given");
            }
        }
        return remarks;
    }

    private static Property property(PropertyKind kind, @Nullable Fluid base, List<Given> givens, String family) {
        for (Given given : givens) {
            if (given.kind().stored() == kind) {
                return property(given, base, givens);
            }
        }
        if (base instanceof CatalogueFluid c) {
            return c.list().get(ORDER.indexOf(kind));
        }
        if (base instanceof UserFluid u) {
            return u.list().get(ORDER.indexOf(kind));
        }
        return missing(kind, givens, family);
    }

    private static Property property(Given given, @Nullable Fluid base, List<Given> givens) {
        PropertyLaw law = law(given);
        double lowC = Double.NaN;
        double highC = Double.NaN;
        PropertyLaw low = law;
        PropertyLaw high = law;
        if (given instanceof Given.TwoPoints points) {
            lowC = points.firstK() - BELOW_POINTS_K - PropertyLaw.ZERO_C_K;
            highC = points.secondK() + ABOVE_POINTS_K - PropertyLaw.ZERO_C_K;
            low = new PetroleumLaws.ColdSpread(law, 1, false, points.firstK());
            high = new PetroleumLaws.ColdSpread(law, 1, true, points.firstK());
        } else if (given instanceof Given.Table table) {
            lowC = table.temperaturesK().get(0) - PropertyLaw.ZERO_C_K;
            highC = table.temperaturesK().get(table.temperaturesK().size() - 1) - PropertyLaw.ZERO_C_K;
        } else if (given instanceof Given.DensityAt) {
            lowC = -20;
            highC = 150;
        }
        PropertyKind kind = given.kind();
        if (kind == PropertyKind.KINEMATIC_VISCOSITY) {
            PropertyLaw density =
                    property(PropertyKind.DENSITY, base, givens, "").usual();
            law = new Combinations.Dynamic(law, density);
            low = new Combinations.Dynamic(low, density);
            high = new Combinations.Dynamic(high, density);
        } else if (given instanceof Given.Table table && kind == PropertyKind.DYNAMIC_VISCOSITY) {
            law = dynamicTable(
                    table, property(PropertyKind.DENSITY, base, givens, "").usual());
            low = law;
            high = law;
        }
        return Property.of(kind.stored(), law, lowC, highC, Sources.USER, Grade.A, 1, 1, "as given")
                .between(low, high);
    }

    /** Rows of dynamic viscosity are joined as kinematic, where the D341 chart is straight. */
    private static PropertyLaw dynamicTable(Given.Table table, PropertyLaw density) {
        List<Double> kinematic = new ArrayList<>();
        for (int i = 0; i < table.values().size(); i++) {
            kinematic.add(
                    table.values().get(i) / density.at(table.temperaturesK().get(i)));
        }
        return new Combinations.Dynamic(new SimpleLaws.ViscosityTable(table.temperaturesK(), kinematic), density);
    }

    private static PropertyLaw law(Given given) {
        if (given instanceof Given.Constant c) {
            return new SimpleLaws.Constant(c.value());
        }
        if (given instanceof Given.DensityAt d) {
            return PetroleumLaws.ExpandedDensity.oil(d.temperatureK(), d.densityKgPerM3());
        }
        if (given instanceof Given.TwoPoints p) {
            return new PetroleumLaws.WaltherViscosity(
                    D341.through(p.firstK(), p.firstM2PerS(), p.secondK(), p.secondM2PerS()));
        }
        Given.Table table = (Given.Table) given;
        return table.kind() == PropertyKind.KINEMATIC_VISCOSITY
                ? new SimpleLaws.ViscosityTable(table.temperaturesK(), table.values())
                : new SimpleLaws.Table(table.temperaturesK(), table.values());
    }

    private static Property missing(PropertyKind kind, List<Given> givens, String family) {
        for (Given given : givens) {
            if (given instanceof Given.DensityAt && law(given) instanceof PetroleumLaws.ExpandedDensity density) {
                double rho15 = density.at15KgPerM3();
                if (kind == PropertyKind.BULK_MODULUS) {
                    return OilFluids.modulus(rho15);
                }
                if (kind == PropertyKind.SPECIFIC_HEAT) {
                    return OilFluids.heat(rho15);
                }
            }
        }
        boolean oil =
                List.of(OilFluids.ENGINE, OilFluids.GEAR, OilFluids.HYDRAULIC).contains(family);
        if (kind == PropertyKind.VAPOUR_PRESSURE && oil) {
            return OilFluids.negligible();
        }
        return Property.unknown(kind, "not given", Sources.USER);
    }

    static Range range(UserFluid fluid) {
        Range range = baseRange(fluid.base());
        for (Given given : fluid.givens()) {
            if (given instanceof Given.Constant c && c.kind().stored() == PropertyKind.DYNAMIC_VISCOSITY) {
                range = range.spanning(LEAST_C, MOST_C);
            } else if (given instanceof Given.TwoPoints p) {
                double coveredC = p.firstK() - BELOW_POINTS_K - PropertyLaw.ZERO_C_K;
                range = viscosityRange(fluid, law(given), coveredC, COLD_EXTENSION_K, p.secondK() + ABOVE_POINTS_K);
            } else if (given instanceof Given.Table t && t.kind().stored() == PropertyKind.DYNAMIC_VISCOSITY) {
                PropertyLaw line = t.kind() == PropertyKind.KINEMATIC_VISCOSITY
                        ? law(given)
                        : ((Combinations.Dynamic) property(given, fluid.base(), fluid.givens())
                                        .usual())
                                .kinematic();
                double lowC = t.temperaturesK().get(0) - PropertyLaw.ZERO_C_K;
                range = viscosityRange(
                        fluid,
                        line,
                        lowC,
                        0,
                        t.temperaturesK().get(t.temperaturesK().size() - 1));
            }
        }
        return range;
    }

    private static Range baseRange(@Nullable Fluid base) {
        if (base instanceof CatalogueFluid c) {
            return c.range();
        }
        if (base instanceof UserFluid u) {
            return u.range();
        }
        return Range.celsius(LEAST_C, MOST_C);
    }

    /** The range a viscosity of the user's own spans; a very-high-VI one is not carried into the cold. */
    private static Range viscosityRange(
            UserFluid fluid, PropertyLaw line, double coveredC, double extensionK, double highK) {
        double highC = highK - PropertyLaw.ZERO_C_K;
        Range base = baseRange(fluid.base());
        if (ViscosityIndex.veryHigh(line)) {
            return base.spanning(coveredC, highC)
                    .hardBelow(
                            coveredC,
                            "a very-high-VI fluid is not extrapolated into the cold: it is far thicker there"
                                    + " than its points say");
        }
        return base.spanning(coveredC - extensionK, highC);
    }
}
