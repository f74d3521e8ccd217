package org.linedrop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tube;
import org.linedrop.fact.Status;
import org.linedrop.result.PartRow;
import org.linedrop.units.Dimension;

/** Which figures are worth measuring: those with a band, by what the band makes of the output. */
final class Measures {
    /** A tenth of a millimetre: what a plug gauge or a good calliper tells apart in a bore. */
    private static final double BORE_STEP_M = 1e-4;

    private final Circuit circuit;
    private final Output output;
    private final Set<String> onTheWay = new LinkedHashSet<>();

    Measures(Circuit circuit, Output output, List<PartRow> way) {
        this.circuit = circuit;
        this.output = output;
        way.forEach(row -> onTheWay.add(row.part()));
    }

    List<Bottleneck.Measure> find() {
        Map<String, List<Knob>> kinds = new LinkedHashMap<>();
        for (Knob knob : Knob.all(circuit)) {
            boolean bore = isBore(knob);
            boolean doubted = knob.figure().hasBand() && knob.figure().status() != Status.MEASURED;
            if (onTheWay.contains(knob.subject()) && (bore || doubted)) {
                kinds.computeIfAbsent(words(knob, bore), words -> new ArrayList<>())
                        .add(knob);
            }
        }
        List<Knob> all = new ArrayList<>();
        kinds.values().forEach(all::addAll);
        Sensitivities slopes = Sensitivities.of(circuit, all);
        List<Bottleneck.Measure> measures = new ArrayList<>();
        kinds.forEach((words, knobs) -> measures.add(measure(words, knobs, slopes)));
        measures.removeIf(measure -> !(Math.abs(measure.gives()) > 0));
        measures.sort(Comparator.comparingDouble((Bottleneck.Measure measure) -> -measure.decides())
                .thenComparingDouble(measure -> -Math.abs(measure.gives())));
        return measures;
    }

    private static boolean isBore(Knob knob) {
        return knob.dimension() == Dimension.LENGTH && knob.key().endsWith("bore");
    }

    /** Bores of one family and size are bought alike: one gauged end speaks for all. */
    private String words(Knob knob, boolean bore) {
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                if (bore && part.id().equals(knob.subject()) && part instanceof Hose hose) {
                    String size = hose.size().name();
                    return knob.key().equals("bore") ? "bore of " + size : "hose-end bore of " + size;
                }
                if (bore && part.id().equals(knob.subject()) && part instanceof Tube tube) {
                    return "bore of " + tube.id();
                }
            }
        }
        return knob.key() + " of " + knob.subject();
    }

    private Bottleneck.Measure measure(String words, List<Knob> knobs, Sensitivities slopes) {
        boolean bore = isBore(knobs.get(0));
        double gives = 0;
        double decides = 0;
        double band = 0;
        int count = 0;
        Status status = Status.MEASURED;
        for (Knob knob : knobs) {
            double slope = slopes.slope(output.id(), knob.path()).value();
            double width = knob.figure().high() - knob.figure().low();
            boolean measured = knob.figure().status() == Status.MEASURED;
            gives += slope * (bore ? BORE_STEP_M : 0.01 * knob.si());
            decides += measured ? 0 : Math.abs(slope) * width;
            band = Math.max(band, measured ? 0 : width);
            count += words.startsWith("hose-end") ? ends(knob.subject()) : 1;
            status = Status.weaker(status, knob.figure().status());
        }
        double step = bore ? BORE_STEP_M : 0.01 * knobs.get(0).si();
        return new Bottleneck.Measure(words, count, status, step, gives, band, decides);
    }

    private int ends(String id) {
        return circuit.runs().stream()
                .flatMap(run -> run.parts().stream())
                .filter(part -> part.id().equals(id) && part instanceof Hose)
                .map(part -> (Hose) part)
                .mapToInt(hose -> (hose.fromEnd() == null ? 0 : 1) + (hose.toEnd() == null ? 0 : 1))
                .sum();
    }
}
