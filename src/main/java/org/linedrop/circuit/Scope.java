package org.linedrop.circuit;

import org.linedrop.catalogue.Catalogue;

/** What the values of a circuit file may refer to. */
record Scope(Catalogue catalogue) {}
