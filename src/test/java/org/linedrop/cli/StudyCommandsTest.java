package org.linedrop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudyCommandsTest {
    private static final String WIDE = "src/examples/fuel-feed-38.yaml";
    private static final String NARROW = "src/examples/fuel-feed-516.yaml";
    private static final String CARBS = "src/examples/carburettor-feed.yaml";

    /** What a run did. */
    private record Run(int code, String out, String err) {}

    private static Run run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Runner.run(arguments, out, err);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void sizeNamesTheSetItsAdaptersAndTheLimit() {
        Run run = run("size", NARROW, "--run", "feed", "--dash", "6 8");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .startsWith("Smallest set that holds every limit in every case: feed -6")
                .contains(
                        "The limit that decides is rail pressure in case full load",
                        "union -6 (7.54 to 7.54 mm, 2 faces)")
                .contains("feed as written breaks rail pressure");
        assertThat(run("size", NARROW, "--run", "supply", "--dash", "6").code())
                .as("no size of the supply mends the feed")
                .isEqualTo(1);
    }

    @Test
    void theCheapestNeedsPricesAndCountsThem(@TempDir Path folder) throws IOException {
        Run none = run("size", NARROW, "--run", "feed", "--dash", "6", "--by", "cheapest");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("--by cheapest needs your prices").contains("--price-form --out mine.csv");
        String list = folder.resolve("mine.csv").toString();
        String[] narrow = {"size", NARROW, "--run", "feed", "--dash", "6"};
        Run form = run(with(narrow, "--price-form", "--out", list));
        assertThat(form.code()).as(form.err()).isZero();
        List<String> lines = Files.readAllLines(Path.of(list));
        assertThat(lines)
                .as("all that the written size and -6 take, under the names of kit")
                .contains(
                        "race PTFE -6,m,,,", "tube steel 5/16 in x 0.028 in,m,,,", "tube steel 3/8 in x 0.028 in,m,,,")
                .contains("tube nut and sleeve -6,piece,,,", "union -6,piece,,,", "reducer -6 to -5,piece,,,");
        Run empty = run(with(narrow, "--by", "cheapest", "--prices", list));
        assertThat(empty.code()).isEqualTo(1);
        assertThat(empty.out().replaceAll("\\s+", " ")).contains("race PTFE -6").contains("no price is given");
        Files.writeString(
                Path.of(list),
                String.join("\n", lines)
                        .replace("price,", "price EUR,")
                        .replace("race PTFE -6,m,,", "race PTFE -6,m,10,")
                        .replace("PTFE -6\",piece,,", "PTFE -6\",piece,5,")
                        .replace("tube steel 3/8 in x 0.028 in,m,,", "tube steel 3/8 in x 0.028 in,m,2,")
                        .replace("tube nut and sleeve -6,piece,,", "tube nut and sleeve -6,piece,1,")
                        .replace("union -6,piece,,", "union -6,piece,3,")
                        .replace("bulkhead -6,piece,,", "bulkhead -6,piece,4,"));
        // 1.2 m of hose, four ends, 3.9 m of tube with two nuts and sleeves, one bulkhead, one union
        assertThat(run(with(narrow, "--by", "cheapest", "--prices", list)).out())
                .contains("(48.80 EUR)");
        assertThat(10 * 1.2 + 4 * 5 + 2 * 3.9 + 2 * 1 + 4 + 3).isEqualTo(48.8);
        Run kit = run("kit", NARROW, "--prices", list);
        assertThat(kit.code()).as("kit reads the same list").isZero();
        assertThat(kit.out().replaceAll("\\s+", " ")).contains("nothing here is called: tube steel 3/8 in x 0.028 in");
    }

    @Test
    void bottleneckNamesTheOldLineInEveryForm() {
        Run text = run("bottleneck", NARROW);
        assertThat(text.code()).as("a bottleneck is an answer, not a verdict").isZero();
        assertThat(text.out().replaceAll("\\s+", " "))
                .startsWith("full load: 36.6 kPa lost on the way to the rail")
                .contains("Old hard line, 3.90 m (feed 4) takes 77 %", "Worth measuring first");
        assertThat(run("bottleneck", NARROW, "--units", "us").out()).startsWith("full load: 5.32 psi lost");
        assertThat(run("bottleneck", NARROW, "--format", "csv").out()).contains("feed 4,");
        assertThat(run("bottleneck", NARROW, "--format", "json").out()).startsWith("{\n  \"list\": \"bottleneck\"");
        Run slopes = run("bottleneck", NARROW, "--sensitivities", "--case", "hot idle");
        assertThat(slopes.code()).as(slopes.err()).isZero();
        assertThat(slopes.out()).contains("feed 1.length");
    }

    @Test
    void howFarSaysThePowerThatHolds() {
        Run text = run("how-far", WIDE, "--key", "engine.power", "--case", "full load");
        assertThat(text.code()).as(text.err()).isZero();
        assertThat(text.out().replaceAll("\\s+", " ")).contains("575").contains("rail pressure");
        assertThat(run("how-far", WIDE, "--key", "engine.power", "--case", "full load", "--units", "us")
                        .out())
                .contains("575.5 hp")
                .doesNotContain("kW");
        Run wrong = run("how-far", WIDE, "--key", "engine.powr");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("Did you mean power?");
    }

    @Test
    void varyGivesARowForEachValueInEveryForm() {
        String[] asked = {
            "vary",
            WIDE,
            "--key",
            "engine.power",
            "--from",
            "400 hp",
            "--to",
            "700 hp",
            "--steps",
            "4",
            "--threads",
            "2"
        };
        Run text = run(asked);
        assertThat(text.code()).as(text.err()).isZero();
        assertThat(text.out()).startsWith("engine.power varied: 4 variants, every limit holds in 2 of them.");
        Run csv = run(with(asked, "--format", "csv"));
        List<String> lines = csv.out().lines().toList();
        assertThat(lines.get(0)).startsWith("variant,case,engine.power kW,status,verdict,rail pressure kPa");
        assertThat(lines.get(1)).startsWith("0,full load,");
        assertThat(run(with(asked, "--format", "json")).out()).contains("\"limited:rail:pressure\":");
    }

    @Test
    void bandSaysWhatItTookAsUncertain() {
        Run run = run("band", WIDE, "--points", "32", "--threads", "2");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .startsWith("With all tolerances together the limit most at risk is ")
                .contains("Taken as uncertain", "end bore of race PTFE -6", "law of friction", "flow of pump");
    }

    @Test
    void diagnoseTakesReadingsFromTheLineAndFromAFile(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("test-day.txt");
        Files.writeString(file, "# 12 June\npump outlet 30 kPa\nfine filter inlet 27 kPa # behind the hard line\n");
        Run run = run("diagnose", CARBS, "--readings", file.toString(), "--reading", "front carb 15 kPa");
        assertThat(run.code()).as(run.err()).isEqualTo(1);
        assertThat(run.out())
                .contains("These readings cannot tell", "fine filter clogged", "front leg 1 pinched", "A gauge at ");
        Run told = run(
                "diagnose",
                CARBS,
                "--readings",
                file.toString(),
                "--reading",
                "front carb 15 kPa",
                "--reading",
                "rear carb 15.5 kPa");
        assertThat(told.out()).contains("The readings point at one cause: fine filter clogged");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "size src/examples/first-feed.yaml --run fed | no run \"fed\"",
                "size src/examples/first-feed.yaml --by cheapst | Did you mean cheapest?",
                "size src/examples/first-feed.yaml --prices none.csv | Write one with --price-form",
                "vary src/examples/first-feed.yaml --key temprature --from 1 --to 2 --steps 2 | temperature",
                "vary src/examples/first-feed.yaml --key temperature --from 1 --to 2 --steps 2 | --from",
                "vary src/examples/first-feed.yaml --key temperature --from 10C --to 20C --steps 1 | at least 2",
                "band src/examples/first-feed.yaml --points 2 | points must be 16 to 65536",
                "band src/examples/first-feed.yaml --pump 300% | a half width must be 0 to 90 %",
                "diagnose src/examples/first-feed.yaml | what do the gauges read?",
                "diagnose src/examples/first-feed.yaml --reading nowhere | no place",
                "diagnose src/examples/first-feed.yaml --readings none.txt | cannot read the readings",
            })
    void whatIsWrongIsSaid(String line, String message) {
        Run run = run(line.split(" "));
        assertThat(run.code()).as(run.out()).isEqualTo(2);
        assertThat(run.err()).contains(message);
    }

    private static String[] with(String[] arguments, String... more) {
        String[] all = java.util.Arrays.copyOf(arguments, arguments.length + more.length);
        System.arraycopy(more, 0, all, arguments.length, more.length);
        return all;
    }
}
