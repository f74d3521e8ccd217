/**
 * The value forms of a circuit file: text to an immutable record and back. Each record reads what a user writes, says
 * in his words what is wrong with it, and writes text that reads back to an equal record. Nothing here knows a key or
 * a catalogue row.
 */
@NullMarked
package org.linedrop.circuit.form;

import org.jspecify.annotations.NullMarked;
