package org.linedrop.study;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Limit;
import org.linedrop.circuit.OneWayValve;
import org.linedrop.circuit.Pump;
import org.linedrop.circuit.Service;
import org.linedrop.circuit.TradeUnits;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.fact.Notice;
import org.linedrop.result.CaseResult;
import org.linedrop.result.DeviceRow;
import org.linedrop.result.LimitRow;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.result.Verdict;
import org.linedrop.solver.Outcome;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Units;

/** Writes the answer to one case as sentences. */
final class Sentences {
    private static final String OUTSIDE = "outside pump table";

    private final CaseCheck check;
    private final Display display;
    private final StringBuilder text = new StringBuilder();

    private Sentences(CaseCheck check, Display display) {
        this.check = check;
        this.display = TradeUnits.of(check.result().circuit(), display);
    }

    static String of(CaseCheck check, Display display) {
        return new Sentences(check, display).write();
    }

    /** A case that falls short as another that was told: what differs. */
    static String too(CaseCheck check, CaseCheck before, Display display) {
        return new Sentences(check, display).tooAs(before);
    }

    /**
     * Several cases in which every limit holds.
     *
     * @param nearest the one whose nearest limit is nearest
     * @param cases   all of them
     * @param where   what they are called
     */
    static String together(CaseCheck nearest, List<CaseCheck> cases, String where, Display display) {
        return new Sentences(nearest, display).all(cases, where);
    }

    /** Brakes. */
    static String quantitiesOnly(List<CaseCheck> cases, int all) {
        String of = cases.size() == 1 && (all > 1 || named(cases.get(0)))
                ? cases.get(0).caseName() + ": "
                : "";
        return of + (of.isEmpty() ? "V" : "v") + "olume, flow and swell only; brakes are not for us to judge.";
    }

    private static boolean named(CaseCheck check) {
        return !check.caseName().equals(Circuit.UNNAMED_CASE);
    }

    private String tooAs(CaseCheck before) {
        LimitRow row = Objects.requireNonNull(check.decisive());
        text.append("UNDERSIZED ")
                .append(at())
                .append("too: ")
                .append(gets(row))
                .append(", ")
                .append(off(row))
                .append('.');
        CaseCheck.Mend mend = Objects.requireNonNull(check.mend());
        LimitRow then = mend.limit();
        text.append(" The same change brings it to ").append(amount(then.value(), then));
        text.append(", ").append(difference(then.margin(), then)).append(" to spare");
        least(mend.result(), then);
        text.append('.');
        if (mend.draw() != null) {
            text.append(" It then holds up to ")
                    .append(mend.draw().words(display))
                    .append('.');
        }
        pump();
        LargestDraw draw = check.draw();
        LargestDraw same = before.draw();
        if (draw != null
                && (same == null
                        || !draw.words(display).equals(same.words(display))
                        || !draw.ends().equals(same.ends()))) {
            draw();
        }
        return text.toString();
    }

    private String all(List<CaseCheck> cases, String where) {
        LimitRow row = Objects.requireNonNull(check.decisive());
        boolean oversized = cases.stream().allMatch(each -> each.verdict() == CaseVerdict.OVERSIZED);
        Set<String> unknown = new LinkedHashSet<>();
        cases.forEach(each -> unknown.addAll(notJudged(each)));
        text.append(oversized ? "OVERSIZED: " : "ADEQUATE: ")
                .append(where)
                .append(' ')
                .append(
                        unknown.isEmpty()
                                ? "every limit holds; nearest is "
                                : "every limit that can be judged holds; nearest is ")
                .append(nearest(row));
        least(check.result(), row);
        text.append(", in case ").append(check.caseName()).append('.');
        if (oversized) {
            text.append(" It would also hold one size smaller everywhere.");
        }
        unknown.forEach(each -> text.append(" Not judged: ").append(each).append('.'));
        cases.stream()
                .filter(each -> each.draw() != null)
                .min(Comparator.comparingDouble(
                        each -> Objects.requireNonNull(each.draw()).usualSi()))
                .ifPresent(tightest -> draw(
                        tightest,
                        ", tightest "
                                + (tightest.caseName().equals(check.caseName())
                                        ? "there"
                                        : "in case " + tightest.caseName())));
        outsideItsTable(check);
        return text.toString();
    }

