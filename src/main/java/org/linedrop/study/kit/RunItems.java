package org.linedrop.study.kit;

import java.util.List;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Run;
import org.linedrop.fact.Inner;
import org.linedrop.fact.ProblemsException;

/** What one run takes, under the names of a kit. */
@Inner
public final class RunItems {
    private RunItems() {}

    /**
     * Lists it: the parts of the run and what its joints need. A joint where two runs meet counts with the later run.
     *
     * @param circuit the circuit, in the case it is to be made up for
     * @param run     one of its runs
     * @param own     what the user knows of prices and masses
     * @return the lines of a shopping list for this run
     * @throws ProblemsException when something sold by length has a price or mass per piece, or the other way round
     */
    public static List<KitItem> of(Circuit circuit, Run run, OwnFigures own) {
        Tally tally = new Tally(own);
        tally.add(circuit, run);
        List<KitItem> items = tally.items();
        Kit.check(items, own);
        return items;
    }
}
