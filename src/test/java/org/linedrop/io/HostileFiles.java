package org.linedrop.io;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Files that somebody made to break a reader, by name. */
final class HostileFiles {
    private static final String FEED = """
            linedrop: 1
            service: injected fuel
            fluid: petrol summer
            temperature: 20 C
            points:
              tank: {kind: held, pressure: 0 kPa, height: 2 m}
              rail: {kind: draw, takes: 100 L/h, height: 0 m}
            runs:
              feed:
                from: tank
                to: rail
                parts:
                  - hose: race rubber -6
                    length: 1 m
                    ends: straight to 90
            """;

    private final Map<String, byte[]> files = new LinkedHashMap<>();

    /** Large files are this many times smaller than the reader takes. */
    private final int part;

    private HostileFiles(int part) {
        this.part = part;
    }

    /**
     * All of them; large ones are as many times smaller than the reader takes as {@code part} says. The
     * first is good, so that the others are known to be wrong in what they change only.
     */
    static Map<String, byte[]> all(int part) {
        HostileFiles hostile = new HostileFiles(part);
        hostile.text("good", FEED);
        hostile.bytes();
        hostile.numbers();
        hostile.letters();
        hostile.yaml();
        hostile.catalogues();
        hostile.large();
        return hostile.files;
    }

    /** A small file that reads. */
    static String feed() {
        return FEED;
    }

    private void text(String name, String text) {
        text(name, text, StandardCharsets.UTF_8);
    }

    private void text(String name, String text, Charset charset) {
        files.put(name, text.getBytes(charset));
    }

    private void bytes() {
        text("empty", "");
        text("blank", " \n\t\n ");
        text("mark alone", "\ufeff");
        text("UTF-8 with mark", "\ufeff" + FEED);
        text("two marks", "\ufeff\ufeff" + FEED);
        text("UTF-16 with mark", FEED, StandardCharsets.UTF_16);
        text("UTF-16 without mark", FEED, StandardCharsets.UTF_16LE);
        text("UTF-16 little with mark", "\ufeff" + FEED, StandardCharsets.UTF_16LE);
        text("UTF-32", "\ufeff" + FEED, Charset.forName("UTF-32BE"));
        text("Latin 1", FEED.replace("20 C", "20 \u00b0C"), StandardCharsets.ISO_8859_1);
        text("NUL", FEED.replace("petrol", "pet\u0000rol"));
        text("escape sequence", FEED.replace("petrol", "\u001b[2Jpetrol"));
        files.put("half a letter", new byte[] {'f', ':', ' ', (byte) 0xC3});
        files.put("overlong slash", new byte[] {'f', ':', ' ', (byte) 0xC0, (byte) 0xAF});
        files.put("surrogates in UTF-8", new byte[] {'f', ':', ' ', (byte) 0xED, (byte) 0xA0, (byte) 0x80});
        files.put("odd UTF-16", new byte[] {(byte) 0xFF, (byte) 0xFE, 'a', 0, 'b'});
        files.put("half a pair in UTF-16", new byte[] {(byte) 0xFE, (byte) 0xFF, (byte) 0xD8, 0, 0, 'a'});
        text("old line ends", FEED.replace("\n", "\r"));
        text("tabs", FEED.replace("  ", "\t"));
    }

    private void numbers() {
        String[] numbers = {
            "NaN",
            ".nan",
            "-.inf",
            "Infinity",
            "1e999",
            "-1e999",
            "1e-999",
            "0x10",
            "1_000",
            "1,5",
            "1e",
            "--1",
            "+-1",
            "1e+",
            ".",
            "-",
            "1/0",
            "0/0",
            "1 1/0",
            "1..5",
            "\u0661\u0662",
            "\uff11\uff12",
            "1\u00a0",
            "\u221e",
            "1:30",
            "9".repeat(400),
            "0." + "0".repeat(400) + "1",
            "1e99999999999999999999",
            "5 +- 1e999",
            "5..1e999",
            "-0"
        };
        for (String number : numbers) {
            text("length " + number, FEED.replace("1 m", number + " m"));
            text("bare length " + number, FEED.replace("1 m", number));
            text("pressure " + number, FEED.replace("0 kPa", number + " kPa"));
            text("draw " + number, FEED.replace("100 L/h", number + " L/h"));
            text("temperature " + number, FEED.replace("20 C", number + " C"));
        }
    }

