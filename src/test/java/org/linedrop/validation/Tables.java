package org.linedrop.validation;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Reads the case tables of {@code validation/} from the class path. */
public final class Tables {
    private Tables() {}

    /** All rows of {@code validation/NAME}. */
    public static List<NamedCsvRecord> read(String name) {
        InputStream in = Objects.requireNonNull(
                Tables.class.getResourceAsStream("/validation/" + name), () -> "no validation/" + name);
        try (Reader text = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            return CsvReader.builder().ofNamedCsvRecord(text).stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A number, or the fallback when the field is empty. */
    public static double number(NamedCsvRecord row, String field, double fallback) {
        String text = row.getField(field);
        return text.isEmpty() ? fallback : Double.parseDouble(text);
    }

    /** Numbers separated by blanks. */
    public static double[] numbers(NamedCsvRecord row, String field) {
        String text = row.getField(field).trim();
        if (text.isEmpty()) {
            return new double[0];
        }
        String[] parts = text.split(" ");
        double[] values = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            values[i] = Double.parseDouble(parts[i]);
        }
        return values;
    }
}
