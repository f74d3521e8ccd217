/**
 * The value forms of the circuit file: what one value may say, read from text and written back to text that reads the
 * same. Part of the circuit layer; no form knows which key it is used for.
 */
@NullMarked
package org.linedrop.circuit.form;

import org.jspecify.annotations.NullMarked;
