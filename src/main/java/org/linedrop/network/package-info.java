/**
 * A circuit turned into equations: indexed points and branches, a law per branch, and the trace from each printed row
 * to the law term behind it. Textbook networks can be built here without a circuit.
 */
@Inner
@NullMarked
package org.linedrop.network;

import org.jspecify.annotations.NullMarked;
import org.linedrop.fact.Inner;
