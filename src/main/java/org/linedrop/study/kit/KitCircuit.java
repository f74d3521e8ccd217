package org.linedrop.study.kit;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Service;
import org.linedrop.fact.Notice;

/**
 * What the kit says of one circuit.
 *
 * @param title       what the circuit is
 * @param caseName    the case it is made up for
 * @param service     what kind of circuit, or null
 * @param fluid       name of what flows
 * @param hoses       its hoses
 * @param joints      its joints
 * @param stretches   hoses and tubes that are shorter than what lies between their ends
 * @param volumeM3    what its hoses and tubes hold at usual bores, m3
 * @param volumeLowM3 the same with the smallest bores sold, m3
 * @param volumeHighM3 the same with the largest bores sold, m3
 * @param fluidKg     mass of that fluid at the circuit's temperature, kg
 * @param notices     what is missing or was taken
 */
public record KitCircuit(
        String title,
        String caseName,
        @Nullable Service service,
        String fluid,
        List<KitHose> hoses,
        List<KitJoint> joints,
        List<TooShort> stretches,
        double volumeM3,
        double volumeLowM3,
        double volumeHighM3,
        double fluidKg,
        List<Notice> notices)
        implements Serializable {

    /** Copies the lists. */
    public KitCircuit {
        hoses = List.copyOf(hoses);
        joints = List.copyOf(joints);
        stretches = List.copyOf(stretches);
        notices = List.copyOf(notices);
    }

    /**
     * Whether it is a brake circuit, of which only quantities are said.
     *
     * @return true for brakes
     */
    public boolean brake() {
        return service == Service.BRAKE;
    }

    /**
     * Hoses and tubes that are shorter than a straight line; ends, fittings and devices would have to bridge the rest.
     *
     * @param parts     their names
     * @param partsM    their length together, m
     * @param distanceM what lies between their ends in a straight line, m
     */
    public record TooShort(List<String> parts, double partsM, double distanceM) implements Serializable {
        /** Copies the list. */
        public TooShort {
            parts = List.copyOf(parts);
        }
    }
}
