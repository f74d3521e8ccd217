package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Through;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.units.Dimension;

/**
 * A place where something can be measured.
 *
 * @param subject  point, device, run or part
 * @param quantity {@code pressure} of a point, {@code behind} of a part (the pressure there), {@code inlet}, {@code
 *                 outlet} and {@code drop} of a device, {@code flow} of any but a part
 */
public record Gauge(String subject, String quantity) implements Serializable {
    static final String PRESSURE = "pressure";
    static final String FLOW = "flow";
    static final String BEHIND = "behind";
    static final List<String> OF_DEVICES = List.of("inlet", "outlet", "drop", FLOW);

    /** Two standard deviations of a usual gauge: a share of the reading, and at least so much. Ours, from memory. */
    private static final double PRESSURE_SHARE = 0.02;

    private static final double PRESSURE_LEAST_PA = 2000;
    private static final double FLOW_SHARE = 0.05;
    private static final double FLOW_LEAST_M3_PER_S = 1e-3 / 3600;

    /**
     * What it measures.
     *
     * @return gauge pressure, pressure difference or volume flow
     */
    public Dimension dimension() {
        return quantity.equals(FLOW)
                ? Dimension.VOLUME_FLOW
                : quantity.equals("drop") ? Dimension.PRESSURE_DIFFERENCE : Dimension.GAUGE_PRESSURE;
    }

    /**
     * How well a usual workshop gauge reads.
     *
     * @param value the reading, SI
     * @return two standard deviations, SI: 2 % of a pressure and at least 2 kPa, 5 % of a flow and at least 1 L/h
     */
    double usualError(double value) {
        return quantity.equals(FLOW)
                ? Math.max(FLOW_SHARE * Math.abs(value), FLOW_LEAST_M3_PER_S)
                : Math.max(PRESSURE_SHARE * Math.abs(value), PRESSURE_LEAST_PA);
    }

    /**
     * Its name.
     *
     * @return for example {@code rail}, {@code pump outlet}, {@code behind feed 4}, {@code feed flow}
     */
    public String words() {
        return switch (quantity) {
            case PRESSURE -> subject;
            case BEHIND -> "behind " + subject;
            default -> subject + " " + quantity;
        };
    }

    /**
     * What it would read.
     *
     * @param result a solved circuit
     * @return SI; NaN where there is no such place
     */
    double of(Result result) {
        if (quantity.equals(BEHIND)) {
            double behind = Double.NaN;
            for (PartRow row : result.rows()) {
                behind = row.part().equals(subject) ? row.staticPressureOutPa() : behind;
            }
            return behind;
        }
        if (result.circuit().point(subject).isPresent()) {
            return result.point(subject)
                    .map(row -> quantity.equals(FLOW)
                            ? Math.abs(row.netInflowKgPerS()) / density(result)
                            : row.staticPressurePa())
                    .orElse(Double.NaN);
        }
        if (result.circuit().device(subject).isPresent()) {
            return result.device(subject)
                    .map(row -> switch (quantity) {
                        case "inlet" -> row.inletPressurePa();
                        case "outlet" -> row.outletPressurePa();
                        case "drop" -> row.inletPressurePa() - row.outletPressurePa();
                        default -> Math.abs(row.flowM3PerS());
                    })
                    .orElse(Double.NaN);
        }
        List<PartRow> rows = result.rows(subject);
        return rows.isEmpty() ? Double.NaN : Math.abs(rows.get(0).flowM3PerS());
    }

    private static double density(Result result) {
        return result.circuit().surroundings().fluidState().densityKgPerM3();
    }

    /** Every place of a circuit where a gauge can sit. */
    static List<Gauge> all(Circuit circuit) {
        List<Gauge> all = new ArrayList<>();
        circuit.points().forEach(point -> all.add(new Gauge(point.id(), PRESSURE)));
        circuit.devices().forEach(device -> {
            all.add(new Gauge(device.id(), "inlet"));
            all.add(new Gauge(device.id(), "outlet"));
        });
        for (Run run : circuit.runs()) {
            all.add(new Gauge(run.id(), FLOW));
            List<Part> parts = run.parts();
            for (int i = 0; i < parts.size() - 1; i++) { // behind the last is the point
                if (!(parts.get(i) instanceof Through) && !(parts.get(i + 1) instanceof Through)) {
                    all.add(new Gauge(parts.get(i).id(), BEHIND));
                }
            }
        }
        return all;
    }

    /** The places of a circuit with a name, for reading what somebody wrote; the longest names first. */
    static List<Gauge> named(Circuit circuit) {
        List<Gauge> named = new ArrayList<>();
        circuit.points().forEach(point -> {
            named.add(new Gauge(point.id(), PRESSURE));
            named.add(new Gauge(point.id(), FLOW));
        });
        circuit.devices()
                .forEach(device -> OF_DEVICES.forEach(quantity -> named.add(new Gauge(device.id(), quantity))));
        for (Run run : circuit.runs()) {
            named.add(new Gauge(run.id(), FLOW));
            run.parts().forEach(part -> named.add(new Gauge(part.id(), BEHIND)));
        }
        named.sort(java.util.Comparator.comparingInt(
                gauge -> -gauge.words().toLowerCase(Locale.ROOT).length()));
        return named;
    }
}
