package org.linedrop.catalogue;

import java.io.Serializable;
import org.linedrop.fact.Figure;

/**
 * What one end adds to the length of the hose it is on, from military manuals; a race end needs the user's own figure.
 *
 * @param end      part and hose class
 * @param family   hose family of this catalogue it belongs to; empty when none
 * @param size     size as printed, {@code -16Z} is the short pattern of its table
 * @param angleRad angle of the end, rad
 * @param lengthM  length of one end, m
 * @param cutOff   true when it is the cut-off, false when it is the end's largest overall length
 * @param doubtful true when the printed figure is likely a misprint; it is then not used
 */
record CutOff(String end, String family, String size, double angleRad, Figure lengthM, boolean cutOff, boolean doubtful)
        implements Serializable {}