    private void letters() {
        text("Cyrillic letters in a name", FEED.replace("to: rail", "to: r\u0430il"));
        text("Cyrillic letters in a key", FEED.replace("length", "l\u0435ngth"));
        text("Greek unit", FEED.replace("1 m", "1 \u03bcm"));
        text("full-width colon", FEED.replace("length: 1", "length\uff1a 1"));
        text("right to left mark", FEED.replace("rail", "\u202eliar"));
        text("right to left letters", FEED.replace("rail", "\u05d0\u05d1\u0627"));
        text("zero width space", FEED.replace("petrol", "pet\u200brol"));
        text("combining marks", FEED.replace("rail", "r" + "\u0301".repeat(500)));
        text("emoji", FEED.replace("rail", "\ud83d\ude97"));
        text("no-break space", FEED.replace("1 m", "1\u00a0m"));
        text("line separator", FEED.replace("petrol", "petrol\u2028"));
        text("dotless i", FEED.replace("rail", "ra\u0131l\u0130"));
    }

    private void yaml() {
        text("alias bomb", aliases(9));
        text("billion anchors", "a: &a x\n" + "b: [" + "*a, ".repeat(50_000) + "*a]\n");
        text("anchor of itself", "a: &a [*a]\n");
        text("merge key", "a: &a {b: c}\nd:\n  <<: *a\n");
        text("tag of a class", "a: !!javax.script.ScriptEngineManager [x]\n");
        text("binary tag", "a: !!binary " + "A".repeat(1000) + "\n");
        text("directive", "%YAML 9.9\n---\na: b\n");
        text("long directive", "%TAG ! " + "x".repeat(100_000) + "\n---\na: b\n");
        text("two documents", FEED + "---\n" + FEED);
        text("ten thousand documents", "---\n".repeat(10_000));
        text("key given twice", FEED + "fluid: water\n");
        text("complex key", "? [a, b]\n: c\n");
        text("block text", "fluid: |\n  petrol\n");
        text("list for a file", "- a\n- b\n");
        text("text for a file", "petrol");
        text("text for a section", FEED.replaceAll("(?s)points:.*?runs", "points: tank\nruns"));
        text("list for a section", "points: [a, b]\nruns: [c]\nfluid: [petrol]\n");
        text("section for a text", FEED.replace("petrol summer", "{a: {b: {c: d}}}"));
        text("parts that are texts", FEED.replaceAll("(?s)parts:.*", "parts: [a, [b], {c: [d]}, {}]\n"));
        text("names that mean something", FEED.replace("rail", "null").replace("tank", "true"));
        text("names like numbers", FEED.replace("rail", "1e999").replace("tank", "-6"));
        text("names of nothing", FEED.replace("rail", "\"\"").replace("tank", "\" \""));
        text("names with line ends", FEED.replace("rail", "\"a\\nb\""));
        text("steering names", FEED.replace("rail", "\"\\e[31m\\0\""));
        text("run to itself", FEED.replace("to: rail", "to: tank"));
        text(
                "run to itself by its port",
                FEED.replace("kind: held, pressure: 0 kPa", "kind: tank").replace("to: rail", "to: tank.return"));
        text("no points", "linedrop: 1\nfluid: petrol summer\npoints: {}\nruns: {}\n");
        text("no parts", FEED.replaceAll("(?s)parts:.*", "parts: []\n"));
        text("cases of themselves", FEED + "cases:\n  a:\n    cases:\n      a: {fluid: water}\n");
    }

    private void catalogues() {
        String[] names = {
            "../secret.yaml",
            "/etc/passwd",
            "C:\\\\x.yaml",
            "~/x.yaml",
            ".",
            "..",
            "",
            "a/../../b",
            "//host/share",
            "a\\u0000b",
            "con",
            "\\u202e",
            "x".repeat(5000),
            "file:///etc/passwd",
            "http://localhost/x",
            "${HOME}",
            "f.yaml"
        };
        for (String name : names) {
            String shown = name.length() > 40 ? "long name" : name;
            text("catalogue " + shown, FEED + "catalogue:\n  files: [\"" + name + "\"]\n");
        }
        text("catalogue of a text", FEED + "catalogue: x\n");
        text("catalogue files of a text", FEED + "catalogue:\n  files: x\n");
        text("catalogue files of sections", FEED + "catalogue:\n  files: [{a: b}, [c]]\n");
        text("catalogue hoses of a list", FEED + "catalogue:\n  hoses: [a, {b: c}]\n");
        text("catalogue of empty hoses", FEED + "catalogue:\n  hoses: {a: {}, b: [], c: d}\n");
    }

