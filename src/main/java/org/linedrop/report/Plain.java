package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.fact.Words;

/** Plain text for a page of fixed width. Widths are counted in code points. */
final class Plain {
    /** What a terminal or a printed page takes. */
    static final int WIDTH = 120;

    private Plain() {}

    /** Without line ends, control and direction characters, which a name from a file must not bring into a table. */
    static String clean(String text) {
        return Words.printable(text);
    }

    static int width(String text) {
        return text.codePointCount(0, text.length());
    }

    static String left(String text, int width) {
        return text + " ".repeat(Math.max(0, width - width(text)));
    }

    static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - width(text))) + text;
    }

    /**
     * Breaks a text at spaces.
     *
     * @param text   the text
     * @param width  most code points of a line, at least indent + 1
     * @param indent spaces before every line but the first
     * @return at least one line
     */
    static List<String> wrap(String text, int width, int indent) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        boolean empty = true;
        for (String word : clean(text).split(" ", -1)) {
            String rest = word;
            if (!empty && width(line.toString()) + 1 + width(rest) > width) {
                lines.add(line.toString().stripTrailing());
                line = new StringBuilder(" ".repeat(indent));
                empty = true;
            }
            if (!empty) {
                line.append(' ');
            }
            // a word longer than a line is cut: better than a table out of line
            while (width(line.toString()) + width(rest) > width) {
                int room = rest.offsetByCodePoints(0, width - width(line.toString()));
                lines.add(line + rest.substring(0, room));
                rest = rest.substring(room);
                line = new StringBuilder(" ".repeat(indent));
            }
            line.append(rest);
            empty = false;
        }
        lines.add(line.toString().stripTrailing());
        return lines;
    }

    /**
     * Sets pieces beside each other, and the next in a new line where one does not fit any more.
     *
     * @param pieces  at least one
     * @param between what stands between two in one line
     * @param indent  spaces before every line but the first
     * @return lines
     */
    static List<String> joined(List<String> pieces, String between, int indent) {
        List<String> lines = new ArrayList<>();
        String line = clean(pieces.get(0));
        for (String piece : pieces.subList(1, pieces.size())) {
            String longer = line + between + clean(piece);
            if (width(longer) > WIDTH) {
                lines.addAll(wrap(line, WIDTH, indent));
                line = " ".repeat(indent) + clean(piece);
            } else {
                line = longer;
            }
        }
        lines.addAll(wrap(line, WIDTH, indent));
        return lines;
    }
}
