package org.linedrop.hydraulics;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Reads the validation cases from the class path. */
final class Csv {
    private Csv() {}

    static List<NamedCsvRecord> read(String name) {
        try (InputStream in = Objects.requireNonNull(Csv.class.getResourceAsStream("/validation/" + name), name);
                CsvReader<NamedCsvRecord> reader =
                        CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return reader.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }
}
