package org.linedrop.validation;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.OneWay;
import org.linedrop.network.Prescribed;
import org.linedrop.network.PrescribedPump;
import org.linedrop.solver.Solution;

/** One network of {@code validation/networks}: read, built with prescribed laws, compared. */
public final class NetworkCase {
    /** Density where the source has none: it cancels, since its laws are in head and volume flow. */
    private static final double ANY_DENSITY = 1000;

    /** Slope scale of devices whose open law has none. */
    private static final double TYPICAL_FLOW_PART = 1e-3;

    public final String id;
    public final NamedCsvRecord head;
    public final double gravity;
    public final double density;
    public final double viscosityPaS;
    public final double tolerance;
    public final List<NamedCsvRecord> points = new ArrayList<>();
    public final List<NamedCsvRecord> branches = new ArrayList<>();
    public final List<NamedCsvRecord> expected = new ArrayList<>();
    private final Map<String, Integer> pointOf = new LinkedHashMap<>();
    private final Map<String, Integer> branchOf = new LinkedHashMap<>();

    private NetworkCase(NamedCsvRecord row) {
        head = row;
        id = row.getField("case");
        gravity = Tables.number(row, "gravity_m_per_s2", Double.NaN);
        density = Tables.number(row, "density_kg_per_m3", ANY_DENSITY);
        viscosityPaS = Tables.number(row, "kinematic_viscosity_m2_per_s", Double.NaN) * density;
        tolerance = Tables.number(row, "tolerance", Double.NaN);
    }

    /** All cases in the order of the file. */
    public static List<NetworkCase> all() {
        Map<String, NetworkCase> cases = new LinkedHashMap<>();
        for (NamedCsvRecord row : Tables.read("networks/cases.csv")) {
            NetworkCase c = new NetworkCase(row);
            cases.put(c.id, c);
        }
        Tables.read("networks/points.csv").forEach(r -> of(cases, r).points.add(r));
        Tables.read("networks/branches.csv").forEach(r -> of(cases, r).branches.add(r));
        Tables.read("networks/expected.csv").forEach(r -> of(cases, r).expected.add(r));
        return List.copyOf(cases.values());
    }

    private static NetworkCase of(Map<String, NetworkCase> cases, NamedCsvRecord row) {
        NetworkCase c = cases.get(row.getField("case"));
        if (c == null) {
            throw new IllegalStateException("row without a case: " + row);
        }
        return c;
    }

    public boolean derived() {
        return head.getField("kind").equals("derived");
    }

    /** Whether a regulator, relief or check valve is in it. */
    public boolean switches() {
        return branches.stream()
                .anyMatch(b -> b.getField("law").matches("regulator|relief")
                        || b.getField("check_valve").equals("true"));
    }

    /** Builds the network; pressures are heads times density and gravity. */
    public Network network() {
        NetworkBuilder builder = Network.builder();
        for (NamedCsvRecord p : points) {
            String fixed = p.getField("fixed_head_m");
            int number = fixed.isEmpty()
                    ? builder.freePoint(Tables.number(p, "draw_m3_per_s", 0) * density)
                    : builder.fixedPoint(Double.parseDouble(fixed) * density * gravity);
            pointOf.put(p.getField("point"), number);
        }
        for (NamedCsvRecord b : branches) {
            int from = pointOf.get(b.getField("from"));
            int to = pointOf.get(b.getField("to"));
            branchOf.put(b.getField("branch"), add(builder, from, to, b));
        }
        return builder.build();
    }

    private int add(NetworkBuilder builder, int from, int to, NamedCsvRecord b) {
        double set = Tables.number(b, "set_head_m", Double.NaN) * density * gravity;
        double typical = Math.max(1, Math.abs(set)) / (TYPICAL_FLOW_PART * density);
        switch (b.getField("law")) {
            case "regulator":
                return builder.device(from, to, -1, OneWay.reducing(set, 0, 0, Prescribed.constant(0), typical));
            case "relief":
                return builder.device(from, to, -1, OneWay.relief(set, 0, 0, Prescribed.constant(0), typical));
            default:
                Law law = law(b);
                if (b.getField("check_valve").equals("true")) {
                    double flow = Tables.number(b, "start_m3_per_s", Double.NaN) * density;
                    return builder.device(from, to, -1, OneWay.check(law, OneWay.secantSlope(law, flow)));
                }
                return builder.branch(from, to, law);
        }
    }

