package org.linedrop.catalogue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads one of the package's CSV files. A fault in them is ours, so it stops at once and names file and line. */
final class CsvTable {
    private CsvTable() {}

    /** One row with its cells by heading. */
    static final class Row {
        private final String file;
        private final NamedCsvRecord cells;

        private Row(String file, NamedCsvRecord cells) {
            this.file = file;
            this.cells = cells;
        }

        String text(String heading) {
            return cells.getField(heading);
        }

        double number(String heading) {
            try {
                return Double.parseDouble(text(heading));
            } catch (NumberFormatException e) {
                throw fault(heading + " is \"" + text(heading) + "\", not a number", e);
            }
        }

        @Nullable Double numberOrNull(String heading) {
            return text(heading).isEmpty() ? null : Double.valueOf(number(heading));
        }

        IllegalStateException fault(String message, @Nullable Throwable cause) {
            return new IllegalStateException(file + ":" + cells.getStartingLineNumber() + ": " + message, cause);
        }
    }

    /** All rows of {@code name}.csv in the order of the file. */
    static List<Row> rows(String name) {
        String file = name + ".csv";
        InputStream resource = CsvTable.class.getResourceAsStream(file);
        if (resource == null) {
            throw new IllegalStateException("the library has no " + file);
        }
        List<Row> rows = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> reader =
                CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(resource, StandardCharsets.UTF_8))) {
            for (NamedCsvRecord cells : reader) {
                rows.add(new Row(file, cells));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }
}
