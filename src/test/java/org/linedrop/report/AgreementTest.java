package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.linedrop.study.FeedCheck;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Unit;
import org.linedrop.units.Units;

/** The three forms say the same. */
class AgreementTest {
    private static final FeedCheck FEED = Golden.example("fuel-feed-516.yaml");
    private static final List<Map<String, Object>> CASES = Json.objects(Json.object(JsonReport.text(FEED)), "cases");

    @Test
    void csvReadsBackToTheFiguresOfJson() {
        Unit kPa = Units.unit("kPa", Dimension.PRESSURE_DIFFERENCE);
        Unit flow = Units.unit("L/h", Dimension.VOLUME_FLOW);
        List<NamedCsvRecord> records = CsvOutputTest.records(CsvReport.rows(FEED, Display.METRIC));
        int at = 0;
        for (Map<String, Object> each : CASES) {
            for (Map<String, Object> row : Json.objects(each, "rows")) {
                NamedCsvRecord record = records.get(at++);
                assertThat(record.getField("case")).isEqualTo(each.get("case"));
                assertThat(record.getField("row")).isEqualTo(row.get("row"));
                assertThat(si(record, "drop kPa", kPa)).isEqualTo(row.get("dropPa"));
                assertThat(si(record, "static pressure out kPa", kPa)).isEqualTo(row.get("staticPressureOutPa"));
                assertThat(si(record, "flow L/h", flow)).isEqualTo(row.get("flowM3PerS"));
            }
        }
        assertThat(at).isEqualTo(60); // 20 rows in each of 3 cases
        assertThat(records).hasSize(at + 4);
    }

    private static double si(NamedCsvRecord record, String column, Unit unit) {
        // from the decimal text, rounded once
        return Units.read(record.getField(column) + " " + unit.symbol(), unit.dimension())
                .si();
    }

    @Test
    void textShowsTheFiguresOfJsonRounded() {
        List<String> lines = TextReport.solve(FEED, Display.METRIC).lines().toList();
        int feed = 0;
        while (!lines.get(feed).startsWith("feed: ")) {
            feed++;
        }
        int compared = 0;
        for (Map<String, Object> row : Json.objects(CASES.get(0), "rows")) {
            if (!row.get("run").equals("feed")) {
                continue;
            }
            String line = lines.get(feed + 3 + compared);
            String[] cells = line.split(" +", -1);
            assertThat(line).startsWith(row.get("row") + " ").contains((String) row.get("name"));
            assertThat(cells[cells.length - 1]).isEqualTo(fixed(row, "lossShare", 100, 0));
            assertThat(cells[cells.length - 2]).isEqualTo(fixed(row, "totalPressureOutPa", 1e-3, 1));
            assertThat(cells[cells.length - 3]).isEqualTo(fixed(row, "totalPressureInPa", 1e-3, 1));
            assertThat(cells[cells.length - 4]).isEqualTo(fixed(row, "dropPa", 1e-3, 2));
            compared++;
        }
        assertThat(compared).isEqualTo(11);
    }

    private static String fixed(Map<String, Object> row, String key, double factor, int decimals) {
        return String.format(java.util.Locale.ROOT, "%." + decimals + "f", factor * (Double) row.get(key));
    }

    @Test
    void limitsAgree() {
        List<NamedCsvRecord> records = CsvOutputTest.records(CsvReport.limits(FEED, Display.METRIC));
        int at = 0;
        for (Map<String, Object> each : CASES) {
            for (Map<String, Object> limit : Json.objects(each, "limits")) {
                NamedCsvRecord record = records.get(at++);
                assertThat(record.getField("limit")).isEqualTo(limit.get("id"));
                assertThat(record.getField("verdict")).isEqualTo(limit.get("verdict"));
                boolean pressure = limit.get("unit").equals("Pa");
                Unit unit =
                        pressure ? Units.unit("kPa", Dimension.PRESSURE_DIFFERENCE) : Units.unit("%", Dimension.RATIO);
                assertThat(si(record, "margin", unit)).isEqualTo(limit.get("margin"));
            }
            for (Map<String, Object> draw : Json.objects(each, "largestDraws")) {
                NamedCsvRecord record = records.get(at++);
                assertThat(record.getField("limit"))
                        .isEqualTo("largest draw " + draw.get("of") + ": " + draw.get("key"));
                assertThat(si(record, "value", Units.unit("kW"))).isEqualTo(draw.get("now"));
                assertThat(si(record, "bound", Units.unit("kW"))).isEqualTo(draw.get("largest"));
            }
        }
        assertThat(at).as("limits and largest draws").isEqualTo(9 + 4);
    }
}
