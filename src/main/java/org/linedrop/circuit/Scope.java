package org.linedrop.circuit;

import org.linedrop.catalogue.Catalogue;

/**
 * What the values of a circuit file may refer to.
 *
 * @param catalogue the rows
 * @param mayBeFuel whether fuel flows, as far as the service says: true where none is said
 */
record Scope(Catalogue catalogue, boolean mayBeFuel) {}
