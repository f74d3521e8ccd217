package org.linedrop.result;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.io.CircuitFile;
import org.linedrop.units.Dimension;
import org.linedrop.units.Units;
import org.linedrop.validation.Tables;

/**
 * Whole circuits of {@code validation/builds} against figures that were computed by hand from the same data: own arithmetic
 * of the design of this project, apart from its code (Darcy-Weisbach, Colebrook, bisection of the operating point).
 */
class BuildsValidationTest {
    private static final Map<String, Result> SOLVED = new ConcurrentHashMap<>();

    static Stream<NamedCsvRecord> cases() {
        return Tables.read("builds/expected.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void matches(NamedCsvRecord row) {
        assertThat(deviation(row))
                .describedAs("%s %s %s %s: %s", row.getFields().toArray())
                .isLessThanOrEqualTo(Tables.number(row, "tolerance", Double.NaN));
    }

    private static double deviation(NamedCsvRecord row) {
        return Math.abs(actual(row) - Tables.number(row, "expected", Double.NaN));
    }

    /** In the unit of the row. */
    private static double actual(NamedCsvRecord row) {
        Result result = SOLVED.computeIfAbsent(
                row.getField("file") + " " + row.getField("case"),
                key -> solved(row.getField("file"), row.getField("case")));
        String subject = row.getField("subject");
        String quantity = row.getField("quantity");
        double si;
        if (result.point(subject).isPresent()) {
            PointRow point = result.point(subject).orElseThrow();
            si = quantity.equals("pressure")
                    ? point.staticPressurePa()
                    : point.netInflowKgPerS()
                            / result.rows().get(0).massFlowKgPerS()
                            * result.rows().get(0).flowM3PerS();
        } else {
            DeviceRow device = result.device(subject).orElseThrow();
            si = switch (quantity) {
                case "flow" -> device.flowM3PerS();
                case "inlet" -> device.inletPressurePa();
                default -> device.figure(quantity).orElseThrow();
            };
        }
        Dimension dimension = quantity.equals("flow") ? Dimension.VOLUME_FLOW : Dimension.PRESSURE_DIFFERENCE;
        return Units.to(si, Units.unit(row.getField("unit"), dimension));
    }

    private static Result solved(String file, String name) {
        try {
            return Result.of(CircuitFile.read(Path.of("validation", "builds", file))
                            .in(name))
                    .orThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Rows of the claims table: one per build. */
    public static List<String[]> claims() {
        Map<String, List<NamedCsvRecord>> files = new LinkedHashMap<>();
        cases().forEach(row -> files.computeIfAbsent(row.getField("file"), key -> new ArrayList<>())
                .add(row));
        List<String[]> claims = new ArrayList<>();
        files.forEach((file, rows) -> {
            double worst = -1;
            String at = "";
            for (NamedCsvRecord row : rows) {
                double share = deviation(row) / Tables.number(row, "tolerance", Double.NaN);
                if (share > worst) {
                    worst = share;
                    at = row.getField("case") + ", " + row.getField("subject") + " " + row.getField("quantity");
                }
            }
            claims.add(new String[] {
                "whole circuit, " + file.replace(".yaml", ""),
                "" + rows.size(),
                "validation/builds/expected.csv: invented builds, operating points computed by hand",
                "computed",
                "each row's own, from its printed figures; deviation is the share of it",
                String.format(Locale.ROOT, "%.2f %%", 100 * worst),
                at
            });
        });
        return claims;
    }

    /** Every compared figure. */
    public static List<String[]> results() {
        return cases().map(row -> new String[] {
                    "whole circuit, " + row.getField("file").replace(".yaml", ""),
                    row.getField("case"),
                    row.getField("subject") + " " + row.getField("quantity"),
                    row.getField("expected"),
                    row.getField("unit"),
                    String.format(Locale.ROOT, "%.1e", deviation(row)),
                    row.getField("tolerance")
                })
                .toList();
    }
}
