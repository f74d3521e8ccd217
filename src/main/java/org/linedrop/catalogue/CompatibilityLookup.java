package org.linedrop.catalogue;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** Finds how a lining stands a fluid. */
final class CompatibilityLookup {
    private CompatibilityLookup() {}

    /** The row, or one of grade unknown: an unknown lining or fluid is no error. */
    static Compatibility find(Catalogue catalogue, String liner, String fluid) {
        String[] linings = liner.strip().split("\\s+or\\s+|\\s*/\\s*", -1);
        List<Compatibility> found = new ArrayList<>();
        for (String lining : linings) {
            found.add(one(catalogue, lining.strip(), fluid.strip()));
        }
        return worst(liner.strip(), found);
    }

    private static Compatibility one(Catalogue catalogue, String liner, String fluid) {
        String known = catalogue.fluidName(fluid);
        for (Compatibility row : catalogue.rows().compatibility()) {
            if (row.liner().equalsIgnoreCase(liner) && row.fluid().equalsIgnoreCase(known)) {
                return row;
            }
        }
        return new Compatibility(
                liner,
                known,
                Compatibility.Grade.UNKNOWN,
                "ask the hose maker",
                "no row for this pair",
                Source.of("None known", Status.FROM_MEMORY));
    }

    /** Hose sold with one of several linings is graded by the worst; the better one is what to ask for. */
    private static Compatibility worst(String liner, List<Compatibility> found) {
        Compatibility worst = found.get(0);
        Compatibility best = found.get(0);
        for (Compatibility row : found) {
            worst = row.grade().compareTo(worst.grade()) > 0 ? row : worst;
            best = row.grade().compareTo(best.grade()) < 0 ? row : best;
        }
        if (best.grade() == worst.grade()) {
            return found.size() == 1
                    ? worst
                    : new Compatibility(
                            liner, worst.fluid(), worst.grade(), worst.askFor(), worst.note(), worst.source());
        }
        String note = "sold with one of several liners, graded as " + worst.liner()
                + (worst.note().isEmpty() ? "" : "; " + worst.note());
        String ask = "ask for " + best.liner() + " (" + best.grade().word() + ")";
        return new Compatibility(liner, worst.fluid(), worst.grade(), ask, note, worst.source());
    }

    static String fluidName(Catalogue catalogue, String name) {
        for (FluidName row : catalogue.rows().fluidNames()) {
            if (row.name().equalsIgnoreCase(name.strip())) {
                return row.fluid();
            }
        }
        return name.strip();
    }
}
