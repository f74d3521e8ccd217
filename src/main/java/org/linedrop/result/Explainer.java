package org.linedrop.result;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.fact.Explanation;
import org.linedrop.fact.Explanation.Group;
import org.linedrop.fact.Explanation.Step;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.fact.Words;
import org.linedrop.network.Story;
import org.linedrop.network.Term;
import org.linedrop.network.Trace;

/** Takes one row of a result apart, with the terms the solve used, at the solved flow. */
final class Explainer {
    /** Height and acceleration. */
    private static final Formula LIFT = new Formula(
            "height and acceleration",
            "dp = rho (g h + a s)",
            new Source("hydrostatics", "", Status.DERIVED),
            "shared over the length between places that are known");

    /** Devices that switch. */
    private static final Formula GATE = new Formula(
            "one-way device",
            "0 = min(Q, -min(A, B)): A what it is set to, B its drop wide open",
            new Source("what a valve can do", "", Status.DERIVED),
            "steady");

    /** Published coefficients belong to fittings with that much straight bore on either side. */
    private static final double APART_BORES = 10;

    private final Result result;
    private final Trace.RunTrace run;
    private final int index;
    private final Trace.Section section;
    private final Trace.Row row;
    private final double massFlow;

    private Explainer(Result result, Trace.RunTrace run, int index) {
        this.result = result;
        this.run = run;
        this.index = index;
        this.row = run.rows().get(index);
        this.section = run.section(index);
        this.massFlow = result.massFlowKgPerS(section);
    }

    static Explanation explain(Result result, String element) {
        List<String> known = new ArrayList<>();
        for (Trace.RunTrace run : result.network().runs()) {
            for (int i = 0; i < run.rows().size(); i++) {
                String name = name(run, i);
                if (name.equals(element)) {
                    return new Explainer(result, run, i).explanation();
                }
                known.add(name);
            }
        }
        String meant = Words.nearest(element, known)
                .map(name -> " Did you mean \"" + name + "\"?")
                .orElse("");
        throw new IllegalArgumentException(
                "no row \"" + element + "\"." + meant + " Rows: " + String.join(", ", known));
    }

    private static String name(Trace.RunTrace run, int index) {
        return run.id() + " " + run.rows().get(index).row();
    }

    private Explanation explanation() {
        List<Group> groups = groups(row.friction(), row.local());
        double drop =
                row.frictionDropPa(massFlow) + row.localDropPa(massFlow) + row.liftPa() + legDropPa() + gateDropPa();
        Story story = row.story();
        double density = row.stream().densityKgPerM3();
        Explanation.Flow flow = new Explanation.Flow(
                circuit().surroundings().fluid().name(),
                row.stream().temperatureK(),
                density,
                row.stream().dynamicViscosityPaS(),
                massFlow,
                massFlow / density,
                massFlow < 0 ? story.against() : story.sense(),
                FileLines.ofFluid(circuit(), run.id(), row.part()));
        return new Explanation(
                name(run, index),
                row.name(),
                row.kind(),
                size(),
                circuit().caseName(),
                flow,
                story.given(),
                groups,
                drop,
                equivalent(drop),
                alternative(story.other(), story.otherElbow()),
                bands(groups, drop),
                remarks());
    }

    private Circuit circuit() {
        return result.circuit();
    }

    /** What stands over a device that switches. */
    private double gateDropPa() {
        return section.gate() ? Result.overPa(result.network(), result.solution(), section.branch()) : 0;
    }

    private double legDropPa() {
        return row.leg() == null ? 0 : result.junctions().dropPa(row.leg());
    }

    private List<Group> groups(List<Term> friction, List<Term> local) {
        List<Group> groups = new ArrayList<>();
        if (row.leg() != null) {
            groups.add(result.junctions().group(row.leg(), row.kind()));
        }
        friction.forEach(term -> groups.add(term.account().at(massFlow)));
        local.forEach(term -> groups.add(term.account().at(massFlow)));
        if (section.gate()) {
            double drop = gateDropPa();
            double none = Double.NaN;
            String state = result.network()
                    .network()
                    .device(section.branch())
                    .stateWord(result.solution().state(section.branch()));
            Step step = new Step(state, "what stands on its two sides", List.of(), none, drop, drop, drop, null, GATE);
            groups.add(new Group(row.kind(), "", none, none, none, "", none, List.of(step)));
        }
        if (row.liftPa() != 0) {
            double lift = row.liftPa();
            double none = Double.NaN;
            Step step = new Step("lift", "its share of rho (g h + a s)", List.of(), none, lift, lift, lift, null, LIFT);
            groups.add(new Group("height", "", none, none, none, "", none, List.of(step)));
        }
        return groups;
    }

