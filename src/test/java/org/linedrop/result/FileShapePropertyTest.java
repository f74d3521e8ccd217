package org.linedrop.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.linedrop.io.CircuitFile;

/** What the way a circuit is written down must not change, and what its bores must; random trees, all invented. */
class FileShapePropertyTest {
    private static final int CIRCUITS = 200;
    private static final String[] HOSES = {"race PTFE", "race rubber", "MIL-H-8794"};

    private record Line(String from, String to, String hose, int dash, double lengthM, double drawLitres) {}

    /** A tree of bare hoses from one held point, a draw at each end. */
    private static List<Line> tree(long seed) {
        Random random = new Random(seed);
        List<Line> lines = new ArrayList<>();
        int points = 3 + random.nextInt(6);
        for (int i = 1; i < points; i++) {
            lines.add(new Line(
                    "p" + random.nextInt(i),
                    "p" + i,
                    HOSES[random.nextInt(HOSES.length)],
                    6 + 2 * random.nextInt(3),
                    0.3 + 3 * random.nextDouble(),
                    20 + 200 * random.nextDouble()));
        }
        return lines;
    }

    private static String point(Line line, double times) {
        return String.format(Locale.ROOT, "  %s: {kind: draw, takes: %.6f L/h}\n", line.to, times * line.drawLitres);
    }

    private static String run(Line line, int pieces) {
        String part = String.format(
                Locale.ROOT, "{hose: %s -%d, length: %.9f m, ends: none}", line.hose, line.dash, line.lengthM / pieces);
        return String.format(
                Locale.ROOT,
                "  %s line: {from: %s, to: %s, parts: [%s]}\n",
                line.to,
                line.from,
                line.to,
                String.join(", ", Collections.nCopies(pieces, part)));
    }

    private static Result solved(List<String> points, List<String> runs) {
        String text = "linedrop: 1\nservice: injected fuel\nfluid: E10\ntemperature: 40 C\npoints:\n"
                + String.join("", points) + "runs:\n" + String.join("", runs);
        return Result.of(CircuitFile.read(text, "tree.yaml")).orThrow();
    }

    private static List<String> points(List<Line> lines, double times) {
        List<String> points = new ArrayList<>(List.of("  p0: {kind: held, pressure: 300 kPa}\n"));
        lines.forEach(line -> points.add(point(line, times)));
        return points;
    }

    private static List<String> runs(List<Line> lines, int pieces) {
        List<String> runs = new ArrayList<>();
        lines.forEach(line -> runs.add(run(line, pieces)));
        return runs;
    }

    private static double pressure(Result result, Line line) {
        return result.point(line.to).orElseThrow().staticPressurePa();
    }

    private static double friction(Result result, Line line) {
        return result.rows(line.to + " line").stream()
                .mapToDouble(PartRow::frictionDropPa)
                .sum();
    }

    @Test
    void cuttingHosesInPiecesChangesNothing() {
        for (long seed = 0; seed < CIRCUITS; seed++) {
            List<Line> lines = tree(seed);
            Result whole = solved(points(lines, 1), runs(lines, 1));
            Result cut = solved(points(lines, 1), runs(lines, 2));
            for (Line line : lines) {
                assertThat(pressure(cut, line))
                        .as("seed %d, %s", seed, line.to)
                        .isCloseTo(pressure(whole, line), within(1e-3));
                assertThat(friction(cut, line))
                        .as("seed %d, %s", seed, line.to)
                        .isCloseTo(friction(whole, line), within(1e-7 * friction(whole, line)));
            }
        }
    }

    @Test
    void orderOfTheFileChangesNothing() {
        for (long seed = 0; seed < CIRCUITS; seed++) {
            List<Line> lines = tree(seed);
            Result straight = solved(points(lines, 1), runs(lines, 1));
            List<String> points = points(lines, 1);
            List<String> runs = runs(lines, 1);
            Collections.shuffle(points, new Random(seed));
            Collections.shuffle(runs, new Random(seed + 1));
            Result shuffled = solved(points, runs);
            for (Line line : lines) {
                assertThat(pressure(shuffled, line))
                        .as("seed %d, %s", seed, line.to)
                        .isCloseTo(pressure(straight, line), within(1e-4));
            }
        }
    }

    @Test
    void frictionRisesWithFlowAndFallsWithBore() {
        for (long seed = 0; seed < CIRCUITS; seed++) {
            List<Line> lines = tree(seed);
            Result usual = solved(points(lines, 1), runs(lines, 1));
            Result more = solved(points(lines, 1.2), runs(lines, 1));
            List<Line> wider = lines.stream()
                    .map(l -> new Line(l.from, l.to, l.hose, l.dash + 2, l.lengthM, l.drawLitres))
                    .toList();
            Result wide = solved(points(lines, 1), runs(wider, 1));
            for (Line line : lines) {
                double here = friction(usual, line);
                assertThat(here).as("seed %d, %s", seed, line.to).isPositive();
                assertThat(friction(more, line))
                        .as("seed %d, %s", seed, line.to)
                        .isGreaterThan(here);
                assertThat(friction(wide, line))
                        .as("seed %d, %s", seed, line.to)
                        .isLessThan(here);
            }
        }
    }
}
