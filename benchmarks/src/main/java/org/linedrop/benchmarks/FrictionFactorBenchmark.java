package org.linedrop.benchmarks;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.linedrop.hydraulics.Colebrook;
import org.linedrop.hydraulics.FrictionFactor;
import org.linedrop.hydraulics.Transition;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Exact Colebrook and the blended friction factor with slope, in nanoseconds a call, beside {@code Math.log} over the
 * same 1,024 inputs in the same run: what the machine can do decides what "fast" means. The answers are checked first.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class FrictionFactorBenchmark {
    private static final int INPUTS = 1024;

    private final double[] reynolds = new double[INPUTS];
    private final double[] roughness = new double[INPUTS];
    private final double[] out = new double[2];

    /** Fills the inputs, Re 500 to 5e6 and e/D 0 to 0.05, both spread evenly in the logarithm, and checks the answers. */
    @Setup
    public void fill() {
        Random random = new Random(1939);
        double fixedPointSum = 0;
        for (int i = 0; i < INPUTS; i++) {
            reynolds[i] = 500 * Math.pow(10, 4 * random.nextDouble());
            roughness[i] = i % 8 == 0 ? 0 : 0.05 * Math.pow(10, -4 * random.nextDouble());
            fixedPointSum += fixedPoint(reynolds[i], roughness[i]);
        }
        check("Colebrook", colebrook(), fixedPointSum);
        double blended = 0;
        for (int i = 0; i < INPUTS; i++) {
            double turbulent = fixedPoint(reynolds[i], roughness[i]);
            double t = Math.min(1, Math.max(0, (reynolds[i] - 2000) / 1000));
            double share = t * t * (3 - 2 * t);
            blended += (1 - share) * 64 / reynolds[i] + share * turbulent;
        }
        check("blended factor", blended(), blended);
    }

    /** Colebrook by plain iteration on the equation: slow and independent. */
    private static double fixedPoint(double reynolds, double roughness) {
        double y = 8;
        for (int i = 0; i < 400; i++) {
            y = -2 * Math.log10(roughness / 3.7 + 2.51 * y / reynolds);
        }
        return 1 / (y * y);
    }

    private static void check(String what, double sum, double expected) {
        if (!(Math.abs(sum - expected) < 1e-11 * expected)) {
            throw new IllegalStateException(what + " sums to " + sum + " over the inputs, expected " + expected);
        }
    }

    /**
     * The yardstick.
     *
     * @return sum over the inputs
     */
    @Benchmark
    @OperationsPerInvocation(INPUTS)
    public double logarithm() {
        double sum = 0;
        for (int i = 0; i < INPUTS; i++) {
            sum += Math.log(reynolds[i]);
        }
        return sum;
    }

    /**
     * Exact Colebrook, value alone.
     *
     * @return sum over the inputs
     */
    @Benchmark
    @OperationsPerInvocation(INPUTS)
    public double colebrook() {
        double sum = 0;
        for (int i = 0; i < INPUTS; i++) {
            sum += Colebrook.frictionFactor(reynolds[i], roughness[i]);
        }
        return sum;
    }

    /**
     * Exact Colebrook with its slope.
     *
     * @return sum over the inputs
     */
    @Benchmark
    @OperationsPerInvocation(INPUTS)
    public double colebrookWithSlope() {
        double sum = 0;
        for (int i = 0; i < INPUTS; i++) {
            Colebrook.evaluate(reynolds[i], roughness[i], out);
            sum += out[0] + out[1];
        }
        return sum;
    }

    /**
     * Laminar, blend and turbulent with slope.
     *
     * @return sum of the factors over the inputs
     */
    @Benchmark
    @OperationsPerInvocation(INPUTS)
    public double blended() {
        double sum = 0;
        for (int i = 0; i < INPUTS; i++) {
            FrictionFactor.evaluate(reynolds[i], roughness[i], Transition.DEFAULT, out);
            sum += out[0];
        }
        return sum;
    }
}
