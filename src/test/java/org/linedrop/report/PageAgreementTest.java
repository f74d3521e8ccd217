package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.linedrop.study.FeedCheck;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Unit;
import org.linedrop.units.Units;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The page shows the figures of text, CSV and JSON. */
class PageAgreementTest {
    private static final FeedCheck FEED = Golden.example("fuel-feed-516.yaml");
    private static final List<Map<String, Object>> CASES = Json.objects(Json.object(JsonReport.text(FEED)), "cases");
    private static final Document PAGE = Pages.read(PageReport.html(FEED, Display.METRIC));

    private static String fixed(Map<String, Object> row, String key, double factor, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", factor * (Double) row.get(key));
    }

    private static List<Element> rows(Element table) {
        return Pages.in(Pages.in(table, "tbody").get(0), "tr");
    }

    @Test
    void everyRowOfEveryCaseStandsInPageJsonCsvAndText() {
        List<NamedCsvRecord> records = CsvOutputTest.records(CsvReport.rows(FEED, Display.METRIC));
        List<String> text = TextReport.solve(FEED, Display.METRIC)
                .lines()
                .map(line -> line.replaceAll(" +", " ").strip())
                .toList();
        Unit kPa = Units.unit("kPa", Dimension.PRESSURE_DIFFERENCE);
        int at = 0;
        for (Map<String, Object> each : CASES) {
            String section = "Case " + each.get("case");
            for (String run : List.of("supply: tank.outlet -> regulator", "feed: regulator -> rail")) {
                List<Element> shown = rows(Pages.table(PAGE, section, run));
                int n = 0;
                for (Map<String, Object> row : Json.objects(each, "rows")) {
                    if (!run.startsWith(row.get("run") + ":")) {
                        continue;
                    }
                    Element line = shown.get(n++);
                    String name = Pages.cell(line, "part");
                    assertThat(name).endsWith((String) row.get("name"));
                    assertThat(Pages.cell(line, "in kPa")).isEqualTo(fixed(row, "totalPressureInPa", 1e-3, 1));
                    assertThat(Pages.cell(line, "out kPa")).isEqualTo(fixed(row, "totalPressureOutPa", 1e-3, 1));
                    String drop = Pages.cell(line, "drop kPa");
                    int decimals = drop.length() - 1 - drop.indexOf('.');
                    assertThat(drop).isEqualTo(fixed(row, "dropPa", 1e-3, decimals));
                    if (row.get("lossShare") != null) {
                        assertThat(Pages.cell(line, "share %")).isEqualTo(fixed(row, "lossShare", 100, 0));
                    }
                    NamedCsvRecord record = records.get(at++);
                    double csv = Units.read(record.getField("drop kPa") + " kPa", kPa.dimension())
                            .si();
                    assertThat(drop).isEqualTo(String.format(Locale.ROOT, "%." + decimals + "f", csv / 1000));
                    String cells = name + " " + joined(line);
                    assertThat(text).contains(cells.replaceAll(" +", " ").strip());
                }
                assertThat(n).isGreaterThan(8);
            }
        }
        assertThat(at).isEqualTo(60); // 20 rows in each of 3 cases
    }

    private static String joined(Element row) {
        StringBuilder cells = new StringBuilder();
        Pages.in(row, "td").forEach(cell -> cells.append(cell.getTextContent()).append(' '));
        return cells.toString();
    }

    @Test
    void limitsAndPointsAgreeWithJson() {
        List<Element> limits = rows(Pages.table(PAGE, "Cases and limits", "Limits in their worst case"));
        int compared = 0;
        for (Element line : limits) {
            Map<String, Object> each = CASES.stream()
                    .filter(one -> one.get("case").equals(Pages.cell(line, "worst case")))
                    .findFirst()
                    .orElseThrow();
            for (Map<String, Object> limit : Json.objects(each, "limits")) {
                if (Pages.cell(line, "limit").startsWith(limit.get("id") + " at ")) {
                    boolean pressure = limit.get("unit").equals("Pa");
                    String value = fixed(limit, "value", pressure ? 1e-3 : 100, pressure ? 1 : 0);
                    assertThat(Pages.cell(line, "value")).isEqualTo(value + (pressure ? " kPa" : " %"));
                    assertThat(Pages.cell(line, "verdict")).isEqualToIgnoringCase((String) limit.get("verdict"));
                    compared++;
                }
            }
        }
        assertThat(compared).isEqualTo(3);
        for (Map<String, Object> each : CASES) {
            List<Element> points = rows(Pages.table(PAGE, "Case " + each.get("case"), "Points"));
            List<Map<String, Object>> wanted = Json.objects(each, "points");
            assertThat(points).hasSameSizeAs(wanted);
            for (int i = 0; i < points.size(); i++) {
                assertThat(Pages.cell(points.get(i), "gauge at"))
                        .isEqualTo(wanted.get(i).get("id"));
                assertThat(Pages.cell(points.get(i), "usual bores kPa"))
                        .isEqualTo(fixed(wanted.get(i), "staticPressurePa", 1e-3, 1));
            }
        }
    }

    @Test
    void picturesWriteTheFiguresOfJson() {
        Map<String, Object> worst = CASES.get(0);
        List<Element> texts = Pages.all(PAGE, "text");
        List<String> written = texts.stream().map(Element::getTextContent).toList();
        for (Map<String, Object> row : Json.objects(worst, "rows")) {
            if (row.get("run").equals("feed")) {
                assertThat(written).contains(fixed(row, "dropPa", 1e-3, 2));
            }
        }
        for (Map<String, Object> point : Json.objects(worst, "points")) {
            assertThat(written).contains(fixed(point, "staticPressurePa", 1e-3, 1) + " kPa");
        }
    }
}
