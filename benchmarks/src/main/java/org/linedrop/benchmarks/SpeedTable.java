package org.linedrop.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.linedrop.network.Network;
import org.linedrop.solver.LargeNetBenchmark;
import org.linedrop.solver.Solver;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Makes the table of {@code benchmarks/README.md}: runs every benchmark, each of which checks its answer first, starts the
 * packaged runner, looks at the jars, and prints a line for each aim with what was measured. Arguments: the folder of the
 * jars ({@code target}), a circuit file, and {@code quick} for a short look.
 */
public final class SpeedTable {
    private static final int RUNNER_STARTS = 15;
    private static final int GRID_SIDE = 316;
    private static final int TREE_PIPES = 100_000;

    private final boolean quick;
    private final Map<String, Times> times = new LinkedHashMap<>();
    private final List<String> lines = new ArrayList<>();

    private SpeedTable(boolean quick) {
        this.quick = quick;
    }

    /** The lowest and the middle of what was measured, in the unit of the benchmark. */
    private record Times(double low, double median, int count) {
        static Times of(double[] all) {
            double[] sorted = all.clone();
            java.util.Arrays.sort(sorted);
            return new Times(sorted[0], sorted[sorted.length / 2], sorted.length);
        }

        Times over(Times other) {
            return new Times(low / other.low, median / other.median, Math.min(count, other.count));
        }

        Times times(double factor) {
            return new Times(low * factor, median * factor, count);
        }

        /** Rates are best when high: the lowest time gives the highest. */
        Times rate(double perTime) {
            return new Times(perTime / low, perTime / median, count);
        }
    }

    /**
     * Runs everything and prints the table.
     *
     * @param arguments folder of the jars, circuit file, and {@code quick} or nothing
     * @throws Exception when a benchmark fails or a file is missing
     */
    public static void main(String[] arguments) throws Exception {
        Path jars = Path.of(arguments.length > 0 ? arguments[0] : "target");
        Path circuit = Path.of(arguments.length > 1 ? arguments[1] : "src/examples/first-feed.yaml");
        SpeedTable table = new SpeedTable(arguments.length > 2 && arguments[2].equals("quick"));
        table.small();
        table.large();
        table.runner(jars, circuit);
        table.print();
    }

    private static ChainedOptionsBuilder options(Class<?>... benchmarks) {
        ChainedOptionsBuilder options = new OptionsBuilder().shouldFailOnError(true).verbosity(VerboseMode.NORMAL);
        for (Class<?> each : benchmarks) {
            options = options.include(each.getName().replace(".", "\\.") + "\\.");
        }
        return options;
    }

    private ChainedOptionsBuilder lengths(ChainedOptionsBuilder options) {
        // many short iterations: the lowest of them is the one that nothing else on the machine disturbed
        TimeValue time = TimeValue.milliseconds(200);
        return options.forks(quick ? 1 : 3)
                .warmupIterations(10) // fewer, and on two threads the compiler still takes one of two cores
                .warmupTime(time)
                .measurementIterations(quick ? 5 : 20)
                .measurementTime(time);
    }

    private void run(String prefix, ChainedOptionsBuilder options) throws RunnerException {
        Collection<RunResult> results = new Runner(options.build()).run();
        for (RunResult result : results) {
            String name = result.getParams().getBenchmark();
            String method = name.substring(name.lastIndexOf('.', name.lastIndexOf('.') - 1) + 1)
                    .replace("Benchmark", "");
            StringBuilder key = new StringBuilder(prefix).append(method);
            for (String parameter : result.getParams().getParamsKeys()) {
                key.append(' ').append(result.getParams().getParam(parameter));
            }
            double[] all = result.getBenchmarkResults().stream()
                    .flatMap(fork -> fork.getIterationResults().stream())
                    .mapToDouble(iteration -> iteration.getPrimaryResult().getScore())
                    .toArray();
            times.put(key.toString(), Times.of(all));
        }
    }

    private Times of(String key) {
        Times found = times.get(key);
        if (found == null) {
            throw new IllegalStateException("nothing measured as " + key + ", only " + times.keySet());
        }
        return found;
    }

    private void small() throws RunnerException {
        run(
                "",
                lengths(options(
                        FrictionFactorBenchmark.class,
                        RunOfPartsBenchmark.class,
                        NetworkSolveBenchmark.class,
                        VariantBenchmark.class,
                        OtherSolversBenchmark.class)));
        run(
                "2 ",
                lengths(new OptionsBuilder()
                        .shouldFailOnError(true)
                        .include("NetworkSolveBenchmark\\.warm")
                        .include("VariantBenchmark\\.")
                        .param("kind", "ONE_BORE")
                        .threads(2)));
        Times log = of("FrictionFactor.logarithm");
        line("exact friction factor", "Math.log, same inputs", of("FrictionFactor.colebrook").over(log), "at most 8 (aim 5)", 8);
        line("the same with slope", "Math.log, same inputs", of("FrictionFactor.colebrookWithSlope").over(log), "", NONE);
        line("run of ten parts, four bores, value and slope, ns", "", of("RunOfParts.valueAndSlope"), "under 500", 500);
        loops("ONE_BORE", "one bore a run", 40, 12);
        loops("HOSE_AND_NIPPLES", "hose and two nipples a run", 50, 18);
        devices("cold");
        devices("warm");
        Times own = of("OtherSolvers.linedrop");
        atLeast("Levenberg-Marquardt of Commons Math", "the kernel, cold", of("OtherSolvers.levenbergMarquardt").over(own), 100);
        line("the same, handed our exact derivatives", "the kernel, cold", of("OtherSolvers.levenbergMarquardtExact").over(own), "", NONE);
        line("dense textbook Newton", "the kernel, cold", of("OtherSolvers.denseNewton").over(own), "", NONE);
        Times warm = of("NetworkSolve.warm ONE_BORE");
        Times variant = of("Variant.variant");
        atLeast("warm kernel solves a second and core", "", warm.rate(1e6), 60_000);
        atLeast("variants a second and core: change, refill, solve, snapshot", "", variant.rate(1e6), 30_000);
        atLeast("warm kernel solves on two threads", "on one", warm.over(of("2 NetworkSolve.warm ONE_BORE")).times(2), 1.8);
        atLeast("variants on two threads", "on one", variant.over(of("2 Variant.variant")).times(2), 1.8);
        lines.add("| bytes allocated per kernel call | | asserted by each run | under 1 | yes |");
    }

