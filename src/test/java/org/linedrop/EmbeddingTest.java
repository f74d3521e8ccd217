package org.linedrop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;
import org.linedrop.report.JsonReport;
import org.linedrop.result.Result;
import org.linedrop.study.FeedCheck;

/** What src/docs/embedding.md says. */
class EmbeddingTest {
    @Test
    void sample() throws IOException {
        // sample begins
        Tree.Branch hose = Tree.of("hose", "race PTFE -6", "length", "4.2 m", "ends", "straight to 90");
        Tree.Branch points = Tree.of()
                .with("regulator", Tree.of("kind", "held", "pressure", "400 kPa"))
                .with("rail", Tree.of("kind", "draw", "takes", "180 L/h"));
        Tree.Branch run = Tree.of("from", "regulator", "to", "rail").with("parts", Tree.items(hose));
        Tree.Branch words = Tree.of("linedrop", "1", "fluid", "E10", "temperature", "40 C")
                .with("points", points)
                .with("runs", Tree.of().with("feed", run));

        Circuit feed = Circuit.of(words, "");
        double railPa = Result.of(feed).orThrow().point("rail").orElseThrow().staticPressurePa();
        // sample ends
        assertThat(railPa).isBetween(380_000.0, 400_000.0);
        String source = Files.readString(Path.of("src/test/java/org/linedrop/EmbeddingTest.java"));
        String sample = source.substring(
                source.indexOf("// sample begins\n") + "// sample begins\n".length(),
                source.indexOf("        // sample ends"));
        assertThat(sample.lines().count()).isLessThan(15);
        assertThat(Files.readString(Path.of("src/docs/embedding.md")))
                .contains(sample.indent(-4).replaceAll("(?m)^ +$", ""));
    }

    @Test
    void codeAndFileGiveTheSameCircuitAndTheSameBits() throws IOException {
        Circuit file = CircuitFile.read(Examples.path("first-feed.yaml"));
        Circuit code = Circuit.of(
                Tree.of(
                                "linedrop", "1",
                                "title", "Track-day coupe, feed from the regulator",
                                "service", "injected fuel",
                                "fluid", "E10",
                                "temperature", "40 C")
                        .with("engine", Tree.of("power", "430 hp", "bsfc", "0.50 lb/hp/h"))
                        .with(
                                "points",
                                Tree.of()
                                        .with(
                                                "regulator",
                                                Tree.of("kind", "held", "pressure", "300 kPa", "height", "0.30 m"))
                                        .with(
                                                "rail",
                                                Tree.of(
                                                        "kind",
                                                        "draw",
                                                        "takes",
                                                        "100 % of engine",
                                                        "height",
                                                        "0.80 m")))
                        .with(
                                "runs",
                                Tree.of()
                                        .with(
                                                "feed",
                                                Tree.of("from", "regulator", "to", "rail")
                                                        .with(
                                                                "parts",
                                                                Tree.items(Tree.of(
                                                                        "hose", "race PTFE -6",
                                                                        "length", "4.20 m",
                                                                        "ends", "straight to 90")))))
                        .with("limits", Tree.of().with("rail", Tree.of("pressure", "at least 294 kPa"))),
                "");
        assertThat(code.points()).isEqualTo(file.points());
        assertThat(code.runs()).isEqualTo(file.runs());
        assertThat(code.surroundings()).isEqualTo(file.surroundings());
        assertThat(code.limits()).isEqualTo(file.limits());
        assertThat(JsonReport.text(FeedCheck.of(code))).isEqualTo(JsonReport.text(FeedCheck.of(file)));
    }

    @Test
    void codeGetsAllProblemsAtOnce() {
        Tree.Branch words = Tree.of("linedrop", "1", "fluid", "E10", "temperature", "40")
                .with("points", Tree.of().with("rail", Tree.of("kind", "draw", "takes", "much")));
        assertThatThrownBy(() -> Circuit.of(words, ""))
                .isInstanceOfSatisfying(
                        ProblemsException.class,
                        wrong -> assertThat(wrong.problems())
                                .hasSizeGreaterThanOrEqualTo(2)
                                .anySatisfy(problem -> assertThat(problem.key()).isEqualTo("temperature"))
                                .anySatisfy(problem -> assertThat(problem.key()).isEqualTo("takes")));
    }

    @Test
    void orThrowSaysWhy() throws IOException {
        String file =
                Files.readString(Examples.path("first-feed.yaml")).replace("pressure: 300 kPa", "pressure: -90 kPa");
        Result result = Result.of(CircuitFile.read(file, "low.yaml"));
        assertThat(result.outcome().word()).isEqualTo("not physical");
        assertThatThrownBy(result::orThrow).hasMessageContaining("not physical").hasMessageContaining("rail");
    }
}
