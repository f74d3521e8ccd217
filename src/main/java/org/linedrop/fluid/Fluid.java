package org.linedrop.fluid;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Notice;

/**
 * A fluid: immutable, serialisable, equal to another made of the same data. Found by name with {@link Fluids#find},
 * or made by the user ({@link UserFluid}).
 */
public sealed interface Fluid extends Serializable permits CatalogueFluid, UserFluid {

    /**
     * Stable identifier: the canonical name in lower case with hyphens, for example {@code e85-summer}.
     *
     * @return the identifier
     */
    String id();

    /**
     * The one canonical name, as written to a circuit file; {@link Fluids#find} of it gives an equal fluid unless the
     * fluid is the user's.
     *
     * @return for example {@code E85 summer}
     */
    String name();

    /**
     * The word under which linings are judged against this fluid (the fluid column of the compatibility table), for
     * example {@code petrol E10}; empty when nothing fits.
     *
     * @return a word of the compatibility table
     */
    String family();

    /**
     * The worst grade among the properties a flow solution needs (density, viscosity, vapour pressure where known).
     *
     * @return the grade
     */
    Grade grade();

    /**
     * The usual state at a temperature.
     *
     * @param temperatureK temperature, K
     * @return the state; density and viscosity are finite and positive
     * @throws FluidRangeException when {@link #refusal} has a reason
     */
    default FluidState at(double temperatureK) {
        return at(temperatureK, Band.USUAL);
    }

    /**
     * The state at one end of the class.
     *
     * @param temperatureK temperature, K
     * @param band         usual, thin (low viscosity, high vapour pressure) or thick
     * @return the state; density, bulk modulus and specific heat are the usual ones in every band
     * @throws FluidRangeException when {@link #refusal} has a reason
     */
    FluidState at(double temperatureK, Band band);

    /**
     * Why there is no state at a temperature, if so.
     *
     * @param temperatureK temperature, K
     * @return null when {@link #at(double)} answers; else what was asked, what is allowed and what to do
     */
    @Nullable String refusal(double temperatureK);

    /**
     * What a user should know of the state at a temperature: properties outside their range and by how much, figures
     * from memory or estimated, freezing, boiling.
     *
     * @param temperatureK temperature, K
     * @return notices, possibly none; their element is the fluid's name, their ids are {@code fluid-range-},
     *     {@code fluid-grade-} or {@code fluid-unknown-} with the property ({@code fluid-range-vapour-pressure}), or
     *     {@code fluid-freezes}, {@code fluid-boils}, {@code fluid-remark}
     */
    List<Notice> notices(double temperatureK);

    /**
     * The notices that matter to a flow solution: those of {@link #notices} without bulk modulus and specific heat,
     * which no flow depends on.
     *
     * @param temperatureK temperature, K
     * @return notices, possibly none
     */
    default List<Notice> flowNotices(double temperatureK) {
        return notices(temperatureK).stream()
                .filter(n -> !n.id().endsWith("bulk-modulus") && !n.id().endsWith("specific-heat"))
                .toList();
    }

    /**
     * What is known about each property.
     *
     * @return five rows: density, dynamic viscosity, vapour pressure, bulk modulus, specific heat
     */
    List<PropertyInfo> properties();

    /**
     * Lower end of the temperatures the fluid is meant for.
     *
     * @return K
     */
    double lowestK();

    /**
     * Upper end of the temperatures the fluid is meant for.
     *
     * @return K
     */
    double highestK();

    /**
     * Where it freezes, if known.
     *
     * @return K, or NaN
     */
    double freezingPointK();
}
