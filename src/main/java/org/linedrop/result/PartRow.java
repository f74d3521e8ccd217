package org.linedrop.result;

import java.io.Serializable;
import org.linedrop.fact.Figure;

/**
 * One line of the result table. Static pressure in minus static pressure out equals friction + local + lift + the
 * change of the velocity head; total pressures join from row to row.
 *
 * @param run               name of the run
 * @param row               number of the row within it, {@code 6.3}; {@code entry} and {@code exit} at a tank
 * @param name              what the row is, as the text table prints it
 * @param kind              kind of thing: hose, end, tube, bends, adapter, bulkhead, filter, pump, entry, exit ...
 * @param part              name of the part that this row belongs to
 * @param size              size as the trade writes it, empty when it has none
 * @param boreM             the bore that its velocity is taken in, with band and source; NaN-free, null never
 * @param massFlowKgPerS    mass flow, positive in the sense of the run
 * @param flowM3PerS        volume flow at the row's own density
 * @param velocityMPerS     mean velocity in the bore, same sign as the flow
 * @param reynolds          of the bore
 * @param regime            laminar, mixed or turbulent
 * @param frictionFactor    Darcy friction factor, NaN where the row is no length of bore
 * @param lossCoefficient   loss over the velocity head of the bore, NaN where the row has none
 * @param frictionDropPa    lost to friction along the bore
 * @param localDropPa       lost at ends, bends, fittings and devices; a pump's rise is negative
 * @param liftDropPa        given up to height and acceleration
 * @param dropPa            the sum of the three
 * @param totalPressureInPa gauge total pressure where the run enters the row
 * @param totalPressureOutPa gauge total pressure where the run leaves it
 * @param velocityHeadInPa  velocity head in the bore before it
 * @param velocityHeadOutPa velocity head in the bore behind it
 * @param lossShare         share of the run's friction and local losses (pumps left out), 0 to 1; NaN at no loss
 */
public record PartRow(
        String run,
        String row,
        String name,
        String kind,
        String part,
        String size,
        Figure boreM,
        double massFlowKgPerS,
        double flowM3PerS,
        double velocityMPerS,
        double reynolds,
        Regime regime,
        double frictionFactor,
        double lossCoefficient,
        double frictionDropPa,
        double localDropPa,
        double liftDropPa,
        double dropPa,
        double totalPressureInPa,
        double totalPressureOutPa,
        double velocityHeadInPa,
        double velocityHeadOutPa,
        double lossShare)
        implements Serializable {

    /**
     * Static pressure before the row.
     *
     * @return gauge Pa
     */
    public double staticPressureInPa() {
        return totalPressureInPa - velocityHeadInPa;
    }

    /**
     * Static pressure behind the row.
     *
     * @return gauge Pa
     */
    public double staticPressureOutPa() {
        return totalPressureOutPa - velocityHeadOutPa;
    }

    /** How the flow runs in a bore. */
    public enum Regime {
        /** Re up to the end of 64/Re. */
        LAMINAR("lam"),
        /** Re in the blend, where published data scatter. */
        MIXED("mix"),
        /** Re beyond the blend. */
        TURBULENT("turb");

        private final String word;

        Regime(String word) {
            this.word = word;
        }

        /**
         * The word printed.
         *
         * @return {@code lam}, {@code mix} or {@code turb}
         */
        public String word() {
            return word;
        }
    }
}
