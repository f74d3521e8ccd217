package org.linedrop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Figures of the printed tables, drawn at random, are those of their source row, and name its source and status. */
class CatalogueTraceOutputTest {
    private static final Path ROWS = Path.of("src/main/resources/org/linedrop/catalogue");
    private static final int FIGURES = 50;

    /** Heading in the printed table by quantity of the source table. */
    private static final Map<String, String> HEADINGS = Map.of(
            "bore", "bore",
            "outside-diameter", "outside diameter",
            "bend-radius", "minimum bend radius",
            "working-pressure", "working pressure",
            "proof-pressure", "proof pressure",
            "burst-pressure", "burst pressure",
            "vacuum", "vacuum",
            "min-temperature", "lowest temperature",
            "max-temperature", "highest temperature",
            "mass", "mass kg/m");

    private static List<NamedCsvRecord> printed(String list) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Runner.run(new String[] {"catalogue", list, "--format", "csv"}, out, out);
        return records(out.toString(StandardCharsets.UTF_8));
    }

    private static List<NamedCsvRecord> source(String table) throws IOException {
        return records(Files.readString(ROWS.resolve(table + ".csv")));
    }

    private static List<NamedCsvRecord> records(String text) {
        return CsvReader.builder().ofNamedCsvRecord(text).stream().toList();
    }

    private static String title(String key) throws IOException {
        return source("sources").stream()
                .filter(row -> row.getField("key").equals(key))
                .findFirst()
                .orElseThrow()
                .getField("title");
    }

    /** What a figure of a source table is in the units of the printed one: mm, kPa, C, kg/m. */
    private static double metric(double value, String unit) {
        return switch (unit) {
            case "in" -> value * 25.4;
            case "psi" -> value * 6.894757293168361;
            case "inHg" -> value * 3.386388640341; // 25.4 mm of 13,595.1 kg/m3 at standard gravity
            default -> value;
        };
    }

    private static String heading(NamedCsvRecord row, String name) {
        return row.getHeader().stream()
                .filter(head -> head.matches(name + "( mm| kPa| C)?"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no column " + name + " in " + row.getHeader()));
    }

    private static void same(NamedCsvRecord printed, String name, NamedCsvRecord source, String usual)
            throws IOException {
        String unit = source.getField("unit");
        for (String end : List.of("", "low", "high")) {
            double expected = metric(Double.parseDouble(source.getField(end.isEmpty() ? usual : end)), unit);
            double found =
                    Double.parseDouble(printed.getField(heading(printed, end.isEmpty() ? name : name + " " + end)));
            assertThat(found)
                    .as("%s %s %s", printed.getFields().subList(0, 2), name, end)
                    .isCloseTo(expected, Offset.offset(1e-9 * Math.abs(expected) + 1e-9));
        }
        assertThat(printed.getField(name + " status")).isEqualTo(source.getField("status"));
        assertThat(printed.getField(name + " source")).startsWith(title(source.getField("source")));
    }

    private static boolean sized(NamedCsvRecord printed, String family, String size) {
        return printed.getField("family").equals(family)
                && printed.getField("size").replace("'", "").equals(size);
    }

    @Test
    void fiftyFiguresOfHoseAreThoseOfTheirRows() throws IOException {
        List<NamedCsvRecord> rows = source("hose_figures");
        List<NamedCsvRecord> hoses = printed("hoses");
        Random random = new Random(20_240_806);
        for (int i = 0; i < FIGURES; i++) {
            NamedCsvRecord row = rows.get(random.nextInt(rows.size()));
            String size = row.getField("size");
            String name = HEADINGS.get(row.getField("quantity"));
            NamedCsvRecord hose = hoses.stream()
                    .filter(each -> size.equals("all")
                            ? each.getField("family").equals(row.getField("family"))
                                    && rows.stream()
                                            .noneMatch(other -> other.getField("quantity")
                                                            .equals(row.getField("quantity"))
                                                    && sized(each, other.getField("family"), other.getField("size")))
                            : sized(each, row.getField("family"), size))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("not printed: " + row.getFields()));
            same(hose, name, row, "usual");
        }
    }

    @Test
    void fiftyNipplesAreThoseOfTheirRows() throws IOException {
        List<NamedCsvRecord> rows = source("hose_ends");
        List<NamedCsvRecord> nipples = printed("nipples");
        Random random = new Random(20_240_807);
        for (int i = 0; i < FIGURES; i++) {
            NamedCsvRecord row = rows.get(random.nextInt(rows.size()));
            NamedCsvRecord nipple = nipples.stream()
                    .filter(each -> sized(each, row.getField("family"), row.getField("size"))
                            && each.getField("build").equals(row.getField("build")))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("not printed: " + row.getFields()));
            same(nipple, "bore", row, "usual");
        }
    }

    @Test
    void everyPrintedFigureHasItsSourceAndStatus() {
        for (String list : List.of("sizes", "hoses", "nipples", "tubes", "fluids")) {
            List<NamedCsvRecord> rows = printed(list);
            int figures = 0;
            for (NamedCsvRecord row : rows.subList(0, rows.size() - 3)) { // the last three are the safety words
                for (String head : row.getHeader()) {
                    if (head.endsWith(" source")) {
                        String name = head.substring(0, head.length() - " source".length());
                        String status = row.getField(name + " status");
                        assertThat(status.isEmpty())
                                .isEqualTo(row.getField(head).isEmpty());
                        boolean figure = row.getHeader().contains(name + " low")
                                || !row.getField(head).isEmpty();
                        figures += figure && !status.isEmpty() ? 1 : 0;
                    }
                }
            }
            assertThat(figures).as(list).isGreaterThan(rows.size());
        }
    }
}
