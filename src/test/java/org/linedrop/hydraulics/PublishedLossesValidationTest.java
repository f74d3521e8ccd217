package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published or measured value of {@code validation/losses/published.csv}. */
class PublishedLossesValidationTest {
    private static final Map<String, ToDoubleFunction<Cases>> LAWS = new LinkedHashMap<>();
    /** What the library does not hold: its rows stand apart in the claims, since they say nothing of what it computes. */
    private static final List<String> OTHERS = List.of(
            "mitre, smooth wall",
            "Idelchik elbow",
            "Weisbach elbow",
            "Idelchik bend excess",
            "pipe bend by fT",
            "pipe bend by fT, n turns",
            "pipe bend angle factor",
            "3-K",
            "2-K",
            "contraction by jet area",
            "contraction by area",
            "entrance",
            "Gibson",
            "laminar expansion",
            "orifice at mouth",
            "orifice loss ratio",
            "orifice coefficient",
            "thin orifice",
            "Munich tee table",
            "Bassett branch",
            "Bassett run",
            "wave speed",
            "Joukowsky",
            "slow closure");

    static {
        friction();
        bends();
        changesOfBore();
        restrictors();
        tees();
        rest();
    }

    private static double slot(java.util.function.Consumer<double[]> law) {
        double[] out = new double[6];
        law.accept(out);
        return out[0];
    }

    private static double angle(Cases c) {
        return Math.toRadians(c.get("angle_deg"));
    }

    private static void friction() {
        LAWS.put(
                "friction factor",
                c -> slot(out -> FrictionFactor.evaluate(
                        c.get("reynolds"), c.get("relative_roughness"), Transition.DEFAULT, out)));
        LAWS.put("Colebrook", c -> Colebrook.frictionFactor(c.get("reynolds"), c.get("relative_roughness")));
        LAWS.put("laminar factor", c -> slot(out -> FrictionFactor.laminar(c.get("reynolds"), out)));
        LAWS.put(
                "hose drop",
                c -> slot(out -> BoreFriction.pressureDrop(
                        c.get("flow_m3_per_s"),
                        c.get("bore_m"),
                        c.get("length_m"),
                        0,
                        Transition.DEFAULT,
                        c.get("density_kg_per_m3"),
                        c.get("kinematic_viscosity_m2_per_s") * c.get("density_kg_per_m3"),
                        out)));
        LAWS.put("hose drop, turbulent", c -> {
            double density = c.get("density_kg_per_m3");
            double viscosity = c.get("kinematic_viscosity_m2_per_s") * density;
            double reynolds = Reynolds.of(c.get("flow_m3_per_s"), c.get("bore_m"), density, viscosity);
            return Colebrook.frictionFactor(reynolds, 0)
                    * c.get("length_m")
                    / c.get("bore_m")
                    * Reynolds.velocityHeadPa(c.get("flow_m3_per_s"), c.get("bore_m"), density);
        });
        LAWS.put("White ratio", c -> slot(out -> CurvedBore.laminarRatio(c.get("dean"), out)));
        LAWS.put("Ito curved factor", c -> {
            double reynolds = c.get("reynolds");
            return 0.3164
                    * Math.pow(reynolds, -0.25)
                    * slot(out -> CurvedBore.turbulentRatio(reynolds, c.get("radius_ratio"), out));
        });
        LAWS.put("Ito critical", c -> CurvedBore.criticalReynolds(c.get("radius_ratio")));
        LAWS.put("convoluted factor", c -> ConvolutedBore.frictionFactor(c.get("bore_m"), c.get("pitch_m")));
    }

    private static void bends() {
        LAWS.put("mitre", c -> MitreElbow.turbulentK(angle(c)));
        LAWS.put("mitre, smooth wall", c -> OtherLaws.mitreSmoothWall(angle(c)));
        LAWS.put(
                "forged elbow",
                c -> slot(out -> LocalLoss.coefficient(
                        c.get("reynolds"), MitreElbow.turbulentK(angle(c)), MitreElbow.k1(angle(c)), out)));
        LAWS.put(
                "swept excess",
                c -> slot(
                        out -> SweptBend.of(angle(c), c.get("radius_over_bore")).excess(c.get("reynolds"), out)));
        LAWS.put(
                "Ito bend total",
                c -> slot(
                        out -> SweptBend.of(angle(c), c.get("radius_over_bore")).total(c.get("reynolds"), out)));
        LAWS.put("Idelchik elbow", c -> OtherLaws.idelchikElbow(c.get("angle_deg")));
        LAWS.put("Weisbach elbow", c -> OtherLaws.weisbachElbow(c.get("angle_deg")));
        LAWS.put(
                "Idelchik bend excess",
                c -> OtherLaws.idelchikBendExcess(c.get("angle_deg"), c.get("radius_over_bore")));
        LAWS.put("pipe bend by fT", c -> OtherLaws.pipeBend(c.get("radius_over_bore"), c.get("turbulent_factor")));
        LAWS.put(
                "pipe bend by fT, n turns",
                c -> OtherLaws.pipeBendTurns(c.get("n"), c.get("radius_over_bore"), c.get("turbulent_factor")));
        LAWS.put("pipe bend angle factor", c -> OtherLaws.pipeBendAngleFactor(c.get("angle_deg")));
        Map<String, ThreeK> kinds = new LinkedHashMap<>();
        kinds.put("ell90_threaded", ThreeK.ELBOW_90_THREADED);
        kinds.put("bend90_rd1", ThreeK.BEND_90_RADIUS_1);
        kinds.put("ell45_threaded", ThreeK.ELBOW_45_THREADED);
        kinds.put("tee_branch_threaded", ThreeK.TEE_BRANCH_THREADED);
        kinds.put("ball", ThreeK.BALL_VALVE);
        kinds.put("check_swing", ThreeK.SWING_CHECK);
        LAWS.put("3-K", c -> {
            ThreeK kind = kinds.get(c.text("kind"));
            return slot(out ->
                    LocalLoss.coefficient(c.get("reynolds"), kind.turbulentK(c.get("nominal_size_m")), kind.k1(), out));
        });
        LAWS.put("2-K", c -> OtherLaws.hooperElbow(c.get("reynolds"), c.get("bore_m")));
    }

