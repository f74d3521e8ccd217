/**
 * What somebody plumbs: points, runs of parts, devices, cases and limits, as immutable data with the key table that
 * names every figure once. No physics: a circuit is only said and checked here.
 */
@NullMarked
package org.linedrop.circuit;

import org.jspecify.annotations.NullMarked;
