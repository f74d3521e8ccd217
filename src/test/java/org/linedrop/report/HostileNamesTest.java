package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.Examples;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.io.CircuitWriter;
import org.linedrop.study.FeedCheck;
import org.linedrop.units.Display;

/** What a file says must not run in a spreadsheet, steer a terminal or turn the direction of writing. */
class HostileNamesTest {
    /** Clears the screen, turns the writing, hides behind a link, rings. */
    private static final String TITLE = "feed\\e[2J\\u202Edaor\\u2066x\\x9b31m\\e]8;;http://x\\a\\u200f end\\u2028next";

    private static Circuit hostile() throws IOException {
        String file = Files.readString(Examples.path("first-feed.yaml"))
                .replace("title: Track-day coupe, feed from the regulator", "title: \"" + TITLE + "\"")
                .replace("limits:", "this case: \"=HYPERLINK(1)\"\nlimits:");
        file += "\ncases:\n  \"@SUM(1)\": {temperature: 45 C}\n  -8 hose: {feed: {hoses: -8}}\n"
                + "  quiet: {limits: {rail: {pressure: \"off because \\e[31mred\\u202E\"}}}\n";
        return CircuitFile.read(file, "hostile\u001b[31m.yaml");
    }

    private static void isPlain(String text) {
        text.codePoints().filter(c -> c != '\n').forEach(c -> {
            assertThat(Character.isISOControl(c)).as("U+%04X", c).isFalse();
            assertThat(Character.getType(c)).as("U+%04X", c).isNotIn((int) Character.FORMAT, (int) Character.SURROGATE);
        });
    }

    @Test
    void textSteersNoTerminal() throws IOException {
        FeedCheck check = FeedCheck.of(hostile());
        for (Display display : List.of(Display.METRIC, Display.US)) {
            isPlain(TextReport.solve(check, display));
            isPlain(TextReport.check(check, display));
            isPlain(CsvReport.limits(check, display));
            isPlain(CsvReport.rows(check, display));
        }
        assertThat(TextReport.solve(check, Display.METRIC)).contains("feed [2Jdaorx 31m ]8;;http://x  end next");
    }

    @Test
    void fileWrittenAgainSteersNoTerminalAndReadsTheSame() throws IOException {
        Circuit circuit = hostile();
        isPlain(CircuitWriter.write(circuit));
        isPlain(CircuitWriter.writeJson(circuit));
        assertThat(CircuitFile.read(CircuitWriter.write(circuit), "again.yaml").title())
                .isEqualTo(circuit.title());
        assertThat(CircuitFile.read(CircuitWriter.writeJson(circuit), "again.json")
                        .title())
                .isEqualTo(circuit.title());
    }

    @Test
    void noCellOfATableStartsAFormula() throws IOException {
        FeedCheck check = FeedCheck.of(hostile());
        for (String table : new String[] {CsvReport.limits(check, Display.METRIC), CsvReport.rows(check, Display.US)}) {
            assertThat(table).contains("'=HYPERLINK(1)").contains("'@SUM(1)").contains("'-8 hose");
            for (String cell : table.split("[,\n]", -1)) {
                String bare = cell.startsWith("\"") ? cell.substring(1) : cell;
                if (!bare.isEmpty() && "=+-@".indexOf(bare.charAt(0)) >= 0) {
                    assertThat(bare).as("only a number may start with a sign").matches("-?[0-9.]+(?:E-?[0-9]+)?");
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "=1+1 | '=1+1",
                "+1 | '+1",
                "-6 to -5 | '-6 to -5",
                "@x | '@x",
                "`  =1` | `'  =1`",
                "\uff1d1 | '\uff1d1",
                "plain | plain",
                "a=b | a=b"
            })
    void guarded(String said, String cell) {
        assertThat(CsvReport.guarded(said)).isEqualTo(cell);
        assertThat(CsvReport.guarded("\t" + said)).isEqualTo(cell.startsWith("'") ? "' " + said : " " + said);
    }
}
