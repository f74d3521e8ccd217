package org.linedrop.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.CatalogueException;
import org.linedrop.catalogue.Compatibility;
import org.linedrop.catalogue.HoseFamily;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.catalogue.SizeText;
import org.linedrop.fact.Words;
import org.linedrop.fluid.Fluid;
import org.linedrop.fluid.Fluids;

/** Reads the names and sizes that the catalogue's commands are asked for. */
final class CatalogueNames {
    private CatalogueNames() {}

    /** A dash size as the trade writes it, with or without its dash; 0 when none was asked for. */
    static int dash(Catalogue catalogue, @Nullable String text) {
        if (text == null) {
            return 0;
        }
        String bare = text.strip();
        String size = SizeText.dash(bare.matches("\\d{1,2}") ? "-" + bare : bare);
        if (size == null) {
            throw new CatalogueException("--dash \"" + text + "\" is no dash size", "Write --dash 6");
        }
        return catalogue.dashSize(SizeText.dashNumber(size)).dash();
    }

    /** A lining of the catalogue; null when none was asked for. */
    static @Nullable String liner(Catalogue catalogue, @Nullable String text) {
        if (text == null) {
            return null;
        }
        TreeSet<String> known = new TreeSet<>();
        catalogue.families().forEach(family -> known.addAll(family.liners()));
        catalogue.compatibility().forEach(row -> known.add(row.liner()));
        return one("liner", text, List.copyOf(known));
    }

    /** A fluid as the compatibility table names it; null when none was asked for. */
    static @Nullable String gradedFluid(Catalogue catalogue, @Nullable String text) {
        if (text == null) {
            return null;
        }
        List<String> graded = catalogue.compatibility().stream()
                .map(Compatibility::fluid)
                .distinct()
                .toList();
        String named = catalogue.fluidName(text.strip());
        for (String fluid : graded) {
            if (fluid.equalsIgnoreCase(named)) {
                return fluid;
            }
        }
        Fluid fluid = Fluids.find(text); // says what was meant when it does not know
        if (!graded.contains(fluid.family())) {
            throw new CatalogueException(
                    "no liner is graded for " + fluid.name() + " here",
                    "Ask the hose maker. Graded fluids: " + String.join(", ", graded));
        }
        return fluid.family();
    }

    /** Hoses by size, family and lining. */
    static List<HoseSize> hoses(
            Catalogue catalogue, @Nullable String dash, @Nullable String family, @Nullable String liner) {
        int wanted = dash(catalogue, dash);
        List<String> families = families(catalogue, family, liner).stream()
                .map(HoseFamily::name)
                .toList();
        return catalogue.hoses().stream()
                .filter(row -> families.contains(row.family()))
                .filter(row -> wanted == 0 || row.dash() == wanted)
                .toList();
    }

    /** Families by name and lining. */
    static List<HoseFamily> families(Catalogue catalogue, @Nullable String name, @Nullable String liner) {
        List<HoseFamily> all = name == null ? catalogue.families() : List.of(catalogue.family(name));
        String lining = liner(catalogue, liner);
        List<HoseFamily> found = new ArrayList<>();
        for (HoseFamily family : all) {
            if (lining == null || family.liners().contains(lining)) {
                found.add(family);
            }
        }
        if (found.isEmpty()) {
            throw new CatalogueException(
                    name == null
                            ? "no hose here has a liner of " + lining
                            : all.get(0).name() + " has no liner of " + lining,
                    "Leave out --liner");
        }
        return found;
    }

    private static String one(String what, String text, List<String> known) {
        for (String name : known) {
            if (name.equalsIgnoreCase(text.strip())) {
                return name;
            }
        }
        String all = String.join(", ", known);
        throw new CatalogueException(
                "no " + what + " is called \"" + text + "\"",
                Words.nearest(text.strip(), known)
                        .map(near -> "Did you mean " + near + "? (known: " + all + ")")
                        .orElse("It must be one of: " + all));
    }
}