    private static List<String> notJudged(CaseCheck check) {
        return check.result().limits().stream()
                .filter(limit -> limit.verdict() == Verdict.NOT_JUDGED)
                .map(limit -> limit.limit().id() + " (" + limit.reason() + ")")
                .toList();
    }

    private String write() {
        CaseVerdict verdict = check.verdict();
        LimitRow limit = check.decisive();
        if (check.result().outcome() != Outcome.CONVERGED) {
            return "NOT SOLVED: " + at()
                    + check.result().outcome().word() + ". "
                    + check.result().usual().detail();
        }
        if (check.result().circuit().service() == Service.BRAKE) {
            return quantitiesOnly(List.of(check), 1);
        }
        if (verdict == null || limit == null) {
            return "NO VERDICT: " + at() + "no limit is given that could be judged; the table says where"
                    + " pressure goes.";
        }
        text.append(verdict.word().toUpperCase(Locale.ROOT)).append(": ");
        switch (verdict) {
            case RETURN_LIMITED -> uncontrolled(limit, verdict);
            case OUT_OF_CONTROL -> {
                if (limit.ofState()) {
                    uncontrolled(limit, verdict);
                } else {
                    held(limit);
                }
            }
            case UNDERSIZED -> undersized(limit);
            case UNSURE -> unsure(limit);
            case PUMP_SHORT -> pumpShort(limit);
            case STARVED -> starved(limit);
            case SHORT_AT_THE_INLET -> inlet(limit);
            default -> holds(limit, verdict);
        }
        draw();
        outsideItsTable(check);
        return text.toString();
    }

    /** What a pump gives outside of its table is nobody's figure: not a thing to be left to the warnings. */
    private void outsideItsTable(CaseCheck of) {
        for (DeviceRow device : of.result().usual().devices()) {
            if (device.state().startsWith(OUTSIDE)) {
                text.append(" The ")
                        .append(device.id())
                        .append(" is outside its table there")
                        .append(device.state().substring(OUTSIDE.length()).replaceFirst("^: (.*)", " ($1)"))
                        .append(": give it more of its curve.");
            }
        }
    }

    /** {@code at full load }, or nothing where the file does not name its case. */
    private String at() {
        String name = check.caseName();
        return name.equals(Circuit.UNNAMED_CASE) ? "" : (name.startsWith("at ") ? "" : "at ") + name + " ";
    }

    /** The figure of a limit: what its subject gets. */
    private String gets(LimitRow row) {
        Limit limit = row.limit();
        if (row.ofState()) {
            return "the " + limit.subject() + " is " + row.state();
        }
        String figure = amount(row.value(), row);
        return switch (limit.quantity()) {
            case "pressure" -> "the " + limit.subject() + " gets " + figure;
            case "spare flow" -> "the " + limit.subject() + " has " + figure + " of flow to spare";
            default -> "the " + limit.subject() + "'s " + limit.quantity() + " is " + figure;
        };
    }

    private String amount(double si, LimitRow row) {
        return display.text(si, row.dimension());
    }

    private String difference(double si, LimitRow row) {
        return display.text(Math.abs(si), row.dimension().ofDifference());
    }

    private String off(LimitRow row) {
        if (row.ofState()) {
            return Double.isNaN(row.margin())
                    ? "not " + row.limit().bound().words()
                    : difference(row.margin(), row) + " from being "
                            + row.limit().bound().words();
        }
        boolean under = row.value() < row.bound();
        return difference(row.margin(), row)
                + (under ? " short of " : " over ")
                + display.number(row.bound(), row.dimension());
    }

