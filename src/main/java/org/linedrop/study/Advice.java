package org.linedrop.study;

import java.util.List;
import org.linedrop.fact.Source;
import org.linedrop.units.Dimension;

/**
 * A rule of thumb held against a checked circuit. It never breaks anything and changes no exit code: the limits say
 * what must hold.
 *
 * @param words     what the rule is about, for example {@code feed loss with height}
 * @param element   the point, device or row where it comes worst, empty where it is about the whole way
 * @param caseName  the case in which it comes worst
 * @param value     what is reached there, in the SI unit of the dimension
 * @param bound     what the rule of thumb allows, in the same unit
 * @param atLeast   whether the value must not be under the bound, rather than not over it
 * @param dimension what value and bound measure
 * @param source    who says so
 */
public record Advice(
        String words,
        String element,
        String caseName,
        double value,
        double bound,
        boolean atLeast,
        Dimension dimension,
        Source source) {

    /**
     * Whether the rule is kept.
     *
     * @return false when it is not, or when the value is not known
     */
    public boolean kept() {
        return atLeast ? value >= bound : value <= bound;
    }

    /** How far outside the rule, over the bound: the larger the worse. */
    double excess() {
        return (atLeast ? bound - value : value - bound) / bound;
    }

    /**
     * The rules of the service of a circuit: speed in suction, return and pressure lines, loss on the way, the share of
     * one part, suction of pumps, spare flow, filters.
     *
     * @param cases checked cases of one circuit
     * @return each rule with its worst case, in a fixed order; none where no service is named, and for brakes
     */
    public static List<Advice> of(List<CaseCheck> cases) {
        return new RulesOfThumb(cases).list();
    }
}