    private void large() {
        int most = TreeReader.LARGEST_BYTES;
        text("over the limit", "#".repeat(most + 1));
        text("one long remark", FEED + "#".repeat(most / part - 1000));
        text("one long line", "a: " + "b".repeat(most / part - 10));
        text("one long number", FEED.replace("1 m", "1".repeat(900_000 / part) + " m"));
        text("one long unit", FEED.replace("1 m", "1 " + "m/".repeat(400_000 / part)));
        text("many spaces in a value", FEED.replace("1 m", "1" + " ".repeat(900_000 / part) + "m"));
        text("many words in a value", FEED.replace("race rubber -6", "race rubber " + "-6 ".repeat(300_000 / part)));
        text("many commas", FEED.replace("1 m", "1" + ",1".repeat(400_000 / part) + " m"));
        text("many quotation marks", "a: " + "'".repeat(900_000 / part));
        text("many colons", "a: b" + ":b".repeat(400_000 / part));
        text("deep brackets", "a: " + "[".repeat(900_000 / part));
        text("deep braces", "a: " + "{b: ".repeat(200_000 / part));
        text("deep dashes", "- ".repeat(400_000 / part));
        text("deep questions", "? ".repeat(400_000 / part));
        text("closed only", "a: " + "]".repeat(900_000 / part));
        text("deep steps", steps(1000));
        text("many keys", lines(40_000 / part, "k%d: v"));
        text("the same key", lines(100_000 / part, "k: v"));
        text("many lines of nothing", "\n".repeat(900_000 / part));
        text("many lines of one key", "a:\n" + "  b\n".repeat(200_000 / part));
        text(
                "many points",
                FEED.replace(
                        "runs:", lines(20_000 / part, "  p%d: {kind: draw, takes: 1 L/h, height: 0 m}") + "runs:"));
        text(
                "many runs",
                FEED
                        + lines(
                                4_000 / part,
                                "  r%d: {from: tank, to: rail, parts: [{hose: race rubber -6, length: 1 m, ends: none}]}"));
        text("many devices", FEED + "devices:\n" + lines(5_000 / part, "  d%d: {kind: return regulator, set: 3 bar}"));
        text("many limits", FEED + "limits:\n" + lines(5_000 / part, "  rail%d: {pressure: at least 1 bar}"));
        text("many parts", FEED + lines(20_000 / part, "      - {hose: race rubber -6, length: %d mm, ends: none}"));
        text("many wrong parts", FEED + lines(20_000 / part, "      - {hoes: race rubber -6, lenght: %d xy}"));
        text("many cases", FEED + "cases:\n" + lines(2_000 / part, "  c%d: {fluid: water}"));
        text("very many cases", FEED + "cases:\n" + lines(30_000 / part, "  c%d: {fluid: water}"));
        text(
                "many points in many cases",
                FEED.replace("runs:", lines(10_000 / part, "  p%d: {kind: draw, takes: 1 L/h}") + "runs:") + "cases:\n"
                        + lines(10_000 / part, "  c%d: {fluid: water}"));
        text(
                "many mistakes in many cases",
                FEED.replace("runs:", lines(5_000 / part, "  p%d: {kind: drew, takes: 1 x}") + "runs:") + "cases:\n"
                        + lines(80 / part + 4, "  c%d: {fluid: water}"));
        text("many catalogue files", FEED + "catalogue:\n  files:\n" + lines(20_000 / part, "    - f%d.yaml"));
    }

    private static String aliases(int levels) {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i <= levels; i++) {
            text.append("a" + i + ": &a" + i + " [" + ("*a" + (i - 1) + ", ").repeat(9) + "x]\n");
        }
        return text.toString();
    }

    private static String steps(int levels) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < levels; i++) {
            text.append(" ".repeat(i)).append("a:\n");
        }
        return text.toString();
    }

    private static String lines(int count, String pattern) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(pattern.replace("%d", Integer.toString(i))).append('\n');
        }
        return text.toString();
    }
}
