package org.linedrop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The commands kit and gauges. */
class KitCommandTest {
    private static final String CAR = "src/test/resources/org/linedrop/kit/";
    private static final String FEED = "src/examples/fuel-feed-516.yaml";
    private static final String OWN = "src/test/resources/org/linedrop/";

    @TempDir
    private Path dir;

    private record Run(int code, String out, String err) {}

    private static Run run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Runner.run(arguments, out, err);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void oneKitOfSeveralCircuits() {
        Run run = run("kit", CAR + "fuel.yaml", CAR + "oil.yaml", CAR + "coolant.yaml");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).startsWith("To buy for 3 circuits (Fuel; Oil; Coolant): 7.37 m of hose in 11 pieces");
        assertThat(run("kit", CAR + "fuel.yaml", CAR + "oil.yaml", "--format", "json")
                        .out())
                .startsWith("{")
                .contains("\"list\": \"kit\"");
    }

    @Test
    void priceFormGoesOutAndComesBack() throws IOException {
        Path list = dir.resolve("mine.csv");
        assertThat(run("kit", FEED, "--price-form", "--out", list.toString()).code())
                .isZero();
        Files.writeString(
                list,
                Files.readString(list)
                        .replace("price,", "price EUR,")
                        .replace("race PTFE -6,m,,,", "race PTFE -6,m,10,,"));
        Run run = run("kit", FEED, "--prices", list.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Prices add up to 19.00 EUR; 6 of 7 lines have none.");
        Files.writeString(list, "item,price\nrace PTFE -6,cheap\n");
        Run wrong = run("kit", FEED, "--prices", list.toString());
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.out()).isEmpty();
        assertThat(wrong.err()).contains("1 thing to correct in", "price \"cheap\" is no number");
    }

    @Test
    void aCaseIsMadeUpWhereItIs() {
        String feed = OWN + "io/returnless.yaml";
        assertThat(run("kit", feed).out()).contains("reducer -6 to -5");
        Run run = run("kit", feed, CAR + "oil.yaml", "--case", "3/8 line");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("case 3/8 line").doesNotContain("reducer -6 to -5  ");
    }

    @Test
    void whatIsWrongInAnyFileIsSaid() throws IOException {
        List<String> arguments = new ArrayList<>(List.of("kit"));
        for (String name : List.of("a.yaml", "b.yaml")) {
            Path file = dir.resolve(name);
            Files.writeString(file, Files.readString(Path.of(FEED)).replace("to: rail", "to: rial"));
            arguments.add(file.toString());
        }
        Run run = run(arguments.toArray(String[]::new));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("a.yaml:", "b.yaml:");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kit | which file? Write linedrop kit FILE",
                "kit no-such.yaml | no file no-such.yaml here",
                "kit FEED FEED | is named twice",
                "kit FEED --case hot_idle | no case \"hot_idle\" in FEED. Did you mean hot idle?",
                "kit FEED --case full_load --case low | no case \"full_load\"",
                "kit FEED --rows hose --format csv | --rows \"hose\" is none of parts, hoses, joints. Did you mean hoses?",
                "kit FEED --rows hoses | --rows is for --format csv",
                "kit FEED --price-form --format json | --price-form writes an empty form",
                "kit FEED --prices no-such.csv | no file no-such.csv here. Write one with --price-form",
                "kit FEED --out FEED | is the circuit file itself",
                "gauges | which file? Write linedrop gauges FILE",
                "gauges FEED --case hot_idle | Did you mean hot idle?"
            })
    void argumentsInPlainWords(String arguments, String message) {
        Run run = run(arguments.replace("FEED", FEED).split(" ", -1));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(message.replace("FEED", FEED)).hasLineCount(1);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void gaugesSayWhatIsNotSolved() {
        assertThat(run("gauges", FEED).code()).isZero();
        assertThat(run("gauges", FEED, "--case", "hot idle").out())
                .contains("hot idle")
                .doesNotContain("low volts");
        Run run = run("gauges", OWN + "report/too-much.yaml");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).contains("NOT SOLVED: case too much: demand not met.");
    }

    @Test
    void helpHasAnExample() {
        for (String command : new String[] {"kit", "gauges"}) {
            Run help = run(command, "--help");
            assertThat(help.code()).isZero();
            assertThat(help.out()).contains("Examples:", "--case", "--units", "--format", "--out", "Exit codes:");
            assertThat(help.out().lines())
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        }
    }
}
