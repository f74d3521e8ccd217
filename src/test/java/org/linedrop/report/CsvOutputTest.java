package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.units.Display;

class CsvOutputTest {
    @Test
    void isAsItWasReadAndFoundGood() {
        Golden.sameToNineDigits(
                "fuel-feed-516.rows.csv", CsvReport.rows(Golden.example("fuel-feed-516.yaml"), Display.METRIC));
        Golden.sameToNineDigits(
                "fuel-feed-516.limits.us.csv", CsvReport.limits(Golden.example("fuel-feed-516.yaml"), Display.US));
    }

    @ParameterizedTest
    @CsvSource({
        "=cmd, '''=cmd'",
        "+1, '''+1'",
        "-6 to -5, '''-6 to -5'",
        "@x, '''@x'",
        "feed, feed",
        "3/8 x 0.035, 3/8 x 0.035"
    })
    void textsThatASpreadsheetWouldRunAreGuarded(String text, String cell) {
        assertThat(CsvReport.guarded(text)).isEqualTo(cell);
    }

    @Test
    void negativeNumbersStayNumbers() {
        List<NamedCsvRecord> rows = records(CsvReport.limits(Golden.example("fuel-feed-516.yaml"), Display.METRIC));
        assertThat(Double.parseDouble(rows.get(0).getField("margin"))).isNegative();
        assertThat(rows.get(0).getField("unit")).isEqualTo("kPa");
    }

    @Test
    void endsWithTheSafetyLinesInTheFirstCell() {
        List<NamedCsvRecord> rows = records(CsvReport.rows(Golden.example("twin-rails.yaml"), Display.METRIC));
        for (int i = 0; i < 3; i++) {
            NamedCsvRecord record = rows.get(rows.size() - 3 + i);
            assertThat(record.getField(0)).isEqualTo(Safety.lines().get(i));
            assertThat(record.getFields().subList(1, record.getFieldCount())).containsOnly("");
        }
    }

    static List<NamedCsvRecord> records(String text) {
        return CsvReader.builder().ofNamedCsvRecord(text).stream().toList();
    }
}
