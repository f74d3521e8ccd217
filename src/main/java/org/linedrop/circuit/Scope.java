package org.linedrop.circuit;

import java.util.Map;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.fluid.Fluid;

/**
 * What the values of a circuit file may refer to.
 *
 * @param catalogue   the rows
 * @param mayBeFuel   whether fuel flows, as far as the service says: true where none is said
 * @param fluids      the user's own fluids by name
 * @param ratedLiquid whether a rated point must say with which liquid: oil and glycol do, fuel is its own
 */
record Scope(Catalogue catalogue, boolean mayBeFuel, Map<String, Fluid> fluids, boolean ratedLiquid) {

    /** A scope without fluids of the user's own, in which rated points need no liquid. */
    Scope(Catalogue catalogue, boolean mayBeFuel) {
        this(catalogue, mayBeFuel, Map.of(), false);
    }
}