    private void undersized(LimitRow row) {
        text.append(at()).append(gets(row)).append(", ").append(off(row));
        CaseCheck.Culprit culprit = check.culprit();
        if (culprit != null) {
            text.append("; ")
                    .append(culprit.words())
                    .append(" takes ")
                    .append(whole(culprit.lossPa()))
                    .append(" of the ")
                    .append(whole(culprit.allLossPa()))
                    .append(' ')
                    .append(display.unit(Dimension.PRESSURE_DIFFERENCE).symbol())
                    .append(" lost on the way");
        }
        text.append('.');
        mend();
        pump();
        height(row);
    }

    private static Optional<DeviceRow> regulator(Result result, LimitRow row) {
        return result.device(row.limit().subject());
    }

    /** {@code the regulator cannot come below 392 kPa, 157 over its 235 kPa setting; 362 of that is the return line ...} */
    private void uncontrolled(LimitRow row, CaseVerdict verdict) {
        Optional<DeviceRow> found = regulator(check.result().usual(), row);
        if (found.isEmpty()) {
            return;
        }
        DeviceRow device = found.get();
        double floor = device.figure("floorPa").orElse(Double.NaN);
        double held = device.figure("heldPressurePa").orElse(Double.NaN);
        double open = device.figure("openDropPa").orElse(Double.NaN);
        List<PartRow> way = Way.after(check.result().usual(), device.id());
        double line = way.stream()
                .mapToDouble(part -> part.frictionDropPa() + part.localDropPa())
                .sum();
        double height = way.stream().mapToDouble(PartRow::liftDropPa).sum();
        text.append(at())
                .append("the ")
                .append(device.id())
                .append(" cannot come below ")
                .append(display.text(floor, Dimension.GAUGE_PRESSURE))
                .append(", ")
                .append(whole(floor - held))
                .append(" over its ")
                .append(display.text(held, Dimension.GAUGE_PRESSURE))
                .append(" setting; ")
                .append(whole(line))
                .append(" of that is its return line, ")
                .append(whole(open))
                .append(" the open regulator");
        if (Math.abs(height) >= 100) {
            text.append(height < 0 ? ", less " : ", ")
                    .append(whole(Math.abs(height)))
                    .append(" of height");
        }
        text.append('.');
        if (verdict == CaseVerdict.OUT_OF_CONTROL) {
            text.append(
                    " A return line without any loss would not bring it back: less flow or a larger regulator would.");
        } else {
            mend();
        }
    }

    private String whole(double pressurePa) {
        double shown = Units.to(pressurePa, display.unit(Dimension.PRESSURE_DIFFERENCE));
        return String.format(Locale.ROOT, shown < 10 ? "%.1f" : "%.0f", shown);
    }

    private void mend() {
        CaseCheck.Mend mend = check.mend();
        if (mend == null) {
            text.append(" No change of size up to two sizes, of one line or of all on the way, holds.");
            return;
        }
        LimitRow row = mend.limit();
        text.append(" Smallest change that holds: ").append(mend.words()).append(": ");
        if (row.ofState()) {
            regulator(mend.result().usual(), row)
                    .ifPresent(device -> text.append("it comes to ")
                            .append(display.text(device.inletPressurePa(), Dimension.GAUGE_PRESSURE))
                            .append(" and in control"));
            text.append('.');
            return;
        }
        text.append(amount(row.value(), row))
                .append(", ")
                .append(difference(row.margin(), row))
                .append(" to spare");
        least(mend.result(), row);
        text.append('.');
        if (mend.draw() != null) {
            text.append(" It then holds up to ")
                    .append(mend.draw().words(display))
                    .append('.');
        }
    }

    /** How much may be drawn as it is built. */
    private void draw() {
        draw(check, "");
    }

    /** How much a case takes at most; the clause stands behind the figure. */
    private void draw(CaseCheck of, String clause) {
        LargestDraw draw = of.draw();
        if (draw == null) {
            return;
        }
        boolean less = draw.usualSi() < draw.knob().si();
        text.append(less ? " As built it holds up to " : " It holds up to ")
                .append(draw.words(display))
                .append(clause);
        String ends = draw.ends();
        Optional<Limit> limit = of.result().circuit().limits().stream()
                .filter(each -> each.id().equals(ends))
                .findFirst();
        text.append("; beyond it ")
                .append(
                        limit.filter(Sentences::ofState).isPresent()
                                ? "the " + limit.get().subject() + " is not "
                                        + limit.get().bound().words()
                                : ends + (limit.isPresent() ? " is past its limit" : ""))
                .append(ends.endsWith(".") ? "" : "."); // what cannot be solved ends with its own
    }

