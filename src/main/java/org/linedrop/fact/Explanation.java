package org.linedrop.fact;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How one row of an answer came about, step by step, like a worked example. All figures are SI; drops have the sense of
 * the run, so that flow against the run gives negative losses. The drops of all steps add up to that of the row.
 *
 * @param element     the row explained, for example {@code feed 6.3}
 * @param name        what the row is, for example {@code end 90 swept}
 * @param kind        kind of thing: hose, end, tube, bends, adapter, filter, pump, entry, exit ...
 * @param size        family and size as the trade writes them, empty when it has none
 * @param caseName    the case solved
 * @param flow        what flows
 * @param given       the figures put in, with band and source
 * @param groups      the arithmetic: a group for each bore or law
 * @param dropPa      the drop of the row, height included
 * @param equivalent  the same drop as a length of the bore beside it, null where there is none
 * @param alternative what the other kind of elbow would cost, null where the row is no bent end
 * @param bands       how far the drop is known, one for each cause
 * @param remarks     what is not counted
 */
public record Explanation(
        String element,
        String name,
        String kind,
        String size,
        String caseName,
        Flow flow,
        List<Given> given,
        List<Group> groups,
        double dropPa,
        @Nullable Equivalent equivalent,
        @Nullable Alternative alternative,
        List<Spread> bands,
        List<String> remarks)
        implements Serializable {

    /** Copies the lists. */
    public Explanation {
        given = List.copyOf(given);
        groups = List.copyOf(groups);
        bands = List.copyOf(bands);
        remarks = List.copyOf(remarks);
    }

    /**
     * What flows in the row.
     *
     * @param fluid               name of the fluid
     * @param temperatureK        its temperature, K
     * @param densityKgPerM3      its density, kg/m3
     * @param dynamicViscosityPaS its viscosity, Pa s
     * @param massFlowKgPerS      mass flow, kg/s, positive in the sense of the run
     * @param flowM3PerS          volume flow at that density, m3/s
     * @param sense               which way in words, for example {@code from hose to fitting}; empty where that says nothing
     * @param fileLines           lines of the circuit file that say fluid and temperature; empty when made by code
     */
    public record Flow(
            String fluid,
            double temperatureK,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double massFlowKgPerS,
            double flowM3PerS,
            String sense,
            List<Integer> fileLines)
            implements Serializable {

        /** Copies the lines. */
        public Flow {
            fileLines = List.copyOf(fileLines);
        }
    }

    /**
     * A figure put in.
     *
     * @param name   what it is, in words
     * @param figure its value in SI with band and source
     * @param unit   SI unit, empty for pure numbers
     */
    public record Given(String name, Figure figure, String unit) implements Serializable {}

    /**
     * Steps that share a bore or a law.
     *
     * @param name           what costs, for example {@code nipple}
     * @param remark         what it was taken as, for example {@code bent tube, R/D 1.5}; empty for none
     * @param boreM          the bore of velocity and coefficients, m; NaN where it has none
     * @param velocityMPerS  mean velocity in it, m/s, with the sign of the flow; NaN without a bore
     * @param reynolds       its Reynolds number; NaN without a bore
     * @param regime         laminar, mixed or turbulent; empty without a bore
     * @param velocityHeadPa rho v^2/2, Pa; NaN without a bore
     * @param steps          the arithmetic in its order
     */
    public record Group(
            String name,
            String remark,
            double boreM,
            double velocityMPerS,
            double reynolds,
            String regime,
            double velocityHeadPa,
            List<Step> steps)
            implements Serializable {

        /** Copies the list. */
        public Group {
            steps = List.copyOf(steps);
        }

        /**
         * The same with every step taken several times.
         *
         * @param factor how often
         * @return a copy whose coefficients and drops are the factor's multiple
         */
        public Group times(double factor) {
            return new Group(
                    name,
                    remark,
                    boreM,
                    velocityMPerS,
                    reynolds,
                    regime,
                    velocityHeadPa,
                    steps.stream().map(step -> step.times(factor)).toList());
        }

        /**
         * What the group costs.
         *
         * @return sum of its drops, Pa
         */
        public double dropPa() {
            return steps.stream().mapToDouble(Step::dropPa).sum();
        }
    }

    /**
     * One intermediate.
     *
     * @param name        what costs, in two or three words
     * @param equation    the arithmetic; symbols in braces stand for the inputs of that name
     * @param inputs      figures of the equation
     * @param coefficient loss over the velocity head of the group, NaN where the law is none of a coefficient
     * @param dropPa      what it costs, Pa; negative for a pump's rise
     * @param lowPa       least that published laws support, Pa; the drop itself where they agree within 20 per cent
     * @param highPa      most that published laws support, Pa
     * @param spread      what disagrees, null where published laws agree
     * @param formula     the law it comes from
     */
    public record Step(
            String name,
            String equation,
            List<Quantity> inputs,
            double coefficient,
            double dropPa,
            double lowPa,
            double highPa,
            @Nullable Source spread,
            Formula formula)
            implements Serializable {

        /** Copies the list. */
        public Step {
            inputs = List.copyOf(inputs);
            Objects.requireNonNull(formula, "formula");
        }

        private Step times(double factor) {
            String times = factor == Math.rint(factor) ? Long.toString((long) factor) : "{n}";
            List<Quantity> more = new java.util.ArrayList<>(inputs);
            more.add(new Quantity("n", "how often", factor, ""));
            return new Step(
                    name,
                    times + " x " + equation,
                    more,
                    coefficient * factor,
                    dropPa * factor,
                    lowPa * factor,
                    highPa * factor,
                    spread,
                    formula);
        }
    }

    /**
     * A figure in an equation.
     *
     * @param symbol  as it stands in the braces of the equation
     * @param meaning what it is, in words
     * @param value   its value in SI
     * @param unit    SI unit, empty for pure numbers
     */
    public record Quantity(String symbol, String meaning, double value, String unit) implements Serializable {}

    /**
     * A drop as a length of hose or tube at the same flow.
     *
     * @param element the row of that hose or tube
     * @param kind    hose or tube
     * @param lengthM length of it that loses as much to friction, m
     * @param boreM   its bore, m
     */
    public record Equivalent(String element, String kind, double lengthM, double boreM) implements Serializable {}

    /**
     * The same end with the other kind of elbow in it, bores unchanged.
     *
     * @param name        what it would be, in words
     * @param group       the elbow's part of the arithmetic
     * @param dropPa      the row's drop with it, height included, Pa
     * @param equivalentM that drop as a length of the bore beside it, m; NaN where there is none
     */
    public record Alternative(String name, Group group, double dropPa, double equivalentM) implements Serializable {}

    /**
     * How far the row's drop is known at this flow as to one cause.
     *
     * @param cause    {@code nipple bore} or the like, or {@code published laws}
     * @param lowM     least bore, m; NaN where the cause is no bore
     * @param highM    largest bore, m
     * @param lowPa    least drop, Pa
     * @param highPa   largest drop, Pa
     * @param source   who says so
     */
    public record Spread(String cause, double lowM, double highM, double lowPa, double highPa, Source source)
            implements Serializable {}
}
