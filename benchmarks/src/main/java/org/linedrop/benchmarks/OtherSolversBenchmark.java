package org.linedrop.benchmarks;

import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.linedrop.network.Network;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solver;
import org.linedrop.solver.Workspace;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The looped circuit, one bore a run, solved by three solvers from the same start, rest: this library cold, a dense
 * Newton as textbooks write it, and the Levenberg-Marquardt optimiser of Commons Math, by differences
 * and with our exact derivatives. All
 * three see the same 42 equations: a law per run, a balance per point. Answers agree to 1e-8 before anything is timed.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class OtherSolversBenchmark {
    private static final double PRESSURE_SCALE = 1e-5;
    private static final double FLOW_SCALE = 10;
    private static final int UNKNOWNS = Loops.RUNS + Loops.POINTS;
    private static final double DIFFERENCE = 1e-7;
    private static final double AGREE_KG_PER_S = 1e-8;

    private final Solver solver = Solver.usual();
    private final LevenbergMarquardtOptimizer optimiser = new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(1e-14)
            .withParameterRelativeTolerance(1e-14)
            .withOrthoTolerance(1e-14);
    private Network network;
    private Workspace workspace;
    private DenseEquations equations;

    /** Solves by all three and compares. */
    @Setup
    public void build() {
        network = Loops.network(Loops.Kind.ONE_BORE, 1);
        workspace = Workspace.of(network);
        equations = new DenseEquations(network, Loops.RUNS, Loops.POINTS, PRESSURE_SCALE, FLOW_SCALE);
        if (linedrop() != Outcome.CONVERGED) {
            throw new IllegalStateException("did not converge");
        }
        Loops.check(network, workspace);
        compare("dense Newton", denseNewton());
        compare("Levenberg-Marquardt", levenbergMarquardtExact().getPoint().toArray());
        compare("Levenberg-Marquardt by differences", levenbergMarquardt().getPoint().toArray());
    }

    private void compare(String who, double[] x) {
        for (int b = 0; b < Loops.RUNS; b++) {
            if (!(Math.abs(x[b] - workspace.massFlowKgPerS(b)) < AGREE_KG_PER_S)) {
                throw new IllegalStateException(
                        who + ", run " + b + ": " + x[b] + " kg/s, here " + workspace.massFlowKgPerS(b));
            }
        }
    }

    private static double[] start() {
        double[] x = new double[UNKNOWNS];
        for (int i = 0; i < x.length; i++) {
            x[i] = i < Loops.RUNS ? 0 : Loops.TANK_PA;
        }
        return x;
    }

    /**
     * This library, cold.
     *
     * @return how it ended
     */
    @Benchmark
    public Outcome linedrop() {
        return solver.solve(network, null, workspace);
    }

    /**
     * Dense Newton with step halving and Gaussian elimination with partial pivoting.
     *
     * @return flows, then pressures
     */
    @Benchmark
    public double[] denseNewton() {
        double[] x = start();
        equations.newton(x, 1e-9, 100);
        return x;
    }

    /**
     * Commons Math with our exact derivatives, which it does not have by itself.
     *
     * @return its optimum
     */
    @Benchmark
    public LeastSquaresOptimizer.Optimum levenbergMarquardtExact() {
        return optimised(point -> {
            double[] r = new double[UNKNOWNS];
            double[][] jacobian = new double[UNKNOWNS][UNKNOWNS];
            equations.evaluate(point.toArray(), r, jacobian);
            return pair(r, jacobian);
        });
    }

    /**
     * Commons Math as a general-purpose solver meets the equations: derivatives by forward differences.
     *
     * @return its optimum
     */
    @Benchmark
    public LeastSquaresOptimizer.Optimum levenbergMarquardt() {
        return optimised(point -> {
            double[] x = point.toArray();
            double[] r = new double[UNKNOWNS];
            double[] moved = new double[UNKNOWNS];
            double[][] jacobian = new double[UNKNOWNS][UNKNOWNS];
            equations.residual(x, r);
            for (int j = 0; j < UNKNOWNS; j++) {
                double at = x[j];
                double step = DIFFERENCE * (j < Loops.RUNS ? 1 : Loops.TANK_PA);
                x[j] = at + step;
                equations.residual(x, moved);
                x[j] = at;
                for (int i = 0; i < UNKNOWNS; i++) {
                    jacobian[i][j] = (moved[i] - r[i]) / step;
                }
            }
            return pair(r, jacobian);
        });
    }

    private static Pair<RealVector, RealMatrix> pair(double[] r, double[][] jacobian) {
        return new Pair<>(new ArrayRealVector(r, false), new Array2DRowRealMatrix(jacobian, false));
    }

    private LeastSquaresOptimizer.Optimum optimised(MultivariateJacobianFunction model) {
        return optimiser.optimize(new LeastSquaresBuilder()
                .model(model)
                .target(new double[UNKNOWNS])
                .start(start())
                .maxEvaluations(1000)
                .maxIterations(1000)
                .build());
    }
}
