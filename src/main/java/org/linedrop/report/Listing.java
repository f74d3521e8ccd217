package org.linedrop.report;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.linedrop.report.draw.Element;
import org.linedrop.units.Display;
import tools.jackson.core.JsonGenerator;

/**
 * Rows of one type as a page of text, CSV or JSON: what the library knows, each figure with its source and status.
 *
 * @param <R> type of the row
 */
public final class Listing<R> {
    private final String name;
    private final String heading;
    private final List<Column<R>> columns;
    private final List<R> rows;
    private final List<Block<?>> blocks;
    private final List<String> notes;

    /** Rows of another type that stand below in text, and by their own key in JSON. */
    private record Block<S>(String name, String heading, List<Column<S>> columns, List<S> rows) {
        List<String> lines(Display display) {
            return Listing.lines(heading, columns, rows, display);
        }

        List<Element> elements(Display display) {
            return PageTable.of(table(columns, rows, display), heading);
        }

        void write(JsonRows json) {
            json.array(name, columns, rows);
        }
    }

    private Listing(
            String name,
            String heading,
            List<Column<R>> columns,
            List<R> rows,
            List<Block<?>> blocks,
            List<String> notes) {
        this.name = name;
        this.heading = heading;
        this.columns = columns;
        this.rows = List.copyOf(rows);
        this.blocks = List.copyOf(blocks);
        this.notes = List.copyOf(notes);
    }

    static <R> Listing<R> of(String name, String heading, List<Column<R>> columns, List<R> rows, List<String> notes) {
        return new Listing<>(name, heading, columns, rows, List.of(), notes);
    }

    <S> Listing<R> below(String itsName, String itsHeading, List<Column<S>> itsColumns, List<S> itsRows) {
        List<Block<?>> more = new ArrayList<>(blocks);
        more.add(new Block<>(itsName, itsHeading, itsColumns, itsRows));
        return new Listing<>(name, heading, columns, rows, more, notes);
    }

    /**
     * A page of text, 120 columns wide.
     *
     * @param display units
     * @return the page, ending with a line end
     */
    public String text(Display display) {
        List<String> lines = new ArrayList<>(lines(heading, columns, rows, display));
        for (Block<?> block : blocks) {
            lines.add("");
            lines.addAll(block.lines(display));
        }
        if (!notes.isEmpty()) {
            lines.add("");
        }
        notes.forEach(note -> lines.addAll(Plain.wrap(note, Plain.WIDTH, 2)));
        lines.add("");
        lines.addAll(Safety.lines());
        return String.join("\n", lines) + "\n";
    }

    static <S> List<String> lines(String heading, List<Column<S>> columns, List<S> rows, Display display) {
        List<String> lines = new ArrayList<>(Plain.wrap(heading, Plain.WIDTH, 2));
        if (rows.isEmpty()) {
            lines.add("none");
            return lines;
        }
        lines.addAll(table(columns, rows, display).lines());
        return lines;
    }

    /** The list on a page: its heading, its tables, its notes. */
    List<Element> elements(Display display) {
        List<Element> elements = new ArrayList<>();
        elements.add(Element.of("p", heading));
        elements.addAll(PageTable.of(table(columns, rows, display), heading));
        for (Block<?> block : blocks) {
            elements.add(Element.of("p", block.heading()));
            elements.addAll(block.elements(display));
        }
        notes.forEach(note -> elements.add(Element.of("p", note).set("class", "note")));
        return elements;
    }

    static <S> Table table(List<Column<S>> columns, List<S> rows, Display display) {
        List<Column<S>> seen = Columns.seen(columns);
        Table table = new Table();
        for (Column<S> column : seen) {
            Column.Form<S> form = Objects.requireNonNull(column.form());
            if (form.right()) {
                table.numbers(form.heading(), form.unit(display));
            } else {
                table.words(form.heading(), 2);
            }
        }
        Column.Look look = new Column.Look(display, Scale.DROP.decimals(display));
        for (S row : rows) {
            table.row(seen.stream()
                    .map(column -> Objects.requireNonNull(column.form()).cell().apply(row, look))
                    .toList());
        }
        return table;
    }

    /**
     * A table for a spreadsheet, as {@link CsvReport} writes them: exact numbers, the safety words in the last lines.
     *
     * @param display units of the numbers
     * @return a table, ending with a line end
     */
    public String csv(Display display) {
        return CsvReport.written(
                CsvReport.head(columns, display),
                rows.stream().map(row -> CsvReport.cells(columns, row, display)).toList(),
                Safety.lines());
    }

    /**
     * The rows as JSON, always SI.
     *
     * @return JSON, ending with a line end
     */
    public String json() {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = JsonRows.generator(out)) {
            JsonRows objects = new JsonRows(json);
            json.writeStartObject();
            json.writeStringProperty("list", name);
            json.writeStringProperty("libraryVersion", Library.version());
            if (heading.endsWith(".")) { // an answer, not a title
                json.writeStringProperty("sentence", heading);
            }
            objects.array("rows", columns, rows);
            blocks.forEach(block -> block.write(objects));
            objects.strings("notes", notes);
            objects.strings("safety", Safety.lines());
            json.writeEndObject();
            json.writeRaw('\n');
        }
        return out.toString();
    }
}