    private static void changesOfBore() {
        LAWS.put("Borda on large bore", c -> {
            double area = c.get("area_ratio");
            return AreaChange.expansionK(Math.sqrt(1 / area)) * area * area;
        });
        LAWS.put("contraction by jet area", c -> OtherLaws.contractionByJet(c.get("area_ratio")));
        LAWS.put("contraction", c -> AreaChange.contractionK(c.get("beta")));
        LAWS.put("contraction by area", c -> OtherLaws.contractionByArea(c.get("beta")));
        LAWS.put("entrance", c -> OtherLaws.roundedEntrance(c.get("edge_radius_over_bore")));
        LAWS.put("Gibson", c -> OtherLaws.coneUp(0, angle(c))); // Borda's loss is 1 at beta 0
        LAWS.put("laminar expansion", c -> OtherLaws.laminarExpansion(c.get("beta")));
    }

    private static void restrictors() {
        LAWS.put("orifice at mouth", c -> Orifice.mouthK(c.get("area_ratio")));
        LAWS.put("orifice loss ratio", c -> Orifice.lossRatio(c.get("beta"), c.get("discharge_coefficient")));
        LAWS.put("orifice coefficient", c -> {
            Orifice plate = Orifice.of(c.get("bore_m"), c.get("beta") * c.get("bore_m"));
            return slot(out -> plate.dischargeCoefficient(c.get("pipe_reynolds") / c.get("beta"), out));
        });
        LAWS.put("thin orifice", c -> Orifice.idelchikK(c.get("area_ratio")));
        LAWS.put("thick orifice", c -> {
            double area = c.get("area_ratio");
            double bore = 1 / Math.sqrt(area);
            return Nipple.turbulentK(bore, 1, c.get("length_over_bore"), bore) / (area * area);
        });
        LAWS.put(
                "long orifice",
                c -> Restrictor.longDischargeCoefficient(c.get("length_over_bore"), c.get("hole_reynolds")));
    }

    private static void tees() {
        LAWS.put("Munich tee table", c -> OtherLaws.munich(c.text("mode"), c.text("leg"), c.get("branch_share")));
        LAWS.put("Bassett branch", c -> OtherLaws.bassettBranch(c.get("branch_share"), c.get("angle_deg", 90)));
        LAWS.put("Bassett run", c -> OtherLaws.bassettRun(c.get("branch_share")));
        LAWS.put("tee combining branch", c -> tee(c, -1, 2));
        LAWS.put("tee combining run", c -> tee(c, -1, 1));
        LAWS.put("tee dividing branch", c -> tee(c, 1, 2));
    }

    private static double tee(Cases c, double sign, int leg) {
        return tee(sign, c.get("branch_share"), Math.toRadians(c.get("angle_deg", 90)), leg);
    }

    /** Coefficient of a leg of an equal sharp tee, run common, at a viscosity that leaves only the turbulent part. */
    static double tee(double sign, double share, double angleRad, int leg) {
        double[] out = new double[6];
        double tiny = 1e-12; // keeps the pattern when the share is 0 or 1
        double branch = Math.min(1 - tiny, Math.max(tiny, share));
        Tee.of(0.01, 0.01, angleRad, 0).legLosses(sign * (1 - branch), sign * branch, 1000, 1e-9, out);
        return out[leg] / Reynolds.velocityHeadPa(1, 0.01, 1000);
    }

