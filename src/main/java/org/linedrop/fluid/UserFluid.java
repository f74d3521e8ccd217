package org.linedrop.fluid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Notice;

/**
 * A fluid the user describes: figures of their own, alone or on top of another fluid whose other properties stay as they
 * are (its dynamic viscosity too when only the density is replaced). Figures of the user have no band, except that two
 * viscosity points carry the error of their extrapolation into the cold.
 *
 * <p>Given alone, density and viscosity are required. Density by {@link Given.DensityAt} means a petroleum liquid: its
 * bulk modulus and specific heat then follow the petroleum correlations, and with an oil's family word its vapour
 * pressure is taken as negligible; else what is not given is unknown (NaN).
 *
 * @param name   its name, not empty
 * @param family word of the compatibility table by which linings are judged, or empty
 * @param base   the fluid it starts from, or null
 * @param givens what the user gives, at most one for each property
 */
public record UserFluid(
        String name, String family, @Nullable Fluid base, List<Given> givens) implements Fluid {
    private static final long serialVersionUID = 1;

    /**
     * Checks that density and viscosity are known and nothing is given twice.
     *
     * @param name its name, not empty
     * @param family word of the compatibility table, or empty
     * @param base the fluid it starts from, or null
     * @param givens what the user gives, at most one for each property
     */
    public UserFluid {
        givens = List.copyOf(givens);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a fluid of your own has no name; give it one");
        }
        List<PropertyKind> seen = new ArrayList<>();
        for (Given given : givens) {
            PropertyKind kind = given.kind().stored();
            if (seen.contains(kind)) {
                throw new IllegalArgumentException(
                        kind.word() + " of " + name + " is given twice; give it once (kinematic or dynamic viscosity)");
            }
            seen.add(kind);
        }
        if (base == null && !(seen.contains(PropertyKind.DENSITY) && seen.contains(PropertyKind.DYNAMIC_VISCOSITY))) {
            throw new IllegalArgumentException(name + " needs a density and a viscosity; "
                    + (seen.contains(PropertyKind.DENSITY) ? "the viscosity" : "the density")
                    + " is missing. Give it, or start from a catalogue fluid");
        }
        UserProperties.check(name, base, givens);
    }

    /**
     * An oil from two viscosity points and a density.
     *
     * @param name    its name
     * @param family  word of the compatibility table, for example {@code engine oil (mineral/synthetic)}
     * @param points  kinematic viscosity at two temperatures
     * @param density density at one temperature
     * @return the fluid
     */
    public static UserFluid oil(String name, String family, Given.TwoPoints points, Given.DensityAt density) {
        return new UserFluid(name, family, null, List.of(density, points));
    }

    /**
     * A fluid with one property replaced.
     *
     * @param name  its name
     * @param base  where the other properties come from
     * @param given the property replaced
     * @return the fluid, of the family of its base
     */
    public static UserFluid replacing(String name, Fluid base, Given given) {
        return new UserFluid(name, base.family(), base, List.of(given));
    }

    @Override
    public String id() {
        return Names.id(name);
    }

    @Override
    public Grade grade() {
        return States.grade(list());
    }

    @Override
    public FluidState at(double temperatureK, Band band) {
        return States.at(this, list(), temperatureK, band);
    }

    @Override
    public @Nullable String refusal(double temperatureK) {
        return range().refusal(name, temperatureK);
    }

    @Override
    public List<Notice> notices(double temperatureK) {
        return States.notices(name, list(), range(), UserProperties.remarks(this), temperatureK);
    }

    @Override
    public List<PropertyInfo> properties() {
        return list().stream().map(Property::info).toList();
    }

    @Override
    public double lowestK() {
        return range().lowK();
    }

    @Override
    public double highestK() {
        return range().highK();
    }

    @Override
    public double freezingPointK() {
        return base == null ? Double.NaN : base.freezingPointK();
    }

    List<Property> list() {
        return UserProperties.list(this);
    }

    Range range() {
        return UserProperties.range(this);
    }
}
