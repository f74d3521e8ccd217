package org.linedrop.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.Examples;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.network.Network;
import org.linedrop.solver.Options;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solution;
import org.linedrop.solver.Solver;
import org.linedrop.solver.Workspace;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.CaseVerdict;
import org.linedrop.study.FeedCheck;

/** Devices in each of their states: closed forms, no jump where a state changes, the same answer from anywhere. */
class DeviceStatesTest {
    private static final String HEAD = """
            linedrop: 1
            title: bench
            fluid: bench liquid
            temperature: 20 C
            engine: {speed: 6000 rpm, manifold: -60 kPa}
            fluids:
              bench liquid: {density: 800 kg/m3, viscosity: 10 cSt}
            """;

    private static Circuit bench(String points, String devices, String runs) {
        return CircuitFile.read(
                HEAD + "points:\n" + points.indent(2) + "devices:\n" + devices.indent(2) + "runs:\n" + runs.indent(2),
                "bench.yaml");
    }

    /** One device between two held pressures. */
    private static DeviceRow between(double inKPa, double outKPa, String device) {
        Circuit circuit = bench(
                String.format(
                        Locale.ROOT,
                        "in: {kind: held, pressure: %s kPa}\nout: {kind: held, pressure: %s kPa}",
                        inKPa,
                        outKPa),
                "device: " + device,
                "line: {from: in, to: out, parts: [{through: device}]}");
        return Result.of(circuit).orThrow().device("device").orElseThrow();
    }

    private static double litresPerHour(DeviceRow row) {
        return row.flowM3PerS() * 3.6e6;
    }

    @Test
    void aCheckValvePassesOneWayFromItsOpeningPressureOn() {
        String valve = "{kind: check valve, opens: 5 kPa, drop: 20 kPa at 200 L/h}";
        assertThat(litresPerHour(between(100, 75, valve))).isCloseTo(200, within(1e-6));
        assertThat(litresPerHour(between(100, 90, valve))).isCloseTo(100, within(1e-6)); // 5 + 20/4
        assertThat(litresPerHour(between(100, 96, valve))).isZero();
        assertThat(litresPerHour(between(100, 300, valve))).isZero();
        assertThat(between(100, 300, valve).state()).isEqualTo("shut");
    }

    @Test
    void aReliefValveHoldsItsLineAndIsAnOrificeBeyond() {
        String valve = "{kind: relief valve, opens: 400 kPa, wide open: 500 kPa at 100 L/h with 10 cSt}";
        assertThat(litresPerHour(between(399, 0, valve))).isZero();
        assertThat(litresPerHour(between(450, 0, valve))).isCloseTo(50, within(1e-6));
        assertThat(litresPerHour(between(650, 200, valve))).isCloseTo(50, within(1e-6)); // counts from its outlet
        assertThat(litresPerHour(between(2000, 0, valve))).isCloseTo(200, within(1e-5));
    }

    @Test
    void aFilterAndItsBypassShareTheFlow() {
        String filter = "{kind: filter, drop: 50 kPa at 100 L/h with 10 cSt, exponent: 1 x, bypass opens: 100 kPa}";
        assertThat(litresPerHour(between(80, 0, filter))).isCloseTo(160, within(1e-6));
        // at 120 kPa the element passes 240 L/h and the bypass, 20 kPa over its opening, its rated 100
        assertThat(litresPerHour(between(120, 0, filter))).isCloseTo(340, within(1e-5));
        assertThat(between(120, 0, filter).state()).contains("bypass open");
    }

    @Test
    void twoRatedPointsAreBothMet() {
        String cooler =
                "{kind: cooler, drop: 60 kPa at 200 L/h with 10 cSt, second point: 20 kPa at 100 L/h with 10 cSt}";
        assertThat(litresPerHour(between(60, 0, cooler))).isCloseTo(200, within(1e-6));
        assertThat(litresPerHour(between(20, 0, cooler))).isCloseTo(100, within(1e-6));
        assertThat(litresPerHour(between(120, 0, cooler))).isCloseTo(300, within(1e-6)); // 0.1 Q + 0.001 Q2
    }

    @Test
    void aTapHalfOpenLosesFourTimesAndAClosedOnePassesNothing() {
        assertThat(litresPerHour(between(40, 0, "{kind: tap, drop: 10 kPa at 100 L/h with 10 cSt, open: 50 %}")))
                .isCloseTo(100, within(1e-6));
        assertThat(litresPerHour(between(40, 0, "{kind: tap, drop: 10 kPa at 100 L/h with 10 cSt, open: 0 %}")))
                .isZero();
    }

