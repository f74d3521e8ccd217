package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.Examples;
import org.linedrop.study.FeedCheck;
import org.linedrop.units.Display;

/**
 * Pages in a real browser, at the width of a hand and of a desk: pictures are drawn, no text covers another or leaves its
 * frame, nothing is asked of anybody. The page stands in a frame of a page that measures it, since it lets nothing run
 * itself. Needs Chromium on the path, or in the environment variable CHROMIUM; run by the profile {@code browser}.
 */
class PageBrowserIT {
    private static final long LONGEST_S = 120;
    private static final Path FOLDER = Path.of("src/test/resources/org/linedrop/report");
    private static final Pattern MEASURED = Pattern.compile("<pre id=\"measured\">(.*?)</pre>", Pattern.DOTALL);

    @TempDir
    private Path dir;

    static List<String> pages() {
        List<String> names = new ArrayList<>(Examples.names());
        names.addAll(List.of(
                "long-names.yaml",
                "hostile.yaml",
                "too-much.yaml",
                "brake.yaml",
                "returns.yaml",
                "../io/front-cooler.yaml"));
        return names;
    }

    private static FeedCheck check(String name) {
        return Files.exists(FOLDER.resolve(name)) ? Golden.own(name) : Golden.example(name);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void fitsAHandAndADesk(String name) throws Exception {
        FeedCheck check = check(name);
        for (Display display : List.of(Display.METRIC, Display.US)) {
            String html = PageReport.html(check, display);
            for (int width : display == Display.US ? new int[] {360} : new int[] {360, 1280}) {
                fits(name + " " + display.word() + " at " + width + " px", measured(html, width), width);
            }
        }
    }

    private static void fits(String what, Map<String, Object> found, int width) {
        assertThat((Double) found.get("width")).as(what).isEqualTo(width);
        assertThat(strings(found, "problems")).as(what).isEmpty();
        assertThat(strings(found, "requests")).as(what + ": requests").isEmpty();
        assertThat((Double) found.get("pictures")).as(what + ": pictures drawn").isGreaterThan(2);
        assertThat((Double) found.get("texts")).as(what + ": texts measured").isGreaterThan(30);
        assertThat((Double) found.get("pageWidth"))
                .as(what + ": nothing sticks out")
                .isLessThanOrEqualTo(width);
    }

    @SuppressWarnings("unchecked")
    private static List<String> strings(Map<String, Object> found, String key) {
        return (List<String>) found.get(key);
    }

    @Test
    void whatItLooksForIsFound() throws Exception {
        // a page with every fault, or the checks above would prove nothing
        String faulty = PageReport.html(check("first-feed.yaml"), Display.METRIC)
                .replace("default-src &#39;none&#39;; ", "")
                .replace(
                        "<main>",
                        "<main><p style=\"width: 3000px\">wide</p><img src=\"nowhere.png\"/>"
                                + "<svg viewBox=\"0 0 100 40\" width=\"100\" height=\"40\" class=\"bad\">"
                                + "<text x=\"2\" y=\"20\" font-size=\"12\">covered</text>"
                                + "<text x=\"6\" y=\"22\" font-size=\"12\">covering</text>"
                                + "<text x=\"80\" y=\"38\" font-size=\"12\">leaves its frame</text></svg>"
                                + "<svg viewBox=\"0 0 100 40\" width=\"0\" height=\"0\"></svg>"
                                + "<table class=\"small\"><tbody><tr><td><div style=\"width: 2000px\">x</div></td></tr></tbody></table>");
        Map<String, Object> found = measured(faulty, 1280);
        assertThat(String.join("\n", strings(found, "problems")))
                .contains("covers", "leaves its picture", "not drawn", "sticks out");
        assertThat(strings(found, "requests")).isNotEmpty();
        assertThat((Double) found.get("pageWidth")).isGreaterThan(1280);
    }

    @Test
    void printsOnBothPapers() throws Exception {
        for (String paper : List.of("A4", "letter")) {
            Path page = dir.resolve("print.html");
            Files.writeString(
                    page,
                    PageReport.html(check("fuel-feed-516.yaml"), Display.METRIC)
                            .replace("@page {", "@page { size: " + paper + ";"));
            Path pdf = dir.resolve(paper + ".pdf");
            browse(List.of(
                    "--no-pdf-header-footer",
                    "--print-to-pdf=" + pdf,
                    page.toUri().toString()));
            String written = Files.readString(pdf, StandardCharsets.ISO_8859_1);
            Matcher boxes =
                    Pattern.compile("/MediaBox *\\[0 0 ([0-9.]+) ([0-9.]+)\\]").matcher(written);
            int sheets = 0;
            while (boxes.find()) {
                sheets++;
                double wide = paper.equals("A4") ? 595 : 612; // points
                assertThat(Double.parseDouble(boxes.group(1))).isBetween(wide - 1, wide + 1);
            }
            assertThat(sheets).isBetween(3, 14);
        }
    }

    private Map<String, Object> measured(String html, int width) throws IOException, InterruptedException {
        Path page = dir.resolve("measured.html");
        Files.writeString(
                page, HARNESS.replace("WIDTH", Integer.toString(width)).replace("PAGE", attribute(html)));
        String dom = browse(
                List.of("--virtual-time-budget=4000", "--dump-dom", page.toUri().toString()));
        Matcher measured = MEASURED.matcher(dom);
        assertThat(measured.find())
                .as("measured:\n" + dom.substring(0, Math.min(400, dom.length())))
                .isTrue();
        String json = measured.group(1)
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&amp;", "&");
        return Json.object(json);
    }

    private static String attribute(String text) {
        return text.replace("&", "&amp;").replace("\"", "&quot;");
    }

    private String browse(List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                browser(),
                "--headless",
                "--no-sandbox", // a build machine is often root in a container
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--disable-background-networking",
                "--no-first-run",
                "--user-data-dir=" + dir.resolve("profile")));
        command.addAll(arguments);
        Path out = dir.resolve("out.txt");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(dir.resolve("err.txt").toFile())
                .start();
        boolean ended = process.waitFor(LONGEST_S, TimeUnit.SECONDS);
        if (!ended) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
        assertThat(ended).as(() -> "the browser did not end: " + command).isTrue();
        return Files.readString(out);
    }

    private static String browser() {
        String named = System.getenv("CHROMIUM");
        if (named != null && !named.isBlank()) {
            return named;
        }
        return Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator, -1))
                .flatMap(folder -> Stream.of("chromium", "chromium-browser").map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .map(Path::toString)
                .orElseThrow(() -> new AssertionError("no Chromium here: apt-get install chromium, or set CHROMIUM"));
    }

    private static final String HARNESS = """
            <!DOCTYPE html><html><body style="margin:0">
            <iframe id="page" style="border:0;width:WIDTHpx;height:900px" srcdoc="PAGE"></iframe>
            <script>
            const frame = document.getElementById('page');
            function shown(box) { return box.width > 0 && box.height > 0; }
            function over(a, b) {
              return Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1
                && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 2.5;
            }
            function outside(inner, outer) {
              return inner.left < outer.left - 1 || inner.right > outer.right + 1
                || inner.top < outer.top - 2 || inner.bottom > outer.bottom + 2;
            }
            function measure() {
              const page = frame.contentDocument, view = frame.contentWindow;
              const problems = [];
              let pictures = 0, texts = 0;
              for (const svg of page.querySelectorAll('svg')) {
                if (svg.closest('.desk, .hand') && view.getComputedStyle(svg.closest('.desk, .hand')).display === 'none') continue;
                const outer = svg.getBoundingClientRect();
                if (!shown(outer)) { problems.push('picture not drawn: ' + svg.getAttribute('aria-label')); continue; }
                pictures++;
                const name = svg.querySelector('title') ? svg.querySelector('title').textContent : '?';
                const boxes = [];
                for (const text of svg.querySelectorAll('text')) {
                  const box = text.getBoundingClientRect();
                  if (!shown(box)) continue;
                  texts++;
                  if (outside(box, outer)) problems.push(name + ': "' + text.textContent + '" leaves its picture');
                  for (const other of boxes)
                    if (over(box, other.box))
                      problems.push(name + ': "' + text.textContent + '" covers "' + other.text + '"');
                  boxes.push({box: box, text: text.textContent});
                }
              }
              for (const cell of page.querySelectorAll('td, th, h1, h2, h3, p, li, figcaption')) {
                const box = cell.getBoundingClientRect();
                if (!shown(box)) continue;
                texts++;
                if (cell.scrollWidth > cell.clientWidth + 1 && cell.clientWidth > 0
                    || box.right > view.innerWidth + 1)
                  problems.push(cell.tagName + ' "' + cell.textContent.slice(0, 60) + '" sticks out');
              }
              const main = page.querySelector('main').getBoundingClientRect();
              for (const block of page.querySelectorAll('table, figure, p')) {
                const box = block.getBoundingClientRect();
                if (shown(box) && box.right > main.right + 1)
                  problems.push(block.tagName + ' "' + block.textContent.trim().slice(0, 60) + '" sticks out of its column');
              }
              const requests = view.performance.getEntriesByType('resource').map(entry => entry.name);
              for (const each of page.querySelectorAll('[src], link')) requests.push(each.outerHTML);
              const pre = document.createElement('pre');
              pre.id = 'measured';
              pre.textContent = JSON.stringify({
                width: view.innerWidth, pageWidth: page.documentElement.scrollWidth,
                pictures: pictures, texts: texts, problems: problems, requests: requests});
              document.body.appendChild(pre);
            }
            if (frame.contentDocument && frame.contentDocument.readyState === 'complete'
                && frame.contentDocument.querySelector('main')) measure();
            else frame.addEventListener('load', measure);
            </script></body></html>
            """;
}
