/**
 * The circuit file: text to circuit with every problem in one list, and circuit to text. Names no key of its own: it
 * walks the circuit's key table.
 */
@NullMarked
package org.linedrop.io;

import org.jspecify.annotations.NullMarked;
