package org.linedrop.result;

import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Limit;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.fact.Explanation;
import org.linedrop.fact.Inner;
import org.linedrop.fact.Notice;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.network.Trace;
import org.linedrop.solver.Options;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solution;
import org.linedrop.solver.Solver;

/**
 * One circuit solved once: names and numbers joined. Immutable; rows are made from the solved flows on demand with the
 * laws the solve used. On the wire go circuit, setting and solution; the network is built again from them.
 */
public final class Result implements Serializable {
    private static final long serialVersionUID = 1;

    private final transient CircuitNetwork network;
    private final transient Solution solution;
    private final transient List<PartRow> rows;

    private Result(CircuitNetwork network, Solution solution) {
        this.network = network;
        this.solution = solution;
        this.rows = new RowMaker(network, solution).rows();
    }

    /**
     * Solves a circuit at usual bores.
     *
     * @param circuit the circuit
     * @return the result, whatever became of the solve: ask {@link #outcome()} or call {@link #orThrow()}
     */
    public static Result of(Circuit circuit) {
        return of(circuit, CircuitNetwork.Setting.USUAL);
    }

    /**
     * Solves a circuit.
     *
     * @param circuit the circuit
     * @param setting bores, fluid band, losses
     * @return the result
     */
    @Inner
    public static Result of(Circuit circuit, CircuitNetwork.Setting setting) {
        CircuitNetwork network = CircuitNetwork.of(circuit, setting);
        return new Result(network, Solver.of(Options.usual()).solve(network.network()));
    }

    /**
     * Joins a network with numbers that were solved for it, or that somebody wants to see in it.
     *
     * @param network  a circuit's network
     * @param solution a state of it
     * @return the result
     */
    @Inner
    public static Result of(CircuitNetwork network, Solution solution) {
        return new Result(network, solution);
    }

    /** What goes on the wire. */
    private record Wire(Circuit circuit, CircuitNetwork.Setting setting, Solution solution) implements Serializable {
        private Object readResolve() {
            return new Result(CircuitNetwork.of(circuit, setting), solution);
        }
    }

    private Object writeReplace() {
        return new Wire(circuit(), network.setting(), solution);
    }

    private void readObject(ObjectInputStream in) throws InvalidObjectException {
        throw new InvalidObjectException("a result is read from its circuit and solution only");
    }

    /**
     * How the solve ended.
     *
     * @return converged or the reason
     */
    public Outcome outcome() {
        return solution.outcome();
    }

    /**
     * This result, if it converged.
     *
     * @return this
     * @throws IllegalStateException with status and detail when it did not
     */
    public Result orThrow() {
        if (outcome() != Outcome.CONVERGED) {
            throw new IllegalStateException(circuit().title() + ", case "
                    + circuit().caseName() + ": " + outcome().word() + ". " + detail());
        }
        return this;
    }

    /**
     * What the solver says about a solve that did not converge.
     *
     * @return a sentence naming points and figures; empty when converged
     */
    public String detail() {
        return SolveDetail.words(network, solution);
    }

    /**
     * The circuit solved.
     *
     * @return the circuit
     */
    public Circuit circuit() {
        return network.circuit();
    }

    /**
     * The network behind it.
     *
     * @return the network with its trace
     */
    @Inner
    public CircuitNetwork network() {
        return network;
    }

    /**
     * The numbers behind it.
     *
     * @return the solution
     */
    @Inner
    public Solution solution() {
        return solution;
    }

    /**
     * Total pressure of a point of the network, as the rows of its runs join there.
     *
     * @param number number of the point in {@link #network()}
     * @return gauge Pa; in the middle of a tee or Y block that of the leg which carries the whole flow
     */
    double totalPressurePa(int number) {
        return new Junctions(network, solution).totalPressurePa(number);
    }

    /** What stands over a branch of the network: total pressure where it begins less that where it ends, Pa. */
    static double overPa(CircuitNetwork network, Solution solution, int branch) {
        return solution.totalPressurePa(network.network().from(branch))
                - solution.totalPressurePa(network.network().to(branch));
    }

    /**
     * Every row of every run.
     *
     * @return in the circuit's order
     */
    public List<PartRow> rows() {
        return rows;
    }

    /**
     * The rows of one run.
     *
     * @param run its name
     * @return in flow order; empty when there is no such run
     */
    public List<PartRow> rows(String run) {
        return rows.stream().filter(row -> row.run().equals(run)).toList();
    }

    /**
     * Pressures at every point.
     *
     * @return in the circuit's order
     */
    public List<PointRow> points() {
        return new PointMaker(this).points();
    }

    /**
     * Pressures at one point; for a tank at its outlet.
     *
     * @param id its name
     * @return the row, if the point is part of a run
     */
    public Optional<PointRow> point(String id) {
        return points().stream().filter(row -> row.id().equals(id)).findFirst();
    }

    /**
     * What every device does.
     *
     * @return in the circuit's order
     */
    public List<DeviceRow> devices() {
        return DeviceMaker.devices(this);
    }

    /**
     * What one device does.
     *
     * @param id its name
     * @return the row, if the device stands in a run
     */
    public Optional<DeviceRow> device(String id) {
        return devices().stream().filter(row -> row.id().equals(id)).findFirst();
    }

    /**
     * What a limit bounds.
     *
     * @param limit the limit
     * @return its quantity in SI, NaN when it is not known
     */
    public double value(Limit limit) {
        return Quantities.of(this, limit).value();
    }

    /**
     * How far a quantity is from its bound.
     *
     * @param limit the limit
     * @return SI, negative when broken, NaN when the quantity is not known
     */
    public double margin(Limit limit) {
        double value = Quantities.of(this, limit).value();
        if (limit.bound().kind() == LimitText.Kind.STATE) {
            boolean held = Quantities.state(this, limit).equals(limit.bound().words());
            return Double.isNaN(value) ? (held ? 0 : Double.NaN) : value;
        }
        return Double.isNaN(value) ? Double.NaN : limit.bound().margin(value);
    }

    /**
     * What a reader should know of this result.
     *
     * @return warnings in the order of runs and rows
     */
    public List<Notice> warnings() {
        return Warnings.of(this);
    }

    /**
     * Whether the fluid boils on its way into a pump, where the figures for liquid alone say nothing.
     *
     * @return where and by how much, if it does
     */
    public Optional<Notice> boilingAtPump() {
        return Vapour.boilingAtPump(this);
    }

    /**
     * What was taken because nothing was said.
     *
     * @return the circuit's assumptions
     */
    public List<Notice> assumptions() {
        return circuit().assumptions();
    }

    /**
     * How one row came about, step by step, at the solved flow.
     *
     * @param row run and row as {@link PartRow#run()} and {@link PartRow#row()} name them, for example {@code feed 6.3}
     * @return its arithmetic; the drops of its steps add up to {@link PartRow#dropPa()}
     * @throws IllegalArgumentException when there is no such row, naming those there are
     * @throws IllegalStateException    when the solve did not converge
     */
    public Explanation explain(String row) {
        return Explainer.explain(orThrow(), row);
    }

    /** Mass flow of a section of a run in kg/s, positive in the sense of the run. */
    double massFlowKgPerS(Trace.Section section) {
        return solution.massFlowKgPerS(section.branch());
    }

    /** What tees and Y blocks do here. */
    Junctions junctions() {
        return new Junctions(network, solution);
    }
}