    private static boolean ofState(Limit limit) {
        return limit.bound().kind() == LimitText.Kind.STATE;
    }

    private void least(CaseResult result, LimitRow row) {
        if (row.marginLow() < row.margin()) {
            text.append(row.marginLow() < 0 ? " (but " : " (")
                    .append(difference(row.marginLow(), row))
                    .append(row.marginLow() < 0 ? " short " : " ")
                    .append(atEnd(result, row, row.marginLow()))
                    .append(')');
        }
    }

    /** What a margin at one end of the bands comes from: bores, or else the fluid's class. */
    private static String atEnd(CaseResult result, LimitRow row, double margin) {
        if (result.smallest().margin(row.limit()) == margin) {
            return "with the smallest bores sold";
        }
        if (result.largest().margin(row.limit()) == margin) {
            return "with the largest bores sold";
        }
        String fluid = result.circuit().surroundings().fluid().name();
        return "with the " + (margin < row.margin() ? "worst" : "best") + " of what is sold as " + fluid;
    }

    private void pump() {
        for (DeviceRow device : check.result().usual().devices()) {
            Optional<Double> spilled = device.figure("spilledFlowM3PerS");
            if (device.kind().endsWith("pump") && spilled.isPresent() && spilled.get() > 0) {
                text.append(" The ")
                        .append(device.id())
                        .append(" is not the trouble: it spills ")
                        .append(display.text(spilled.get(), Dimension.VOLUME_FLOW))
                        .append('.');
            }
        }
    }

    private void height(LimitRow row) {
        double lift = Way.to(check.result().usual(), row.limit().subject()).stream()
                .mapToDouble(PartRow::liftDropPa)
                .sum();
        if (lift > 0) {
            boolean moving = check.result().circuit().surroundings().aheadMPerS2() != 0;
            text.append(' ')
                    .append(display.text(lift, Dimension.PRESSURE_DIFFERENCE))
                    .append(moving ? " is height and acceleration" : " is height")
                    .append("; no hose saves that.");
        }
    }

    private void unsure(LimitRow row) {
        text.append(at()).append(gets(row));
        String onePoint = onePoint();
        if (!row.reason().isEmpty() || (row.margin() < 0 && !onePoint.isEmpty())) {
            text.append(": ")
                    .append(row.reason().isEmpty() ? onePoint : row.reason())
                    .append('.')
                    .append(onePoint.isEmpty() ? "" : " Give the pump its curves: before you change a line.");
            return;
        }
        if (row.margin() >= 0) {
            text.append(", ")
                    .append(difference(row.margin(), row))
                    .append(" inside the limit at usual bores but ")
                    .append(difference(row.marginLow(), row))
                    .append(" outside it ")
                    .append(atEnd(check.result(), row, row.marginLow()))
                    .append('.');
        } else {
            text.append(", ")
                    .append(off(row))
                    .append(" at usual bores but ")
                    .append(difference(row.marginHigh(), row))
                    .append(" inside the limit ")
                    .append(atEnd(check.result(), row, row.marginHigh()))
                    .append('.');
        }
        double decides = row.margin() >= 0 ? row.marginLow() : row.marginHigh();
        text.append(
                atEnd(check.result(), row, decides).contains("bores")
                        ? toMeasure()
                        : " The fluid decides: name its grade or class more closely, or measure.");
        if (row.margin() < 0) {
            mend();
        }
    }

    /** Why a pump that is known by one point is to be asked before any line; empty without one. */
    private String onePoint() {
        return check.result().circuit().devices().stream()
                .filter(device -> device instanceof Pump pump && pump.bound())
                .findFirst()
                .map(pump -> "the " + pump.id() + " is known by one point, and gives at least what is shown")
                .orElse("");
    }

