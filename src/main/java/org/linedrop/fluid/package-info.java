/**
 * Fluids of a vehicle: a named fluid gives its state (density, viscosity, vapour pressure ...) at a temperature, with
 * range, source and expected error. Evaluated once per fluid, temperature and case, never inside a solve.
 *
 * <p>{@link org.linedrop.fluid.Fluids#find} reads a name; {@link org.linedrop.fluid.UserFluid} holds what a user
 * describes. Inside, a property is a law (a small record of numbers, one kind for each correlation) with two more laws
 * for the ends of its class. The fluids are tables of constants, one class for each family: a new fluid is a row there,
 * its other spellings in {@code Fluids}, and rows of published figures in {@code validation/fluids}.
 */
@NullMarked
package org.linedrop.fluid;

import org.jspecify.annotations.NullMarked;