    private void loops(String kind, String what, double cold, double warm) {
        line("26 runs, " + what + ", cold, us", "", of("NetworkSolve.cold " + kind), "under " + (int) cold, cold);
        line("26 runs, " + what + ", warm, us", "", of("NetworkSolve.warm " + kind), "under " + (int) warm, warm);
    }

    private void devices(String start) {
        line(
                "with regulator, relief and check valves, " + start,
                "without",
                of("NetworkSolve." + start + " WITH_DEVICES").over(of("NetworkSolve." + start + " ONE_BORE")),
                "under 3",
                3);
    }

    private void large() throws RunnerException {
        int side = quick ? 64 : GRID_SIDE;
        int pipes = quick ? 10_000 : TREE_PIPES;
        run("", brief(options(LargeNetBenchmark.class).param("side", "" + side)));
        run("", brief(options(TreeNetBenchmark.class).param("pipes", "" + pipes)));
        Network network = Nets.grid(side).build();
        int steps = Solver.usual().solve(network).iterations();
        String grid = side + " x " + side + " grid";
        Times refactor = of("LargeNet.refactorAndSolve " + side);
        line(grid + ", steps", "", new Times(steps, steps, 1), "at most 12", 12);
        line(grid + ", cold solve", "steps x EJML refactor and solve", of("LargeNet.solve " + side).over(refactor.times(steps)), "at most 1.5", 1.5);
        line("its minimum-degree order", "one factorisation and solve", of("LargeNet.order " + side).over(refactor), "at most 1", 1);
        line(pipes + "-pipe tree-like net, plan and cold solve, ms", "", of("TreeNet.planAndSolve " + pipes), "under 500", 500);
    }

    private ChainedOptionsBuilder brief(ChainedOptionsBuilder options) {
        return options.forks(1)
                .warmupIterations(2)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(quick ? 2 : 5)
                .measurementTime(TimeValue.seconds(1));
    }

    private void runner(Path jars, Path circuit) throws IOException, InterruptedException {
        Path runner = only(jars, "-runner.jar");
        Path library = jars.resolve(runner.getFileName().toString().replace("-runner", ""));
        double[] wall = new double[quick ? 5 : RUNNER_STARTS];
        for (int i = 0; i < wall.length; i++) {
            long start = System.nanoTime();
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                            "-jar",
                            runner.toString(),
                            "solve",
                            circuit.toString())
                    .redirectErrorStream(true)
                    .start();
            String said = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
            process.waitFor();
            wall[i] = (System.nanoTime() - start) * 1e-9;
            if (!said.contains("Solved in")) {
                throw new IllegalStateException("the runner said: " + said);
            }
        }
        line("runner, solve of an example, start included, wall s", "", Times.of(wall), "under 0.6", 0.6);
        size("library jar, MB", library, 1.5);
        size("runner jar, MB", runner, 8);
    }

    private void size(String what, Path jar, double most) throws IOException {
        double size = Files.size(jar) * 1e-6;
        line(what, "", new Times(size, size, 1), "under " + most, most);
    }

    private static Path only(Path folder, String ending) throws IOException {
        try (var files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(ending))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("no " + ending + " in " + folder + "; build it first"));
        }
    }

    private static final double NONE = Double.NaN;

    private void line(String what, String against, Times measured, String wanted, double most) {
        String reached = Double.isNaN(most) ? "" : measured.median() <= most ? "yes" : measured.low() <= most ? "at best" : "no";
        add(what, against, measured, wanted, reached);
    }

    private void atLeast(String what, String against, Times measured, double least) {
        String reached = measured.median() >= least ? "yes" : measured.low() >= least ? "at best" : "no";
        String wanted = "at least " + (least == Math.rint(least) ? "" + (long) least : "" + least);
        add(what, against, measured, wanted, reached);
    }

    private void add(String what, String against, Times measured, String wanted, String reached) {
        lines.add(String.format(
                Locale.ROOT,
                "| %s | %s | %s; %s | %s | %s |",
                what,
                against,
                shown(measured.low()),
                shown(measured.median()),
                wanted,
                reached));
    }

    private static String shown(double value) {
        return value >= 1000
                ? String.format(Locale.ROOT, "%.0f", value)
                : new java.math.BigDecimal(value)
                        .round(new java.math.MathContext(3))
                        .stripTrailingZeros()
                        .toPlainString();
    }

    private void print() {
        System.out.println();
        System.out.printf(
                Locale.ROOT,
                "JDK %s, %s %s, %d processors%n%n",
                System.getProperty("java.vm.version"),
                System.getProperty("os.name"),
                System.getProperty("os.arch"),
                Runtime.getRuntime().availableProcessors());
        System.out.println("| what | against | best; median | wanted | reached |");
        System.out.println("|---|---|---:|---|---|");
        lines.forEach(System.out::println);
    }
}
