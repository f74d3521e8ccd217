package org.linedrop.fluid;

import java.util.List;

/** Plain checks of what a user gives; each message says what was read, what is allowed and what to do. */
final class Checks {
    private Checks() {}

    static void temperature(double temperatureK) {
        if (!(temperatureK >= 173.15 && temperatureK <= 673.15)) {
            throw new IllegalArgumentException("temperature of a fluid property is " + Text.celsius(temperatureK)
                    + "; allowed are -100 to 400 C. Give it in K to the library, with its unit in a file");
        }
    }

    static void viscosity(double viscosityM2PerS) {
        // the D341 chart begins near 0.2 mm2/s; 1 m2/s is a million times water
        if (!(viscosityM2PerS >= 0.21e-6 && viscosityM2PerS <= 1)) {
            throw new IllegalArgumentException("kinematic viscosity is " + viscosityM2PerS
                    + " m2/s; allowed are 0.21 mm2/s to 1 m2/s (1 cSt = 1 mm2/s = 1e-6 m2/s). Check the unit");
        }
    }

    static void value(PropertyKind kind, double value) {
        double low = switch (kind) {
            case DENSITY -> 0.05;
            case DYNAMIC_VISCOSITY -> 1e-6;
            case KINEMATIC_VISCOSITY -> 1e-8;
            case VAPOUR_PRESSURE -> 0;
            case BULK_MODULUS -> 1e4;
            case SPECIFIC_HEAT -> 100;
        };
        double high = switch (kind) {
            case DENSITY -> 20000;
            case DYNAMIC_VISCOSITY -> 1000;
            case KINEMATIC_VISCOSITY -> 1;
            case VAPOUR_PRESSURE -> 1e7;
            case BULK_MODULUS -> 1e12;
            case SPECIFIC_HEAT -> 20000;
        };
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(kind.word() + " is " + value + " " + kind.unit() + "; allowed are " + low
                    + " to " + high + " " + kind.unit() + ". Check the unit");
        }
    }

    static void step(PropertyKind kind, List<Double> temperaturesK, List<Double> values, int i) {
        if (i == 0) {
            return;
        }
        if (!(temperaturesK.get(i) > temperaturesK.get(i - 1))) {
            throw new IllegalArgumentException("temperatures of the " + kind.word() + " table must rise, but "
                    + Text.celsius(temperaturesK.get(i)) + " follows " + Text.celsius(temperaturesK.get(i - 1))
                    + ". Sort the rows");
        }
        boolean viscosity = kind.stored() == PropertyKind.DYNAMIC_VISCOSITY;
        if (viscosity && !(values.get(i) < values.get(i - 1))) {
            throw new IllegalArgumentException("the " + kind.word() + " table does not fall from "
                    + Text.celsius(temperaturesK.get(i - 1)) + " (" + values.get(i - 1) + " " + kind.unit() + ") to "
                    + Text.celsius(temperaturesK.get(i)) + " (" + values.get(i) + " " + kind.unit()
                    + "); a liquid gets thinner when hot. Check the rows");
        }
    }
}
