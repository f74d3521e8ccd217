/**
 * Text with a unit to an SI double and back, at the door only: no other package converts. Exact decimal factors, so
 * that 3/8 in, 9.525 mm and 0.009525 m are one double. Gauge, absolute and difference pressures are different
 * dimensions, and so are temperatures and temperature differences.
 */
@NullMarked
package org.linedrop.units;

import org.jspecify.annotations.NullMarked;
