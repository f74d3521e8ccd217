package org.linedrop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.linedrop.fact.Figure;
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
 * @param share      of what all parts of the circuit lose, 0 to 1; NaN for a pump and where nothing is lost
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
     * Whether it adds pressure.
     *
     * @return true for a pump
     */
    public boolean adds() {
        return rows.get(0).kind().equals("pump");
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
        double all = 0;
        for (List<PartRow> rows : parts.values()) {
            all += rows.get(0).kind().equals("pump") ? 0 : sum(rows, true) + sum(rows, false);
        }
        List<PartLoss> losses = new ArrayList<>();
        for (List<PartRow> rows : parts.values()) {
            losses.add(loss(rows, all));
        }
        return List.copyOf(losses);
    }

    private static double sum(List<PartRow> rows, boolean friction) {
        double sum = 0;
        for (PartRow row : rows) {
            double sense = row.massFlowKgPerS() < 0 ? -1 : 1;
            sum += sense * (friction ? row.frictionDropPa() : row.localDropPa());
        }
        return sum;
    }

    private static PartLoss loss(List<PartRow> rows, double allPa) {
        PartRow main = rows.get(0);
        for (PartRow row : rows) {
            boolean longer = row.frictionDropPa() != 0 && main.frictionDropPa() == 0;
            main = longer ? row : main;
        }
        double friction = sum(rows, true);
        double local = sum(rows, false);
        boolean pump = main.kind().equals("pump");
        Figure bore = main.boreM();
        return new PartLoss(
                main.run(),
                main.part(),
                words(rows, main),
                bore.value(),
                friction,
                local,
                rows.stream().mapToDouble(PartRow::liftDropPa).sum(),
                pump || !(allPa > 0) ? Double.NaN : (friction + local) / allPa,
                rows);
    }

    private static String words(List<PartRow> rows, PartRow main) {
        String number = rows.get(0).row().replaceFirst("[.].*", "");
        boolean numbered = Character.isDigit(number.charAt(0));
        String size = main.size().isEmpty() ? "" : ", " + main.size();
        return (numbered ? number + " " : "") + main.name() + size;
    }
}
