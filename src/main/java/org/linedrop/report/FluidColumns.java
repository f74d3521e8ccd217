package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Status;
import org.linedrop.fluid.FluidState;
import org.linedrop.fluid.PropertyInfo;
import org.linedrop.fluid.PropertyKind;
import org.linedrop.units.Dimension;

/** The columns of fluids: many at one temperature, one over temperature, and where its properties come from. */
final class FluidColumns {
    private static final Scale TEMPERATURE = Cells.TEMPERATURE;
    private static final Scale DENSITY = Cells.scale(Dimension.DENSITY, "kg/m3", 1, "lb/ft3", 2);
    private static final Scale DYNAMIC = Cells.scale(Dimension.DYNAMIC_VISCOSITY, "mPa s", 3, "cP", 3);
    private static final Scale KINEMATIC = Cells.scale(Dimension.KINEMATIC_VISCOSITY, "mm2/s", 3, "cSt", 3);
    private static final Scale VAPOUR = Cells.scale(Dimension.ABSOLUTE_PRESSURE, "kPa abs", 2, "psia", 2);
    private static final Scale MODULUS = Cells.scale(Dimension.MODULUS, "MPa", 0, "psi", 0);
    private static final Scale HEAT = Cells.scale(Dimension.SPECIFIC_HEAT, "J/kg/K", 0, "J/kg/K", 0);

    private static final List<PropertyKind> FLOW =
            List.of(PropertyKind.DENSITY, PropertyKind.DYNAMIC_VISCOSITY, PropertyKind.VAPOUR_PRESSURE);

    private static final Column<FluidLine> NAME =
            Cells.words("fluid", "fluid", "fluid", line -> line.fluid().name());
    private static final Column<FluidLine> AT = Column.<FluidLine>number(
                    "temperatureK", "temperature", TEMPERATURE, FluidLine::temperatureK)
            .as("at", TEMPERATURE);
    private static final Column<FluidLine> DENSITIES =
            state("densityKgPerM3", "density", "density", DENSITY, FluidLine::usual, FluidState::densityKgPerM3);
    private static final Column<FluidLine> DYNAMICS = state(
            "dynamicViscosityPaS",
            "dynamic viscosity",
            "dynamic viscosity",
            DYNAMIC,
            FluidLine::usual,
            FluidState::dynamicViscosityPaS);
    private static final Column<FluidLine> KINEMATICS = state(
            "kinematicViscosityM2PerS",
            "kinematic viscosity",
            "viscosity",
            KINEMATIC,
            FluidLine::usual,
            FluidState::kinematicViscosityM2PerS);
    private static final Column<FluidLine> VAPOURS = state(
            "vapourPressurePa",
            "vapour pressure",
            "vapour pressure",
            VAPOUR,
            FluidLine::usual,
            FluidState::vapourPressurePa);

    /** Many fluids at one temperature. */
    static final List<Column<FluidLine>> FLUIDS = Cells.all(
            List.of(NAME, Column.number("temperatureK", "temperature", TEMPERATURE, FluidLine::temperatureK)),
            List.of(DENSITIES, grade(PropertyKind.DENSITY)),
            List.of(hidden(DYNAMICS), KINEMATICS, grade(PropertyKind.DYNAMIC_VISCOSITY)),
            List.of(VAPOURS, grade(PropertyKind.VAPOUR_PRESSURE)),
            List.of(
                    Column.<FluidLine>number(
                                    "lowestK",
                                    "lowest",
                                    TEMPERATURE,
                                    line -> line.fluid().lowestK())
                            .as("from", TEMPERATURE),
                    Column.<FluidLine>number(
                                    "highestK",
                                    "highest",
                                    TEMPERATURE,
                                    line -> line.fluid().highestK())
                            .as("to", TEMPERATURE),
                    Column.seen("known as", false, FluidColumns::weakest)),
            sources());