    @Test
    void aGearPumpSlipsWithPressureAndThinness() {
        String pump = "{kind: gear pump, moves: 2 mL/rev, leaks: 12 L/h at 400 kPa with 20 cSt, turns: 0.5 x engine}";
        DeviceRow row = between(0, 200, pump);
        // 2 mL x 3000 rpm = 360 L/h; half the pressure, half the viscosity: 12 L/h slip back
        assertThat(litresPerHour(row)).isCloseTo(348, within(1e-6));
        assertThat(row.figure("leakFlowM3PerS").orElseThrow() * 3.6e6).isCloseTo(12, within(1e-6));
    }

    @Test
    void aDeadHeadRegulatorThrottlesAndLocksUp() {
        String regulator =
                "{kind: dead-head regulator, holds: 40 kPa over air, droop: 10 kPa from 0 to 100 L/h, creep: 4 kPa,"
                        + " wide open: 20 kPa at 100 L/h}";
        Circuit circuit = bench(
                "in: {kind: held, pressure: 100 kPa}\nbowl: {kind: draw, takes: 50 L/h, bore: vessel}",
                "device: " + regulator,
                "line: {from: in, to: bowl, parts: [{through: device}]}");
        Result usual = Result.of(circuit).orThrow();
        assertThat(usual.point("bowl").orElseThrow().staticPressurePa()).isCloseTo(35_000, within(1e-3));
        assertThat(usual.device("device").orElseThrow().state()).isEqualTo("in control");
        Result low = Result.of(circuit.with(List.of(Change.of("in", "pressure", "38 kPa"))))
                .orThrow();
        assertThat(low.point("bowl").orElseThrow().staticPressurePa()).isCloseTo(33_000, within(1e-3)); // 38 - 20/4
        assertThat(low.device("device").orElseThrow().state()).isEqualTo("wide open");
        Result still = Result.of(circuit.with(List.of(Change.of("bowl", "takes", "0 L/h"))))
                .orThrow();
        assertThat(still.device("device").orElseThrow().figure("lockUpPa").orElseThrow())
                .isCloseTo(44_000, within(1e-6));
    }

    @Test
    void aBypassRegulatorHoldsOverManifoldOrAPoint() {
        String points =
                "tank: {kind: tank}\nin: {kind: held, pressure: 400 kPa}\nother: {kind: held, pressure: 30 kPa}\n"
                        + "gauge: {kind: joint}";
        String runs = "feed: {from: in, to: regulator.inlet, parts: [{through: filter}]}\n"
                + "spill: {from: regulator.return, to: tank.return, parts: none}\n"
                + "dead end: {from: other, to: gauge, parts: none}";
        String devices = "filter: {kind: filter, drop: 100 kPa at 100 L/h, exponent: 1 x}\n"
                + "regulator: {kind: bypass regulator, holds: %s, rise: 20 kPa from 0 to 100 L/h, wide open: 10 kPa at 400 L/h}";
        // 400 - p = Q and p = set + 0.2 Q: Q = (400 - set) / 1.2
        DeviceRow manifold = Result.of(bench(points, String.format(devices, "300 kPa over manifold"), runs))
                .orThrow()
                .device("regulator")
                .orElseThrow();
        assertThat(manifold.state()).isEqualTo("in control");
        assertThat(litresPerHour(manifold)).isCloseTo((400 - 240) / 1.2, within(1e-3));
        DeviceRow point = Result.of(bench(points, String.format(devices, "300 kPa over other"), runs))
                .orThrow()
                .device("regulator")
                .orElseThrow();
        assertThat(litresPerHour(point)).isCloseTo((400 - 330) / 1.2, within(1e-3));
        DeviceRow shut = Result.of(bench(points, String.format(devices, "450 kPa over air"), runs))
                .orThrow()
                .device("regulator")
                .orElseThrow();
        assertThat(shut.state()).isEqualTo("shut");
        assertThat(shut.flowM3PerS()).isZero();
    }

    @Test
    void aThermostatSharesByTemperatureAndOpensItsBypass() {
        String points = "in: {kind: held, pressure: 100 kPa}\nback: {kind: held, pressure: 0 kPa}";
        String runs = "feed: {from: in, to: plate.inlet, parts: none}\n"
                + "cold: {from: plate.cooler, to: back, parts: [{through: cooler}]}\n"
                + "direct: {from: plate.direct, to: back, parts: none}";
        String devices = "cooler: {kind: cooler, drop: 1 kPa at 1000 L/h, exponent: 1 x}\n"
                + "plate: {kind: thermostat, opens: 80 to 90 C, temperature: %s C, bleed cold: 10 %%, bleed hot: 20 %%,"
                + " drop: 100 kPa at 100 L/h}";
        DeviceRow cold = Result.of(bench(points, String.format(devices, 20), runs))
                .orThrow()
                .device("plate")
                .orElseThrow();
        assertThat(cold.state()).isEqualTo("shut");
        assertThat(cold.figure("directFlowM3PerS").orElseThrow() * 3.6e6).isCloseTo(100, within(1e-2));
        assertThat(cold.figure("coolerFlowM3PerS").orElseThrow() * 3.6e6).isCloseTo(10, within(1e-2));
        DeviceRow hot = Result.of(bench(points, String.format(devices, 95), runs))
                .orThrow()
                .device("plate")
                .orElseThrow();
        assertThat(hot.state()).isEqualTo("open");
        assertThat(hot.figure("directFlowM3PerS").orElseThrow() * 3.6e6).isCloseTo(20, within(1e-2));
    }

