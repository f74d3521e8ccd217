package org.linedrop.circuit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Notice;
import org.linedrop.fluid.Fluid;
import org.linedrop.fluid.Fluids;
import org.linedrop.fluid.UnknownFluidException;

/** Reads the user's own fluids: columns over temperature, what is missing from the fluid named in {@code like}. */
final class FluidReader {
    /** Name of the section. */
    static final String SECTION = "fluids";

    private static final String EXAMPLE =
            "Write fluids: and below it my oil: {like: engine oil 15W-50, at: 40 100 C, viscosity: 125 17.5 cSt from"
                    + " sheet}";

    private final Problems problems;
    private final Map<String, Fluid> fluids = new LinkedHashMap<>();
    private final Map<String, Notice> notices = new LinkedHashMap<>();

    FluidReader(Problems problems) {
        this.problems = problems;
    }

    /** The fluids by name; one that could not be read has a stand-in, so that its name is known. */
    Map<String, Fluid> read(@Nullable Tree said) {
        if (said != null && !(said instanceof Tree.Branch)) {
            problems.add(
                    problems.place(said.line(), said.column(), ""), SECTION, "", "fluids takes named fluids", EXAMPLE);
        }
        if (said instanceof Tree.Branch section) {
            section.entries().forEach(this::one);
        }
        return fluids;
    }

    /** Whether a fluid of that name could not be read, which was complained of. */
    boolean broken(String name) {
        return fluids.containsKey(name) && !notices.containsKey(name);
    }

    /** What is the user's own of a fluid; null where nothing is. */
    @Nullable Notice notice(Fluid fluid) {
        return notices.get(fluid.name());
    }

    private void one(Tree.Entry entry) {
        String name = entry.key();
        var place = problems.place(entry.line(), entry.column(), name);
        if (!CircuitReader.NAME_LETTERS.matcher(name).matches()) {
            problems.add(
                    place, "", name, "\"" + name + "\" cannot be a name", "Names are letters, digits, space, - and /");
        } else if (builtIn(name)) {
            problems.add(place, "", name, "\"" + name + "\" is a fluid of the library", "Give yours another name");
        } else if (!(entry.value() instanceof Tree.Branch branch)) {
            problems.add(place, "", "", "a fluid has keys such as like, at and viscosity", EXAMPLE);
        } else {
            Scope scope = new Scope(Catalogue.standard(), false, fluids, false);
            Fields fields = new Fields(branch, name, FluidKeys.FLUID, List.of(), scope, problems);
            UserFluidReader one = new UserFluidReader(name, fields);
            Fluid fluid = one.fluid();
            if (fluid != null) {
                notices.put(name, one.notice());
            }
            fluids.put(name, fluid == null ? fields.get(FluidKeys.LIKE, Fluids.find("water")) : fluid);
            return;
        }
        fluids.put(name, Fluids.find("water"));
    }

    private static boolean builtIn(String name) {
        try {
            Fluids.find(name);
            return true;
        } catch (UnknownFluidException own) {
            return false;
        }
    }
}