    /** One fluid over temperature. */
    static final List<Column<FluidLine>> STATES = Cells.all(
            List.of(hidden(NAME), AT, DENSITIES, DYNAMICS, KINEMATICS),
            List.of(
                    state(
                            "thinViscosityM2PerS",
                            "thin viscosity",
                            "thin",
                            KINEMATIC,
                            FluidLine::thin,
                            FluidState::kinematicViscosityM2PerS),
                    state(
                            "thickViscosityM2PerS",
                            "thick viscosity",
                            "thick",
                            KINEMATIC,
                            FluidLine::thick,
                            FluidState::kinematicViscosityM2PerS),
                    VAPOURS,
                    state(
                            "bulkModulusPa",
                            "bulk modulus",
                            "bulk modulus",
                            MODULUS,
                            FluidLine::usual,
                            FluidState::bulkModulusPa),
                    state(
                            "specificHeatJPerKgK",
                            "specific heat",
                            "specific heat",
                            HEAT,
                            FluidLine::usual,
                            FluidState::specificHeatJPerKgK)),
            sources());

    /** Where the properties of a fluid come from. */
    static final List<Column<PropertyInfo>> PROPERTIES = List.of(
            Cells.words("property", "property", "property", info -> info.kind().word()),
            Column.<PropertyInfo>number("lowK", "from", TEMPERATURE, PropertyInfo::lowK)
                    .as("from", TEMPERATURE),
            Column.<PropertyInfo>number("highK", "to", TEMPERATURE, PropertyInfo::highK)
                    .as("to", TEMPERATURE),
            Cells.words(
                    "grade",
                    "grade",
                    "grade",
                    info -> info.known() ? info.grade().name() : null),
            Cells.words("expectedError", "expected error", "expected error", info -> Cells.known(info.expectedError())),
            Cells.words(
                    "status",
                    "status",
                    "known as",
                    info -> info.source().status().word()),
            Cells.words("source", "source", "source", info -> Cells.said(info.source())));

    private FluidColumns() {}

    private static Column<FluidLine> state(
            String key,
            String name,
            String heading,
            Scale scale,
            Function<FluidLine, @Nullable FluidState> which,
            ToDoubleFunction<FluidState> value) {
        ToDoubleFunction<FluidLine> number = line -> {
            FluidState state = which.apply(line);
            return state == null ? Double.NaN : value.applyAsDouble(state);
        };
        Column<FluidLine> column = Column.number(key, name, scale, number);
        return column.as(
                heading, scale, (line, look) -> Cells.digits(number.applyAsDouble(line), scale, look.display()));
    }

    /** For programs only. */
    private static Column<FluidLine> hidden(Column<FluidLine> column) {
        return new Column<>(
                column.key(), column.name(), column.scale(), column.fixedScale(), column.number(), column.text(), null);
    }

    private static Column<FluidLine> grade(PropertyKind kind) {
        String name = kind.word() + " grade";
        return Cells.words(camel(name), name, "", line -> letter(line, kind));
    }

    private static @Nullable String letter(FluidLine line, PropertyKind kind) {
        PropertyInfo info = line.info(kind);
        return info.known() ? info.grade().name() : null;
    }

    /** The weakest status of what a flow depends on. */
    private static String weakest(FluidLine line) {
        Status status = Status.MEASURED;
        for (PropertyKind kind : FLOW) {
            PropertyInfo info = line.info(kind);
            status = info.known() ? Status.weaker(status, info.source().status()) : status;
        }
        return status.word();
    }

    /** For programs: each property's source and status. */
    private static List<Column<FluidLine>> sources() {
        List<Column<FluidLine>> columns = new ArrayList<>();
        for (PropertyKind kind : PropertyKind.values()) {
            if (kind == kind.stored()) {
                String source = kind.word() + " source";
                String status = kind.word() + " status";
                columns.add(Column.text(camel(source), source, line -> from(line.info(kind))));
                columns.add(Column.text(
                        camel(status),
                        status,
                        line -> line.info(kind).known()
                                ? line.info(kind).source().status().word()
                                : null));
            }
        }
        return columns;
    }

    private static @Nullable String from(PropertyInfo info) {
        return info.known() ? Cells.said(info.source()) : null;
    }

    /** {@code vapour pressure grade} as {@code vapourPressureGrade}. */
    private static String camel(String words) {
        StringBuilder camel = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            camel.append(camel.isEmpty() ? word.charAt(0) : Character.toUpperCase(word.charAt(0)))
                    .append(word.substring(1));
        }
        return camel.toString();
    }
}
