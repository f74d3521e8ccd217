package org.linedrop.report.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * How much room a text takes. The reader's browser chooses the letters, so widths are those of a wide sans serif
 * (DejaVu Sans, read off its metrics to a few percent, from memory); narrower letters only leave more room.
 */
public final class Lettering {
    private Lettering() {}

    /**
     * Width of a text.
     *
     * @param text   the text
     * @param sizePx height of its letters, px
     * @return px, seldom less than it takes
     */
    public static double width(String text, double sizePx) {
        return sizePx * text.codePoints().mapToDouble(Lettering::ems).sum();
    }

    private static double ems(int c) {
        if (c > 0x2e80) {
            return 1.05; // ideographs and symbols are square
        }
        if ("iljI|.,:;'!()[]{} /\\ft\"-".indexOf(c) >= 0) {
            return 0.42;
        }
        if ("mwMW@%&".indexOf(c) >= 0) {
            return 1.0;
        }
        return Character.isUpperCase(c) || c > 0x7f ? 0.76 : 0.65;
    }

    /**
     * Breaks a text at spaces.
     *
     * @param text    the text
     * @param roomPx  width of a line, px
     * @param sizePx  height of its letters, px
     * @param most    most lines; what is left over is cut and marked by an ellipsis
     * @return at least one line
     */
    public static List<String> wrap(String text, double roomPx, double sizePx, int most) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, sizePx) > roomPx) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        if (lines.size() > most) {
            String rest = String.join(" ", lines.subList(most - 1, lines.size()));
            lines = new ArrayList<>(lines.subList(0, most - 1));
            lines.add(rest);
        }
        lines.replaceAll(each -> cut(each, roomPx, sizePx));
        return lines;
    }

    /**
     * Cuts a text to a width.
     *
     * @param text   the text
     * @param roomPx the width, px
     * @param sizePx height of its letters, px
     * @return the text, or its beginning and an ellipsis
     */
    public static String cut(String text, double roomPx, double sizePx) {
        if (width(text, sizePx) <= roomPx) {
            return text;
        }
        int end = text.length();
        while (end > 0 && width(text.substring(0, end) + "\u2026", sizePx) > roomPx) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).strip() + "\u2026";
    }
}
