package org.linedrop.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.linedrop.fact.Explanation;
import org.linedrop.fact.Explanation.Group;
import org.linedrop.fact.Explanation.Step;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Units;

/** One row taken apart as text: what is given, a line for each step, the sum, and how far it is known. */
final class WorkedExample {
    private static final int LABEL = 11;
    private static final int NAME = 15;
    private static final int WIDEST_EQUATION = 46;
    private static final int VALUE = 30;

    /** Lengths from here on are lengths of line, not of a fitting. */
    private static final double LONG_M = 0.1;

    /** Drops under it are shown with one decimal more. */
    private static final double LARGE_PA = 1e4;

    private final Explanation row;
    private final Display display;
    private final int places;
    private final List<String> lines = new ArrayList<>();

    WorkedExample(Explanation row, Display display) {
        this.row = row;
        this.display = display;
        double most = Math.abs(row.dropPa());
        for (Group group : row.groups()) {
            for (Step step : group.steps()) {
                most = Math.max(most, Math.abs(step.dropPa()));
            }
        }
        int usual = Scale.DROP.decimalsFor(most, display);
        this.places = most < LARGE_PA ? usual + 1 : usual;
    }

    List<String> lines() {
        heading();
        given();
        int width = equationWidth();
        for (Group group : row.groups()) {
            group(group, width);
        }
        sum(width);
        alternative();
        bands();
        for (String remark : row.remarks()) {
            say("Not counted: " + remark + ".");
        }
        sources();
        return lines;
    }

    private void heading() {
        String verb = row.dropPa() < 0 && row.kind().endsWith("pump") ? "adds " : "loses ";
        double shown = verb.equals("adds ") ? -row.dropPa() : row.dropPa();
        String range = row.bands().stream()
                .filter(band -> Double.isFinite(band.lowM()))
                .findFirst()
                .map(band -> " (" + drop(band.lowPa()) + " to " + drop(band.highPa()) + ")")
                .orElse("");
        String size = row.size().isEmpty() ? "" : ", " + row.size();
        lines.addAll(Plain.joined(
                List.of(
                        Plain.left(Plain.clean(row.element()), LABEL - 3),
                        row.name() + size,
                        "case " + row.caseName(),
                        verb + dropText(shown) + range),
                "   ",
                LABEL));
        Explanation.Flow flow = row.flow();
        label(
                "fluid",
                flow.fluid() + " at " + display.text(flow.temperatureK(), Dimension.TEMPERATURE) + lines(flow) + ": "
                        + display.text(flow.densityKgPerM3(), Dimension.DENSITY) + ", "
                        + display.text(
                                flow.dynamicViscosityPaS() / flow.densityKgPerM3(), Dimension.KINEMATIC_VISCOSITY));
        String sense = flow.sense().isEmpty() ? "" : ", " + flow.sense();
        label(
                "flow",
                Scale.FLOW.text(Math.abs(flow.flowM3PerS()), display) + " ("
                        + Scale.MASS_FLOW.text(Math.abs(flow.massFlowKgPerS()), display) + ")"
                        + (flow.massFlowKgPerS() < 0 ? " against the run" : "") + sense);
    }

    private void given() {
        String label = "given";
        for (Explanation.Given given : row.given()) {
            Figure figure = given.figure();
            if (figure.value() == 0 && given.name().equals("bore")) {
                continue; // no bore is known there
            }
            String mark = figure.status().doubtful() ? " ?" : "";
            String band = figure.hasBand()
                    ? " (" + bare(figure.low(), given.unit()) + " to " + bare(figure.high(), given.unit()) + ")"
                    : "";
            String value = withUnit(figure.value(), given.unit()) + mark + band;
            lines.addAll(Plain.wrap(
                    Plain.left(label, LABEL)
                            + Plain.left(given.name(), NAME)
                            + Plain.left(value, VALUE)
                            + source(figure.source()),
                    Plain.WIDTH,
                    LABEL + NAME + VALUE));
            label = "";
        }
    }