    private String size() {
        for (Run each : circuit().runs()) {
            for (Part part : each.parts()) {
                if (part.id().equals(row.part()) && part instanceof Hose hose) {
                    return hose.size().family() + " " + row.size();
                }
            }
        }
        return row.size();
    }

    /** The hose or tube of the same part, else the nearest in the run, that before it first. */
    private Trace.@Nullable Row beside() {
        if (row.kind().equals("hose") || row.kind().equals("tube") || !row.plumbing()) {
            return null;
        }
        Trace.Row found = null;
        int best = Integer.MAX_VALUE;
        for (int i = 0; i < run.rows().size(); i++) {
            Trace.Row other = run.rows().get(i);
            boolean line = other.kind().equals("hose") || other.kind().equals("tube");
            int away = (other.part().equals(row.part()) ? 0 : 1000) + Math.abs(i - index);
            if (line && other.lengthM() > 0 && away < best) {
                found = other;
                best = away;
            }
        }
        return found;
    }

    private double equivalentM(double drop, Trace.@Nullable Row line) {
        return line == null ? Double.NaN : (drop - row.liftPa()) / line.frictionDropPa(massFlow) * line.lengthM();
    }

    private Explanation.@Nullable Equivalent equivalent(double drop) {
        Trace.Row line = beside();
        double length = equivalentM(drop, line);
        return line == null || !Double.isFinite(length)
                ? null
                : new Explanation.Equivalent(run.id() + " " + line.row(), line.kind(), length, line.usedBoreM());
    }

    private Explanation.@Nullable Alternative alternative(@Nullable Supplier<List<Term>> other, String name) {
        if (other == null) {
            return null;
        }
        List<Term> terms = other.get();
        double drop = drop(terms) + drop(row.joined()) + row.liftPa();
        Group elbow = terms.get(terms.size() - 1).account().at(massFlow);
        return new Explanation.Alternative(name, elbow, drop, equivalentM(drop, beside()));
    }

    private double drop(List<Term> terms) {
        return terms.stream().mapToDouble(term -> term.dropPa(massFlow)).sum();
    }

    private List<Explanation.Spread> bands(List<Group> groups, double drop) {
        List<Explanation.Spread> bands = new ArrayList<>();
        Figure bore = row.boreM();
        Story story = row.story();
        if (bore.hasBand() && story.atBore() != null) {
            double rest = drop(row.joined()) + row.liftPa();
            double small = drop(story.atBore().apply(bore.low())) + rest;
            double large = drop(story.atBore().apply(bore.high())) + rest;
            bands.add(new Explanation.Spread(
                    story.boreName(),
                    bore.low(),
                    bore.high(),
                    Math.min(small, large),
                    Math.max(small, large),
                    bore.source()));
        }
        for (Group group : groups) {
            for (Step step : group.steps()) {
                if (step.spread() != null) {
                    double low = drop - step.dropPa() + Math.min(step.lowPa(), step.highPa());
                    double high = drop - step.dropPa() + Math.max(step.lowPa(), step.highPa());
                    bands.add(new Explanation.Spread(
                            group.name() + ", " + step.name(), Double.NaN, Double.NaN, low, high, step.spread()));
                }
            }
        }
        return bands;
    }

    private List<String> remarks() {
        boolean fitting = !row.local().isEmpty() && Double.isFinite(row.usedBoreM()) && row.lengthM() == 0;
        if (!fitting || row.kind().equals("bends")) {
            return List.of();
        }
        List<String> remarks = new ArrayList<>();
        for (int step : new int[] {-1, 1}) {
            int at = index + step;
            if (at < 0 || at >= run.rows().size()) {
                continue;
            }
            Trace.Row other = run.rows().get(at);
            boolean device = !other.device().isEmpty();
            if (!device && other.lengthM() < APART_BORES * other.usedBoreM()) {
                remarks.add(name(run, at) + " is closer than 10 bores; published figures assume 10 to 50 bores of"
                        + " straight line between fittings");
            }
        }
        return remarks;
    }
}
