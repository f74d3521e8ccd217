package org.linedrop.study.kit;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * One line of the shopping list.
 *
 * @param group    what kind of thing
 * @param item     its name, which no other line has
 * @param byLength true when it is sold by length
 * @param count    how many pieces
 * @param lengthM  overall length of the pieces together, m; NaN for what is sold by the piece
 * @param massEach kg of a piece or kg/m, null when not known
 * @param price    of a piece or a metre, NaN when not known
 */
public record KitItem(
        Group group,
        String item,
        boolean byLength,
        int count,
        double lengthM,
        @Nullable Figure massEach,
        double price) implements Serializable {

    /** What kind of thing it is, in the order of the list. */
    public enum Group {
        /** Hose, by family and size. */
        HOSE("hose"),
        /** Ends of hoses, by kind, angle and size. */
        HOSE_END("hose end"),
        /** Hard line. */
        TUBE("tube"),
        /** Nuts and sleeves of flared tube. */
        TUBE_END("tube end"),
        /** Adapters, reducers, unions and bulkheads. */
        ADAPTER("adapter"),
        /** Tees and Y blocks. */
        JUNCTION("junction"),
        /** Valves and restrictors. */
        VALVE("valve"),
        /** O-rings, washers, sealant. */
        SEAL("seal"),
        /** Clamps. */
        CLAMP("clamp");

        private final String word;

        Group(String word) {
            this.word = word;
        }

        /**
         * The word printed.
         *
         * @return for example {@code hose end}
         */
        public String word() {
            return word;
        }
    }

    /**
     * How much of it is bought.
     *
     * @return metres of what is sold by length, else pieces
     */
    public double quantity() {
        return byLength ? lengthM : count;
    }

    /**
     * Its mass.
     *
     * @return kg, NaN when not known
     */
    public double massKg() {
        return massEach == null ? Double.NaN : massEach.value() * quantity();
    }

    /**
     * What it costs.
     *
     * @return in the user's currency, NaN when not known
     */
    public double cost() {
        return price * quantity();
    }
}
