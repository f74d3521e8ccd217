package org.linedrop.study.kit;

import java.io.Serializable;
import java.util.List;

/**
 * Another way to plumb a circuit.
 *
 * @param circuit    title of the circuit
 * @param name       the case of the file, or what stands for what
 * @param changes    what the shopping list gains and loses
 * @param leaksSaved places that can leak which it saves; negative when it brings more
 */
public record Alternative(String circuit, String name, List<Change> changes, int leaksSaved) implements Serializable {

    /** Copies the list. */
    public Alternative {
        changes = List.copyOf(changes);
    }

    /**
     * Sealing faces that it saves.
     *
     * @return two for each place that can leak
     */
    public int facesSaved() {
        return 2 * leaksSaved;
    }

    /**
     * A change of the shopping list.
     *
     * @param item     name of the thing
     * @param byLength true when it is sold by length
     * @param more     how much more of it is bought: m or pieces; negative for less
     */
    public record Change(String item, boolean byLength, double more) implements Serializable {}
}
