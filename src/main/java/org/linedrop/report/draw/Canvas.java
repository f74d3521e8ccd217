package org.linedrop.report.draw;

/** A picture in the making. Places are in px from its upper left corner. All looks are attributes: no style is needed. */
public final class Canvas {
    /** Height of letters that carry the figures, px. */
    public static final double TEXT_PX = 12;
    /** Height of lesser letters, px. */
    public static final double SMALL_PX = 11;

    private final double widthPx;
    private final Element drawn = Element.of("g");

    /**
     * An empty picture.
     *
     * @param widthPx its width
     */
    public Canvas(double widthPx) {
        this.widthPx = widthPx;
    }

    /** Where a text starts. */
    public enum Anchor {
        /** To the right of its place. */
        START("start"),
        /** On both sides of it. */
        MIDDLE("middle"),
        /** To the left of it. */
        END("end");

        private final String word;

        Anchor(String word) {
            this.word = word;
        }
    }

    /**
     * Its width.
     *
     * @return px
     */
    public double widthPx() {
        return widthPx;
    }

    /**
     * Writes a text.
     *
     * @param xPx    its place
     * @param yPx    its base line
     * @param anchor where it starts
     * @param text   the text
     * @param look   its letters
     */
    public void text(double xPx, double yPx, Anchor anchor, String text, Look look) {
        Element element = Element.of("text", text).set("x", xPx).set("y", yPx);
        if (anchor != Anchor.START) {
            element.set("text-anchor", anchor.word);
        }
        element.set("font-size", look.sizePx()).set("fill", look.colour());
        if (look.bold()) {
            element.set("font-weight", "700");
        }
        drawn.add(element);
    }

    /**
     * Letters.
     *
     * @param sizePx height
     * @param colour a colour
     * @param bold   whether they are heavy
     */
    public record Look(double sizePx, String colour, boolean bold) {
        /** For figures and names. */
        public static final Look PLAIN = new Look(TEXT_PX, Shades.INK, false);
        /** For what stands out. */
        public static final Look BOLD = new Look(TEXT_PX, Shades.INK, true);
        /** For what explains. */
        public static final Look MUTED = new Look(SMALL_PX, Shades.MUTED, false);
    }

    /**
     * Draws a straight line.
     *
     * @param x1Px   start
     * @param y1Px   start
     * @param x2Px   end
     * @param y2Px   end
     * @param stroke its look
     */
    public void line(double x1Px, double y1Px, double x2Px, double y2Px, Stroke stroke) {
        drawn.add(stroke.on(Element.of("line")
                .set("x1", x1Px)
                .set("y1", y1Px)
                .set("x2", x2Px)
                .set("y2", y2Px)));
    }

    /**
     * A line's look.
     *
     * @param widthPx its width
     * @param colour  its colour
     * @param dashes  as SVG writes them; empty for a whole line
     */
    public record Stroke(double widthPx, String colour, String dashes) {
        /**
         * A whole line.
         *
         * @param widthPx its width
         * @param colour  its colour
         * @return the look
         */
        public static Stroke of(double widthPx, String colour) {
            return new Stroke(widthPx, colour, "");
        }

        private Element on(Element element) {
            element.set("stroke", colour).set("stroke-width", widthPx);
            return dashes.isEmpty() ? element : element.set("stroke-dasharray", dashes);
        }
    }

    /**
     * Draws a line through several places.
     *
     * @param places x and y by turns
     * @param stroke its look
     */
    public void path(double[] places, Stroke stroke) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i + 1 < places.length; i += 2) {
            points.append(i == 0 ? "" : " ")
                    .append(Element.number(places[i]))
                    .append(',')
                    .append(Element.number(places[i + 1]));
        }
        drawn.add(stroke.on(Element.of("polyline")
                .set("points", points.toString())
                .set("fill", "none")
                .set("stroke-linejoin", "round")));
    }

    /**
     * Fills a polygon.
     *
     * @param places x and y by turns
     * @param fill   its colour
     */
    public void area(double[] places, String fill) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i + 1 < places.length; i += 2) {
            points.append(Element.number(places[i]))
                    .append(',')
                    .append(Element.number(places[i + 1]))
                    .append(' ');
        }
        drawn.add(Element.of("polygon").set("points", points.toString().strip()).set("fill", fill));
    }

    /**
     * Draws a box.
     *
     * @param xPx      left
     * @param yPx      top
     * @param widthPx  width; nothing is drawn under a tenth
     * @param heightPx height
     * @param fill     its colour
     * @param stroke   its edge
     */
    public void box(double xPx, double yPx, double widthPx, double heightPx, String fill, Stroke stroke) {
        drawn.add(stroke.on(Element.of("rect")
                .set("x", xPx)
                .set("y", yPx)
                .set("width", Math.max(0.1, widthPx))
                .set("height", heightPx)
                .set("fill", fill)));
    }

    /**
     * Draws a dot.
     *
     * @param xPx      middle
     * @param yPx      middle
     * @param radiusPx radius
     * @param fill     its colour
     * @param stroke   its edge
     */
    public void dot(double xPx, double yPx, double radiusPx, String fill, Stroke stroke) {
        drawn.add(stroke.on(Element.of("circle")
                .set("cx", xPx)
                .set("cy", yPx)
                .set("r", radiusPx)
                .set("fill", fill)));
    }

    /**
     * The finished picture.
     *
     * @param heightPx its height
     * @param title    its name, for those who cannot see it and as a tool tip
     * @param words    what it shows, in words
     * @return an {@code svg} element that stands alone or in a page
     */
    public Element finished(double heightPx, String title, String words) {
        return Element.of("svg")
                .set("xmlns", "http://www.w3.org/2000/svg")
                .set("viewBox", "0 0 " + Element.number(widthPx) + " " + Element.number(heightPx))
                .set("width", widthPx)
                .set("height", heightPx)
                .set("role", "img")
                .set("aria-label", title + ". " + words)
                .set("font-family", "system-ui, sans-serif")
                .add(Element.of("title", title))
                .add(Element.of("desc", words))
                .add(drawn);
    }
}
