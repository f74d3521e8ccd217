package org.linedrop.circuit;

import static org.linedrop.circuit.Key.optional;

import java.util.List;
import org.linedrop.fact.Figure;
import org.linedrop.fluid.Fluid;
import org.linedrop.fluid.Fluids;
import org.linedrop.units.Dimension;

/** Keys of the user's own fluids: columns over temperature, like a sheet. */
final class FluidKeys {
    static final Key<Fluid> LIKE = optional(
            "like",
            KeyForms.fluid(),
            "the fluid that gives what is not said here; density and viscosity are needed without");
    static final Key<String> JUDGED_AS = optional(
            "judged as",
            KeyForms.choice(Fluids.families(), word -> word),
            "the word of the compatibility table by which liners are judged; that of like when not given");
    static final Key<List<Figure>> AT = optional(
            "at",
            KeyForms.column("40 100 C", Dimension.TEMPERATURE, 173.15, 673.15),
            "temperatures of the columns, rising; without them a figure holds at every temperature");
    static final Key<KeyForms.Column> VISCOSITY = optional(
            "viscosity",
            KeyForms.columnOf("125 17.5 cSt from sheet", Dimension.KINEMATIC_VISCOSITY, Dimension.DYNAMIC_VISCOSITY),
            "one for each temperature, falling; two are joined by ASTM D341");
    static final Key<List<Figure>> DENSITY = optional(
            "density",
            KeyForms.column("868 kg/m3 from sheet", Dimension.DENSITY, 0.05, 20_000),
            "one for each temperature, or one alone");
    static final Key<Figure> DENSITY_AT = optional(
            "density at",
            KeyForms.number(Dimension.TEMPERATURE, "C", 173.15, 673.15, "Is that C or F?"),
            "temperature of the one density of a petroleum liquid, which then expands as such liquids do");
    static final Key<List<Figure>> VAPOUR_PRESSURE = optional(
            "vapour pressure",
            KeyForms.column("5.6 kPa abs measured", Dimension.ABSOLUTE_PRESSURE, 0, 1e7),
            "absolute, one for each temperature, or one alone");

    static final Kind FLUID = new Kind(
            "fluid",
            "a fluid of the user's own",
            List.of(LIKE, JUDGED_AS, AT, VISCOSITY, DENSITY, DENSITY_AT, VAPOUR_PRESSURE));

    private FluidKeys() {}
}
