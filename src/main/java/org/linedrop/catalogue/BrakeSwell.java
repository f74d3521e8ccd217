package org.linedrop.catalogue;

import java.io.Serializable;
import org.linedrop.fact.Figure;

/**
 * The most that new brake hose may swell by its standard.
 *
 * @param size        hose size by inch, for example {@code 1/8 in}
 * @param type        regular or low expansion
 * @param pressurePa  at this pressure, Pa gauge
 * @param volumeM3PerM largest swell, m3 per metre of hose
 */
public record BrakeSwell(String size, String type, double pressurePa, Figure volumeM3PerM) implements Serializable {}
