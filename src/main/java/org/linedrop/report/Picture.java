package org.linedrop.report;

import java.util.function.DoubleFunction;
import org.linedrop.report.draw.Element;

/**
 * A picture of results: the same figures drawn wide for a desk or paper and narrow for a hand.
 *
 * @param name   its name as a file, without ending
 * @param title  what it is
 * @param words  what it shows, in words, for those who cannot see it
 * @param wide   drawn {@value #WIDE_PX} px wide
 * @param narrow drawn {@value #NARROW_PX} px wide
 */
public record Picture(String name, String title, String words, Element wide, Element narrow) {
    /** Width of the wide drawing: a page of paper between its margins at 96 px to the inch, and a little more. */
    public static final int WIDE_PX = 760;
    /** Width of the narrow drawing: a hand-held screen between its margins. */
    public static final int NARROW_PX = 328;

    static Picture of(String name, String title, String words, DoubleFunction<Element> drawn) {
        return new Picture(name, title, words, drawn.apply(WIDE_PX), drawn.apply(NARROW_PX));
    }

    /**
     * The picture as a file of its own.
     *
     * @return the wide drawing as SVG, ending with a line end
     */
    public String svg() {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + wide.write();
    }

    static boolean narrow(double widthPx) {
        return widthPx < (WIDE_PX + NARROW_PX) / 2.0;
    }
}
