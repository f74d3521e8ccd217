package org.linedrop.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Explanation;
import org.linedrop.fact.Figure;
import org.linedrop.io.CircuitFile;

/**
 * Own output, kept: every row, point and device of circuits that together hold every kind of part, and what each kind of
 * row says about itself. Texts count letter for letter, numbers to a millionth. After a change that is meant, run once
 * with {@code -Dgolden.write=true} and read the difference before committing it.
 */
class RowsRegressionTest {
    private static final double TOLERANCE = 1e-6;
    private static final double NOTHING = 1e-9;
    private static final Path KEPT = Path.of("src/test/resources/org/linedrop/result");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "brakes",
                "carburettor-feed",
                "front-radiator",
                "fuel-feed-516",
                "mechanical-injection",
                "oil-cooler",
                "surge-pot",
                "turbo-drain",
                "twin-rails",
                "y-block"
            })
    void example(String name) throws IOException {
        same(name, lines(Path.of("src/examples").resolve(name + ".yaml")));
    }

    /** Parts, ends and devices that no example has. */
    @ParameterizedTest
    @ValueSource(strings = {"odd-parts", "odd-devices"})
    void own(String name) throws IOException {
        same(name, lines(KEPT.resolve(name + ".yaml")));
    }

    private static List<String> lines(Path file) throws IOException {
        Circuit circuit = CircuitFile.read(file);
        List<String> lines = new ArrayList<>();
        for (String name : circuit.caseNames()) {
            Result result = Result.of(circuit.in(name));
            lines.add(cells("case", name, result.outcome()));
            Set<String> explained = new HashSet<>();
            for (PartRow row : result.rows()) {
                row(lines, row);
                if (name.equals(circuit.caseNames().get(0)) && explained.add(row.name() + row.size())) {
                    explanation(lines, result.explain(row.run() + " " + row.row()));
                }
            }
            for (PointRow point : result.points()) {
                lines.add(cells("point", point.id(), point.totalPressurePa(), point.netInflowKgPerS()));
            }
            for (DeviceRow device : result.devices()) {
                lines.add(cells(
                        "device",
                        device.id(),
                        device.state(),
                        device.massFlowKgPerS(),
                        device.inletPressurePa(),
                        device.dropPa()));
            }
        }
        return lines;
    }

    private static void row(List<String> lines, PartRow row) {
        lines.add(cells(
                row.run() + " " + row.row(),
                row.name(),
                row.kind(),
                row.size(),
                row.boreM().value(),
                row.massFlowKgPerS(),
                row.reynolds(),
                row.regime(),
                row.frictionDropPa(),
                row.localDropPa(),
                row.liftDropPa()));
    }

    private static void explanation(List<String> lines, Explanation it) {
        lines.add(cells(" explained", it.name(), it.kind(), it.size(), it.flow().sense(), it.dropPa()));
        for (Explanation.Given given : it.given()) {
            Figure figure = given.figure();
            lines.add(cells(" given", given.name(), figure.value(), figure.low(), figure.high(), given.unit()));
        }
        for (Explanation.Group group : it.groups()) {
            lines.add(cells(" group", group.name(), group.remark(), group.boreM(), group.reynolds(), group.regime()));
            for (Explanation.Step step : group.steps()) {
                String inputs = step.inputs().stream()
                        .map(input -> cells(input.symbol(), input.meaning(), input.value(), input.unit()))
                        .collect(Collectors.joining("|"));
                lines.add(cells(
                        "  step", step.name(), step.equation(), step.formula().title(), inputs));
                lines.add(cells("   is", step.coefficient(), step.dropPa(), step.lowPa(), step.highPa()));
            }
        }
        if (it.equivalent() != null) {
            lines.add(cells(" as", it.equivalent().element(), it.equivalent().lengthM()));
        }
        if (it.alternative() != null) {
            lines.add(cells(
                    " or",
                    it.alternative().name(),
                    it.alternative().dropPa(),
                    it.alternative().equivalentM()));
        }
        for (Explanation.Spread band : it.bands()) {
            lines.add(cells(" band", band.cause(), band.lowM(), band.highM(), band.lowPa(), band.highPa()));
        }
        it.remarks().forEach(remark -> lines.add(cells(" remark", remark)));
    }

    private static String cells(Object... cells) {
        List<String> texts = new ArrayList<>();
        for (Object cell : cells) {
            texts.add(cell instanceof Double number ? String.format(Locale.ROOT, "%.8g", number) : cell.toString());
        }
        return String.join("|", texts);
    }

    private static void same(String name, List<String> lines) throws IOException {
        Path file = KEPT.resolve(name + ".rows.txt");
        if (Boolean.getBoolean("golden.write")) {
            Files.write(file, lines);
        }
        List<String> kept = Files.readAllLines(file);
        for (int i = 0; i < Math.min(lines.size(), kept.size()); i++) {
            String[] now = lines.get(i).split("\\|", -1);
            String[] then = kept.get(i).split("\\|", -1);
            assertThat(now).as("line %s of %s: %s", i + 1, file, kept.get(i)).hasSameSizeAs(then);
            for (int k = 0; k < now.length; k++) {
                assertThat(agree(now[k], then[k]))
                        .as("line %s of %s: %s for %s in %s", i + 1, file, now[k], then[k], kept.get(i))
                        .isTrue();
            }
        }
        assertThat(lines).hasSameSizeAs(kept);
    }

    private static boolean agree(String now, String then) {
        if (now.equals(then)) {
            return true;
        }
        try {
            double a = Double.parseDouble(now);
            double b = Double.parseDouble(then);
            return Math.abs(a - b) <= Math.max(NOTHING, TOLERANCE * Math.abs(b));
        } catch (NumberFormatException e) {
            return false;
        }
    }
}