    @Test
    void aPumpOfOnePointIsABoundThatBreaksNothing() {
        Circuit circuit = bench(
                "tank: {kind: tank}\nrail: {kind: draw, takes: 200 L/h, bore: vessel}",
                "pump: {kind: pump, gives: 255 L/h at 276 kPa, runs at: 13.5 V}",
                "line: {from: tank, to: rail, parts: [{through: pump}]}");
        Result result = Result.of(circuit).orThrow();
        assertThat(result.point("rail").orElseThrow().staticPressurePa()).isBetween(276_000.0, 276_300.0);
        LimitRow row = CaseResult.of(circuit.with(List.of(Change.limit("rail", "pressure", "at least 400 kPa"))))
                .limits()
                .get(0);
        assertThat(row.verdict()).isEqualTo(Verdict.UNSURE);
        assertThat(row.reason()).contains("at least");
    }

    /** A circuit that changes its state somewhere on the way of one number. */
    record Sweep(String name, String device, double low, double high, DoubleFunction<Circuit> at) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Change number(String subject, String key, double value, String unit) {
        return Change.of(subject, key, value + " " + unit);
    }

    static Stream<Sweep> sweeps() {
        Circuit spill = Examples.circuit("return-style.yaml");
        Circuit oil = Examples.circuit("oil-cooler.yaml");
        return Stream.of(
                new Sweep(
                        "regulator shuts",
                        "regulator",
                        200,
                        460,
                        flow -> spill.with(List.of(number("engine", "flow", flow, "L/h")))),
                new Sweep(
                        "regulator opens wide",
                        "regulator",
                        20,
                        300,
                        set -> spill.in("idle").with(List.of(Change.of("regulator", "holds", set + " kPa over air")))),
                new Sweep(
                        "relief opens",
                        "relief",
                        300,
                        6500,
                        speed -> oil.with(List.of(number("engine", "speed", speed, "rpm")))),
                new Sweep(
                        "thermostat begins to open",
                        "plate",
                        75,
                        85,
                        temperature -> oil.with(List.of(number("plate", "temperature", temperature, "C")))),
                new Sweep(
                        "thermostat is open",
                        "plate",
                        86,
                        95,
                        temperature -> oil.with(List.of(number("plate", "temperature", temperature, "C")))),
                new Sweep(
                        "filter bypass opens",
                        "filter",
                        1,
                        20,
                        clog -> oil.with(List.of(Change.of("filter", "clog", clog + " x")))));
    }

