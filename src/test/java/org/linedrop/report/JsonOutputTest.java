package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.linedrop.result.PartRow;
import org.linedrop.study.FeedCheck;

class JsonOutputTest {
    private static final FeedCheck FEED = Golden.example("fuel-feed-516.yaml");

    @Test
    void isAsItWasReadAndFoundGood() {
        Golden.sameToNineDigits("fuel-feed-516.json", JsonReport.text(FEED));
        Golden.sameToNineDigits("too-much.json", JsonReport.text(Golden.own("too-much.yaml")));
    }

    @Test
    void sameBytesInEveryLocale() {
        String here = JsonReport.text(FEED);
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(JsonReport.text(FEED)).as(tag).isEqualTo(here);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void keysComeInAFixedOrder() {
        Map<String, Object> json = Json.object(JsonReport.text(FEED));
        assertThat(json.keySet())
                .containsExactly(
                        "title",
                        "fileForm",
                        "libraryVersion",
                        "service",
                        "cases",
                        "ratings",
                        "advice",
                        "cautions",
                        "safety");
        Map<String, Object> first = Json.objects(json, "cases").get(0);
        assertThat(first.keySet())
                .containsExactly(
                        "case",
                        "status",
                        "verdict",
                        "sentence",
                        "smallestChange",
                        "largestDraws",
                        "residuals",
                        "rows",
                        "points",
                        "devices",
                        "hoseSwell",
                        "limits",
                        "warnings",
                        "assumptions");
        assertThat(String.join(" ", Json.objects(first, "rows").get(0).keySet()))
                .isEqualTo("run row name part kind size boreM boreLowM boreHighM boreFrom massFlowKgPerS flowM3PerS"
                        + " velocityMPerS reynolds regime frictionFactor lossCoefficient frictionDropPa localDropPa"
                        + " liftDropPa dropPa totalPressureInPa totalPressureOutPa staticPressureInPa"
                        + " staticPressureOutPa velocityHeadInPa velocityHeadOutPa lossShare");
    }

    @Test
    void figuresReadBackToTheSameDouble() {
        List<Map<String, Object>> rows = Json.objects(
                Json.objects(Json.object(JsonReport.text(FEED)), "cases").get(0), "rows");
        List<PartRow> solved = FEED.cases().get(0).result().usual().rows();
        assertThat(rows).hasSameSizeAs(solved);
        for (int i = 0; i < solved.size(); i++) {
            assertThat(rows.get(i).get("dropPa")).isEqualTo(solved.get(i).dropPa());
            assertThat(rows.get(i).get("totalPressureOutPa"))
                    .isEqualTo(solved.get(i).totalPressureOutPa());
            assertThat(rows.get(i).get("massFlowKgPerS"))
                    .isEqualTo(solved.get(i).massFlowKgPerS());
        }
    }

    @Test
    void unknownIsNull() {
        List<Map<String, Object>> cases = Json.objects(Json.object(JsonReport.text(FEED)), "cases");
        Map<String, Object> pump = Json.objects(cases.get(0), "rows").stream()
                .filter(row -> row.get("kind").equals("pump"))
                .findFirst()
                .orElseThrow();
        assertThat(pump)
                .containsEntry("boreM", null)
                .containsEntry("velocityMPerS", null)
                .containsEntry("regime", null);
        Map<String, Object> notSolved = Json.objects(Json.object(JsonReport.text(Golden.own("too-much.yaml"))), "cases")
                .get(2);
        assertThat(notSolved)
                .containsEntry("status", "demand not met")
                .containsEntry("verdict", null)
                .containsEntry("rows", List.of());
    }

    @Test
    void brakesGetNoVerdict() {
        Map<String, Object> brake = Json.objects(Json.object(JsonReport.text(Golden.own("brake.yaml"))), "cases")
                .get(0);
        assertThat(brake).containsEntry("verdict", null);
        assertThat(Json.objects(brake, "limits"))
                .allSatisfy(limit ->
                        assertThat(limit).containsEntry("verdict", "not judged").containsEntry("margin", null));
    }
}