    private static String source(Source source) {
        String locator = source.locator().isEmpty() ? "" : ", " + source.locator();
        String status = source.title().contains(source.status().word())
                ? ""
                : source.status().word() + ": ";
        return status + source.title() + locator;
    }

    private void label(String label, String text) {
        lines.addAll(Plain.wrap(Plain.left(label, LABEL) + text, Plain.WIDTH, LABEL));
    }

    private void say(String text) {
        lines.addAll(Plain.wrap(text, Plain.WIDTH, 2));
    }

    private int equationWidth() {
        int width = 20;
        for (Group group : row.groups()) {
            for (Step step : group.steps()) {
                width = Math.max(width, Plain.width(worked(step)));
            }
        }
        return Math.min(width, WIDEST_EQUATION);
    }

    private void group(Group group, int width) {
        String remark = group.remark().isEmpty() ? "" : "; " + group.remark();
        if (Double.isFinite(group.boreM())) {
            label(
                    group.name(),
                    length(group.boreM()) + " " + Scale.BORE.unit(display).symbol() + ": v "
                            + Scale.SPEED.text(Math.abs(group.velocityMPerS()), display) + ", Re "
                            + reynolds(group.reynolds()) + ", " + group.regime() + ", rho v2/2 = "
                            + dropText(group.velocityHeadPa()) + remark);
        } else {
            label(group.name(), remark.isEmpty() ? "" : group.remark());
        }
        for (Step step : group.steps()) {
            step(step, width);
        }
    }

    private void step(Step step, int width) {
        List<String> equation = Plain.wrap(worked(step), width, 2);
        String k = Double.isFinite(step.coefficient()) ? "K " + fixed(step.coefficient(), 3) : "";
        String head = "  " + Plain.left(step.name(), LABEL + 2) + Plain.left(equation.get(0), width) + "  "
                + Plain.left(k, 9) + Plain.right(drop(step.dropPa()), places + 6) + " "
                + Scale.DROP.unit(display).symbol() + "   ";
        String title = step.formula().title();
        int column = Plain.width(head);
        List<String> cited = Plain.wrap(title, Math.max(20, Plain.WIDTH - column), 0);
        lines.add(head + cited.get(0));
        cited.subList(1, cited.size()).forEach(more -> lines.add(" ".repeat(column) + more));
        for (String more : equation.subList(1, equation.size())) {
            lines.add(" ".repeat(LABEL + 4) + more);
        }
    }

    private void sum(int width) {
        Explanation.Equivalent same = row.equivalent();
        String equal = same == null
                ? ""
                : "   = " + lengths(same.lengthM()) + " of " + same.kind() + " " + same.element() + " = "
                        + fixed(same.lengthM() / same.boreM(), 0) + " bores";
        String head = Plain.left("sum", LABEL + 4 + width + 11) + Plain.right(drop(row.dropPa()), places + 6) + " "
                + Scale.DROP.unit(display).symbol();
        if (Plain.width(head + equal) <= Plain.WIDTH) {
            lines.add(head + equal);
        } else {
            lines.add(head);
            lines.add("  " + equal.strip());
        }
    }

    private void alternative() {
        Explanation.Alternative other = row.alternative();
        if (other == null) {
            return;
        }
        double k = other.group().steps().stream().mapToDouble(Step::coefficient).sum();
        String length =
                Double.isFinite(other.equivalentM()) ? " = " + lengths(other.equivalentM()) + " of that line" : "";
        say("If it were " + other.name() + " of the same bores: K " + fixed(k, 2) + " on the elbow, "
                + dropText(other.dropPa()) + length + " for the whole row.");
    }

    private void bands() {
        for (Explanation.Spread band : row.bands()) {
            if (Double.isFinite(band.lowM())) {
                say("Band: " + band.cause() + " " + length(band.lowM()) + " to " + length(band.highM()) + " "
                        + Scale.BORE.unit(display).symbol() + " makes it " + drop(band.highPa()) + " to "
                        + dropText(band.lowPa()) + " at this flow." + moral(band));
            } else {
                say("Published figures disagree (" + band.cause() + "): the row could lose " + drop(band.lowPa())
                        + " to " + dropText(band.highPa()) + ". "
                        + band.source().title() + ".");
            }
        }
    }

