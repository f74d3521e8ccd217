package org.linedrop.benchmarks;

import java.util.concurrent.TimeUnit;
import org.linedrop.io.CircuitFile;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.network.Law;
import org.linedrop.network.Term;
import org.linedrop.network.Trace;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Value and slope of a run of ten parts as a circuit file writes them: three hoses with their ends, two tubes, three unions,
 * two bulkheads; four bores with friction (hose, nipple, two tubes). Over 256 flows, laminar to turbulent.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class RunOfPartsBenchmark {
    private static final int FLOWS = 256;
    private static final int PARTS = 10;
    private static final String FILE = """
            linedrop: 1
            title: Ten parts in a row (invented)
            service: injected fuel
            fluid: E10
            temperature: 40 C
            points:
              a: {kind: held, pressure: 400 kPa}
              b: {kind: draw, takes: 200 L/h}
            runs:
              feed:
                from: a
                to: b
                parts:
                  - {hose: race PTFE -8, length: 0.50 m, ends: straight to straight}
                  - {bulkhead: -8}
                  - {tube: aluminium 1/2 in x 0.035 in, length: 3.20 m}
                  - {union: -8}
                  - {hose: race PTFE -8, length: 0.45 m, ends: straight to straight}
                  - {union: -8}
                  - {hose: race PTFE -8, length: 0.35 m, ends: straight to straight}
                  - {bulkhead: -8}
                  - {tube: aluminium 1/2 in x 0.049 in, length: 0.80 m}
                  - {union: -8}
            """;

    private final double[] flows = new double[FLOWS];
    private final double[] slots = new double[Law.SLOTS];
    private Law law;

    /** Reads the file and checks the law against its rows and its own differences. */
    @Setup
    public void build() {
        CircuitNetwork circuit = CircuitNetwork.of(CircuitFile.read(FILE, "run.yaml"), CircuitNetwork.Setting.USUAL);
        Trace.RunTrace run = circuit.runs().get(0);
        law = circuit.network().law(0);
        if (circuit.circuit().runs().get(0).parts().size() != PARTS) {
            throw new IllegalStateException("not the run that is promised");
        }
        for (int i = 0; i < FLOWS; i++) {
            flows[i] = 1e-3 * Math.pow(10, 2.3 * i / FLOWS);
            double sum = 0;
            for (Trace.Row row : run.rows()) {
                sum += row.liftPa();
                for (Term term : row.friction()) {
                    sum += term.dropPa(flows[i]);
                }
                for (Term term : row.local()) {
                    sum += term.dropPa(flows[i]);
                }
            }
            law.evaluate(flows[i], slots);
            double slope = slots[1];
            if (!(Math.abs(slots[0] - sum) <= 1e-12 * Math.abs(sum))) {
                throw new IllegalStateException("the run loses " + slots[0] + " Pa, its rows " + sum);
            }
            double step = 1e-6 * flows[i];
            law.evaluate(flows[i] + step, slots);
            double above = slots[0];
            law.evaluate(flows[i] - step, slots);
            if (!(Math.abs((above - slots[0]) / (2 * step) - slope) <= 1e-6 * slope)) {
                throw new IllegalStateException("slope " + slope + " at " + flows[i] + " kg/s is not that of the drop");
            }
        }
    }

    /**
     * Value and slope.
     *
     * @return sum over the flows
     */
    @Benchmark
    @OperationsPerInvocation(FLOWS)
    public double valueAndSlope() {
        double sum = 0;
        for (int i = 0; i < FLOWS; i++) {
            law.evaluate(flows[i], slots);
            sum += slots[0] + slots[1];
        }
        return sum;
    }
}
