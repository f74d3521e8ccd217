package org.linedrop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.EndSize;
import org.linedrop.circuit.Adapter;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Pump;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tube;
import org.linedrop.fact.Figure;
import org.linedrop.fluid.Band;
import org.linedrop.network.Bores;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.result.Result;
import org.linedrop.study.Uncertain.Kind;

/** What of a circuit is not known exactly, and the circuit with all of it drawn. */
final class Uncertainties {
    private static final List<Band> CLASSES = List.of(Band.THIN, Band.USUAL, Band.THICK);

    private final Map<String, Uncertain> found = new LinkedHashMap<>();

    private Uncertainties() {}

    /** Bands of the catalogue and of the file in the order of the file, then those of laws, fluid and pumps. */
    static List<Uncertain> of(Circuit circuit, BandQuestion question) {
        Uncertainties all = new Uncertainties();
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                all.add(part);
            }
        }
        for (Knob knob : Knob.all(circuit)) {
            boolean bore = knob.key().equals("bore") || knob.key().equals("end bore");
            if (!bore && knob.said() && knob.figure().hasBand()) {
                all.add(Kind.FIGURE, knob.path(), within(knob));
            }
        }
        all.factor(Kind.FRICTION, "", question.frictionShare(), BandQuestion.FRICTION_SOURCE);
        all.factor(Kind.LOCAL, "", question.localShare(), BandQuestion.LOCAL_SOURCE);
        for (Device device : circuit.devices()) {
            if (device instanceof Pump) {
                all.factor(Kind.PUMP, device.id(), question.pumpShare(), BandQuestion.PUMP_SOURCE);
            }
        }
        var fluid = circuit.surroundings().fluid();
        double temperature = circuit.surroundings().temperatureK().value();
        if (!fluid.at(temperature, Band.THIN).equals(fluid.at(temperature, Band.THICK))) {
            Uncertain classOf = new Uncertain(
                    Kind.FLUID, "", -1, 0, 1, "ends of the class of " + fluid.name() + " taken as 5 and 95 %");
            all.found.put(Drawn.key(Kind.FLUID, ""), classOf);
        }
        return List.copyOf(all.found.values());
    }

    private static Figure within(Knob knob) {
        Figure figure = knob.figure();
        return new Figure(
                Math.max(knob.least(), figure.low()),
                figure.value(),
                Math.min(knob.most(), figure.high()),
                figure.source());
    }

    private void add(Part part) {
        if (part instanceof Hose hose) {
            add(Kind.HOSE_BORE, hose.size().name(), hose.size().boreM());
            add(Kind.ROUGHNESS, hose.size().name(), hose.size().roughnessM());
            add(hose.fromEnd());
            add(hose.toEnd());
        } else if (part instanceof Tube tube) {
            add(Kind.ROUGHNESS, tube.size().material(), tube.size().roughnessM());
        } else if (part instanceof Adapter adapter) {
            add(
                    Kind.FITTING_BORE,
                    adapter.size().from().sizeName(),
                    adapter.size().fromBoreM());
            add(
                    Kind.FITTING_BORE,
                    adapter.size().to().sizeName(),
                    adapter.size().toBoreM());
        }
    }

    private void add(@Nullable EndSize end) {
        if (end != null) {
            add(Kind.END_BORE, Drawn.endName(end), end.nippleBoreM());
        }
    }

    private void add(Kind kind, String name, Figure figure) {
        if (figure.hasBand()) {
            found.putIfAbsent(
                    Drawn.key(kind, name),
                    new Uncertain(
                            kind,
                            name,
                            figure.low(),
                            figure.value(),
                            figure.high(),
                            figure.source().title() + ", " + figure.status().word()));
        }
    }

    private void factor(Kind kind, String name, double share, String source) {
        if (share > 0) {
            found.put(Drawn.key(kind, name), new Uncertain(kind, name, 1 - share, 1, 1 + share, source));
        }
    }

    /** Solves the circuit with one value of each. */
    static Result solved(Circuit circuit, List<Uncertain> uncertain, double[] values) {
        Map<String, Double> drawn = new LinkedHashMap<>();
        List<Change> changes = new ArrayList<>();
        double friction = 1;
        double local = 1;
        Band band = Band.USUAL;
        for (int i = 0; i < values.length; i++) {
            Uncertain each = uncertain.get(i);
            switch (each.kind()) {
                case FRICTION -> friction = values[i];
                case LOCAL -> local = values[i];
                case FLUID -> band = CLASSES.get((int) values[i] + 1);
                case FIGURE -> changes.add(Knob.of(circuit, each.name()).to(values[i]));
                case PUMP -> changes.add(Suspect.pumpGiving(circuit, each.name(), values[i]));
                default -> drawn.put(Drawn.key(each.kind(), each.name()), values[i]);
            }
        }
        Circuit changed = changes.isEmpty() ? circuit : circuit.with(changes);
        CircuitNetwork.Setting setting =
                new CircuitNetwork.Setting(Bores.USUAL, band, false, false).times(friction, local);
        return Result.of(Drawn.of(changed, drawn), setting);
    }
}
