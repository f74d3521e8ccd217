package org.linedrop.report;

import java.util.function.DoubleFunction;
import org.linedrop.report.draw.Element;

/** A picture of results: the same figures drawn wide for a desk or paper and narrow for a hand. */
public final class Picture {
    /** Width of the wide drawing: a page of paper between its margins at 96 px to the inch, and a little more. */
    static final int WIDE_PX = 760;
    /** Width of the narrow drawing: a hand-held screen between its margins. */
    static final int NARROW_PX = 328;

    private final String name;
    private final String title;
    private final String words;
    private final Element wide;
    private final Element narrow;

    private Picture(String name, String title, String words, Element wide, Element narrow) {
        this.name = name;
        this.title = title;
        this.words = words;
        this.wide = wide;
        this.narrow = narrow;
    }

    static Picture of(String name, String title, String words, DoubleFunction<Element> drawn) {
        return new Picture(name, title, words, drawn.apply(WIDE_PX), drawn.apply(NARROW_PX));
    }

    /**
     * Its name as a file.
     *
     * @return the name without ending
     */
    public String name() {
        return name;
    }

    /**
     * What it is.
     *
     * @return a title
     */
    public String title() {
        return title;
    }

    /**
     * What it shows, for those who cannot see it.
     *
     * @return sentences
     */
    public String words() {
        return words;
    }

    /** Drawn {@value #WIDE_PX} px wide. */
    Element wide() {
        return wide;
    }

    /** Drawn {@value #NARROW_PX} px wide. */
    Element narrow() {
        return narrow;
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
