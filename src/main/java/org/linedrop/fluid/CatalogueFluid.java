package org.linedrop.fluid;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Notice;

/**
 * A fluid of the built-in tables.
 *
 * @param name          canonical name
 * @param family        word of the compatibility table, or empty
 * @param density       density, kg/m3
 * @param viscosity     dynamic viscosity, Pa s
 * @param vapour        vapour pressure, Pa absolute
 * @param bulk          bulk modulus, Pa
 * @param heat          specific heat, J/(kg K)
 * @param range         temperatures it is meant for
 * @param remarks       what a user should always know of it; may be empty
 */
record CatalogueFluid(
        String name,
        String family,
        Property density,
        Property viscosity,
        Property vapour,
        Property bulk,
        Property heat,
        Range range,
        List<String> remarks)
        implements Fluid {
    private static final long serialVersionUID = 1;

    CatalogueFluid {
        remarks = List.copyOf(remarks);
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
        return range.refusal(name, temperatureK);
    }

    @Override
    public List<Notice> notices(double temperatureK) {
        return States.notices(name, list(), range, remarks, temperatureK);
    }

    @Override
    public List<PropertyInfo> properties() {
        return list().stream().map(Property::info).toList();
    }

    @Override
    public double lowestK() {
        return range.lowK();
    }

    @Override
    public double highestK() {
        return range.highK();
    }

    @Override
    public double freezingPointK() {
        return range.freezingK();
    }

    /** The five properties in the order of {@link FluidState}. */
    List<Property> list() {
        return List.of(density, viscosity, vapour, bulk, heat);
    }
}
