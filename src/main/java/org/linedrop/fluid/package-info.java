/**
 * Fluids of a vehicle: a named fluid gives its state (density, viscosity, vapour pressure ...) at a temperature, with
 * range, source and expected error. Evaluated once per fluid, temperature and case, never inside a solve.
 */
@NullMarked
package org.linedrop.fluid;

import org.jspecify.annotations.NullMarked;
