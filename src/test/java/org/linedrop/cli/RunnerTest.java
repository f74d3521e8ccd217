package org.linedrop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

class RunnerTest {
    private static final String FEED = "src/examples/fuel-feed-516.yaml";
    private static final String OWN = "src/test/resources/org/linedrop/report/";

    @TempDir
    private Path dir;

    /** What a run did. */
    private record Run(int code, String out, String err) {}

    private static Run run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Runner.run(arguments, out, err);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void exitCodeIsTheHighestOverTheCases() {
        assertThat(run("check", FEED).code()).isEqualTo(1);
        assertThat(run("solve", FEED).code()).isEqualTo(1);
        assertThat(run("check", FEED, "--case", "hot idle").code()).isZero();
        assertThat(run("check", FEED, "--case", "hot idle", "--case", "full load")
                        .code())
                .isEqualTo(1);
        assertThat(run("check", OWN + "too-much.yaml").code()).isEqualTo(3);
        assertThat(run("solve", OWN + "too-much.yaml").code()).isZero(); // a limit not judged changes nothing
        assertThat(run("solve", OWN + "too-much.yaml", "--all").code()).isEqualTo(3);
        assertThat(run("check", OWN + "brake.yaml").code()).isZero();
    }

    @Test
    void solveTakesTheCaseAsWritten() {
        assertThat(run("solve", FEED).out()).contains("case full load (1 of 3)").doesNotContain("low volts (2");
        assertThat(run("solve", FEED, "--case", "low volts").out())
                .contains("case low volts (2 of 3)")
                .doesNotContain("case full load");
        assertThat(run("solve", FEED, "--all").out()).contains("case hot idle (3 of 3)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "chek FILE | no command \"chek\". Did you mean check?",
                "check | which file? Write linedrop check FILE",
                "check FILE more | \"more\" is one argument too many",
                "check FILE --unit us | no option \"--unit\". Did you mean --units?",
                "check FILE --format=jsn | --format \"jsn\" is none of text, json, csv. Did you mean json?",
                "check FILE --units | --units needs a value: metric|us",
                "check FILE --units us --units us | --units is given twice",
                "check FILE --case hot_idle | Did you mean hot idle? Cases: full load, low volts, hot idle",
                "check no-such.yaml | no file no-such.yaml here",
                "check src | src is a directory",
                "solve FILE --all --case x | --all and --case do not go together",
                "check FILE --out src | --out src is a directory",
                "check FILE --out FILE | is the circuit file itself",
                "check FILE --out no-such/a.txt | there is no directory",
                "explain FILE --row x --case hot_idle | Did you mean hot idle? Cases: full load, low volts, hot idle",
                "explain FILE --row x --format csv | explain writes text or json",
                "explain FILE --row feed_6.3 | Did you mean \"feed 6.3\"? Rows: supply entry, supply 1, supply 2.1"
            })
    void argumentsInPlainWords(String arguments, String message) {
        Run run = run(arguments.replace("FILE", FEED).split(" ", -1));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(message).hasLineCount(1);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void explainTakesARowApart() {
        Run run = run("explain", FEED, "--row", "feed 6.3", "--case", "hot idle", "--units", "us");
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("feed 6.3   end 90 swept").contains("case hot idle", "psi", "laminar");
        assertThat(run("explain", FEED, "--row", "feed 6.3", "--format", "json").out())
                .startsWith("{")
                .contains("\"row\": \"feed 6.3\"");
        Run not = run("explain", OWN + "too-much.yaml", "--row", "feed 1", "--case", "too much");
        assertThat(not.code()).isEqualTo(3);
        assertThat(not.out()).isEmpty();
        assertThat(not.err()).startsWith("NOT SOLVED: case too much");
    }

    @Test
    void emptyNamesAreSaid() {
        assertThat(run("check", "").err()).startsWith("which file? Its name is empty");
        assertThat(run("check", FEED, "--out", "").err()).startsWith("--out needs a file name");
    }

    @Test
    void noArgumentsAskForACommand() {
        Run run = run();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("which command?");
    }

    @Test
    void helpAndVersionNeedNoFile() {
        assertThat(run("--help").code()).isZero();
        assertThat(run("--help").out()).contains("check", "solve", "Exit codes");
        for (String command : new String[] {"check", "solve", "explain"}) {
            Run help = run(command, "--help");
            assertThat(help.code()).isZero();
            assertThat(help.out()).contains("Examples:", "--case", "--units", "--format", "--out");
            assertThat(help.out().lines())
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        }
        for (String command : List.of(
                "compare", "bottleneck", "how-far", "size", "vary", "band", "diagnose", "kit", "gauges", "report")) {
            Run help = run(command, "--help");
            assertThat(help.code()).as(command).isZero();
            assertThat(help.err()).as(command).isEmpty();
            assertThat(help.out()).as(command).contains("Examples:").doesNotContain("WARN");
            assertThat(help.out().lines())
                    .as(command)
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        }
        CommandLine all = new CommandLine(new Runner());
        Commands.addTo(all);
        assertThat(all.getSubcommands()).hasSizeGreaterThan(15);
        all.getSubcommands()
                .forEach((name, command) -> assertThat(
                                command.getCommandSpec().usageMessage().description()[0])
                        .as("the list of commands shows the first text of %s alone", name)
                        .matches(".*[.?]"));
        all.getSubcommands().forEach((name, command) -> {
            assertThat(command.getCommandSpec().name()).isEqualTo(name);
            CommandLine one = new CommandLine(new Runner());
            Commands.addTo(one, name, "file.yaml");
            assertThat(one.getSubcommands()).as("%s alone is taken apart", name).containsOnlyKeys(name);
        });
        assertThat(run("--version").out()).matches("linedrop \\d+\\.\\d+\\.\\d+\\R");
    }

    @Test
    void problemsAreCountedAndListedALineEach() throws IOException {
        Path file = dir.resolve("bad.yaml");
        Files.writeString(
                file,
                Files.readString(Path.of(FEED))
                        .replace("temperature: 40 C\n", "")
                        .replace("to: rail", "to: rial"));
        Run run = run("check", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        long listed = run.err().lines().count() - 1;
        assertThat(run.err()).startsWith(listed + " things to correct in " + file + "; nothing was solved.");
        assertThat(run.err()).contains("temperature is missing").contains("Did you mean rail?");
    }

    @Test
    void outFileIsTheReportAndNothingIsSaid() throws IOException {
        Path out = dir.resolve("feed.json");
        Files.writeString(out, "old");
        Run run = run("check", FEED, "--format", "json", "--out", out.toString());
        assertThat(run).isEqualTo(new Run(1, "", ""));
        assertThat(Files.readString(out))
                .isEqualTo(run("check", FEED, "--format", "json").out());
        try (var files = Files.list(dir)) {
            assertThat(files).containsExactly(out); // no temporary file is left behind
        }
    }

    @Test
    void readerThatWentAwayIsNoTrouble() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        assertThat(Runner.run(new String[] {"check", FEED}, broken("Broken pipe"), err))
                .isEqualTo(1);
        assertThat(err.size()).isZero();
    }

    @Test
    void fullDiskIsSaid() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        assertThat(Runner.run(new String[] {"check", FEED}, broken("No space left on device"), err))
                .isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .isEqualTo("cannot write the report: No space left on device\n");
    }

    private static OutputStream broken(String why) {
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(why);
            }
        };
    }

    @Test
    void messagesSteerNoTerminal() {
        String err = run("check", "no\u001b[31m\u202e.yaml").err();
        assertThat(err).startsWith("no file no [31m.yaml here").hasLineCount(1);
        assertThat(run("check\u001b[2J").err()).doesNotContain("\u001b");
    }
}
