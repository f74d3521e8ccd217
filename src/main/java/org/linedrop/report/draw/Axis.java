package org.linedrop.report.draw;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A straight scale from figures to a picture, with round marks.
 *
 * @param low    figure at the start
 * @param high   figure at the end, above low
 * @param fromPx place of low, px
 * @param toPx   place of high, px; may be less than {@code fromPx}
 */
public record Axis(double low, double high, double fromPx, double toPx) {
    private static final double[] ROUND = {1, 2, 2.5, 5, 10};

    /**
     * A scale that holds some figures with a little room.
     *
     * @param low    least figure
     * @param high   largest
     * @param least  least span, above zero, for figures that are all alike
     * @param fromPx place of the start, px
     * @param toPx   place of the end, px
     * @return the scale
     */
    public static Axis around(double low, double high, double least, double fromPx, double toPx) {
        double span = Math.max(high - low, least);
        double middle = (low + high) / 2;
        double half = 0.54 * span;
        return new Axis(middle - half, middle + half, fromPx, toPx);
    }

    /**
     * Whether a figure is on the scale.
     *
     * @param figure a figure
     * @return false outside it
     */
    public boolean holds(double figure) {
        return figure >= low && figure <= high;
    }

    /**
     * Where a figure stands.
     *
     * @param figure a figure; those outside are put at the nearer end
     * @return px
     */
    public double at(double figure) {
        double share = Math.max(0, Math.min(1, (figure - low) / (high - low)));
        return fromPx + share * (toPx - fromPx);
    }

    /**
     * Round figures on the scale.
     *
     * @param most most of them, at least 2
     * @return rising
     */
    public List<Double> marks(int most) {
        double step = step(most);
        List<Double> marks = new ArrayList<>();
        for (double n = Math.ceil(low / step - 1e-9); n * step <= high + 1e-9 * step; n++) {
            marks.add(n * step);
        }
        return marks;
    }

    private double step(int most) {
        double rough = (high - low) / most;
        double ten = Math.pow(10, Math.floor(Math.log10(rough)));
        for (double round : ROUND) {
            if (round * ten >= rough) {
                return round * ten;
            }
        }
        return 10 * ten;
    }

    /**
     * A mark as it is written: with just the decimals that its step needs.
     *
     * @param mark one of {@link #marks}
     * @param most what was asked of {@link #marks}
     * @return plain decimal text
     */
    public String text(double mark, int most) {
        BigDecimal step =
                new BigDecimal(step(most)).round(new java.math.MathContext(3)).stripTrailingZeros();
        BigDecimal rounded = new BigDecimal(mark).setScale(Math.max(0, step.scale()), RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
