package org.linedrop.network;

import java.util.List;

/**
 * Laws passed by one and the same mass flow, one after the other, with a lift that does not depend on the flow. Parts of
 * one bore work their friction factor out once where the caller gives room for it; the sum is the same to the bit.
 */
final class Series implements Law {
    /** The result itself. */
    private static final int RESULT = 2;

    private final Law[] terms;
    private final double liftPa;
    /** Where the friction factor of a term is kept, 0 for terms that share none. */
    private final int[] slot;
    /** Whether a term is the first of those that share a factor. */
    private final boolean[] first;

    Series(List<Law> terms, double liftPa) {
        this.terms = terms.toArray(new Law[0]);
        this.liftPa = liftPa;
        slot = new int[this.terms.length];
        first = new boolean[this.terms.length];
        int next = RESULT;
        for (int i = 0; i < slot.length; i++) {
            int other = sharer(i);
            if (other < i) {
                if (slot[other] == 0 && next + 2 <= Law.SLOTS) {
                    slot[other] = next;
                    first[other] = true;
                    next += 2;
                }
                slot[i] = slot[other];
            }
        }
    }

    /** The first term with the friction factor of term i, which may be i itself. */
    private int sharer(int i) {
        if (terms[i] instanceof BoreTerm own) {
            for (int k = 0; k < i; k++) {
                if (terms[k] instanceof BoreTerm other && own.sharesFactorWith(other)) {
                    return k;
                }
            }
        }
        return i;
    }

    int size() {
        return terms.length;
    }

    Law term(int index) {
        return terms[index];
    }

    @Override
    public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
        boolean room = dropPaAndSlope.length >= Law.SLOTS;
        double drop = liftPa;
        double slope = 0;
        for (int i = 0; i < terms.length; i++) {
            if (room && slot[i] > 0) {
                ((BoreTerm) terms[i]).evaluate(massFlowKgPerS, dropPaAndSlope, slot[i], first[i]);
            } else {
                terms[i].evaluate(massFlowKgPerS, dropPaAndSlope);
            }
            drop += dropPaAndSlope[0];
            slope += dropPaAndSlope[1];
        }
        dropPaAndSlope[0] = drop;
        dropPaAndSlope[1] = slope;
    }
}