    @ParameterizedTest
    @MethodSource("sweeps")
    void nothingJumpsWhereAStateChanges(Sweep sweep) {
        String first = state(sweep, sweep.low());
        assertThat(state(sweep, sweep.high())).as("the sweep passes a change").isNotEqualTo(first);
        double low = sweep.low();
        double high = sweep.high();
        while (high - low > 1e-6 * high) {
            double middle = (low + high) / 2;
            if (state(sweep, middle).equals(first)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        Result before = Result.of(sweep.at().apply(low)).orThrow();
        Result behind = Result.of(sweep.at().apply(high)).orThrow();
        Solution a = before.solution();
        Solution b = behind.solution();
        for (int i = 0; i < a.branchCount(); i++) {
            assertThat(b.massFlowKgPerS(i)).isCloseTo(a.massFlowKgPerS(i), within(1e-4 * a.flowScaleKgPerS()));
        }
        for (int i = 0; i < a.pointCount(); i++) {
            assertThat(b.totalPressurePa(i)).isCloseTo(a.totalPressurePa(i), within(1e-4 * a.pressureScalePa()));
        }
    }

    private static String state(Sweep sweep, double value) {
        return Result.of(sweep.at().apply(value))
                .orThrow()
                .device(sweep.device())
                .orElseThrow()
                .state();
    }

    static List<String> examples() {
        return Examples.names();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void fromThirtyNineStartsEveryCaseComesToOneAnswer(String name) {
        Circuit file = Examples.circuit(name);
        Random random = new Random(20261125);
        List<String> missed = new ArrayList<>();
        for (String each : file.caseNames()) {
            CircuitNetwork made = CircuitNetwork.of(file.in(each), CircuitNetwork.Setting.USUAL);
            Network network = made.network();
            Solver solver = Solver.of(Options.usual());
            Solution rest = solver.solve(network);
            assertThat(rest.outcome()).isEqualTo(Outcome.CONVERGED);
            Workspace workspace = Workspace.of(network);
            for (int start = 0; start < 39; start++) {
                double[] flow = random.doubles(network.branchCount(), -1, 1)
                        .map(x -> x * rest.flowScaleKgPerS())
                        .toArray();
                double[] pressure = random.doubles(network.pointCount(), -1, 1)
                        .map(x -> x * rest.pressureScalePa())
                        .toArray();
                Outcome outcome = solver.solve(network, rest.at(flow, pressure), workspace);
                Solution found = workspace.snapshot();
                boolean same = outcome == Outcome.CONVERGED;
                for (int i = 0; same && i < rest.branchCount(); i++) {
                    same = Math.abs(found.massFlowKgPerS(i) - rest.massFlowKgPerS(i)) < 1e-6 * rest.flowScaleKgPerS();
                }
                if (!same) {
                    missed.add(each + " start " + start + ": " + outcome.word());
                }
            }
        }
        assertThat(missed).isEmpty();
    }

    @Test
    void pressureFromRailToRailIsALimit() {
        CaseResult result = CaseResult.of(Examples.circuit("return-style.yaml"));
        LimitRow row = result.limits().stream()
                .filter(each -> each.limit().quantity().equals("pressure over right rail"))
                .findFirst()
                .orElseThrow();
        double left = result.usual().device("left rail").orElseThrow().outletPressurePa();
        double right = result.usual().device("right rail").orElseThrow().outletPressurePa();
        assertThat(row.value()).isCloseTo(left - right, within(1e-9));
        assertThat(row.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void injectorsTakeByTheRootOfTheirPressureAndTheirDuty() {
        Circuit circuit = bench(
                "rail: {kind: held, pressure: 340 kPa}\n"
                        + "injectors: {kind: draw, takes: 1600 L/h at 300 kPa over manifold, law: jet, duty: 80 %, bore: vessel}",
                "filter: {kind: filter, drop: 1e-6 kPa at 1000 L/h, exponent: 1 x}",
                "line: {from: rail, to: injectors, parts: [{through: filter}]}");
        // over a manifold at -60 kPa there are 400 kPa across them
        double flow =
                Result.of(circuit).orThrow().device("filter").orElseThrow().flowM3PerS();
        assertThat(flow * 3.6e6).isCloseTo(1600 * 0.8 * Math.sqrt(400.0 / 300.0), within(1e-3));
    }

    @Test
    void aPotSaysHowLongItLasts() {
        Circuit circuit = Examples.circuit("surge-pot.yaml");
        Result starved = Result.of(circuit.in("starved")).orThrow();
        double taken = starved.device("main pump").orElseThrow().flowM3PerS()
                - starved.device("regulator").orElseThrow().flowM3PerS();
        assertThat(starved.warnings())
                .filteredOn(notice -> notice.id().equals("pot-empties"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.value()).isCloseTo(0.002 / taken, within(1e-6)));
    }

    @Test
    void theBuildsGetTheVerdictsTheyAreMadeFor() throws java.io.IOException {
        Circuit builds = CircuitFile.read(java.nio.file.Path.of("validation/builds/return-style.yaml"));
        List<CaseCheck> checks = FeedCheck.of(builds, List.of("1a", "1c", "1l")).cases();
        assertThat(checks.get(0).verdict()).isIn(CaseVerdict.ADEQUATE, CaseVerdict.OVERSIZED);
        assertThat(checks.get(1).verdict()).isEqualTo(CaseVerdict.RETURN_LIMITED);
        assertThat(checks.get(2).verdict()).isEqualTo(CaseVerdict.PUMP_SHORT);
    }

    @Test
    void theVentThatRunsBackwardsIsSeen() throws java.io.IOException {
        Circuit circuit = CircuitFile.read(java.nio.file.Path.of("validation/builds/coolant.yaml"));
        Result result = Result.of(circuit.in("3j")).orThrow();
        assertThat(litresPerHour(result.device("radiator vent").orElseThrow())).isBetween(-90.0, -60.0);
        assertThat(result.warnings())
                .anySatisfy(notice -> assertThat(notice.element()).isEqualTo("vent B"));
    }
}