    private String toMeasure() {
        Bottleneck.Measure first = check.measure();
        if (first == null) {
            return " Gauge one hose-end bore and write \"end bore: ... measured\".";
        }
        String key = first.words().startsWith("hose-end") ? "end bore" : "bore";
        return " Measure the " + first.words() + " first"
                + (first.words().contains("bore of ") ? " and write \"" + key + ": ... measured\"." : ".");
    }

    private void pumpShort(LimitRow row) {
        text.append("not the line: ")
                .append(at())
                .append(gets(row))
                .append(", ")
                .append(off(row));
        lossless(row);
    }

    private void inlet(LimitRow row) {
        text.append(at());
        Optional<Notice> boils = check.result().usual().boilingAtPump();
        if (boils.isPresent()) {
            text.append(boils.get().element())
                    .append(" on the way into the pump: ")
                    .append(boils.get().text());
        } else {
            text.append(gets(row)).append(", ").append(off(row));
            CaseCheck.Culprit culprit = check.culprit();
            if (culprit != null) {
                text.append("; ")
                        .append(culprit.words())
                        .append(" takes ")
                        .append(whole(culprit.lossPa()))
                        .append(' ')
                        .append(display.unit(Dimension.PRESSURE_DIFFERENCE).symbol());
            }
        }
        text.append(". A wider or shorter line, a higher or cooler tank, or a pump in the tank would help.");
    }

    /** Over what is allowed, or held down by a relief valve: no line is to blame and no line mends it. */
    private void held(LimitRow row) {
        text.append(at()).append(gets(row)).append(", ").append(off(row)).append('.');
        if (row.value() > row.bound()) {
            text.append(" No line is too small: a restrictor, a regulator or a smaller pump would hold it down.");
            return;
        }
        for (DeviceRow device : check.result().usual().devices()) {
            if (device.kind().equals(OneWayValve.RELIEF) && device.state().equals("open")) {
                text.append(" The pump is not short: the ")
                        .append(device.id())
                        .append(" lets go of ")
                        .append(display.text(device.flowM3PerS(), Dimension.VOLUME_FLOW))
                        .append(" at ")
                        .append(display.text(device.inletPressurePa(), Dimension.GAUGE_PRESSURE))
                        .append('.');
            }
        }
        lossless(row);
    }

    private void starved(LimitRow row) {
        text.append(at()).append(gets(row)).append(", ").append(off(row)).append('.');
        height(row);
        lossless(row);
    }

    private void lossless(LimitRow row) {
        if (check.lossless() == null) {
            return;
        }
        double margin = check.lossless().margin(row.limit());
        boolean ofFlow = row.limit().quantity().equals("flow"); // legs side by side rob each other
        if (!Double.isNaN(margin) && !ofFlow) {
            text.append(text.charAt(text.length() - 1) == '.' ? " With" : "; with")
                    .append(" no line loss at all it would still be ")
                    .append(difference(margin, row))
                    .append(margin < 0 ? " off." : " inside.");
        }
    }

    private String nearest(LimitRow row) {
        if (!row.ofState()) {
            return row.limit().id() + " at " + amount(row.value(), row) + ", " + difference(row.margin(), row)
                    + " to spare";
        }
        String state = "the " + row.limit().subject() + ", " + row.state();
        return Double.isNaN(row.margin())
                ? state
                : state + " with " + difference(row.margin(), row) + " left to throttle";
    }

    private void holds(LimitRow row, CaseVerdict verdict) {
        List<String> unknown = notJudged(check);
        text.append(at())
                .append(
                        unknown.isEmpty()
                                ? "every limit holds; nearest is "
                                : "every limit that can be judged holds; nearest is ")
                .append(nearest(row));
        least(check.result(), row);
        text.append('.');
        if (verdict == CaseVerdict.OVERSIZED) {
            text.append(" It would also hold one size smaller everywhere.");
        }
        unknown.forEach(each -> text.append(" Not judged: ").append(each).append('.'));
    }
}
