package org.linedrop.study;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.AdapterSize;
import org.linedrop.catalogue.EndSize;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.catalogue.TubeSize;
import org.linedrop.circuit.Adapter;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tube;
import org.linedrop.fact.Figure;
import org.linedrop.study.Uncertain.Kind;

/**
 * A circuit with figures of the catalogue drawn from their bands. These are no words of a file: nobody can write that a
 * hose of the shop's has this bore. Figures that were drawn have no band left.
 */
final class Drawn {
    private final Map<String, Double> values;

    private Drawn(Map<String, Double> values) {
        this.values = values;
    }

    /** Under what a value is kept. */
    static String key(Kind kind, String name) {
        return kind + " " + name;
    }

    /**
     * Puts values in place of figures.
     *
     * @param values by {@link #key}
     */
    static Circuit of(Circuit circuit, Map<String, Double> values) {
        Drawn drawn = new Drawn(values);
        List<Run> runs = circuit.runs().stream()
                .map(run -> new Run(
                        run.id(),
                        run.from(),
                        run.to(),
                        run.via(),
                        run.parts().stream().map(drawn::part).toList(),
                        run.endHeights(),
                        run.temperatureK()))
                .toList();
        return new Circuit(
                circuit.title(),
                circuit.caseName(),
                circuit.service(),
                circuit.surroundings(),
                circuit.engine(),
                circuit.points(),
                circuit.devices(),
                runs,
                circuit.limits(),
                circuit.assumptions(),
                circuit.words());
    }

    private Part part(Part part) {
        if (part instanceof Hose hose) {
            return new Hose(
                    hose.id(),
                    hose(hose.size()),
                    hose.lengthM(),
                    end(hose.fromEnd()),
                    end(hose.toEnd()),
                    hose.bends(),
                    hose.lossFactor(),
                    hose.temperatureK());
        }
        if (part instanceof Tube tube) {
            TubeSize size = tube.size();
            TubeSize other = new TubeSize(
                    size.material(),
                    size.outsideDiameterM(),
                    size.wallM(),
                    size.dash(),
                    size.boreM(),
                    figure(Kind.ROUGHNESS, size.material(), size.roughnessM()),
                    size.leastBoreBentM(),
                    size.allowablePressurePa());
            return new Tube(tube.id(), other, tube.lengthM(), tube.bends(), tube.temperatureK());
        }
        if (part instanceof Adapter adapter) {
            AdapterSize size = adapter.size();
            AdapterSize other = new AdapterSize(
                    size.kind(),
                    size.text(),
                    figure(Kind.FITTING_BORE, size.from().sizeName(), size.fromBoreM()),
                    figure(Kind.FITTING_BORE, size.to().sizeName(), size.toBoreM()),
                    size.angleRad(),
                    size.forged(),
                    size.bendRatio(),
                    size.sealingFaces(),
                    size.from(),
                    size.to());
            return new Adapter(adapter.id(), other, adapter.temperatureK());
        }
        return part;
    }

    private HoseSize hose(HoseSize size) {
        return new HoseSize(
                size.family(),
                size.dash(),
                size.sizeText(),
                size.liner(),
                figure(Kind.HOSE_BORE, size.name(), size.boreM()),
                figure(Kind.ROUGHNESS, size.name(), size.roughnessM()),
                size.outsideDiameterM(),
                size.minBendRadiusM(),
                size.workingPressurePa(),
                size.proofPressurePa(),
                size.burstPressurePa(),
                size.vacuumPa(),
                size.minTemperatureK(),
                size.maxTemperatureK(),
                size.massKgPerM(),
                size.convoluted(),
                size.neverJudged());
    }

    private @Nullable EndSize end(@Nullable EndSize end) {
        if (end == null) {
            return null;
        }
        Figure drawn = figure(Kind.END_BORE, endName(end), end.nippleBoreM());
        return drawn.equals(end.nippleBoreM()) ? end : end.withNippleBore(drawn);
    }

    /** All ends of one build and size are of one make. */
    static String endName(EndSize end) {
        return end.family() + " " + end.sizeText() + " " + end.build();
    }

    /** A bore that was measured otherwise than the others of its size keeps its own figure. */
    private Figure figure(Kind kind, String name, Figure figure) {
        Double value = values.get(key(kind, name));
        return value == null || !figure.hasBand() ? figure : Figure.exact(value, figure.source());
    }
}
