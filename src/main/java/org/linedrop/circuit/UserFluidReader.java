package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.fluid.Fluid;
import org.linedrop.fluid.Given;
import org.linedrop.fluid.PropertyKind;
import org.linedrop.fluid.UserFluid;
import org.linedrop.units.Dimension;

/** Makes one fluid of the user's own from its columns. */
final class UserFluidReader {
    private final String name;
    private final Fields fields;
    private final List<Double> at;
    private final List<Given> givens = new ArrayList<>();
    private final List<String> own = new ArrayList<>();
    private final FluidDoubts doubts;
    private boolean whole = true;

    UserFluidReader(String name, Fields fields) {
        this.name = name;
        this.fields = fields;
        this.doubts = new FluidDoubts(fields);
        this.at =
                fields.get(FluidKeys.AT, List.of()).stream().map(Figure::value).toList();
    }

    @Nullable Fluid fluid() {
        if (FluidKeys.FLUID.keys().stream().anyMatch(key -> fields.has(key) && fields.get(key) == null)) {
            return null;
        }
        bands();
        temperatures();
        viscosity(fields.get(FluidKeys.VISCOSITY));
        density(fields.get(FluidKeys.DENSITY, List.of()));
        column(
                FluidKeys.VAPOUR_PRESSURE,
                fields.get(FluidKeys.VAPOUR_PRESSURE, List.of()),
                PropertyKind.VAPOUR_PRESSURE);
        Fluid like = fields.get(FluidKeys.LIKE);
        if (whole && like == null) {
            needed(FluidKeys.VISCOSITY, "Give viscosity: 125 17.5 cSt and at: 40 100 C, or like: and a fluid near it");
            needed(FluidKeys.DENSITY, "Give density: 868 kg/m3 and density at: 15 C, or like: and a fluid near it");
        }
        if (whole
                && like != null
                && givens.isEmpty()
                && FluidKeys.FLUID.keyNames().containsAll(names())) {
            wrong(FluidKeys.LIKE, name + " has no figure of its own", "Give one, or write its name after fluid:");
        }
        if (!whole) {
            return null;
        }
        try {
            String family = like == null ? "" : like.family();
            Fluid fluid = new UserFluid(name, fields.get(FluidKeys.JUDGED_AS, family), like, givens);
            return fluid;
        } catch (IllegalArgumentException wrong) {
            wrong(
                    fields.has(FluidKeys.VISCOSITY) ? FluidKeys.VISCOSITY : FluidKeys.DENSITY,
                    String.valueOf(wrong.getMessage()),
                    "");
            return null;
        }
    }

    private List<String> names() {
        return fields.tree().entries().stream().map(Tree.Entry::key).toList();
    }

    /** What of it is the user's own. */
    Notice notice() {
        Fluid like = fields.get(FluidKeys.LIKE);
        String rest = like == null ? "nothing else is known of it" : "the rest as " + like.name();
        return Notice.of(
                "user-fluid",
                name,
                String.join(", ", own) + " of your own; " + rest,
                Source.of("circuit file", Status.GIVEN));
    }

    private void wrong(Key<?> key, String message, String hint) {
        fields.problem(key, message, hint);
        whole = false;
    }

    private String keep(Key<?> key) {
        return "Keep it? Write \"" + fields.text(key) + FluidDoubts.REALLY + "\"";
    }

    private void needed(Key<?> key, String hint) {
        if (!fields.has(key)) {
            wrong(key, key.name() + " is missing", hint);
        }
    }

    /** A fluid of the user's own has no band, so that one that is given would be lost. */
    private void bands() {
        KeyForms.Column viscosity = fields.get(FluidKeys.VISCOSITY);
        band(FluidKeys.VISCOSITY, viscosity == null ? List.of() : viscosity.figures());
        band(FluidKeys.DENSITY, fields.get(FluidKeys.DENSITY, List.of()));
        band(FluidKeys.VAPOUR_PRESSURE, fields.get(FluidKeys.VAPOUR_PRESSURE, List.of()));
    }

    private void band(Key<?> key, List<Figure> figures) {
        if (figures.stream().anyMatch(Figure::hasBand)) {
            wrong(
                    key,
                    key.name() + " \"" + fields.text(key) + "\": a fluid's figures take no band",
                    "Write the figure alone");
        }
    }

