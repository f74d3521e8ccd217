package org.linedrop.circuit;

import java.util.List;

/** Names of the ports of what has more than one. */
final class Ports {
    private Ports() {}

    /** Ports of a kind of device; empty where it stands in one run, with {@code through:}. */
    static List<String> ofDevice(String kind) {
        return switch (kind) {
            case Regulator.BYPASS -> List.of(Regulator.INLET, Regulator.RETURN);
            case Thermostat.KIND -> List.of(Thermostat.INLET, Thermostat.COOLER, Thermostat.DIRECT);
            default -> List.of();
        };
    }

    /** Ports of a kind of point; one without a name where a point is named alone. */
    static List<String> ofPoint(String kind) {
        return switch (kind) {
            case "tank" -> List.of(Tank.OUTLET, Tank.RETURN);
            case Junction.TEE -> List.of(Junction.RUN, Junction.BRANCH);
            case Junction.Y_BLOCK -> List.of(Junction.COMMON, Junction.LEG);
            default -> List.of("");
        };
    }
}
