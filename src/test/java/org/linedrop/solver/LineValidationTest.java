package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.Prescribed;
import org.linedrop.network.PrescribedPump;
import org.linedrop.validation.Claims;
import org.linedrop.validation.Tables;

/** Single lines of {@code validation/lines}: head from flow, flow from head, bore from both, pump against a line. */
class LineValidationTest {
    /** Bores between which a bore is sought, m. */
    private static final double LEAST_BORE_M = 1e-3;

    private static final double MOST_BORE_M = 10;

    static Stream<NamedCsvRecord> cases() {
        return Tables.read("lines/lines.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void matches(NamedCsvRecord row) {
        assertThat(deviation(row))
                .describedAs("%s: %s", row.getField("case"), answer(row))
                .isLessThanOrEqualTo(Tables.number(row, "tolerance", Double.NaN));
    }

    private static double deviation(NamedCsvRecord row) {
        double wanted = Tables.number(row, "value", Double.NaN);
        return Math.abs(answer(row) - wanted) / Math.abs(wanted);
    }

    private static double answer(NamedCsvRecord row) {
        double density = density(row);
        double gravity = Tables.number(row, "gravity_m_per_s2", Double.NaN);
        double[] bores = Tables.numbers(row, "bores_m");
        double[] given = Tables.numbers(row, "given_value");
        double lift = Tables.number(row, "lift_m", 0);
        switch (row.getField("asked")) {
            case "pressure":
                return headFor(row, bores, given[0]) * density * gravity;
            case "head":
                return headFor(row, bores, given[0]) + lift;
            case "level below":
                return lift - headFor(row, bores, given[0]);
            case "flow":
                return flowFor(row, bores, given[0] - lift);
            case "velocity":
                return flowFor(row, bores, given[0]) / (Math.PI / 4 * bores[0] * bores[0]);
            case "mass flow":
                return flowFor(row, bores, given[0]) * density;
            case "bore":
                return boreFor(row, given[0], given[1]);
            default:
                throw new IllegalStateException(row.getField("asked"));
        }
    }

    /** Head lost at a flow: a tank, the line, a draw. */
    private static double headFor(NamedCsvRecord row, double[] bores, double flowM3PerS) {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int end = line(b, row, bores, tank, b.freePoint(flowM3PerS * density(row)));
        Solution s = solved(b);
        return -s.totalPressurePa(end) / (density(row) * Tables.number(row, "gravity_m_per_s2", Double.NaN));
    }

    /** Flow under a head: a tank, perhaps a pump, the line, a second tank. */
    private static double flowFor(NamedCsvRecord row, double[] bores, double headM) {
        double weight = density(row) * Tables.number(row, "gravity_m_per_s2", Double.NaN);
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(headM * weight);
        int start = tank;
        Law pump = pump(row);
        if (pump != null) {
            start = b.freePoint(0);
            b.branch(tank, start, pump);
        }
        line(b, row, bores, start, b.fixedPoint(0));
        Solution s = solved(b);
        return s.massFlowKgPerS(0) / density(row);
    }

    /** Bore for a head and a flow: the wider the bore the less head, so halving the bracket finds it. */
    private static double boreFor(NamedCsvRecord row, double headM, double flowM3PerS) {
        double low = LEAST_BORE_M;
        double high = MOST_BORE_M;
        while (high - low > 1e-12 * high) {
            double middle = (low + high) / 2;
            if (headFor(row, new double[] {middle}, flowM3PerS) > headM) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static int line(NetworkBuilder b, NamedCsvRecord row, double[] bores, int from, int to) {
        double gravity = Tables.number(row, "gravity_m_per_s2", Double.NaN);
        double square = Tables.number(row, "square_m_per_m6_s2", Double.NaN);
        if (square > 0) {
            b.branch(from, to, Prescribed.headPower(square, 2, density(row), gravity));
            return to;
        }
        int at = from;
        for (int i = 0; i < bores.length; i++) {
            int next = i == bores.length - 1 ? to : b.freePoint(0);
            b.branch(at, next, segment(row, bores[i], i));
            at = next;
        }
        return to;
    }

    private static Law segment(NamedCsvRecord row, double bore, int i) {
        double length = Tables.numbers(row, "lengths_m")[i];
        double k = Tables.numbers(row, "loss_coefficients")[i];
        double[] factors = Tables.numbers(row, "friction_factors");
        if (factors.length > 0) {
            return Prescribed.constantFriction(factors[i], length, bore, k, density(row));
        }
        double viscosity = Tables.number(row, "kinematic_viscosity_m2_per_s", Double.NaN) * density(row);
        return Prescribed.colebrook(length, bore, Tables.numbers(row, "roughnesses_m")[i], k, density(row), viscosity);
    }

    private static Law pump(NamedCsvRecord row) {
        double gravity = Tables.number(row, "gravity_m_per_s2", Double.NaN);
        double[] flows = Tables.numbers(row, "pump_flows_m3_per_s");
        double[] coefficients = Tables.numbers(row, "pump_coefficients");
        if (flows.length > 0) {
            return PrescribedPump.table(
                    flows, Tables.numbers(row, "pump_heads_m"), PrescribedPump.Between.STRAIGHT, density(row), gravity);
        }
        return coefficients.length > 0 ? PrescribedPump.polynomial(coefficients, density(row), gravity) : null;
    }

    private static double density(NamedCsvRecord row) {
        return Tables.number(row, "density_kg_per_m3", Double.NaN);
    }

    private static Solution solved(NetworkBuilder b) {
        Solution s = Solver.usual().solve(b.build());
        assertThat(s.outcome()).describedAs(s.detail()).isEqualTo(Outcome.CONVERGED);
        return s;
    }

    static List<String[]> claims() {
        List<String[]> rows = new ArrayList<>();
        for (String asked : List.of("head or pressure", "flow", "bore")) {
            int count = 0;
            double worst = -1;
            String where = "";
            for (NamedCsvRecord row : cases().toList()) {
                if (group(row).equals(asked)) {
                    count++;
                    double deviation = deviation(row);
                    if (deviation > worst + 1e-12) {
                        worst = deviation;
                        where = row.getField("case");
                    }
                }
            }
            rows.add(new String[] {
                "single lines solved for " + asked,
                "" + count,
                "textbooks and tables, named case by case in `lines/lines.csv`",
                "published, some answers from memory",
                "each its own, 0.1 to 3 %: printed figures and chart friction of the sources",
                Claims.deviation(worst),
                where
            });
        }
        return rows;
    }

    private static String group(NamedCsvRecord row) {
        return switch (row.getField("asked")) {
            case "bore" -> "bore";
            case "flow", "velocity", "mass flow" -> "flow";
            default -> "head or pressure";
        };
    }

    static List<String[]> results() {
        List<String[]> rows = new ArrayList<>();
        for (NamedCsvRecord row : cases().toList()) {
            rows.add(new String[] {
                "lines, " + row.getField("status"),
                row.getField("case"),
                row.getField("asked"),
                row.getField("value"),
                "SI",
                Claims.deviation(deviation(row)),
                row.getField("tolerance")
            });
        }
        return rows;
    }
}
