package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Worked examples of textbooks: friction factors, laminar lines, local losses. Symbols as in the books, SI. */
class TextbookValidationTest {
    private static final List<String> FILES =
            List.of("friction/textbook-factors.csv", "friction/textbook-laminar.csv", "losses/textbook-local.csv");
    private static final double GRAVITY = 9.80665;

    /** The law is asked in the test, not where its cases are listed, so that a mutation of it is seen there. */
    record Case(String file, String id, double published, double tolerance, String rule, String inputs) {
        @Override
        public String toString() {
            return id;
        }

        double got() {
            return answer(rule, new Cases(inputs));
        }

        double deviation() {
            return Math.abs(got() / published - 1);
        }
    }

    static Stream<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (String file : FILES) {
            for (NamedCsvRecord row : Csv.read(file)) {
                cases.add(new Case(
                        file,
                        row.getField("id"),
                        Csv.number(row, "published"),
                        Csv.number(row, "tolerance"),
                        row.getField("rule"),
                        row.getField("inputs")));
            }
        }
        return cases.stream();
    }

    private static double answer(String rule, Cases in) {
        return switch (rule) {
            case "f" -> factor(in.get("Re"), in.get("rel_rough"));
            case "lam_Q" -> drive(in) / laminarPerFlow(in);
            case "lam_dp" -> laminarPerFlow(in) * in.get("Q") + in.get("p_out", 0);
            case "lam_grad", "dpgrad" -> drop(in, 1);
            case "lam_head", "head" -> drop(in, in.get("L")) / (density(in) * in.get("g"));
            case "dp" -> drop(in, in.get("L"));
            case "lam_angle" -> -Math.asin(laminarPerFlow(in) * in.get("Q") / (density(in) * in.get("g")));
            case "lam_D_Re" -> reynoldsOfGradient(in);
            case "syshead" -> in.get("static") + lineHead(in);
            case "level" -> in.get("z2") + lineHead(in);
            default -> local(rule, in);
        };
    }

    private static double local(String rule, Cases in) {
        return switch (rule) {
            case "Khead" -> localDrop(in) / (1000 * in.get("g"));
            case "Kdp" -> localDrop(in);
            case "faucet" -> faucet(in);
            case "contr_dp" -> contraction(in.get("Q"), in, OtherLaws.jetLoss(in.get("Cc")));
            case "contr_Q" ->
                Math.sqrt((in.get("p1") - in.get("p2")) / contraction(1, in, OtherLaws.jetLoss(in.get("Cc"))));
            case "contrK_Q" -> Math.sqrt((in.get("p1") - in.get("p2")) / contraction(1, in, in.get("K1")));
            case "gradK_p2" -> enlargedPressure(in);
            case "diffback" -> velocityOfDifference(in);
            case "orifice" -> orificeFlow(in, in.get("dp"));
            case "manoQ" -> orificeFlow(in, (in.get("rho_m") - in.get("rho")) * in.get("g") * in.get("h_m"));
            case "jet" -> holeFlow(in.get("d"), in.get("C"), 1000, 1000 * in.get("g") * in.get("h"));
            default -> throw new IllegalArgumentException(rule);
        };
    }

    private static double factor(double reynolds, double roughness) {
        double[] out = new double[2];
        FrictionFactor.evaluate(reynolds, roughness, Transition.DEFAULT, out);
        return out[0];
    }

    private static double density(Cases in) {
        return in.get("rho", 1000);
    }

    private static double viscosity(Cases in) {
        return in.has("mu") ? in.get("mu") : in.get("nu") * density(in);
    }

    private static double flow(Cases in) {
        return in.has("Q") ? in.get("Q") : in.get("V") * Reynolds.areaM2(in.get("D"));
    }

    /** Slope of the friction law at rest: the laminar resistance. */
    private static double laminarPerFlow(Cases in) {
        double[] out = new double[2];
        BoreFriction.pressureDrop(
                0, in.get("D"), in.get("L", 1), 0, Transition.DEFAULT, density(in), viscosity(in), out);
        return out[1];
    }

    private static double drive(Cases in) {
        double lift = density(in) * in.get("g", GRAVITY) * in.get("L") * Math.sin(in.get("theta"));
        return in.get("dp") - lift;
    }

    /** Friction, with the fittings on the bore where the case has some. */
    private static double drop(Cases in, double length) {
        double[] out = new double[2];
        double roughness = in.has("eps") ? in.get("eps") : in.get("rel_rough", 0) * in.get("D");
        BoreFriction.pressureDrop(
                flow(in), in.get("D"), length, roughness, Transition.DEFAULT, density(in), viscosity(in), out);
        return out[0] + (in.has("K") ? localDrop(in) : 0);
    }

    private static double localDrop(Cases in) {
        double[] k = in.list("K");
        double sum = 0;
        for (int i = 0; i < k.length; i++) {
            sum += k[i] * (in.has("K_count") ? in.list("K_count")[i] : 1);
        }
        double[] out = new double[2];
        LocalLoss.pressureDrop(flow(in), in.get("D"), sum, 0, density(in), 1e-3, out);
        return out[0];
    }

    /** Head of a line; where the source holds f without a roughness, its f is used. */
    private static double lineHead(Cases in) {
        if (in.has("rel_rough") || in.has("eps")) {
            return drop(in, in.get("L")) / (density(in) * in.get("g"));
        }
        double head = Reynolds.velocityHeadPa(flow(in), in.get("D"), density(in));
        double friction = in.get("f_source") * in.get("L") / in.get("D") * head;
        return (friction + localDrop(in)) / (density(in) * in.get("g"));
    }

    private static double faucet(Cases in) {
        double jet = Reynolds.velocityHeadPa(flow(in), in.get("D_jet"), density(in));
        double line = Reynolds.velocityHeadPa(flow(in), in.get("D"), density(in));
        return jet - line + density(in) * in.get("g") * in.get("dz") + drop(in, in.get("L"));
    }

    /** Fall of static pressure over a contraction whose K is on the small bore. */
    private static double contraction(double flow, Cases in, double k) {
        double[] out = new double[2];
        LocalLoss.pressureDrop(flow, in.get("D2"), k, 0, density(in), 1e-3, out);
        double small = Reynolds.velocityHeadPa(flow, in.get("D2"), density(in));
        double large = Reynolds.velocityHeadPa(flow, in.get("D1"), density(in));
        return out[0] + small - large;
    }

    /** The source's cone multiplier on Borda's loss. */
    private static double enlargedPressure(Cases in) {
        double small = Reynolds.velocityHeadPa(in.get("Q"), in.get("D1"), density(in));
        double large = Reynolds.velocityHeadPa(in.get("Q"), in.get("D2"), density(in));
        double loss = in.get("K1") * AreaChange.expansionK(in.get("D1") / in.get("D2")) * small;
        return in.get("p1") + small - large - loss;
    }

    private static double velocityOfDifference(Cases in) {
        double difference = AreaChange.expansionK(in.get("D1") / in.get("D2")) - in.get("K1");
        return Math.sqrt(2 * in.get("g") * in.get("dh") / difference);
    }

    private static double orificeFlow(Cases in, double difference) {
        double beta = in.get("d") / in.get("D");
        double approach = Math.sqrt(1 - Math.pow(beta, 4));
        return holeFlow(in.get("d"), in.get("C") / approach, density(in), difference);
    }

    private static double holeFlow(double hole, double coefficient, double density, double difference) {
        double[] out = new double[2];
        Orifice.constantCoefficient(1, hole, coefficient, density, out);
        return Math.sqrt(difference / out[0]);
    }

    private static double reynoldsOfGradient(Cases in) {
        double bore = Math.pow(128 * in.get("mu") * in.get("Q") / (Math.PI * in.get("grad")), 0.25);
        double[] out = new double[2];
        BoreFriction.pressureDrop(in.get("Q"), bore, 1, 0, Transition.DEFAULT, density(in), in.get("mu"), out);
        assertThat(out[0]).isBetween(in.get("grad") * (1 - 1e-12), in.get("grad") * (1 + 1e-12));
        return Reynolds.of(in.get("Q"), bore, density(in), in.get("mu"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isInsideItsTolerance(Case row) {
        assertThat(row.deviation())
                .as("%s: %s, published %s", row.id, row.got(), row.published)
                .isLessThan(row.tolerance);
    }

    static List<String[]> claims() {
        List<String[]> rows = new ArrayList<>();
        for (String file : FILES) {
            Cases.Errors errors = new Cases.Errors();
            cases().filter(row -> row.file.equals(file))
                    .forEach(row -> errors.add(row.deviation() / row.tolerance, row.id));
            Cases.Scatter found = errors.scatter();
            rows.add(Cases.claim(
                    String.format(Locale.ROOT, "textbook examples, %s", file.replaceAll(".*textbook-|.csv", "")),
                    found.count(),
                    "validation/" + file + ", source beside each",
                    "published",
                    "each row's own, from its printed figures; deviation is the share of it",
                    found.worst(),
                    found.at()));
        }
        return rows;
    }

    @Test
    void claimsCountEveryCase() {
        assertThat(claims().stream().map(row -> row[1])).containsExactly("19", "17", "18");
    }
}