    private static void rest() {
        LAWS.put("Kv from Cv", c -> c.get("cv") * FlowCoefficient.KV_PER_CV);
        LAWS.put("K from Kv", c -> FlowCoefficient.lossCoefficient(c.get("kv"), c.get("bore_m")));
        LAWS.put(
                "K from Cv",
                c -> FlowCoefficient.lossCoefficient(c.get("cv") * FlowCoefficient.KV_PER_CV, c.get("bore_m")));
        LAWS.put(
                "wave speed",
                c -> OtherLaws.waveSpeed(
                        c.get("bulk_modulus_pa"),
                        c.get("density_kg_per_m3"),
                        c.get("bore_m"),
                        c.get("wall_m"),
                        c.get("wall_modulus_pa")));
        LAWS.put(
                "Joukowsky",
                c -> c.get("density_kg_per_m3") * c.get("wave_speed_m_per_s") * c.get("velocity_change_m_per_s"));
        LAWS.put(
                "slow closure",
                c -> 2
                        * c.get("density_kg_per_m3")
                        * c.get("length_m")
                        * c.get("velocity_m_per_s")
                        / c.get("closing_time_s"));
    }

    /** The law is asked in the test, not where its cases are listed, so that a mutation of it is seen there. */
    record Case(
            String id, String kind, String quantity, double published, double allowed, String law, String arguments) {
        @Override
        public String toString() {
            return id + " " + quantity;
        }

        double got() {
            return LAWS.get(law).applyAsDouble(new Cases(arguments));
        }

        double shareOfTolerance() {
            return Math.abs(got() - published) / allowed;
        }
    }

    static Stream<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (NamedCsvRecord row : Csv.read("losses/published.csv")) {
            if (row.getField("tolerance").isEmpty()) {
                continue;
            }
            double published = Csv.number(row, "published");
            boolean relative = row.getField("tolerance_kind").equals("relative");
            double allowed = Csv.number(row, "tolerance") * (relative ? Math.abs(published) : 1);
            cases.add(new Case(
                    row.getField("id"),
                    row.getField("kind"),
                    row.getField("quantity"),
                    published,
                    allowed,
                    row.getField("law"),
                    row.getField("arguments")));
        }
        return cases.stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isInsideItsTolerance(Case row) {
        assertThat(row.shareOfTolerance())
                .as("%s: %s, published %s, allowed +-%s", row, row.got(), row.published, row.allowed)
                .isLessThanOrEqualTo(1);
    }

    @Test
    void allRowsAreThere() {
        assertThat(cases()).hasSize(245);
        assertThat(Csv.read("losses/published.csv")).hasSize(267).allSatisfy(row -> {
            assertThat(row.getField("source")).isNotBlank();
            assertThat(row.getField("status")).isIn("published", "from memory", "derived");
            assertThat(row.getField("kind")).isIn("measured", "table", "formula", "textbook", "derived");
        });
    }

    static List<String[]> claims() {
        List<String[]> rows = new ArrayList<>();
        for (String kind : List.of("measured", "table", "formula", "textbook", "derived")) {
            claim(rows, "loss and friction values, " + kind, kind, row -> !OTHERS.contains(row.law));
            claim(
                    rows,
                    "values of laws that Linedrop does not use, kept to compare its own with, " + kind,
                    kind,
                    row -> OTHERS.contains(row.law));
        }
        return rows;
    }

    private static void claim(List<String[]> rows, String claim, String kind, Predicate<Case> which) {
        double worst = 0;
        String at = "";
        int count = 0;
        for (Case row : cases().filter(c -> c.kind.equals(kind)).filter(which).toList()) {
            count++;
            if (!(row.shareOfTolerance() <= worst)) {
                worst = row.shareOfTolerance();
                at = row.toString();
            }
        }
        if (count > 0) {
            rows.add(Cases.claim(
                    claim,
                    count,
                    "validation/losses/published.csv, source beside each",
                    kind,
                    "each row's own; deviation is the share of it",
                    worst,
                    at));
        }
    }

    @Test
    void claimsCountEveryRow() {
        assertThat(LAWS).containsKeys(OTHERS.toArray(String[]::new));
        assertThat(claims().stream().mapToInt(row -> Integer.parseInt(row[1])).sum())
                .isEqualTo(245);
    }

    /** The tee law itself against the Munich tests: the band of the law is 0.3. */
    @Test
    void gardelStaysInTheBandOfTheMunichTests() {
        for (double share : new double[] {0, 0.2, 0.4, 0.6, 0.8, 1}) {
            check("divide", "branch", share, tee(1, share, Math.PI / 2, 2));
            check("divide", "run", share, tee(1, share, Math.PI / 2, 1));
            check("combine", "branch", share, tee(-1, share, Math.PI / 2, 2));
            check("combine", "run", share, tee(-1, share, Math.PI / 2, 1));
        }
    }

    private static void check(String mode, String leg, double share, double k) {
        double measured = OtherLaws.munich(mode, leg, share);
        assertThat(measured).as("%s %s at %s", mode, leg, share).isBetween(Tee.BAND.low(k), Tee.BAND.high(k));
    }
}
