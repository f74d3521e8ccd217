package org.linedrop.fluid;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * What engines ask of their fuel: air-fuel ratio, heating value, and the usual ranges of fuel per power. Ranges of fuel
 * per power are from memory; a measured or known figure of the engine always goes first.
 */
public final class EngineFacts {
    private EngineFacts() {}

    /** 1 g/kWh in kg/J. */
    private static final double G_PER_KWH = 1e-3 / 3.6e6;

    private static final Source DOE_TABLE =
            new Source("US DOE, Properties of Fuels table", "converted from Btu/lb", Status.PUBLISHED);
    private static final Source DOE_COMPARISON = new Source("US DOE, fuel property comparison", "", Status.PUBLISHED);
    private static final Source BY_VOLUME = new Source("from the rows of the components", "", Status.DERIVED);
    private static final Source BUILDERS =
            new Source("engine-builder rules; best values after Heywood 1988", "", Status.FROM_MEMORY);

    /**
     * A fuel's combustion figures.
     *
     * @param fuel                      word of {@link Fluids#families}
     * @param stoichiometricRatio       mass of air over mass of fuel
     * @param lowerHeatingValueJPerKg   J/kg; of E85 at 83 % ethanol
     */
    public record Combustion(String fuel, Figure stoichiometricRatio, Figure lowerHeatingValueJPerKg)
            implements Serializable {}

    /**
     * Usual fuel mass per work at the crank.
     *
     * @param fuel            word of {@link Fluids#families}
     * @param context         kind of engine
     * @param fuelPerWorkKgPerJ low, usual and high, kg/J (1 g/kWh = 2.778e-10 kg/J)
     */
    public record FuelPerWork(String fuel, String context, Figure fuelPerWorkKgPerJ) implements Serializable {}

    private static final List<Combustion> COMBUSTION = List.of(
            new Combustion("petrol E0", new Figure(14.4, 14.7, 14.8, DOE_COMPARISON), Figure.exact(43.44e6, DOE_TABLE)),
            new Combustion("petrol E10", Figure.exact(14.1, BY_VOLUME), Figure.exact(41.7e6, BY_VOLUME)),
            new Combustion("E85", new Figure(9.7, 9.9, 9.9, BY_VOLUME), Figure.exact(29.5e6, BY_VOLUME)),
            new Combustion("ethanol", Figure.exact(9.0, DOE_COMPARISON), Figure.exact(26.95e6, DOE_TABLE)),
            new Combustion(
                    "methanol",
                    Figure.exact(6.47, new Source("CH3OH + 1.5 O2", "", Status.DERIVED)),
                    Figure.exact(20.09e6, DOE_TABLE)),
            new Combustion("diesel", new Figure(14.5, 14.7, 14.7, DOE_COMPARISON), Figure.exact(42.78e6, DOE_TABLE)));

    private static final List<FuelPerWork> FUEL_PER_WORK = List.of(
            row("petrol E0", "naturally aspirated, full power", 274, 304, 335),
            row("petrol E0", "naturally aspirated, best point", 243, 268, 280),
            row("petrol E0", "turbocharged, full power", 335, 365, 395),
            row("petrol E0", "supercharged, full power", 335, 365, 426),
            row("E85", "naturally aspirated", 383, 426, 456),
            row("E85", "boosted", 468, 517, 578),
            row("methanol", "naturally aspirated or boosted", 578, 669, 791),
            row("ethanol", "naturally aspirated", 414, 462, 517),
            row("diesel", "direct injection, naturally aspirated", 219, 231, 255),
            row("diesel", "direct injection, turbocharged", 195, 213, 243));

    private static FuelPerWork row(String fuel, String context, double low, double usual, double high) {
        return new FuelPerWork(
                fuel, context, new Figure(low * G_PER_KWH, usual * G_PER_KWH, high * G_PER_KWH, BUILDERS));
    }

    /**
     * Combustion figures of a fuel.
     *
     * @param family word of {@link Fluids#families}
     * @return the figures, or nothing for what is no fuel
     */
    public static Optional<Combustion> combustion(String family) {
        return COMBUSTION.stream().filter(c -> c.fuel().equals(family)).findFirst();
    }

    /**
     * Usual ranges of fuel per work.
     *
     * @param family word of {@link Fluids#families}
     * @return one row for each kind of engine, possibly none
     */
    public static List<FuelPerWork> fuelPerWork(String family) {
        return FUEL_PER_WORK.stream().filter(f -> f.fuel().equals(family)).toList();
    }
}
