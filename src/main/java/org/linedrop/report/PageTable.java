package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.report.draw.Element;

/**
 * A text table as a table of the page: the same cells. On a narrow screen each row becomes a block whose figures carry
 * their headings.
 */
final class PageTable {
    private static final int LONG = 22;
    /** From here on a cell of a column of figures may go on in the next line. */
    private static final int SHORT = 9;

    private PageTable() {}

    /** A column's head. */
    private record Head(String heading, String unit, boolean right) {
        String whole() {
            return unit.isEmpty() ? heading : heading + " " + unit;
        }
    }

    /**
     * Makes the table.
     *
     * @param caption what it is, for those who cannot see it
     */
    static List<Element> of(Table table, String caption) {
        if (table.rows().isEmpty()) {
            return List.of(Element.of("p", "none"));
        }
        List<Head> heads = new ArrayList<>();
        table.heads((heading, unit, right) -> heads.add(new Head(heading, unit, right)));
        Element head = Element.of("tr");
        for (Head each : heads) {
            Element cell = Element.of("th").set("scope", "col").set("class", each.right() ? "n" : "w");
            cell.text(each.heading());
            if (!each.unit().isEmpty()) {
                cell.add(Element.of("span", each.unit()).set("class", "unit"));
            }
            head.add(cell);
        }
        Element body = Element.of("tbody");
        for (List<String> row : table.rows()) {
            body.add(row(row, heads));
        }
        String width = heads.size() > 9 ? "wide" : heads.size() > 4 ? "middle" : "small";
        return List.of(Element.of("table")
                .set("class", width)
                .add(Element.of("caption", caption))
                .add(Element.of("thead").add(head))
                .add(body));
    }

    /** On a narrow screen what is not known is left out, and long words get the whole width. */
    private static String extra(String text) {
        if (text.isEmpty() || text.equals("-")) {
            return " none";
        }
        return text.length() > LONG ? " long" : text.length() > SHORT ? " words" : "";
    }

    private static Element row(List<String> cells, List<Head> heads) {
        Element row = Element.of("tr");
        String first = cells.get(0);
        if (first.equals("whole run") || first.equals("without the pump")) {
            row.set("class", "sum");
        }
        for (int i = 0; i < cells.size(); i++) {
            Head head = heads.get(i);
            String text = cells.get(i).strip();
            Element cell = Element.of(i == 0 ? "th" : "td");
            if (i == 0) {
                cell.set("scope", "row");
            }
            cell.set("class", (head.right() ? "n" : "w") + extra(text));
            cell.set("data-head", head.whole());
            row.add(cell.text(text));
        }
        return row;
    }
}
