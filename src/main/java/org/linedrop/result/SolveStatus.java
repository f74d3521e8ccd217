package org.linedrop.result;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solution;

/**
 * How a solve ended, in words and numbers, for reports.
 *
 * @param word          status of the solve: {@code converged} or the reason why not
 * @param converged     whether its figures are an answer
 * @param flowImbalance largest imbalance of any free point over the largest flow
 * @param lawResidual   largest residual of any law over the largest pressure difference
 * @param iterations    Newton steps taken
 */
public record SolveStatus(String word, boolean converged, double flowImbalance, double lawResidual, int iterations)
        implements Serializable {

    /**
     * The words a status may be.
     *
     * @return all of them
     */
    public static List<String> words() {
        return Arrays.stream(Outcome.values()).map(Outcome::word).toList();
    }

    /**
     * The status of a result.
     *
     * @param result the result
     * @return how its solve ended
     */
    public static SolveStatus of(Result result) {
        Solution solution = result.solution();
        return new SolveStatus(
                result.outcome().word(),
                result.outcome() == Outcome.CONVERGED,
                solution.flowImbalance(),
                solution.lawResidual(),
                solution.iterations());
    }
}
