package org.linedrop.study;

import java.util.List;
import java.util.Optional;
import org.linedrop.circuit.Service;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * A rule of thumb held against a checked circuit. It never breaks anything and changes no exit code: the limits say
 * what must hold.
 *
 * @param words    what the rule is about, for example {@code feed loss with height}
 * @param caseName the case in which it comes worst
 * @param valuePa  what is reached there
 * @param mostPa   what the rule of thumb allows
 * @param source   who says so
 */
public record Advice(String words, String caseName, double valuePa, double mostPa, Source source) {
    private static final double INJECTED_PA = 35_000;
    private static final double CARBURETTOR_PA = 7_000;
    private static final Source THUMB = Source.of("common practice", Status.FROM_MEMORY);

    /**
     * Whether the rule is kept.
     *
     * @return false when it is not, or when the value is not known
     */
    public boolean kept() {
        return valuePa <= mostPa;
    }

    /**
     * The rule for the loss of a feed on its way to what decides: 35 kPa injected, 7 kPa carburetted.
     *
     * @param cases checked cases of one circuit
     * @return the rule with its worst case; empty where no fuel is fed, or no case lost anything
     */
    public static Optional<Advice> feedLoss(List<CaseCheck> cases) {
        Advice worst = null;
        for (CaseCheck each : cases) {
            Service service = each.result().circuit().service();
            if (service == null || !service.fuel() || each.culprit() == null) {
                continue;
            }
            double loss = each.culprit().allLossPa();
            if (worst == null || loss > worst.valuePa()) {
                double most = service == Service.INJECTED_FUEL ? INJECTED_PA : CARBURETTOR_PA;
                worst = new Advice("feed loss with height", each.caseName(), loss, most, THUMB);
            }
        }
        return Optional.ofNullable(worst);
    }
}
