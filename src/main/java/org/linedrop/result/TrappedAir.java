package org.linedrop.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Position;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Service;
import org.linedrop.circuit.Tank;
import org.linedrop.circuit.Through;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** High points of a circuit from which air finds no way up: every line that leaves them falls. */
final class TrappedAir {
    private static final Source SOURCE = Source.of("air rises", Status.DERIVED);

    private final Circuit circuit;
    private final Map<String, Double> heights = new LinkedHashMap<>();
    private final Map<String, List<String>> beside = new LinkedHashMap<>();

    private TrappedAir(Circuit circuit) {
        this.circuit = circuit;
    }

    /** Where air stays in a coolant or brake circuit; other liquids carry it along or are pumped out of a tank. */
    static List<Notice> notices(Circuit circuit) {
        boolean matters = circuit.service() == Service.COOLANT || circuit.service() == Service.BRAKE;
        return matters ? new TrappedAir(circuit).found() : List.of();
    }

    private List<Notice> found() {
        for (Run run : circuit.runs()) {
            way(run);
        }
        List<Notice> notices = new ArrayList<>();
        heights.forEach((place, height) -> {
            List<String> neighbours = beside.getOrDefault(place, List.of());
            boolean highest = neighbours.stream().allMatch(other -> heights.getOrDefault(other, height) < height);
            boolean open = circuit.point(place).orElse(null) instanceof Tank;
            if (highest && !open && neighbours.size() > 1) {
                notices.add(new Notice(
                        "trapped-air",
                        place,
                        "every line leaves it downwards: air collects here unless it is vented",
                        height,
                        Double.NaN,
                        "m",
                        SOURCE));
            }
        });
        return notices;
    }

    /** The places of a run whose heights are known, each beside the next. */
    private void way(Run run) {
        List<String> places = new ArrayList<>();
        add(
                places,
                run.from().element(),
                circuit.point(run.from().element())
                        .map(Point::position)
                        .orElse(device(run.from().element())));
        for (int i = 0; i < run.via().size(); i++) {
            add(places, run.id() + ", way-point " + (i + 1), run.via().get(i));
        }
        for (Part part : run.parts()) {
            if (part instanceof Through through && run.via().isEmpty()) {
                add(places, through.device(), device(through.device()));
            }
        }
        add(
                places,
                run.to().element(),
                circuit.point(run.to().element())
                        .map(Point::position)
                        .orElse(device(run.to().element())));
        for (int i = 1; i < places.size(); i++) {
            beside.computeIfAbsent(places.get(i - 1), key -> new ArrayList<>()).add(places.get(i));
            beside.computeIfAbsent(places.get(i), key -> new ArrayList<>()).add(places.get(i - 1));
        }
    }

    private @Nullable Position device(String id) {
        return circuit.device(id).map(Device::position).orElse(null);
    }

    private void add(List<String> places, String name, @Nullable Position position) {
        if (position != null) {
            places.add(name);
            heights.put(name, position.heightM());
        }
    }
}
