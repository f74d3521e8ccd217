package org.linedrop.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Problem;

class TreeReaderTest {
    private static final List<String> SILENT = List.of("parts");

    static Reading read(String text) {
        return TreeReader.read("f.yaml", text, SILENT);
    }

    private static List<String> said(String text) {
        return read(text).problems().stream().map(Problem::line).toList();
    }

    static byte[] sample(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(TreeReaderTest.class.getResourceAsStream(name))) {
            return in.readAllBytes();
        }
    }

    /** The tree in one line: what a test compares. */
    static String shown(Tree tree) {
        if (tree instanceof Tree.Branch mapping) {
            return mapping.entries().stream()
                    .map(e -> e.key() + "=" + shown(e.value()))
                    .collect(Collectors.joining("; ", "{", "}"));
        }
        if (tree instanceof Tree.Items list) {
            return list.items().stream().map(TreeReaderTest::shown).collect(Collectors.joining("; ", "[", "]"));
        }
        return ((Tree.Text) tree).text();
    }

    private static String tree(String text) {
        return shown(read(text).tree().orElseThrow());
    }

    @Test
    void everyScalarIsText() {
        assertThat(tree("-6: off\n14:1: 0x1F\noff: 1e3\nnull: ~\n12: yes\ndate: 2020-01-01\n<<: 1\nempty:\n"))
                .isEqualTo("{-6=off; 14:1=0x1F; off=1e3; null=~; 12=yes; date=2020-01-01; <<=1; empty=}");
        assertThat(read("-6: off\n14:1: 0x1F\n").problems()).isEmpty();
    }

    @Test
    void jsonIsTheSameTree() {
        String yaml = "runs:\n  feed:\n    from: tank\n    parts:\n      - {hose: race PTFE -8, length: 0.60 m}\n";
        String json = "{\"runs\": {\"feed\": {\"from\": \"tank\", \"parts\": [\n"
                + " {\"hose\": \"race PTFE -8\", \"length\": \"0.60 m\"}\n]}}}";
        assertThat(tree(json)).isEqualTo(tree(yaml));
        assertThat(tree("{\"a\":1,\"b\":[true,null]}")).isEqualTo("{a=1; b=[true; null]}");
    }

    @Test
    void everyKeyAndValueHasItsPlace() {
        Tree.Branch tree =
                read("# invented\nruns:\n  feed: {from: tank}\n").tree().orElseThrow();
        Tree.Entry runs = tree.entries().get(0);
        assertThat(List.of(runs.line(), runs.column())).containsExactly(2, 1);
        Tree.Entry feed = ((Tree.Branch) runs.value()).entries().get(0);
        assertThat(List.of(feed.line(), feed.column())).containsExactly(3, 3);
        Tree.Entry from = ((Tree.Branch) feed.value()).entries().get(0);
        assertThat(List.of(
                        from.line(),
                        from.column(),
                        from.value().line(),
                        from.value().column()))
                .containsExactly(3, 10, 3, 16);
        assertThat(tree.get("points")).isNull();
    }

    @Test
    void inchMarksInsideAValueAreText() {
        assertThat(tree("tube: 3/8\" x 0.035\"\n")).isEqualTo("{tube=3/8\" x 0.035\"}");
        assertThat(tree("a: {tube: steel 3/8\" x 0.035\", length: 1 m}\n"))
                .isEqualTo("{a={tube=steel 3/8\" x 0.035\"; length=1 m}}");
        assertThat(tree("a: \"-8\"\n")).isEqualTo("{a=-8}");
    }

    @ParameterizedTest
    @ValueSource(strings = {"return-style.yaml", "oil-loop.yaml"})
    void sampleFilesAreRead(String name) throws IOException {
        Reading reading = TreeReader.read(name, sample(name), SILENT);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.tree().orElseThrow().entries()).hasSizeGreaterThan(8);
    }

    /** What a beginner writes, with {@code \n} and {@code \t} spelt out, and every line he then reads. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '~',
            delimiter = '|',
            value = {
                // ` #8` swallows the size, and in braces the closing brace with it
                "runs:\\n  feed:\\n    parts:\\n      - hose: race PTFE #8|f.yaml:4  feed 1: \"race PTFE\" has no size. If you wrote #8: YAML drops everything after \" #\". Write -8",
                "runs:\\n  feed:\\n    parts:\\n      - {hose: race PTFE #8, length: 0.6 m}\\n      - {through: pump}|f.yaml:4  \"race PTFE\" has no size. If you wrote #8: YAML drops everything after \" #\". Write -8",
                "hose: #8|f.yaml:1  nothing stands behind the colon. If you wrote #8: YAML drops everything after \" #\". Write -8",
                "a:\\n  b: {hose: x # old}\\n  c: d|f.yaml:2  the closing bracket stands behind \" #\". YAML drops everything after \" #\". Put the bracket before it",
                // a list in a list
                "hoses:\\n  - - 8|f.yaml:2  hoses 1: \"- 8\" reads as a list. Write -8 without a space",
                "a:\\n  hose: - 8|f.yaml:2  \"- 8\" reads as a list. Write -8 without a space",
                "a: {hose: - 8}|f.yaml:1  \"- 8\" reads as a list. Write -8 without a space",
                "a: {hose: - 8, length: 0.6 m}|f.yaml:1  \"- 8\" reads as a list. Write -8 without a space",
                "parts: - {hose: x}|f.yaml:1  a list cannot begin here. Put each item in a line of its own under the key, with \"- \" before it",
                "a: [[x]]|f.yaml:1  a 1: a list stands in a list. One \"- \" begins one item",
                "a: b\\n  - c|f.yaml:2  \"- c\" is read as the rest of line 1. A list stands under a key that has nothing behind its colon",
                // no space behind the colon
                "a:\\n  length:0.6 m|f.yaml:2  put a space after the colon: \"length: 0.6 m\"",
                "a:\\n  hose: x\\n  length:0.6 m|f.yaml:3  put a space after the colon: \"length: 0.6 m\"",
                "a:\\n  length:0.6 m\\n  hose: x|f.yaml:2  put a space after the colon: \"length: 0.6 m\"",
                "a:\\n  hose: x\\n  length:0.6 m\\n  ends: none|f.yaml:3  put a space after the colon: \"length: 0.6 m\"",
                "a: {hose: x, length:0.6 m, ends: none}|f.yaml:1  a: put a space after the colon: \"length: 0.6 m\"",
                "a:\\n  - hose:race PTFE -8|f.yaml:2  a 1: put a space after the colon: \"hose: race PTFE -8\"",
                "length:0.6 m|f.yaml:1  put a space after the colon: \"length: 0.6 m\"",
                "a: b\\n  length:0.6 m|f.yaml:2  put a space after the colon: \"length: 0.6 m\"",
                // an open brace is named on its own line
                "parts:\\n  - {hose: x, length: 0.6 m\\n  - {hose: y}\\nb: 1|f.yaml:2  this { has no } on its line",
                "parts:\\n  - {hose: x, length: 0.6 m\\nb: 1|f.yaml:2  this { has no } on its line",
                "a: {hose: x, length: 0.6 m\\nb: 1\\nc: {d: e}|f.yaml:1  this { has no } on its line",
                "a: {hose: x, length: 0.6 m|f.yaml:1  this { has no } on its line",
                "a: [x, y\\nb: 1|f.yaml:1  this [ has no ] on its line",
                "{\\n \"a\": {\"b\": \"1\"}|f.yaml:1  this { has no }",
                "a: {hose: x}}\\nb: 1|f.yaml:1  this } has no {. Delete it, or add the other",
                "a: }b|f.yaml:1  this } has no {. Delete it, or add the other",
                // a comma
                "a: {hose: x length: 0.6 m}|f.yaml:1  a comma is missing before \"length:\"",
                "a: {hose: x, length: 0.6 m ends: none}\\nb: 1|f.yaml:1  a comma is missing before \"ends:\"",
                "a: {hose: x, length: 0.6 m\\n    ends: none}\\nb: 1|f.yaml:2  a comma is missing before \"ends:\"",
                "{\"a\": \"1\" \"b\": \"2\"}|f.yaml:1  a comma is missing before \"b:\"",
                "{\"a\" \"1\"}|f.yaml:1  a comma or a colon is missing before \"\"1\"\"",
                "a: {hose: x}, b: 1|f.yaml:1  a comma stands where nothing is listed. Delete it",
                "a: {b: c,, d: e}|f.yaml:1  a comma stands where nothing is listed. Delete it",
                // tabs
                "a:\\n\\tb: 1|f.yaml:2  line 2 starts with a tab. Use two spaces per step",
                "a:\\n  b: 1\\n \\tc: 1|f.yaml:3  line 3 starts with a tab. Use two spaces per step",
                // a second colon
                "a: 1\\nsource: sheet: page 4|f.yaml:2  a second \": \" in one line. Put the value in quotes",
                "a: {source: sheet: page 4}|f.yaml:1  a second \": \" in one value. Put the value in quotes",
                // a sign for words
                "pressure: >= 375 kPa\\nx: 1|f.yaml:1  \">= 375 kPa\" cannot be read here. Write \"at least 375 kPa\"",
                "rail: {pressure: >= 375 kPa}|f.yaml:1  \">= 375 kPa\" cannot be read here. Write \"at least 375 kPa\"",
                "pressure: > 375 kPa|f.yaml:1  \"> 375 kPa\" cannot be read here. Write \"at least 375 kPa\"",
                "note: >\\n  long text|f.yaml:1  \">\" cannot be read here. Write the value on the line of its key, without >",
                // signs YAML keeps for itself
                "clog: *5|f.yaml:1  a value may not begin with * (or % ! & @). Write 5 x",
                "a: {clog: *5}|f.yaml:1  a: a value may not begin with * (or % ! & @). Write 5 x",
                "clog: * 5|f.yaml:1  a value may not begin with * (or % ! & @). Write 5 x",
                "bleed: %50|f.yaml:1  a value may not begin with % (or * ! & @). Write 50 %",
                "a: {takes: %50 of engine}|f.yaml:1  a value may not begin with % (or * ! & @). Write 50 % of engine",
                "clog: !x|f.yaml:1  a value may not begin with ! (or * % & @). If it must, put the value in quotes: \"!x\"",
                "clog: &a b|f.yaml:1  a value may not begin with & (or * % ! @). If it must, put the value in quotes: \"&a b\"",
                "clog: & b|f.yaml:1  a value may not begin with & (or * % ! @). If it must, put the value in quotes: \"& b\"",
                "clog: @x|f.yaml:1  a value may not begin with @ (or * % ! &). If it must, put the value in quotes: \"@x\"",
                "clog: `x|f.yaml:1  a value may not begin with `. If it must, put the value in quotes: \"`x\"",
                "clog: ? x|f.yaml:1  a question mark may not begin a value. Put the value in quotes",
                "%50 x|f.yaml:1  a line may not begin with %. Delete the line, or write the % behind its number",
                // quotation marks
                "a: 1\\ntube: \"3/8\" x 0.035\"|f.yaml:2  the quotation marks close early in \"3/8\" x 0.035\". Write 3/8 in x 0.035 in",
                "a: {tube: \"3/8\" x 0.035\", length: 1 m}|f.yaml:1  the quotation marks close early in \"3/8\" x 0.035\". Write 3/8 in x 0.035 in",
                "a: {tube: \"x\" length: 1 m}|f.yaml:1  a comma is missing before \"length:\"",
                "tube: \"3/8 x 0.035\\nb: 1|f.yaml:1  this \" is not closed on its line",
                "tube: \"3/8 x\\nb: \"c\"|f.yaml:1  this \" is not closed on its line",
                "tube: '3/8 x\\nb: c'|f.yaml:1  this ' is not closed on its line",
                "a: \"\\\\q\"|f.yaml:1  a \\\\ stands between double quotes. Use single quotes, or write it twice: \\\\\\\\",
                // no space behind the dash
                "parts:\\n  - {a: b}\\n  -{c: d}|f.yaml:3  put a space after the dash: \"- {c: d}\"",
                // the same key twice
                "runs:\\n  feed:\\n    parts:\\n      - {hose: x}\\n      - hose: y\\n        length: 1 m\\n        length: 2 m|f.yaml:7  \"length\" is given twice in feed 2 (lines 6 and 7). Delete one",
                "a: 1\\nb: 2\\na: 3|f.yaml:3  \"a\" is given twice (lines 1 and 3). Delete one",
                "a: {b: 1, b: 2}|f.yaml:1  \"b\" is given twice in a (both in line 1). Delete one",
                // steps
                "a: 1\\n b: 2|f.yaml:2  line 2 begins in column 2, where no line above it begins. Lines of one step begin in one column; a step inwards is two spaces, below a key that has nothing behind its colon",
                "a:\\n    b: 1\\n  c: 2|f.yaml:3  line 3 begins in column 3, where no line above it begins. Lines of one step begin in one column; a step inwards is two spaces, below a key that has nothing behind its colon",
                "a:\\n  b: 1\\n  c\\n  d: 2|f.yaml:3  \"c\" has no colon. Write key: value, with a colon and a space",
                "a\\nb: 1|f.yaml:1  \"a\" has no colon. Write key: value, with a colon and a space",
                // shape
                "~~|f.yaml:1  the file is empty. Write at least one key: value",
                "# nothing|f.yaml:1  the file is empty. Write at least one key: value",
                "- a\\n- b|f.yaml:1  the file begins with a list. Its keys stand at the start of a line, each with a colon and without \"- \" before it",
                "hello|f.yaml:1  \"hello\" is not a key with a value. Write key: value, with a colon and a space",
                "a: 1\\n---\\nb: 2|f.yaml:2  line 2 begins a second document with ---. A file holds one: delete the line, or use two files",
                "[a]: b|f.yaml:1  a list or braces stand where a key should be. A key is a word and a colon",
                "? {a: b}\\n: c|f.yaml:1  a list or braces stand where a key should be. A key is a word and a colon",
                ": b|f.yaml:1  nothing stands before the colon. A key is a word and a colon",
                "a: {b: 1} c|f.yaml:1  \"c\" stands behind a value that is complete. Put it inside the brackets or quotation marks, or in a line of its own",
            })
    void aBeginnerReadsWhatToDo(String text, String line) {
        String file = unescaped(text == null ? "" : text);
        assertThat(said(file)).containsExactly(line.replace("\\\\", "\\"));
    }

    private static String unescaped(String text) {
        return text.replace("\\\\", "\u0001")
                .replace("\\n", "\n")
                .replace("\\t", "\t")
                .replace('\u0001', '\\');
    }

    @Test
    void aBlockTextIsRefusedWithBothSigns() {
        assertThat(said("note: |\n  long text\n"))
                .containsExactly(
                        "f.yaml:1  \"|\" cannot be read here. Write the value on the line of its key, without |");
    }

    @Test
    void slipsAreCollectedAndTheTreeHoldsWhatWasMeant() {
        String text = "a:\n  hose: race PTFE #8\n  length:0.6 m\n";
        assertThat(read(text).tree()).isEmpty();
        Reading reading =
                read("a:\n  b: {length:0.6 m}\n  c: race PTFE #8\n  c: other\nd:\n  - - 8\ne:\n  ends:none\n");
        assertThat(reading.problems())
                .hasSize(5)
                .isSortedAccordingTo((x, y) -> x.place().compareTo(y.place()));
        assertThat(shown(reading.tree().orElseThrow()))
                .isEqualTo("{a={b={length=0.6 m}; c=race PTFE -8}; d=[-8]; e={ends=none}}");
    }

    @Test
    void remarksThatAreRemarksStayRemarks() {
        assertThat(said("a: race PTFE -8 #6 was too small\nb: x # 8 of them\nc: 5 # of 9\nd: {e: f} #4\ng: x #1234\n"))
                .isEmpty();
    }

    @Test
    void aByteOrderMarkIsAccepted() {
        for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            Reading reading = TreeReader.read("f.yaml", "\ufeffa: 40 \u00b0C\r\nb: 1\r\n".getBytes(charset), SILENT);
            assertThat(shown(reading.tree().orElseThrow())).isEqualTo("{a=40 \u00b0C; b=1}");
        }
        assertThat(tree("\ufeffa:\u00a01\rb: 2")).isEqualTo("{a=1; b=2}");
    }

    @Test
    void wrongEncodingsAndStrangeCharactersAreNamedWithTheirLine() {
        assertThat(TreeReader.read("f.yaml", "a: 1\nb: 40 \u00b0C\n".getBytes(StandardCharsets.ISO_8859_1), SILENT)
                        .problems())
                .extracting(Problem::line)
                .containsExactly(
                        "f.yaml:2  line 2 is not UTF-8 text behind \"b: 40\". Save the file as UTF-8 in your editor");
        assertThat(TreeReader.read("f.yaml", "a: 1\n".getBytes(StandardCharsets.UTF_16LE), SILENT)
                        .problems())
                .extracting(Problem::line)
                .containsExactly(
                        "f.yaml:1  line 1 has a NUL character in column 2. This is no text file, or it was saved in another encoding. Save it as UTF-8",
                        "f.yaml:2  line 2 has a NUL character in column 1. This is no text file, or it was saved in another encoding. Save it as UTF-8");
        assertThat(said("a: 1\nb: 2\u0007\nc: \u200b3\n"))
                .containsExactly(
                        "f.yaml:2  line 2 has the character U+0007 in column 5. Delete it: it cannot be seen and does not belong in a text file",
                        "f.yaml:3  line 3 has the character U+200B in column 4. Delete it: it cannot be seen and does not belong in a text file");
        assertThat(said("a: \ud800\n")).hasSize(1);
        assertThat(said("a: \ufffd\n")).hasSize(1);
        assertThat(said("\u0000\n".repeat(100))).hasSize(5);
    }

    @Test
    void depthAndSizeAreLimited() {
        assertThat(said("a: " + "[".repeat(100_000))).singleElement().asString().contains("more than 100 deep");
        assertThat(said("a: " + "{b: ".repeat(50_000)))
                .singleElement()
                .asString()
                .contains("more than 100 deep");
        assertThat(said("a:\n " + "- ".repeat(10_000) + "b\n"))
                .singleElement()
                .asString()
                .contains("more than 100 deep");
        assertThat(said("a: " + "{b: ".repeat(98) + "1" + "}".repeat(98))).isEmpty();
        assertThat(said("a: " + "b".repeat(TreeReader.LARGEST_BYTES)))
                .containsExactly(
                        "f.yaml  the file is larger than 1000000 bytes. A circuit has a few thousand: is this the right file?");
        assertThat(TreeReader.read("f.yaml", new byte[TreeReader.LARGEST_BYTES + 1], SILENT)
                        .problems())
                .hasSize(1);
    }

    @Test
    void aliasesCannotMultiply() {
        assertThat(said("a: &a [x, x]\nb: &b [*a, *a]\n"))
                .singleElement()
                .asString()
                .contains("a value may not begin with &");
    }

    @Test
    void aStreamIsReadNoFurtherThanTheLimit() throws IOException {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return 'a';
            }
        };
        assertThat(TreeReader.read("f.yaml", endless, SILENT).problems()).hasSize(1);
    }
}
