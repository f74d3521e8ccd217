package org.linedrop.solver;

import org.linedrop.fact.Inner;
import org.linedrop.network.Network;

/**
 * Derivatives of one output of a solved network in any number of parameters, by one solve with the transposed Newton
 * matrix at the solution.
 *
 * <p>With the residual R(x, t) = 0 of all laws and balances, an output y = w . x changes with a parameter t as
 * dy/dt = -lambda . dR/dt, where J^T lambda = w. Law rows are p_from - p_to - drop(m) for ordinary branches and legs and
 * the device's own residual for devices, in Pa; balance rows are the sum of flows leaving a free point plus its draw, in
 * kg/s. Holds away from joints of the laws and from changes of state.
 */
@Inner
public final class Adjoint {
    private final Network network;
    private final Workspace workspace;
    private final double[] lawPart;
    private final double[] balancePart;

    private Adjoint(Network network, Workspace workspace) {
        this.network = network;
        this.workspace = workspace;
        lawPart = new double[network.branchCount()];
        balancePart = new double[network.pointCount()];
    }

    /**
     * Solves for the multipliers of one output.
     *
     * @param network        the network
     * @param solution       its converged solution
     * @param flowWeights    weight of each branch's mass flow in the output, one per branch
     * @param pressureWeights weight of each point's total pressure in the output, one per point; ignored at fixed points
     * @return the multipliers
     * @throws IllegalArgumentException when the solution has not converged or the matrix is singular there
     */
    public static Adjoint of(Network network, Solution solution, double[] flowWeights, double[] pressureWeights) {
        if (solution.outcome() != Outcome.CONVERGED) {
            throw new IllegalArgumentException("sensitivities need a converged solution, but this one is: "
                    + solution.outcome().word());
        }
        if (flowWeights.length != network.branchCount() || pressureWeights.length != network.pointCount()) {
            throw new IllegalArgumentException("weights must be one per branch and point, but are " + flowWeights.length
                    + " and " + pressureWeights.length);
        }
        Workspace workspace = Workspace.of(network);
        workspace.bind(network);
        solution.copyTo(workspace);
        Residual.evaluate(workspace, network);
        Residual.scale(workspace, network);
        if (!workspace.step.factor(network, false)) {
            workspace.careful = true;
        }
        if (workspace.careful && !workspace.step.factor(network, false)) {
            throw new IllegalArgumentException("the equations have no single slope at this solution");
        }
        Adjoint adjoint = new Adjoint(network, workspace);
        workspace.step.solveTransposed(network, flowWeights, pressureWeights, adjoint.lawPart, adjoint.balancePart);
        return adjoint;
    }

    /**
     * Multiplier of a law row.
     *
     * @param branch number of the branch
     * @return output per Pa
     */
    public double lawMultiplier(int branch) {
        return lawPart[branch];
    }

    /**
     * Multiplier of a balance row. Minus this is the change of the output per kg/s of draw added at the point.
     *
     * @param point number of the point
     * @return output per kg/s, 0 at fixed points
     */
    public double balanceMultiplier(int point) {
        return balancePart[point];
    }

    /**
     * Derivative of the output in a parameter, from the central difference of the residual at the solved state.
     *
     * @param raised  the network with the parameter raised by the step
     * @param lowered the network with the parameter lowered by the step
     * @param step    the step, above 0, in the unit of the parameter
     * @return output per unit of the parameter
     */
    public double derivative(Network raised, Network lowered, double step) {
        return -(weighted(raised) - weighted(lowered)) / (2 * step);
    }

    /**
     * All residuals of a changed network at the solved state, each times its multiplier. Minus the difference of two of
     * these is how far the output moves between the two networks, to first order.
     *
     * @param other a network of the same structure
     * @return in units of the output; 0 for the solved network itself, to rounding
     */
    public double weighted(Network other) {
        if (!other.sharesStructureWith(network)) {
            throw new IllegalArgumentException("the changed network must be refilled from the solved one");
        }
        double[] kept = workspace.pressure.clone();
        for (int i = 0; i < kept.length; i++) {
            if (other.fixed(i)) {
                workspace.pressure[i] = other.fixedPressurePa(i);
            }
        }
        Residual.evaluate(workspace, other);
        System.arraycopy(kept, 0, workspace.pressure, 0, kept.length);
        double sum = 0;
        for (int b = 0; b < lawPart.length; b++) {
            sum += lawPart[b] * workspace.lawResidual[b];
        }
        for (int i = 0; i < balancePart.length; i++) {
            sum += balancePart[i] * workspace.imbalance[i];
        }
        return sum;
    }
}
