package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.circuit.Circuit;
import org.linedrop.study.Bottleneck;
import org.linedrop.study.FeedCheck;
import org.linedrop.study.HowFar;
import org.linedrop.study.LargestDraw;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;

/** Bottleneck, how far, largest draw: the same figures in text, CSV and JSON. */
class DecisionOutputTest {
    private static final FeedCheck FEED = Golden.example("fuel-feed-516.yaml");
    private static final Circuit WIDE =
            Golden.example("fuel-feed-38.yaml").cases().get(0).result().circuit();

    private static List<HowFar> howFar() {
        return List.of(
                HowFar.of(WIDE, new HowFar.Question("engine.power", List.of("full load"), "")),
                HowFar.of(WIDE, new HowFar.Question("hard line.length", List.of("full load", "low volts"), "")),
                HowFar.of(WIDE, new HowFar.Question("temperature", List.of("full load"), "")));
    }

    @Test
    void bottleneckOfTheOldLine() {
        for (Display display : List.of(Display.METRIC, Display.US)) {
            Listing<Bottleneck.Thing> listing = BottleneckReport.of(FEED, display);
            String us = display == Display.US ? ".us" : "";
            Golden.same("fuel-feed-516.bottleneck" + us + ".txt", listing.text(display));
            Golden.sameToNineDigits("fuel-feed-516.bottleneck" + us + ".csv", listing.csv(display));
        }
        Golden.sameToNineDigits(
                "fuel-feed-516.bottleneck.json",
                BottleneckReport.of(FEED, Display.METRIC).json());
    }

    @Test
    void howFarOfTheNewLine() {
        for (Display display : List.of(Display.METRIC, Display.US)) {
            Listing<HowFar> listing = HowFarReport.of(howFar(), display);
            String us = display == Display.US ? ".us" : "";
            Golden.same("fuel-feed-38.how-far" + us + ".txt", listing.text(display));
            Golden.sameToNineDigits("fuel-feed-38.how-far" + us + ".csv", listing.csv(display));
        }
        Golden.sameToNineDigits(
                "fuel-feed-38.how-far.json",
                HowFarReport.of(howFar(), Display.METRIC).json());
    }

    @Test
    void theThingsOfTheBottleneckAreThoseOfTheAnswer() {
        Bottleneck answer = Bottleneck.of(BottleneckReport.worst(FEED));
        Map<String, Object> json =
                Json.object(BottleneckReport.of(answer, Display.METRIC).json());
        List<Map<String, Object>> things = Json.objects(json, "rows");
        assertThat(things).hasSameSizeAs(answer.things());
        for (int i = 0; i < things.size(); i++) {
            assertThat(things.get(i))
                    .containsEntry("lossPa", answer.things().get(i).lossPa())
                    .containsEntry("place", answer.things().get(i).place());
        }
    }

    @Test
    void theLargestDrawIsTheSameInJsonAndCsv() {
        LargestDraw draw = FEED.cases().get(0).draw();
        assertThat(draw).isNotNull();
        Map<String, Object> first = Json.objects(
                        Json.objects(Json.object(JsonReport.text(FEED)), "cases")
                                .get(0),
                        "largestDraws")
                .get(0);
        assertThat(first)
                .containsEntry("of", "as built")
                .containsEntry("key", "engine.power")
                .containsEntry("largest", draw.usualSi())
                .containsEntry("surely", draw.leastSi())
                .containsEntry("unit", "W")
                .containsEntry("ends", "rail pressure");
        assertThat(CsvReport.limits(FEED, Display.METRIC))
                .contains("full load,largest draw as built: engine.power,,387.764,"
                        + Scale.usual(Dimension.POWER).exact(draw.usualSi(), Display.METRIC) + ",kW,");
    }

    @ParameterizedTest
    @EnumSource(
            value = Display.class,
            names = {"METRIC", "US"})
    void theLargestDrawKeepsTheUnitsAskedFor(Display display) {
        String text = TextReport.check(FEED, display);
        assertThat(text.replaceAll("\\s+", " "))
                .contains(display == Display.US ? "up to 403 hp, surely to 385 hp" : "up to 300 kW (403 hp)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"carburettor-feed.yaml", "return-style.yaml", "front-radiator.yaml", "gearbox-cooler.yaml"})
    void everyBottleneckFitsThePage(String example) {
        FeedCheck check = Golden.example(example);
        for (Display display : List.of(Display.METRIC, Display.US)) {
            assertThat(BottleneckReport.of(check, display).text(display).lines())
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(120));
        }
    }
}