    /** Said where it is so. */
    private String moral(Explanation.Spread band) {
        Explanation.Alternative other = row.alternative();
        boolean so = other != null
                && band.cause().equals("nipple bore")
                && band.highPa() - band.lowPa() > Math.abs(other.dropPa() - row.dropPa());
        return so ? " The bore you cannot see matters more than the bend you can." : "";
    }

    private void sources() {
        Map<String, Formula> laws = new LinkedHashMap<>();
        for (Group group : row.groups()) {
            group.steps().forEach(step -> laws.putIfAbsent(step.formula().title(), step.formula()));
        }
        lines.add("Laws");
        for (Formula law : laws.values()) {
            say("- " + law.title() + ": " + law.equation() + ". " + source(law.source()) + ". Range: " + law.validity()
                    + ".");
        }
    }

    /** The equation with its figures put in. */
    private String worked(Step step) {
        String text = step.equation();
        for (Explanation.Quantity input : step.inputs()) {
            String shown = switch (input.unit()) {
                case "m" -> length(input.value());
                case "" -> pure(input);
                default -> withUnit(input.value(), input.unit());
            };
            text = text.replace("{" + input.symbol() + "}", shown);
        }
        return text;
    }

    private static String pure(Explanation.Quantity input) {
        return input.symbol().equals("f") ? fixed(input.value(), 4) : plain(input.value(), 4);
    }

    private String bare(double si, String unit) {
        return switch (unit) {
            case "m" -> length(si);
            case "Pa" -> Scale.DROP.number(si, display);
            case "m3/s" -> Scale.FLOW.number(si, display);
            case "m2/s" -> display.number(si, Dimension.KINEMATIC_VISCOSITY);
            default -> plain(si, 4);
        };
    }

    private String withUnit(double si, String unit) {
        return switch (unit) {
            case "m" ->
                si >= LONG_M
                        ? display.text(si, Dimension.LENGTH)
                        : length(si) + " " + Scale.BORE.unit(display).symbol();
            case "Pa" -> Scale.DROP.text(si, display);
            case "m3/s" -> Scale.FLOW.text(si, display);
            case "m2/s" -> display.text(si, Dimension.KINEMATIC_VISCOSITY);
            default -> plain(si, 4);
        };
    }

    /** A length in the small unit of the report, to what a bore gauge shows. */
    private String length(double si) {
        double shown = Math.abs(Units.to(si, Scale.BORE.unit(display)));
        int decimals = Scale.BORE.decimals(display);
        if (shown > 0 && shown < 0.1) {
            return plain(Units.to(si, Scale.BORE.unit(display)), 2); // roughness
        }
        for (double limit = 10; limit <= 1000 && shown >= limit; limit *= 10) {
            decimals--;
        }
        return Scale.BORE.number(si, display, Math.max(0, decimals));
    }

    private String lengths(double lengthM) {
        return fixed(lengthM, 2) + " m (" + fixed(lengthM / 0.3048, 1) + " ft)";
    }

    private String drop(double pressurePa) {
        return Scale.DROP.number(pressurePa, display, places);
    }

    private String dropText(double pressurePa) {
        return drop(pressurePa) + " " + Scale.DROP.unit(display).symbol();
    }

    private static String reynolds(double reynolds) {
        return Double.isFinite(reynolds) ? Columns.reynolds(reynolds) : "-";
    }

    private static String fixed(double value, int decimals) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, "%." + decimals + "f", value) : "-";
    }

    private static String plain(double value, int digits) {
        return Double.isFinite(value)
                ? new java.math.BigDecimal(value, new java.math.MathContext(digits))
                        .stripTrailingZeros()
                        .toPlainString()
                : "-";
    }

    /** Where the file says fluid and temperature. */
    private static String lines(Explanation.Flow flow) {
        return flow.fileLines().isEmpty()
                ? ""
                : " (file line "
                        + String.join(
                                ", ",
                                flow.fileLines().stream().map(String::valueOf).toList())
                        + ")";
    }
}
