package org.linedrop.catalogue;

import java.io.Serializable;

/**
 * Another name of a fluid.
 *
 * @param name  the other name, for example {@code E85 summer}
 * @param fluid what the compatibility table calls it
 */
record FluidName(String name, String fluid) implements Serializable {}
