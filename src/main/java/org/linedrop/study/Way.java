package org.linedrop.study;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.circuit.Draw;
import org.linedrop.circuit.Joint;
import org.linedrop.circuit.Junction;
import org.linedrop.circuit.Limit;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Regulator;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Thermostat;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;

/** The rows that fluid passes on its way to a point or device, from where the pressure is made or kept. */
final class Way {
    private Way() {}

    /**
     * What fluid passes on its way to the subject of a limit; for a flow through a device the rest of its run too.
     *
     * @param result a solved circuit
     * @param limit  the limit
     * @return rows in flow order
     */
    static List<PartRow> to(Result result, Limit limit) {
        List<PartRow> way = new ArrayList<>(to(result, limit.subject()));
        if (limit.quantity().equals("flow")) {
            way.addAll(behind(result, limit.subject()));
        }
        return List.copyOf(way);
    }

    /**
     * The rows behind the last pump, or from the tank or held point, up to a subject.
     *
     * @param result  a solved circuit
     * @param subject a point or device
     * @return rows in flow order
     */
    static List<PartRow> to(Result result, String subject) {
        List<PartRow> way = new ArrayList<>();
        String point = subject;
        List<Run> runs = result.circuit().runs();
        if (result.circuit().device(subject).isPresent()) {
            for (PartRow row : result.rows()) {
                if (row.part().equals(subject)) {
                    List<PartRow> before = result.rows(row.run());
                    way.addAll(before.subList(0, before.indexOf(row)));
                    String run = row.run();
                    point = runs.stream()
                            .filter(r -> r.id().equals(run))
                            .findFirst()
                            .map(r -> r.from().element())
                            .orElse(subject);
                    break;
                }
            }
        }
        for (int steps = 0; steps <= runs.size(); steps++) {
            Run feeding = null;
            double most = 0;
            for (Run run : runs) {
                List<PartRow> rows = result.rows(run.id());
                double flow = rows.isEmpty() ? 0 : rows.get(0).massFlowKgPerS();
                if (run.to().element().equals(point) && flow > most) {
                    feeding = run;
                    most = flow;
                }
            }
            Point at = result.circuit().point(point).orElse(null);
            boolean mayGoOn = at instanceof Joint
                    || at instanceof Draw
                    || at instanceof Junction
                    || result.circuit().device(point).orElse(null) instanceof Thermostat;
            boolean asked = steps == 0 && point.equals(subject); // a drain is asked for what comes to its tank
            if (feeding == null || !(mayGoOn || asked)) {
                break;
            }
            way.addAll(0, result.rows(feeding.id()));
            point = feeding.from().element();
        }
        for (int i = way.size() - 1; i >= 0; i--) {
            if (way.get(i).kind().endsWith("pump")) {
                return List.copyOf(way.subList(i + 1, way.size()));
            }
        }
        return List.copyOf(way);
    }

    /**
     * The rows that fluid passes behind a device with ports, up to a tank or held point.
     *
     * @param result a solved circuit
     * @param device name of a regulator
     * @return rows in flow order
     */
    static List<PartRow> after(Result result, String device) {
        List<PartRow> way = new ArrayList<>();
        String place = device;
        for (int steps = 0; steps <= result.circuit().runs().size(); steps++) {
            Run leading = null;
            double most = 0;
            for (Run run : result.circuit().runs()) {
                List<PartRow> rows = result.rows(run.id());
                boolean spill = steps > 0 || run.from().name().equals(Regulator.RETURN);
                double flow = rows.isEmpty() ? 0 : rows.get(0).massFlowKgPerS();
                if (spill && run.from().element().equals(place) && flow > most) {
                    leading = run;
                    most = flow;
                }
            }
            if (leading == null) {
                break;
            }
            way.addAll(result.rows(leading.id()));
            place = leading.to().element();
            Point at = result.circuit().point(place).orElse(null);
            if (!(at instanceof Joint || at instanceof Junction)) {
                break;
            }
        }
        return List.copyOf(way);
    }

    /**
     * The rows behind a device in its own run.
     *
     * @param result a solved circuit
     * @param device name of a device
     * @return rows in flow order; empty where it stands in no run
     */
    static List<PartRow> behind(Result result, String device) {
        for (PartRow row : result.rows()) {
            if (row.part().equals(device)) {
                List<PartRow> rows = result.rows(row.run());
                return List.copyOf(rows.subList(rows.indexOf(row) + 1, rows.size()));
            }
        }
        return List.of();
    }
}