    private void temperatures() {
        for (int i = 1; i < at.size(); i++) {
            if (!(at.get(i) > at.get(i - 1))) {
                wrong(FluidKeys.AT, "temperatures of a fluid rise from one column to the next", "Sort the columns");
                return;
            }
        }
        if (at.size() == 1) {
            wrong(
                    FluidKeys.AT,
                    "one temperature says nothing of the others",
                    "Give two, for example at: 40 100 C; without at: a figure holds at every temperature");
        }
    }

    /** Whether a column has one figure for each temperature, or stands alone. */
    private boolean fits(Key<?> key, int count, boolean aloneToo) {
        if (count == at.size() || (count == 1 && (aloneToo || at.isEmpty()))) {
            return true;
        }
        wrong(
                key,
                key.name() + ": " + count + (count == 1 ? " figure stands" : " figures stand") + " against "
                        + (at.isEmpty() ? "no temperature" : at.size() + " temperatures"),
                at.isEmpty() ? "Give at: with a temperature for each" : "Give one figure for each temperature");
        return false;
    }

    private void viscosity(KeyForms.@Nullable Column said) {
        if (said == null || !whole || !fits(FluidKeys.VISCOSITY, said.figures().size(), false)) {
            return;
        }
        boolean kinematic = said.dimension() == Dimension.KINEMATIC_VISCOSITY;
        PropertyKind kind = kinematic ? PropertyKind.KINEMATIC_VISCOSITY : PropertyKind.DYNAMIC_VISCOSITY;
        List<Double> values = said.figures().stream().map(Figure::value).toList();
        for (int i = 1; i < values.size(); i++) {
            if (!(values.get(i) < values.get(i - 1))) {
                wrong(
                        FluidKeys.VISCOSITY,
                        "viscosity \"" + fields.text(FluidKeys.VISCOSITY) + "\" does not fall",
                        "A liquid gets thinner when hot: give the figure of the coldest column first");
                return;
            }
        }
        String doubt = doubts.viscosity(said, at);
        if (!doubt.isEmpty()) {
            wrong(FluidKeys.VISCOSITY, doubt, keep(FluidKeys.VISCOSITY));
        }
        own.add(words(FluidKeys.VISCOSITY, said.figures().get(0)));
        if (at.isEmpty()) {
            givens.add(new Given.Constant(kind, values.get(0)));
        } else if (kinematic && at.size() == 2) {
            givens.add(new Given.TwoPoints(at.get(0), values.get(0), at.get(1), values.get(1)));
        } else {
            givens.add(new Given.Table(kind, at, values));
        }
    }

    private void density(List<Figure> said) {
        if (said.isEmpty() || !whole) {
            if (fields.has(FluidKeys.DENSITY_AT) && whole) {
                wrong(FluidKeys.DENSITY_AT, "density at what density?", "Give density: 868 kg/m3 as well");
            }
            return;
        }
        Figure where = fields.get(FluidKeys.DENSITY_AT);
        if (where == null) {
            column(FluidKeys.DENSITY, said, PropertyKind.DENSITY);
        } else if (said.size() > 1) {
            wrong(FluidKeys.DENSITY_AT, "density at is for one density", "Leave it out: at: holds for the column");
        } else if (!(said.get(0).value() >= 500 && said.get(0).value() <= 1500)) {
            wrong(
                    FluidKeys.DENSITY,
                    "density \"" + fields.text(FluidKeys.DENSITY) + "\" is none of a petroleum liquid",
                    "500 to 1500 kg/m3 is believed; leave out density at for another liquid");
        } else {
            givens.add(new Given.DensityAt(where.value(), said.get(0).value()));
            own.add(words(FluidKeys.DENSITY, said.get(0)));
        }
        String doubt = whole ? doubts.density(said, where, at) : "";
        if (!doubt.isEmpty()) {
            wrong(FluidKeys.DENSITY, doubt, keep(FluidKeys.DENSITY));
        }
    }

    private void column(Key<?> key, List<Figure> said, PropertyKind kind) {
        if (said.isEmpty() || !whole || !fits(key, said.size(), true)) {
            return;
        }
        List<Double> values = said.stream().map(Figure::value).toList();
        own.add(words(key, said.get(0)));
        givens.add(values.size() == 1 ? new Given.Constant(kind, values.get(0)) : new Given.Table(kind, at, values));
    }

    private String words(Key<?> key, Figure figure) {
        return figure.status() == Status.GIVEN
                ? key.name()
                : key.name() + " (" + figure.status().word() + ")";
    }
}
