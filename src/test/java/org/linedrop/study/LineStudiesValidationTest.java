package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.validation.Claims;
import org.linedrop.validation.Tables;

/**
 * Inverse questions of the textbooks, asked as a user would: the highest flow that a head drives, the bore for a flow, the
 * operating point of a pump, how high a crest or a pump may be. Each is a circuit file and a {@link HowFar}.
 */
class LineStudiesValidationTest {
    /** Added to both ends, so that no trial on the way falls under a vacuum. */
    private static final double LIFTED_PA = 2e7;

    /**
     * Left to {@code LineValidationTest}: two bores in one question, the pipe's and that of its fittings, where a study
     * moves one figure; and concrete with a roughness of 5 mm, which no circuit file takes.
     */
    private static final List<String> NOT_HERE =
            List.of("water-iron-26cfs-size-with-elbows", "water-smooth-concrete-1.2m-gradient");

    static Stream<NamedCsvRecord> lines() {
        return Tables.read("lines/lines.csv").stream()
                .filter(row -> List.of("flow", "velocity", "mass flow", "bore").contains(row.getField("asked")))
                .filter(row -> !NOT_HERE.contains(row.getField("case")));
    }

    static Stream<NamedCsvRecord> suction() {
        return Tables.read("lines/suction.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("lines")
    void lineMatches(NamedCsvRecord row) {
        assertThat(deviation(row)).describedAs(row.getField("case")).isLessThanOrEqualTo(number(row, "tolerance"));
    }

    @ParameterizedTest
    @MethodSource("suction")
    void suctionMatches(NamedCsvRecord row) {
        assertThat(deviation(row)).describedAs(row.getField("case")).isLessThanOrEqualTo(number(row, "tolerance"));
    }

    private static double number(NamedCsvRecord row, String field) {
        return Tables.number(row, field, Double.NaN);
    }

    private static double deviation(NamedCsvRecord row) {
        double wanted = number(row, "value");
        return Math.abs(answer(row) - wanted) / Math.abs(wanted);
    }

    private static double answer(NamedCsvRecord row) {
        if (row.findField("key").isPresent()) {
            return raised(row);
        }
        return row.getField("asked").equals("bore") ? bore(row) : flow(row);
    }

    // ---- lines

    private static double weight(NamedCsvRecord row) {
        return number(row, "density_kg_per_m3") * number(row, "gravity_m_per_s2");
    }

    private static double flow(NamedCsvRecord row) {
        double[] given = Tables.numbers(row, "given_value");
        double head = given[0] - Tables.number(row, "lift_m", 0);
        double[] bores = Tables.numbers(row, "bores_m");
        double[] table = Tables.numbers(row, "pump_flows_m3_per_s");
        double first = table.length > 0
                ? (table[0] + table[table.length - 1]) / 2
                : bores.length > 0 ? Math.PI / 4 * bores[0] * bores[0] : 1e-2; // 1 m/s, or 36 m3/h
        Circuit circuit = line(row, bores, head, first);
        HowFar far = HowFar.of(circuit, new HowFar.Question("end.takes", circuit.caseNames(), ""));
        HowFar.Edge edge = far.stretch().orElseThrow().high();
        assertThat(edge).isNotNull();
        assertThat(edge.kind()).isEqualTo(HowFar.Kind.ROOT);
        double flow = edge.inside();
        return switch (row.getField("asked")) {
            case "velocity" -> flow / (Math.PI / 4 * bores[0] * bores[0]);
            case "mass flow" -> flow * number(row, "density_kg_per_m3");
            default -> flow;
        };
    }

    private static double bore(NamedCsvRecord row) {
        double[] given = Tables.numbers(row, "given_value");
        Circuit circuit = line(row, new double[] {0.03}, given[0], given[1]);
        String target = format("end pressure %s Pa", LIFTED_PA);
        HowFar far = HowFar.of(circuit, new HowFar.Question("line 1.bore", circuit.caseNames(), target));
        assertThat(far.edges()).as("one bore and no other").hasSize(1);
        return far.nearest().orElseThrow().inside();
    }

    private static Circuit line(NamedCsvRecord row, double[] bores, double headM, double takes) {
        double square = Tables.number(row, "square_m_per_m6_s2", Double.NaN);
        List<String> parts = new ArrayList<>();
        pump(row, parts);
        if (square > 0) {
            parts.add(format("{law: power, r: %s x, n: 2 x}", square));
        }
        for (int i = 0; square > 0 ? false : i < bores.length; i++) {
            double length = Tables.numbers(row, "lengths_m")[i];
            double[] factors = Tables.numbers(row, "friction_factors");
            parts.add(
                    factors.length > 0
                            ? format(
                                    "{law: constant f, f: %s x, length: %s m, bore: %s m}",
                                    factors[i], length, bores[i])
                            : format(
                                    "{hose: pipe -6, length: %s m really, ends: none, bore: %s m really}",
                                    length, bores[i]));
            double k = Tables.numbers(row, "loss_coefficients")[i];
            if (k > 0) {
                parts.add(format("{law: K, K: %s x, bore: %s m}", k, bores[i]));
            }
        }
        double[] rough = Tables.numbers(row, "roughnesses_m");
        String text = head(
                        number(row, "density_kg_per_m3"),
                        Tables.number(row, "kinematic_viscosity_m2_per_s", 1e-6),
                        number(row, "gravity_m_per_s2"),
                        rough.length == 0 ? 0 : rough[0])
                + format("points:\n  start: {kind: held, pressure: %s Pa}\n", LIFTED_PA + headM * weight(row))
                + format("  end: {kind: draw, takes: %s m3/s really, bore: vessel}\n", takes)
                + devices(row)
                + "runs:\n  line:\n    from: start\n    to: end\n    parts: [" + String.join(", ", parts) + "]\n"
                + format("limits:\n  end: {pressure: at least %s Pa}\n", LIFTED_PA);
        return CircuitFile.read(text, row.getField("case"));
    }

    private static void pump(NamedCsvRecord row, List<String> parts) {
        double[] coefficients = Tables.numbers(row, "pump_coefficients");
        double[] flows = Tables.numbers(row, "pump_flows_m3_per_s");
        if (coefficients.length > 0) {
            StringBuilder heads = new StringBuilder();
            for (double c : coefficients) {
                heads.append(format("%s ", c));
            }
            parts.add("{law: pump polynomial, heads: " + heads + "x}");
        } else if (flows.length > 0) {
            parts.add("{through: pump}");
        }
    }

    /** A pump's table, from free flow to its highest pressure. */
    private static String devices(NamedCsvRecord row) {
        double[] flows = Tables.numbers(row, "pump_flows_m3_per_s");
        double[] heads = Tables.numbers(row, "pump_heads_m");
        if (flows.length == 0) {
            return "";
        }
        StringBuilder pressure = new StringBuilder();
        StringBuilder flow = new StringBuilder();
        for (int i = flows.length - 1; i >= 0; i--) {
            pressure.append(format("%s ", heads[i] * weight(row)));
            flow.append(format("%s ", flows[i]));
        }
        return format(
                "devices:\n  pump:\n    kind: pump\n    curves: [{at: 12 V, pressure: %sPa, flow: %sm3/s}]\n    runs at: 12 V\n",
                pressure, flow);
    }

    private static String head(double density, double viscosity, double gravity, double roughness) {
        return format("linedrop: 1\nfluid: liquid\ntemperature: 20 C\ngravity: %s m/s2\n", gravity)
                + format("fluids:\n  liquid: {viscosity: %s m2/s, density: %s kg/m3}\n", viscosity, density)
                + format("catalogue:\n  hoses:\n    pipe: {like: race PTFE, sizes: -6, roughness: %s m}\n", roughness);
    }

    private static String format(String text, Object... values) {
        return String.format(Locale.ROOT, text, values);
    }

    // ---- crests and pumps over a level

    private static double raised(NamedCsvRecord row) {
        boolean siphon = row.getField("part").equals("siphon");
        String top = head(
                number(row, "density_kg_per_m3"),
                number(row, "kinematic_viscosity_m2_per_s"),
                number(row, "gravity_m_per_s2"),
                siphon ? 0 : 0.000508);
        Circuit circuit = CircuitFile.read(top + (siphon ? siphon() : pumped(row)), row.getField("case"));
        String target = format("%s pressure %s Pa", siphon ? "crest" : "pump", row.getField("wanted_pa"));
        HowFar far = HowFar.of(circuit, new HowFar.Question(row.getField("key"), circuit.caseNames(), target));
        assertThat(far.edges()).hasSize(1);
        return far.nearest().orElseThrow().inside();
    }

    /** 4 m between the levels, 15 m of pipe, the crest after 5 m. */
    private static String siphon() {
        return """
                points:
                  upper: {kind: held, pressure: 0 kPa, height: 4 m}
                  crest: {kind: joint, height: 4.5 m, bore: 100 mm}
                  lower: {kind: held, pressure: 0 kPa, height: 0 m}
                runs:
                  up:
                    from: upper
                    to: crest
                    parts: [{law: K, K: 0.5 x, bore: 100 mm}, {law: constant f, f: 0.32 x, length: 5 m, bore: 100 mm}]
                  down:
                    from: crest
                    to: lower
                    parts: [{law: constant f, f: 0.32 x, length: 10 m, bore: 100 mm}, {law: K, K: 1 x, bore: 100 mm}]
                """;
    }

    private static String pumped(NamedCsvRecord row) {
        boolean flowAsked = row.getField("key").endsWith("takes");
        return format(
                "points:\n  level: {kind: held, pressure: 0 kPa, height: 0 m}\n  pump: {kind: draw, takes: %s m3/s really,"
                        + " height: %s m, bore: vessel}\nruns:\n  suction:\n    from: level\n    to: pump\n    parts: [%s]\n",
                flowAsked ? "0.008" : row.getField("given_m3_per_s"),
                flowAsked ? "-1.219" : "0.5",
                row.getField("part"));
    }

    // ---- claims

    static List<String[]> claims() {
        List<String[]> rows = new ArrayList<>();
        rows.add(claim(
                "textbook questions asked as studies: flow from head, operating points",
                lines().filter(row -> !row.getField("asked").equals("bore")).toList(),
                "`lines/lines.csv`"));
        rows.add(claim(
                "textbook questions asked as studies: bore for a flow",
                lines().filter(row -> row.getField("asked").equals("bore")).toList(),
                "`lines/lines.csv`"));
        rows.add(claim(
                "textbook questions asked as studies: siphon and suction",
                suction().toList(),
                "`lines/suction.csv`"));
        return rows;
    }

    private static String[] claim(String what, List<NamedCsvRecord> cases, String table) {
        double worst = -1;
        String where = "";
        for (NamedCsvRecord row : cases) {
            double deviation = deviation(row);
            if (deviation > worst + 1e-12) {
                worst = deviation;
                where = row.getField("case");
            }
        }
        return new String[] {
            what,
            "" + cases.size(),
            "textbooks, named case by case in " + table,
            "published, some answers from memory",
            "each its own, 0.1 to 3 %: printed figures and chart friction of the sources",
            Claims.deviation(worst),
            where
        };
    }
}
