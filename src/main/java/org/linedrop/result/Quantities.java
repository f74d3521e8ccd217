package org.linedrop.result;

import java.util.Optional;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Limit;
import org.linedrop.solver.Outcome;

/** What a limit bounds, read off a result. */
final class Quantities {
    /** Beginning of the pressure between two places. */
    private static final String OVER = "pressure over ";

    private static final String OVER_MANIFOLD = OVER + "manifold";

    private Quantities() {}

    /**
     * A quantity in SI, or why it is not known.
     *
     * @param value  NaN when not known
     * @param reason empty when known
     */
    record Value(double value, String reason) {
        static Value unknown(String reason) {
            return new Value(Double.NaN, reason);
        }
    }

    /** The state of the device of a limit; empty where it is not known. */
    static String state(Result result, Limit limit) {
        return result.outcome() == Outcome.CONVERGED
                ? result.device(limit.subject()).map(DeviceRow::state).orElse("")
                : "";
    }

    static Value of(Result result, Limit limit) {
        if (result.outcome() != Outcome.CONVERGED) {
            return Value.unknown(
                    "the circuit was not solved: " + result.outcome().word());
        }
        Circuit circuit = result.circuit();
        String quantity = limit.quantity();
        if (quantity.startsWith(OVER) && !quantity.equals(OVER_MANIFOLD)) {
            double here = pressurePa(result, limit.subject());
            double there = pressurePa(result, quantity.substring(OVER.length()));
            return Double.isNaN(here - there)
                    ? Value.unknown("one of the two is part of no run")
                    : new Value(here - there, "");
        }
        if (circuit.point(limit.subject()).isPresent()) {
            return result.point(limit.subject())
                    .map(point -> ofPoint(circuit, point, limit.quantity()))
                    .orElse(Value.unknown(limit.subject() + " is part of no run"));
        }
        return result.device(limit.subject())
                .map(device -> ofDevice(circuit, device, limit.quantity()))
                .orElse(Value.unknown(limit.subject() + " is part of no run"));
    }

    /** Static pressure of a point or rail; NaN where it is part of no run. */
    private static double pressurePa(Result result, String id) {
        return result.point(id)
                .map(PointRow::staticPressurePa)
                .or(() -> result.device(id).map(DeviceRow::outletPressurePa))
                .orElse(Double.NaN);
    }

    private static Value ofPoint(Circuit circuit, PointRow point, String quantity) {
        return switch (quantity) {
            case "pressure" -> new Value(point.staticPressurePa(), "");
            case OVER_MANIFOLD -> overManifold(circuit, point.staticPressurePa());
            case "flow" ->
                new Value(
                        Math.abs(point.netInflowKgPerS())
                                / circuit.surroundings().fluidState().densityKgPerM3(),
                        "");
            default -> throw new IllegalStateException("no such quantity of a point: " + quantity);
        };
    }

    private static Value overManifold(Circuit circuit, double pressurePa) {
        return circuit.engine() == null || circuit.engine().manifoldPa() == null
                ? Value.unknown("the manifold pressure is not given: write engine: {manifold: ...}")
                : new Value(pressurePa - circuit.engine().manifoldPa().value(), "");
    }

    private static Value ofDevice(Circuit circuit, DeviceRow device, String quantity) {
        return switch (quantity) {
            case "pressure" -> new Value(device.outletPressurePa(), "");
            case OVER_MANIFOLD -> overManifold(circuit, device.outletPressurePa());
            case "spare flow" -> {
                if (device.state().startsWith("outside pump table")) {
                    yield Value.unknown(device.state());
                }
                Optional<Double> spare = device.figure("spareFlowRatio");
                yield spare.map(value -> new Value(value, ""))
                        .orElse(Value.unknown("nothing spills here: the pump gives just what is drawn;"
                                + " see the largest draw that holds"));
            }
            case "state" -> new Value(device.figure("controlMarginPa").orElse(Double.NaN), "");
            case "flow" -> new Value(device.flowM3PerS(), "");
            case "inlet vacuum" -> new Value(-device.inletPressurePa(), "");
            case "inlet pressure" -> new Value(device.inletPressurePa(), "");
            case "inlet margin" ->
                device.figure("inletMarginPa")
                        .map(value -> new Value(value, ""))
                        .orElse(Value.unknown("the vapour pressure of the fluid is not known"));
            case "outlet pressure" -> new Value(device.outletPressurePa(), "");
            case "drop" -> new Value(device.dropPa(), "");
            default -> throw new IllegalStateException("no such quantity of a device: " + quantity);
        };
    }
}
