package org.linedrop.report.draw;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An element of a page or picture. Every text and attribute is escaped when it is written, so that no name of a circuit
 * can become markup; what is written is HTML to a browser and well formed to an XML reader. There is no way to write a
 * script or an attribute that runs one.
 */
public final class Element {
    /** Written without an end tag: those that HTML knows as void, and leaves of a picture. */
    private static final List<String> ALONE =
            List.of("br", "hr", "meta", "col", "rect", "line", "path", "circle", "polyline", "polygon");

    /** A line end behind these keeps the source readable and shows nowhere. */
    private static final List<String> BLOCKS = List.of(
            "html",
            "head",
            "body",
            "header",
            "main",
            "footer",
            "section",
            "figure",
            "figcaption",
            "div",
            "nav",
            "h1",
            "h2",
            "h3",
            "p",
            "ul",
            "li",
            "table",
            "caption",
            "thead",
            "tbody",
            "tr",
            "svg",
            "g",
            "text",
            "rect",
            "line",
            "path",
            "circle",
            "polyline",
            "polygon",
            "title",
            "desc",
            "meta",
            "style");

    private static final List<String> REFUSED = List.of("script", "iframe", "object", "embed", "foreignobject");

    private final String name;
    private final Map<String, String> attributes = new LinkedHashMap<>();
    private final List<Object> children = new ArrayList<>();

    private Element(String name) {
        this.name = named(name);
        if (REFUSED.contains(name.toLowerCase(java.util.Locale.ROOT))) {
            throw new IllegalArgumentException("a page holds no element " + name);
        }
    }

    /**
     * Starts an element.
     *
     * @param name its name, of letters, digits, hyphen and colon
     * @return an element without attributes and children
     */
    public static Element of(String name) {
        return new Element(name);
    }

    /**
     * An element that holds one text.
     *
     * @param name its name
     * @param text any text
     * @return the element
     */
    public static Element of(String name, String text) {
        return new Element(name).text(text);
    }

    private static String named(String name) {
        if (!name.matches("[A-Za-z][A-Za-z0-9:-]*")) {
            throw new IllegalArgumentException("\"" + name + "\" is no name of an element or attribute");
        }
        return name;
    }

    /**
     * Sets an attribute; setting it again replaces it.
     *
     * @param attribute its name; none that starts with {@code on}
     * @param value     any text
     * @return this
     */
    public Element set(String attribute, String value) {
        if (attribute.toLowerCase(java.util.Locale.ROOT).startsWith("on")) {
            throw new IllegalArgumentException("a page holds no attribute " + attribute);
        }
        attributes.put(named(attribute), value);
        return this;
    }

    /**
     * Sets an attribute to a number, written to a hundredth without regard to the language of the machine.
     *
     * @param attribute its name
     * @param value     finite
     * @return this
     */
    public Element set(String attribute, double value) {
        return set(attribute, number(value));
    }

    /**
     * A number as attributes write it.
     *
     * @param value finite
     * @return plain decimal text with at most two decimals
     */
    static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).setScale(2, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /**
     * Adds a text.
     *
     * @param text any text; what XML cannot hold and characters without width are left out
     * @return this
     */
    public Element text(String text) {
        children.add(text);
        return this;
    }

    /**
     * Adds a child.
     *
     * @param child another element
     * @return this
     */
    public Element add(Element child) {
        children.add(child);
        return this;
    }

    /**
     * Adds children.
     *
     * @param more other elements
     * @return this
     */
    public Element addAll(List<Element> more) {
        children.addAll(more);
        return this;
    }

    /**
     * Writes the element with all that is in it.
     *
     * @return markup
     */
    public String write() {
        StringBuilder out = new StringBuilder();
        write(out);
        return out.toString();
    }

    private void write(StringBuilder out) {
        out.append('<').append(name);
        attributes.forEach((key, value) ->
                out.append(' ').append(key).append("=\"").append(escaped(value)).append('"'));
        if (children.isEmpty() && ALONE.contains(name)) {
            out.append("/>");
        } else {
            out.append('>');
            for (Object child : children) {
                if (child instanceof Element element) {
                    element.write(out);
                } else {
                    out.append(name.equals("style") ? style((String) child) : escaped((String) child));
                }
            }
            out.append("</").append(name).append('>');
        }
        if (BLOCKS.contains(name)) {
            out.append('\n');
        }
    }

    /** Browsers do not read references in a style, so what would need one is refused. */
    private static String style(String css) {
        if (css.matches("(?s).*[<>&].*")) {
            throw new IllegalArgumentException("a style holds none of < > &");
        }
        return css;
    }

    private static String escaped(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> legal(c, out);
            }
        });
        return out.toString();
    }

    /** Control characters become spaces; format and direction characters, half pairs and non-characters go. */
    private static void legal(int c, StringBuilder out) {
        int type = Character.getType(c);
        if (Character.isISOControl(c) || type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR) {
            out.append(' ');
        } else if (type != Character.FORMAT && type != Character.SURROGATE && (c & 0xfffe) != 0xfffe) {
            out.appendCodePoint(c);
        }
    }
}
