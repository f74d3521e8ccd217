package org.linedrop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.linedrop.fact.Figure;
import org.linedrop.network.Trace;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;

/**
 * What one part of a run loses: a hose with its two ends, a tube with its bends, a device.
 *
 * @param run        name of the run
 * @param part       name of the part
 * @param words      what it is: number in its run, name, size
 * @param boreM      the bore of its longest row, or of its first that has one; 0 where none is known
 * @param frictionPa lost to friction
 * @param localPa    lost at ends, bends and fittings; a pump's rise is negative
 * @param liftPa     given up to height and acceleration
 * @param share      of what all parts of the circuit lose, 0 to 1; NaN where {@code line} is false or nothing is lost
 * @param line       whether it is something that loses pressure, rather than a pump or a device that sets a pressure or
 *                   shuts, such as a regulator
 * @param rows       its rows, in the order of the run
 */
public record PartLoss(
        String run,
        String part,
        String words,
        double boreM,
        double frictionPa,
        double localPa,
        double liftPa,
        double share,
        boolean line,
        List<PartRow> rows) {

    /** Copies the rows. */
    public PartLoss {
        rows = List.copyOf(rows);
    }

    /**
     * Friction and local losses.
     *
     * @return Pa; negative for a pump
     */
    public double lossPa() {
        return frictionPa + localPa;
    }

    /**
     * What every part of a circuit loses. A part that a backward flow passes loses as much as it would the other way: its
     * loss is counted positive.
     *
     * @param result a solved circuit
     * @return run by run, in the order of the runs
     */
    public static List<PartLoss> of(Result result) {
        Map<List<String>, List<PartRow>> parts = new LinkedHashMap<>();
        for (PartRow row : result.rows()) {
            parts.computeIfAbsent(List.of(row.run(), row.part()), key -> new ArrayList<>())
                    .add(row);
        }
        List<List<String>> gates = gates(result);
        double all = 0;
        for (Map.Entry<List<String>, List<PartRow>> part : parts.entrySet()) {
            if (line(part, gates)) {
                all += sum(part.getValue(), true) + sum(part.getValue(), false);
            }
        }
        List<PartLoss> losses = new ArrayList<>();
        for (Map.Entry<List<String>, List<PartRow>> part : parts.entrySet()) {
            losses.add(loss(part.getValue(), line(part, gates), all));
        }
        return List.copyOf(losses);
    }

    private static boolean line(Map.Entry<List<String>, List<PartRow>> part, List<List<String>> gates) {
        return !gates.contains(part.getKey()) && !part.getValue().get(0).kind().endsWith("pump");
    }

    /** Run and part of devices that switch: their drop is what the pressures on both sides leave. */
    private static List<List<String>> gates(Result result) {
        List<List<String>> gates = new ArrayList<>();
        for (Trace.RunTrace run : result.network().runs()) {
            for (Trace.Section section : run.sections()) {
                if (section.gate()) {
                    section.rows().forEach(row -> gates.add(List.of(run.id(), row.part())));
                }
            }
        }
        return gates;
    }

    private static double sum(List<PartRow> rows, boolean friction) {
        double sum = 0;
        for (PartRow row : rows) {
            double sense = row.massFlowKgPerS() < 0 ? -1 : 1;
            sum += sense * (friction ? row.frictionDropPa() : row.localDropPa());
        }
        return sum;
    }

    private static PartLoss loss(List<PartRow> rows, boolean line, double allPa) {
        PartRow main = rows.get(0);
        for (PartRow row : rows) {
            boolean longer = row.frictionDropPa() != 0 && main.frictionDropPa() == 0;
            main = longer ? row : main;
        }
        double friction = sum(rows, true);
        double local = sum(rows, false);
        Figure bore = main.boreM();
        return new PartLoss(
                main.run(),
                main.part(),
                words(rows, main),
                bore.value(),
                friction,
                local,
                rows.stream().mapToDouble(PartRow::liftDropPa).sum(),
                line && allPa > 0 ? (friction + local) / allPa : Double.NaN,
                line,
                rows);
    }

    private static String words(List<PartRow> rows, PartRow main) {
        String number = rows.get(0).row().replaceFirst("[.].*", "");
        boolean numbered = Character.isDigit(number.charAt(0));
        String size = main.size().isEmpty() ? "" : ", " + main.size();
        return (numbered ? number + " " : "") + main.name() + size;
    }
}
