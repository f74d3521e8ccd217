package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.fact.Explanation;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.study.CaseCheck;
import org.linedrop.units.Display;

class ExplainOutputTest {
    private static final Result FEED =
            Golden.example("fuel-feed-516.yaml").cases().get(0).result().usual();
    private static final List<Explanation> TWO = List.of(FEED.explain("feed 6.3"), FEED.explain("supply 3"));

    @Test
    void sweptEndAndFilter() {
        Golden.same("fuel-feed-516.explain.txt", ExplainReport.text(TWO, Display.METRIC));
    }

    @Test
    void sweptEndAndFilterInUsUnits() {
        Golden.same("fuel-feed-516.explain.us.txt", ExplainReport.text(TWO, Display.US));
    }

    @Test
    void figuresOfTheWorkedPage() {
        // the same end worked by hand from the published coefficients: K 0.233, 0.085, 0.238, 0.073; 0.836 kPa; forged
        // 1.51
        assertThat(ExplainReport.text(TWO, Display.METRIC))
                .contains("K 0.232      0.319 kPa", "K 0.085", "K 0.238      0.164 kPa", "800/Re")
                .contains(
                        "If it were a forged (machined, low-profile) 90 of the same bores: K 1.36 on the elbow, 1.511")
                .contains("= 0.39 m (1.3 ft) of hose feed 6.2 = 49 bores");
    }

    @ParameterizedTest
    @ValueSource(strings = {"fuel-feed-516.yaml", "fuel-feed-38.yaml", "carburettor-feed.yaml", "twin-rails.yaml"})
    void everyRowFitsThePage(String example) {
        for (CaseCheck check : Golden.example(example).cases()) {
            Result result = check.result().usual();
            List<Explanation> all = new ArrayList<>();
            for (PartRow row : result.rows()) {
                all.add(result.explain(row.run() + " " + row.row()));
            }
            for (Display display : List.of(Display.METRIC, Display.US)) {
                String text = ExplainReport.text(all, display);
                assertThat(text.lines()).allSatisfy(line -> {
                    assertThat(line.length()).isLessThanOrEqualTo(120);
                    assertThat(line).doesNotEndWith(" ").doesNotContain("{", "}", "NaN", "Infinity");
                });
            }
        }
    }

    @Test
    void jsonSaysTheSame() {
        Map<String, Object> json = Json.objects(Json.object(ExplainReport.json(TWO)), "explanations")
                .get(0);
        Explanation end = TWO.get(0);
        assertThat(json)
                .containsEntry("row", "feed 6.3")
                .containsEntry("case", "full load")
                .containsEntry("dropPa", end.dropPa());
        String text = ExplainReport.text(TWO, Display.METRIC);
        List<Map<String, Object>> groups = Json.objects(json, "groups");
        assertThat(groups).hasSameSizeAs(end.groups());
        double sum = 0;
        for (int i = 0; i < groups.size(); i++) {
            List<Map<String, Object>> steps = Json.objects(groups.get(i), "steps");
            for (int k = 0; k < steps.size(); k++) {
                Explanation.Step step = end.groups().get(i).steps().get(k);
                assertThat(steps.get(k))
                        .containsEntry("name", step.name())
                        .containsEntry("dropPa", step.dropPa())
                        .containsEntry("coefficient", step.coefficient());
                assertThat(text)
                        .contains(String.format(
                                Locale.ROOT, "K %.3f      %.3f kPa", step.coefficient(), step.dropPa() / 1000));
                sum += (Double) steps.get(k).get("dropPa");
            }
        }
        assertThat(sum).isCloseTo(end.dropPa(), org.assertj.core.api.Assertions.within(1e-9 * end.dropPa()));
    }

    @Test
    void sameBytesInEveryLocale() {
        String here = ExplainReport.text(TWO, Display.METRIC) + ExplainReport.json(TWO);
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(ExplainReport.text(TWO, Display.METRIC) + ExplainReport.json(TWO))
                        .as(tag)
                        .isEqualTo(here);
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
