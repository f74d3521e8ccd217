package org.linedrop.catalogue;

import java.io.Serializable;
import org.linedrop.fact.Figure;

/**
 * Basic dimensions of a taper pipe thread (1 in 16 on diameter).
 *
 * @param size       nominal size, for example {@code 1/4}
 * @param turnsPerM  turns per metre
 * @param pipeM      outside diameter of the pipe, m
 * @param handTightM hand-tight engagement, m
 * @param effectiveM effective thread length, m
 * @param tapDrill   drill before tapping, inches as the trade writes it; empty when not known
 */
record TaperPipeSize(String size, double turnsPerM, Figure pipeM, Figure handTightM, Figure effectiveM, String tapDrill)
        implements Serializable {}
