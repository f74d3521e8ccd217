package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.linedrop.catalogue.RatingResult;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.result.CaseResult;
import org.linedrop.result.RatingRow;
import org.linedrop.study.kit.OwnFigures;

class SizeSearchPropertyTest {
    private static final int CIRCUITS = 200;
    /** Three sizes of two runs, two of three: brute force shall not take long. */
    private static List<Integer> dashes(Circuit circuit) {
        return circuit.runs().size() < 3 ? List.of(6, 8, 10) : List.of(6, 10);
    }

    private static SizeQuestion question(Circuit circuit) {
        return new SizeQuestion(
                SizeQuestion.Objective.SMALLEST,
                List.of(),
                List.of(),
                dashes(circuit),
                OwnFigures.NONE,
                SizeQuestion.USUAL_MOST,
                0);
    }

    /** Every set of sizes in every case, nothing ruled out: the least fluid of those that hold, NaN when none does. */
    private static double leastOfAll(Circuit circuit) {
        List<List<Change>> sets = List.of(List.of());
        for (Run run : circuit.runs()) {
            List<List<Change>> more = new ArrayList<>(sets); // as written
            for (int dash : dashes(circuit)) {
                Optional<Change> change = RunSizes.change(circuit, run.id(), "", dash);
                for (List<Change> set : sets) {
                    change.ifPresent(made -> {
                        List<Change> with = new ArrayList<>(set);
                        with.add(made);
                        more.add(with);
                    });
                }
            }
            sets = more;
        }
        double least = Double.NaN;
        for (List<Change> set : sets) {
            Circuit changed = circuit.with(set);
            double fluid = fluidM3(changed);
            if (!(fluid >= least) && holds(circuit, set)) {
                least = fluid;
            }
        }
        return least;
    }

    private static boolean holds(Circuit circuit, List<Change> set) {
        List<CaseResult> results = new ArrayList<>();
        for (String name : circuit.caseNames()) {
            CaseResult result = CaseResult.of(circuit.in(name).with(set));
            if (!result.holds()) {
                return false; // the other cases cannot mend it
            }
            results.add(result);
        }
        return RatingRow.of(results).stream().noneMatch(row -> row.rating().verdict() == RatingResult.Verdict.OVER);
    }

    private static double fluidM3(Circuit circuit) {
        double fluid = 0;
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                if (part instanceof Hose hose) {
                    double bore = hose.size().boreM().value();
                    fluid += Math.PI / 4 * bore * bore * hose.lengthM().value();
                }
            }
        }
        return fluid;
    }

    @Test
    void theSetFoundIsTheLeastOfAllOfTwoHundredSmallCircuits() {
        int held = 0;
        int ruledOut = 0;
        for (int seed = 1; seed <= CIRCUITS; seed++) {
            Circuit circuit = SmallCircuits.of(seed);
            double least = leastOfAll(circuit);
            SizeAnswer answer = SizeSearch.of(circuit, question(circuit), Progress.NONE);
            assertThat(answer.exact()).as("seed " + seed).isTrue();
            if (Double.isNaN(least)) {
                assertThat(answer.sets()).as("seed " + seed).isEmpty();
                assertThat(answer.nearest()).isNotNull();
            } else {
                assertThat(answer.sets()).as("seed " + seed).hasSize(1);
                assertThat(answer.sets().get(0).amount()).as("seed " + seed).isCloseTo(least, within(1e-12 * least));
                held++;
                ruledOut += answer.lookedAt() > answer.solved() ? 1 : 0;
            }
        }
        // neither trivial nor hopeless, and the bounds are put to use
        assertThat(held).isBetween(CIRCUITS / 4, CIRCUITS - 10);
        assertThat(ruledOut).isPositive();
    }
}
