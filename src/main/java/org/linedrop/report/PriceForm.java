package org.linedrop.report;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Place;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.study.kit.KitItem;
import org.linedrop.study.kit.OwnFigures;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * The list of what the user knows of the things in a kit, as a spreadsheet: {@code item, per, price EUR, mass kg, cut-off
 * mm}. Written with its figures empty, read when they are filled in.
 */
public final class PriceForm {
    private static final String ITEM = "item";
    private static final String PER = "per";
    private static final String PRICE = "price";
    private static final String MASS = "mass";
    private static final String CUT_OFF = "cut-off";
    private static final String PIECE = "piece";
    private static final List<String> HEADINGS = List.of(ITEM, PER, PRICE, MASS, CUT_OFF);

    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private String currency = "";
    private String massUnit = "kg";
    private String cutOffUnit = "mm";

    private PriceForm(String file) {
        this.file = file;
    }

    /**
     * The form, for things of a kit.
     *
     * @param items   what it has a line for
     * @param display units of its figures
     * @return a table, ending with a line end
     */
    public static String empty(List<KitItem> items, Display display) {
        boolean us = display.us();
        List<List<String>> records = new ArrayList<>();
        for (KitItem item : items) {
            records.add(List.of(
                    CsvReport.guarded(item.item()),
                    item.byLength() ? KitColumns.LENGTH.unit(display).symbol() : PIECE,
                    "",
                    "",
                    ""));
        }
        return CsvReport.written(
                List.of(ITEM, PER, PRICE, MASS + (us ? " lb" : " kg"), CUT_OFF + (us ? " in" : " mm")),
                records,
                List.of());
    }

    /**
     * Reads a form that was filled in.
     *
     * @param text the table
     * @param file its name for messages
     * @return the figures in SI, prices per piece or metre
     * @throws ProblemsException with everything that is wrong
     */
    public static OwnFigures read(String text, String file) {
        PriceForm form = new PriceForm(file);
        List<OwnFigures.Row> rows = form.rows(text.startsWith("\uFEFF") ? text.substring(1) : text);
        if (!form.problems.isEmpty()) {
            throw new ProblemsException(form.problems);
        }
        return new OwnFigures(form.currency, rows);
    }

    private List<OwnFigures.Row> rows(String text) {
        Map<String, OwnFigures.Row> rows = new LinkedHashMap<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(text)) {
            boolean head = true;
            for (CsvRecord cells : reader) {
                if (head) {
                    head(cells);
                    head = false;
                    if (!problems.isEmpty()) {
                        return List.of();
                    }
                    continue;
                }
                OwnFigures.Row row = row(cells);
                if (row != null && rows.putIfAbsent(row.item(), row) != null) {
                    problem(cells, ITEM, row.item(), "\"" + row.item() + "\" is given twice", "Leave one of the two");
                }
            }
            if (head) {
                problems.add(new Problem(new Place(file, 1, 1, ""), "", "", "the list is empty", START));
            }
        } catch (CsvParseException e) {
            problems.add(new Problem(
                    new Place(file, 0, 0, ""), "", "", "it is no table with commas: " + e.getMessage(), START));
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string gives everything
        }
        return List.copyOf(rows.values());
    }

    private static final String START = "Start from the form that --price-form writes";

    private void head(CsvRecord cells) {
        for (int i = 0; i < cells.getFieldCount(); i++) {
            String heading = cells.getField(i).strip();
            if (heading.indexOf(';') >= 0 || heading.indexOf('\t') >= 0) {
                problem(cells, "", heading, "its columns are not parted by commas", "Save it as CSV with commas");
                return;
            }
            String name = HEADINGS.stream()
                    .filter(each -> heading.equals(each) || heading.startsWith(each + " "))
                    .findFirst()
                    .orElse("");
            String rest = heading.substring(name.length()).strip();
            if (name.isEmpty() && !heading.isEmpty()) {
                problem(
                        cells,
                        heading,
                        heading,
                        "no column is called \"" + heading + "\"",
                        "Columns are: " + String.join(", ", HEADINGS)
                                + ", with the unit behind: mass kg, cut-off mm, price" + " EUR");
            } else if (!name.isEmpty()) {
                columns.put(name, i);
                switch (name) {
                    case PRICE -> currency = rest;
                    case MASS -> massUnit = unit(cells, heading, rest, Dimension.MASS);
                    case CUT_OFF -> cutOffUnit = unit(cells, heading, rest, Dimension.LENGTH);
                    default -> {
                        // no unit
                    }
                }
            }
        }
        if (!columns.containsKey(ITEM)) {
            problem(cells, ITEM, "", "there is no column \"" + ITEM + "\"", START);
        }
    }

    private String unit(CsvRecord cells, String heading, String symbol, Dimension dimension) {
        try {
            return Units.unit(symbol, dimension).symbol();
        } catch (UnitException wrong) {
            problem(
                    cells,
                    heading,
                    symbol,
                    "column \"" + heading + "\" needs its unit",
                    "Write for example " + (dimension == Dimension.MASS ? "mass kg" : "cut-off mm"));
            return dimension.si();
        }
    }

    private OwnFigures.@Nullable Row row(CsvRecord cells) {
        String item = cell(cells, ITEM);
        String name = item.startsWith("'") ? item.substring(1) : item;
        if (name.isEmpty()) {
            return null;
        }
        String said = cell(cells, PER);
        double perM = per(cells);
        double price = number(cells, PRICE);
        double mass = number(cells, MASS);
        double cutOff = number(cells, CUT_OFF);
        return new OwnFigures.Row(
                name,
                said.isEmpty()
                        ? OwnFigures.Per.NOT_SAID
                        : said.equals(PIECE) ? OwnFigures.Per.PIECE : OwnFigures.Per.METRE,
                price / perM,
                Double.isNaN(mass) ? mass : Units.from(mass, Units.unit(massUnit, Dimension.MASS)) / perM,
                Double.isNaN(cutOff) ? cutOff : Units.from(cutOff, Units.unit(cutOffUnit, Dimension.LENGTH)));
    }

    /** Metres that price and mass are of; 1 for a piece. */
    private double per(CsvRecord cells) {
        String per = cell(cells, PER);
        if (per.isEmpty() || per.equals(PIECE)) {
            return 1;
        }
        try {
            return Units.from(1, Units.unit(per, Dimension.LENGTH));
        } catch (UnitException wrong) {
            problem(cells, PER, per, "per \"" + per + "\" is neither piece nor a length", "Write piece, m or ft");
            return 1;
        }
    }

    private double number(CsvRecord cells, String column) {
        String text = cell(cells, column);
        if (text.isEmpty()) {
            return Double.NaN;
        }
        double value = text.matches("\\d{1,9}(\\.\\d{1,9})?") ? Double.parseDouble(text) : Double.NaN;
        if (Double.isNaN(value)) {
            problem(
                    cells,
                    column,
                    text,
                    column + " \"" + text + "\" is no number",
                    text.indexOf(',') >= 0
                            ? "A comma is not a decimal point here: write " + text.replace(',', '.')
                            : "Write the number alone, as in 18.50; its unit stands in the heading");
        }
        return value;
    }

    private String cell(CsvRecord cells, String column) {
        Integer at = columns.get(column);
        return at == null || at >= cells.getFieldCount()
                ? ""
                : cells.getField(at).strip();
    }

    private void problem(CsvRecord cells, String key, String value, String message, String hint) {
        problems.add(
                new Problem(new Place(file, (int) cells.getStartingLineNumber(), 0, ""), key, value, message, hint));
    }
}
