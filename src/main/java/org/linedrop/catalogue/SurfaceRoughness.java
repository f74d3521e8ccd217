package org.linedrop.catalogue;

import java.io.Serializable;
import org.linedrop.fact.Figure;

/**
 * Wall roughness by surface.
 *
 * @param surface    name, for example {@code rubber}, {@code PTFE}, {@code stainless}
 * @param roughnessM equivalent sand roughness, m; the usual value is the one computed with
 */
record SurfaceRoughness(String surface, Figure roughnessM) implements Serializable {}
