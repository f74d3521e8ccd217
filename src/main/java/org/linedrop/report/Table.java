package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A text table. Columns are as wide as what stands in them; where the page is too narrow, columns of words give way:
 * their cells go on in the next line.
 */
final class Table {
    /** Words narrower than this cannot be read. */
    private static final int NARROWEST = 12;

    /** Headings of figures are broken at this width. */
    private static final int HEADING = 20;

    private static final int TIGHT = 1;
    private static final int LOOSE = 2;

    private final List<Head> heads = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();

    /**
     * A column's head.
     *
     * @param heading first line
     * @param unit    second line, empty for none
     * @param right   whether cells end in line
     * @param words   whether its cells may go on in the next line
     * @param indent  of those further lines
     */
    private record Head(String heading, String unit, boolean right, boolean words, int indent) {
        List<String> above() {
            // spaces behind a heading keep it over the figures where marks follow them
            String behind =
                    " ".repeat(heading.length() - heading.stripTrailing().length());
            return Plain.wrap(heading.stripTrailing(), HEADING, 0).stream()
                    .map(line -> line + behind)
                    .toList();
        }
    }

    Table numbers(String heading, String unit) {
        heads.add(new Head(heading, unit, true, false, 0));
        return this;
    }

    Table fixed(String heading, boolean right) {
        heads.add(new Head(heading, "", right, false, 0));
        return this;
    }

    Table words(String heading, int indent) {
        heads.add(new Head(heading, "", false, true, indent));
        return this;
    }

    Table words(String heading, boolean right) {
        heads.add(new Head(heading, "", right, true, 0));
        return this;
    }

    void row(List<String> cells) {
        if (cells.size() != heads.size()) {
            throw new IllegalArgumentException(cells.size() + " cells in a table of " + heads.size() + " columns");
        }
        rows.add(cells.stream().map(Plain::clean).toList());
    }

    /** Calls for each head with its heading, its unit and whether figures stand under it. */
    void heads(Heads each) {
        heads.forEach(head -> each.head(head.heading().strip(), head.unit().strip(), head.right()));
    }

    /** The rows, each with as many cells as there are heads. */
    List<List<String>> rows() {
        return rows;
    }

    /** Takes heads. */
    interface Heads {
        void head(String heading, String unit, boolean right);
    }

    /** How wide it is if nothing gives way. */
    int naturalWidth() {
        int sum = (heads.size() - 1) * TIGHT;
        for (int i = 0; i < heads.size(); i++) {
            sum += natural(i);
        }
        return sum;
    }

    List<String> lines() {
        int[] widths = new int[heads.size()];
        int sum = 0;
        for (int i = 0; i < widths.length; i++) {
            widths[i] = natural(i);
            sum += widths[i];
        }
        int gaps = heads.size() - 1;
        int gap = sum + gaps * LOOSE <= Plain.WIDTH ? LOOSE : TIGHT;
        giveWay(widths, sum + gaps * gap - Plain.WIDTH);
        List<String> lines = new ArrayList<>();
        int above = heads.stream().mapToInt(head -> head.above().size()).max().orElse(1);
        for (int n = above; n > 0; n--) {
            int fromBelow = n;
            lines.addAll(
                    line(heads.stream().map(head -> heading(head, fromBelow)).toList(), widths, gap));
        }
        if (heads.stream().anyMatch(head -> !head.unit().isBlank())) {
            lines.addAll(line(heads.stream().map(Head::unit).toList(), widths, gap));
        }
        for (List<String> row : rows) {
            lines.addAll(line(row, widths, gap));
        }
        return lines;
    }

    /** Headings stand on their last line. */
    private static String heading(Head head, int fromBelow) {
        int at = head.above().size() - fromBelow;
        return at < 0 ? "" : head.above().get(at);
    }

    private int natural(int column) {
        Head head = heads.get(column);
        int width = Plain.width(head.unit());
        for (String line : head.above()) {
            width = Math.max(width, Plain.width(line));
        }
        for (List<String> row : rows) {
            width = Math.max(width, Plain.width(row.get(column)));
        }
        return width;
    }

    /** Takes from the widest column of words, again and again. */
    private void giveWay(int[] widths, int tooWide) {
        for (int left = tooWide; left > 0; left--) {
            int widest = -1;
            for (int i = 0; i < widths.length; i++) {
                boolean gives = heads.get(i).words() && widths[i] > NARROWEST;
                if (gives && (widest < 0 || widths[i] > widths[widest])) {
                    widest = i;
                }
            }
            if (widest < 0) {
                return;
            }
            widths[widest]--;
        }
    }

    private List<String> line(List<String> cells, int[] widths, int gap) {
        List<List<String>> broken = new ArrayList<>();
        int height = 1;
        for (int i = 0; i < widths.length; i++) {
            List<String> lines = heads.get(i).words()
                    ? Plain.wrap(cells.get(i), widths[i], heads.get(i).indent())
                    : List.of(cells.get(i));
            broken.add(lines);
            height = Math.max(height, lines.size());
        }
        List<String> lines = new ArrayList<>();
        for (int n = 0; n < height; n++) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String cell = n < broken.get(i).size() ? broken.get(i).get(n) : "";
                line.append(heads.get(i).right() ? Plain.right(cell, widths[i]) : Plain.left(cell, widths[i]))
                        .append(" ".repeat(gap));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }
}
