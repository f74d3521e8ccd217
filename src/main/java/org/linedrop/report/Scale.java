package org.linedrop.report;

import java.math.BigDecimal;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Unit;
import org.linedrop.units.Units;

/**
 * The units and decimals that figures of one kind are printed in.
 *
 * @param metric   unit of metric reports
 * @param decimals decimals of metric reports
 * @param us       unit of US reports
 * @param usDecimals decimals of US reports
 */
record Scale(Unit metric, int decimals, Unit us, int usDecimals) {
    /** More decimals than these show nothing that the figures know. */
    private static final int MOST_DECIMALS = 6;

    /** Nobody types a longer number; it comes from a conversion. */
    private static final int LONG = 7;

    static final Scale BORE = of(Dimension.LENGTH, "mm", 2, "in", 3);
    static final Scale SPEED = of(Dimension.SPEED, "m/s", 2, "ft/s", 2);
    static final Scale DROP = of(Dimension.PRESSURE_DIFFERENCE, "kPa", 2, "psi", 2);
    static final Scale PRESSURE = of(Dimension.GAUGE_PRESSURE, "kPa", 1, "psi", 2);
    static final Scale ABSOLUTE = of(Dimension.ABSOLUTE_PRESSURE, "kPa abs", 1, "psia", 2);
    static final Scale FLOW = of(Dimension.VOLUME_FLOW, "L/h", 0, "US gal/h", 1);
    static final Scale MASS_FLOW = of(Dimension.MASS_FLOW, "kg/h", 1, "lb/h", 1);
    static final Scale SHARE = of(Dimension.RATIO, "%", 0, "%", 0);
    static final Scale PURE = of(Dimension.RATIO, "", 4, "", 4);

    private static Scale of(Dimension dimension, String metric, int decimals, String us, int usDecimals) {
        return new Scale(Units.unit(metric, dimension), decimals, Units.unit(us, dimension), usDecimals);
    }

    /**
     * The scale sentences use.
     *
     * @param dimension one that reports print
     * @return its units and decimals
     */
    static Scale usual(Dimension dimension) {
        return new Scale(
                Display.METRIC.unit(dimension),
                decimals(Display.METRIC, dimension),
                Display.US.unit(dimension),
                decimals(Display.US, dimension));
    }

    private static int decimals(Display display, Dimension dimension) {
        return new BigDecimal(display.number(0, dimension)).scale();
    }

    /** Flows go with the display, which knows whether they are fuel. */
    private boolean isFlow() {
        return metric.dimension() == Dimension.VOLUME_FLOW;
    }

    Unit unit(Display display) {
        return isFlow() ? display.unit(Dimension.VOLUME_FLOW) : display.us() ? us : metric;
    }

    int decimals(Display display) {
        return isFlow() ? decimals(display, Dimension.VOLUME_FLOW) : display.us() ? usDecimals : decimals;
    }

    /** With its usual decimals; a dash when not known. */
    String number(double si, Display display) {
        boolean flow = isFlow() && Double.isFinite(si);
        return number(si, display, flow ? display.decimals(si, Dimension.VOLUME_FLOW) : decimals(display));
    }

    String number(double si, Display display, int places) {
        return Double.isFinite(si) ? Units.fixed(si, unit(display), places) : "-";
    }

    /** With its unit; a dash when not known. */
    String text(double si, Display display) {
        if (!Double.isFinite(si)) {
            return "-";
        }
        String symbol = unit(display).symbol();
        return number(si, display) + (symbol.isEmpty() ? "" : " " + symbol);
    }

    /**
     * With a sign, and with so many decimals that a figure that is not zero does not look like it: a limit missed by
     * 0.04 kPa must not read 0.0.
     */
    String signed(double si, Display display) {
        if (!Double.isFinite(si)) {
            return "-";
        }
        int places = decimals(display);
        String text = number(si, display, places);
        while (si != 0 && places < MOST_DECIMALS && new BigDecimal(text).signum() == 0) {
            places++;
            text = number(si, display, places);
        }
        return si >= 0 ? "+" + text : text;
    }

    /** As many decimals as show the largest of some figures with two digits, at least the usual. */
    int decimalsFor(double largestSi, Display display) {
        int places = decimals(display);
        double shown = Math.abs(Double.isFinite(largestSi) ? Units.to(largestSi, unit(display)) : 0);
        while (shown > 0 && places < MOST_DECIMALS - 2 && shown * Math.pow(10, places) < 10) {
            places++;
        }
        return places;
    }

    /** A figure somebody typed: as typed where that is short, else with its usual decimals. */
    String brief(double si, Display display) {
        String exact = exact(si, display);
        if (exact.isEmpty() || exact.length() > LONG) {
            return text(si, display);
        }
        String symbol = unit(display).symbol();
        return symbol.isEmpty() ? exact : exact + " " + symbol;
    }

    /** The shortest decimal text that reads back to the same double; empty when not known. */
    String exact(double si, Display display) {
        return Double.isFinite(si) ? Units.number(si, unit(display)) : "";
    }
}