    private Law law(NamedCsvRecord b) {
        double length = Tables.number(b, "length_m", Double.NaN);
        double bore = Tables.number(b, "bore_m", Double.NaN);
        double k = Tables.number(b, "loss_coefficient", 0);
        switch (b.getField("law")) {
            case "constant-f":
                return Prescribed.constantFriction(
                        Tables.number(b, "friction_factor", Double.NaN), length, bore, k, density);
            case "darcy-colebrook":
                return Prescribed.colebrook(
                        length, bore, Tables.number(b, "roughness_m", Double.NaN), k, density, viscosityPaS);
            case "laminar":
                return Prescribed.laminar(viscosityPaS, length, bore, k, density);
            case "power-law":
                return Prescribed.headPower(
                        Tables.number(b, "r", Double.NaN), Tables.number(b, "n", Double.NaN), density, gravity);
            case "minor-only":
                return Prescribed.loss(k, bore, density);
            case "pump":
                return PrescribedPump.polynomial(Tables.numbers(b, "coefficients"), density, gravity);
            case "pump-power":
                // the tangent takes over at a tenth of the flow the source starts from
                return PrescribedPump.constantPower(
                        Tables.number(b, "power_w", Double.NaN),
                        density,
                        Tables.number(b, "start_m3_per_s", Double.NaN) / 10);
            case "pump-table":
                String[] rows = b.getField("table").split(" ");
                double[] flow = new double[rows.length];
                double[] rise = new double[rows.length];
                for (int i = 0; i < rows.length; i++) {
                    flow[i] = Double.parseDouble(rows[i].split(":")[0]);
                    rise[i] = Double.parseDouble(rows[i].split(":")[1]);
                }
                return PrescribedPump.table(flow, rise, PrescribedPump.Between.STRAIGHT, density, gravity);
            default:
                throw new IllegalStateException("law " + b.getField("law") + " of " + id);
        }
    }

    /** The solver's value of an expected quantity. */
    public double value(NamedCsvRecord row, Solution s) {
        String[] of = row.getField("of").split(" ");
        double bore = Tables.number(row, "bore_m", Double.NaN);
        double offset = Tables.number(row, "offset", 0);
        switch (row.getField("quantity")) {
            case "flow":
                return flow(of[0], s);
            case "head":
                return head(of[0], s);
            case "pressure head":
                return head(of[0], s) - offset;
            case "head difference":
                return head(of[0], s) - head(of[1], s);
            case "head loss":
                return loss(of[0], s);
            case "head rise":
                return -loss(of[0], s);
            case "flow gain":
                return flow(of[0], s) - offset;
            case "flow sum":
                double sum = 0;
                for (String branch : of) {
                    sum += flow(branch, s);
                }
                return sum;
            case "flow ratio":
                return flow(of[0], s) / flow(of[1], s);
            case "velocity":
                return velocity(of[0], bore, s);
            case "Reynolds number":
                return velocity(of[0], bore, s) * bore * density / viscosityPaS;
            case "friction factor":
                double velocity = velocity(of[0], bore, s);
                return loss(of[0], s)
                        * 2
                        * gravity
                        * bore
                        / (velocity * velocity * Tables.number(branch(of[0]), "length_m", Double.NaN));
            default:
                throw new IllegalStateException("quantity " + row.getField("quantity") + " of " + id);
        }
    }

    /** Deviation over the published value; a value of zero over the largest of its kind in the solution. */
    public double deviation(NamedCsvRecord row, Solution s) {
        double wanted = Double.parseDouble(row.getField("value"));
        double scale = Math.abs(wanted);
        if (wanted == 0) {
            scale = row.getField("quantity").equals("flow")
                    ? s.flowScaleKgPerS() / density
                    : s.pressureScalePa() / (density * gravity);
        }
        return Math.abs(value(row, s) - wanted) / scale;
    }

    private NamedCsvRecord branch(String name) {
        return branches.get(branchOf.get(name));
    }

    private double flow(String branch, Solution s) {
        return s.massFlowKgPerS(branchOf.get(branch)) / density;
    }

    private double velocity(String branch, double bore, Solution s) {
        return flow(branch, s) / (Math.PI / 4 * bore * bore);
    }

    private double head(String point, Solution s) {
        return s.totalPressurePa(pointOf.get(point)) / (density * gravity);
    }

    private double loss(String name, Solution s) {
        NamedCsvRecord b = branch(name);
        return head(b.getField("from"), s) - head(b.getField("to"), s);
    }

    @Override
    public String toString() {
        return id;
    }
}
