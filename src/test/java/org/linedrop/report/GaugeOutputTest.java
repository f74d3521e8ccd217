package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.study.GaugePlan;
import org.linedrop.units.Display;

class GaugeOutputTest {
    private static Circuit circuit(String file) throws IOException {
        return CircuitFile.read(Path.of(file));
    }

    private static GaugePlan plan(Circuit circuit) {
        return GaugePlan.of(circuit, circuit.caseNames());
    }

    @Test
    void gaugesOfTheOldLine() throws IOException {
        Circuit feed = circuit("src/examples/fuel-feed-516.yaml");
        Golden.same("fuel-feed-516.gauges.txt", GaugeReport.text(plan(feed), feed, Display.METRIC));
        Golden.same("fuel-feed-516.gauges.us.txt", GaugeReport.text(plan(feed), feed, Display.US));
        Golden.sameToNineDigits("fuel-feed-516.gauges.csv", GaugeReport.csv(plan(feed), feed, Display.METRIC));
    }

    @Test
    void theSameFiguresStandInTextAndJson() throws IOException {
        Circuit feed = circuit("src/examples/y-block.yaml");
        String text = GaugeReport.text(plan(feed), feed, Display.METRIC);
        List<Map<String, Object>> readings = Json.objects(Json.object(GaugeReport.json(plan(feed), feed)), "readings");
        assertThat(readings).hasSize(4 * 2);
        for (Map<String, Object> reading : readings) {
            double usual = (double) reading.get("staticPressurePa");
            assertThat(text.lines().filter(line -> line.startsWith((String) reading.get("place"))))
                    .anySatisfy(line -> assertThat(line).contains(Scale.PRESSURE.number(usual, Display.METRIC)));
            assertThat((double) reading.get("absolutePressurePa")).isEqualTo(usual + 101_325.0);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "src/examples/carburettor-feed.yaml",
                "src/examples/own-hose.yaml",
                "src/examples/twin-rails.yaml",
                "src/test/resources/org/linedrop/io/every-form.yaml",
                "src/test/resources/org/linedrop/report/long-names.yaml",
                "src/test/resources/org/linedrop/report/too-much.yaml",
                "src/test/resources/org/linedrop/report/brake.yaml"
            })
    void fitsThePage(String file) throws IOException {
        Circuit circuit = circuit(file);
        for (Display display : List.of(Display.METRIC, Display.US)) {
            String text = GaugeReport.text(plan(circuit), circuit, display);
            assertThat(text.lines())
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(120))
                    .allSatisfy(line -> assertThat(line).doesNotEndWith(" "));
            assertThat(text)
                    .doesNotContain("NaN", "Infinity", "verdict")
                    .endsWith(String.join("\n", Safety.lines()) + "\n");
        }
    }
}
