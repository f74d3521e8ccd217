package org.linedrop.study;

import java.io.Serializable;
import java.util.List;

/**
 * What is compared: the same made-up hose in several families and dash sizes, in the words of a circuit file.
 *
 * @param fluid       name of the fluid, for example {@code E85 summer}
 * @param temperature for example {@code 40 C}
 * @param flow        for example {@code 216 L/h}
 * @param length      for example {@code 1 m}
 * @param ends        for example {@code straight to 90}, or {@code none}
 * @param dashes      dash sizes without their sign, at least one
 * @param families    hose families in the order of the table, the first is what the others are compared with
 */
public record LinerQuestion(
        String fluid,
        String temperature,
        String flow,
        String length,
        String ends,
        List<Integer> dashes,
        List<String> families)
        implements Serializable {

    /** Families compared when none are named: race hose, tube-size standards, and hose nearer to dash/16. */
    public static final List<String> USUAL_FAMILIES =
            List.of("race rubber", "MIL-H-8794", "MIL-H-8788", "race PTFE", "AS1946", "true-size PTFE");

    /** Copies the lists and checks that there is something to compare. */
    public LinerQuestion {
        dashes = List.copyOf(dashes);
        families = List.copyOf(families);
        if (dashes.isEmpty() || families.isEmpty()) {
            throw new IllegalArgumentException("a comparison needs at least one dash size and one hose family");
        }
    }
}
