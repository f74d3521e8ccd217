package org.linedrop.circuit;

import java.io.Serializable;

/**
 * Equal bends along a hose or tube.
 *
 * @param count    how many
 * @param angleRad of each
 * @param radiusM  centre-line radius
 */
public record Route(int count, double angleRad, double radiusM) implements Serializable {}
