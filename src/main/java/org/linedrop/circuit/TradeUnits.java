package org.linedrop.circuit;

import java.util.List;
import org.linedrop.fluid.Fluid;
import org.linedrop.units.Display;

/** Flows as the trade says them: fuel by the hour, oil, coolant and what else there is by the minute. */
public final class TradeUnits {
    private static final List<String> FUELS =
            List.of("petrol", "E10", "E85", "ethanol", "methanol", "diesel", "biodiesel");

    private TradeUnits() {}

    /**
     * The units for a circuit.
     *
     * @param circuit the circuit; its service decides, else its fluid
     * @param display metric or US
     * @return the same with flows per hour or per minute
     */
    public static Display of(Circuit circuit, Display display) {
        Service service = circuit.service();
        return service == null ? of(circuit.surroundings().fluid(), display) : display.perMinute(!service.fuel());
    }

    /**
     * The units for a fluid.
     *
     * @param fluid   the fluid
     * @param display metric or US
     * @return the same with flows per hour for a fuel, per minute for anything else
     */
    public static Display of(Fluid fluid, Display display) {
        return display.perMinute(FUELS.stream().noneMatch(fluid.family()::startsWith));
    }
}
