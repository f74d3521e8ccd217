package org.linedrop.benchmarks;

import java.util.Arrays;
import java.util.Locale;
import org.linedrop.network.Network;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solver;
import org.linedrop.solver.Workspace;

/**
 * Time against size: grids of 10 to 1,000,000 points, each built, planned and solved cold, the answer checked by walking
 * all of it. Prints a table with the slope between sizes. Not a JMH run: the large ones take minutes, and the heap is the
 * question. Run with {@code java -Xmx8g -cp benchmarks/target/benchmarks.jar org.linedrop.benchmarks.Sizes}.
 */
public final class Sizes {
    private static final int[] SIDES = {3, 10, 32, 100, 316, 1000};
    private static final double LONG_ENOUGH_S = 0.3;
    private static final int MOST_STEPS = 12;

    private Sizes() {}

    /**
     * Prints the table.
     *
     * @param arguments the largest side, 1000 when absent
     */
    public static void main(String[] arguments) {
        int most = arguments.length > 0 ? Integer.parseInt(arguments[0]) : SIDES[SIDES.length - 1];
        System.out.println("| points | plan s | cold solve s | steps | slope | heap used GB |");
        System.out.println("|---:|---:|---:|---:|---:|---:|");
        double before = Double.NaN;
        int pointsBefore = 0;
        for (int side : Arrays.stream(SIDES).filter(s -> s <= most).toArray()) {
            double[] s = measured(side);
            int points = side * side;
            double slope = Math.log(s[1] / before) / Math.log((double) points / pointsBefore);
            System.out.printf(
                    Locale.ROOT,
                    "| %d | %.3g | %.3g | %.0f | %s | %.2f |%n",
                    points,
                    s[0],
                    s[1],
                    s[2],
                    Double.isNaN(slope) ? "" : String.format(Locale.ROOT, "%.2f", slope),
                    s[3]);
            before = s[1];
            pointsBefore = points;
        }
    }

    /** Plan and solve in seconds, the least of as many as fit in a while; steps; heap in GB. */
    private static double[] measured(int side) {
        Network network = Nets.grid(side).build();
        double plan = Double.POSITIVE_INFINITY;
        double solve = Double.POSITIVE_INFINITY;
        double steps = 0;
        double heap = 0;
        long start = System.nanoTime();
        do {
            long begun = System.nanoTime();
            Workspace workspace = Workspace.of(network);
            long planned = System.nanoTime();
            Outcome outcome = Solver.usual().solve(network, null, workspace);
            long solved = System.nanoTime();
            if (outcome != Outcome.CONVERGED || workspace.iterations() > MOST_STEPS) {
                throw new IllegalStateException(outcome + " in " + workspace.iterations() + " steps");
            }
            plan = Math.min(plan, (planned - begun) * 1e-9);
            solve = Math.min(solve, (solved - planned) * 1e-9);
            steps = workspace.iterations();
            heap = (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) * 1e-9;
            Nets.check(network, workspace);
        } while (System.nanoTime() - start < LONG_ENOUGH_S * 1e9);
        return new double[] {plan, solve, steps, heap};
    }
}
