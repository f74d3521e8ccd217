package org.linedrop.network;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Points, branches and their laws, by number: all a solver needs to know. Immutable; its arrays are not handed out.
 * Made by {@link #builder()} or from a circuit.
 */
public final class Network {

    /** What kind of law a branch has. */
    public enum Kind {
        /** A {@link Law} in flow alone. */
        LAW,
        /** A {@link DeviceLaw} in flow and pressures. */
        DEVICE,
        /** A leg of a {@link JunctionLaw}. */
        LEG
    }

    /** What networks that share a plan of elimination have in common. */
    private static final class Structure {
        private final int[] from;
        private final int[] to;
        private final int[] reference;
        private final int[] junctionOf;
        private final Kind[] kind;
        private final boolean[] fixed;
        private final int[] firstLeg;

        Structure(NetworkBuilder b) {
            int branches = b.branches.size();
            from = new int[branches];
            to = new int[branches];
            reference = new int[branches];
            junctionOf = new int[branches];
            kind = new Kind[branches];
            firstLeg = new int[b.junctions.size()];
            for (int i = branches - 1; i >= 0; i--) {
                NetworkBuilder.Branch branch = b.branches.get(i);
                from[i] = branch.from();
                to[i] = branch.to();
                reference[i] = branch.reference();
                junctionOf[i] = branch.junction();
                kind[i] = branch.law() != null ? Kind.LAW : branch.device() != null ? Kind.DEVICE : Kind.LEG;
                if (branch.junction() >= 0) {
                    firstLeg[branch.junction()] = i;
                }
            }
            fixed = new boolean[b.points.size()];
            for (int i = 0; i < fixed.length; i++) {
                fixed[i] = !Double.isNaN(b.points.get(i).pressurePa());
            }
        }

        boolean same(Structure other) {
            return Arrays.equals(from, other.from)
                    && Arrays.equals(to, other.to)
                    && Arrays.equals(reference, other.reference)
                    && Arrays.equals(junctionOf, other.junctionOf)
                    && Arrays.equals(kind, other.kind)
                    && Arrays.equals(fixed, other.fixed);
        }
    }

    private final Structure structure;
    private final double[] pressurePa;
    private final double[] drawKgPerS;
    private final double[] vapourPa;
    private final double ambientPa;
    private final @Nullable Law[] laws;
    private final @Nullable DeviceLaw[] devices;
    private final JunctionLaw[] junctions;
    private final double[] leastKgPerS;
    private final double[] mostKgPerS;
    private final Scales scales;

    Network(NetworkBuilder b, @Nullable Network like) {
        Structure own = new Structure(b);
        if (like != null && !like.structure.same(own)) {
            throw new IllegalArgumentException(
                    "refilling needs the same points, branches and kinds in the same order; build a new network instead");
        }
        structure = like != null ? like.structure : own;
        int points = b.points.size();
        int branches = b.branches.size();
        pressurePa = new double[points];
        drawKgPerS = new double[points];
        vapourPa = new double[points];
        for (int i = 0; i < points; i++) {
            pressurePa[i] = b.points.get(i).pressurePa();
            drawKgPerS[i] = b.points.get(i).drawKgPerS();
            vapourPa[i] = b.vapourPa.get(i);
        }
        ambientPa = b.ambientPa;
        laws = new Law[branches];
        devices = new DeviceLaw[branches];
        leastKgPerS = new double[branches];
        mostKgPerS = new double[branches];
        for (int i = 0; i < branches; i++) {
            laws[i] = b.branches.get(i).law();
            devices[i] = b.branches.get(i).device();
            leastKgPerS[i] = b.branches.get(i).leastKgPerS();
            mostKgPerS[i] = b.branches.get(i).mostKgPerS();
        }
        junctions = b.junctions.toArray(new JunctionLaw[0]);
        scales = new Scales(this);
    }

    /**
     * Starts a network that has no circuit behind it.
     *
     * @return an empty builder
     */
    public static NetworkBuilder builder() {
        return new NetworkBuilder();
    }

    /**
     * The same structure with new coefficients, pressures and draws; a solver's workspace made for this network serves
     * the new one too.
     *
     * @param sameShape a builder with the same points, branches and kinds in the same order
     * @return the new network
     * @throws IllegalArgumentException when the shape differs
     */
    public Network refilled(NetworkBuilder sameShape) {
        return new Network(sameShape, this);
    }

    /**
     * Whether a workspace of one serves the other.
     *
     * @param other another network
     * @return true when points, branches and kinds are the same in the same order, as after {@link #refilled}
     */
    public boolean sharesStructureWith(Network other) {
        return structure == other.structure || structure.same(other.structure);
    }

    /**
     * Number of points.
     *
     * @return count
     */
    public int pointCount() {
        return pressurePa.length;
    }

    /**
     * Number of branches, legs of junctions included.
     *
     * @return count
     */
    public int branchCount() {
        return laws.length;
    }

    /**
     * Number of junctions.
     *
     * @return count
     */
    public int junctionCount() {
        return junctions.length;
    }

    /**
     * First point of a branch.
     *
     * @param branch number of the branch
     * @return number of the point
     */
    public int from(int branch) {
        return structure.from[branch];
    }

    /**
     * Second point of a branch.
     *
     * @param branch number of the branch
     * @return number of the point
     */
    public int to(int branch) {
        return structure.to[branch];
    }

    /**
     * Point a device refers to.
     *
     * @param branch number of the branch
     * @return number of the point, -1 when none
     */
    public int reference(int branch) {
        return structure.reference[branch];
    }

    /**
     * Kind of a branch.
     *
     * @param branch number of the branch
     * @return its kind
     */
    public Kind kind(int branch) {
        return structure.kind[branch];
    }

    /**
     * Law of a branch.
     *
     * @param branch number of a branch of kind {@code LAW}
     * @return its law
     */
    public Law law(int branch) {
        Law law = laws[branch];
        if (law == null) {
            throw new IllegalArgumentException("branch " + branch + " is a " + kind(branch) + ", not a LAW");
        }
        return law;
    }

    /**
     * Law of a device.
     *
     * @param branch number of a branch of kind {@code DEVICE}
     * @return its law
     */
    public DeviceLaw device(int branch) {
        DeviceLaw law = devices[branch];
        if (law == null) {
            throw new IllegalArgumentException("branch " + branch + " is a " + kind(branch) + ", not a DEVICE");
        }
        return law;
    }

    /**
     * Law of a junction.
     *
     * @param junction number of the junction, from 0
     * @return its law
     */
    public JunctionLaw junction(int junction) {
        return junctions[junction];
    }

    /**
     * Junction of a leg.
     *
     * @param branch number of the branch
     * @return number of the junction, -1 when the branch is no leg
     */
    public int junctionOf(int branch) {
        return structure.junctionOf[branch];
    }

    /**
     * First leg of a junction; the others follow.
     *
     * @param junction number of the junction
     * @return number of the branch
     */
    public int firstLeg(int junction) {
        return structure.firstLeg[junction];
    }

    /**
     * Whether the pressure of a point is given.
     *
     * @param point number of the point
     * @return true when given
     */
    public boolean fixed(int point) {
        return structure.fixed[point];
    }

    /**
     * Given pressure of a point.
     *
     * @param point number of the point
     * @return total pressure in Pa, NaN when it is sought
     */
    public double fixedPressurePa(int point) {
        return pressurePa[point];
    }

    /**
     * Draw at a point.
     *
     * @param point number of the point
     * @return mass flow leaving the network in kg/s; 0 at fixed points
     */
    public double drawKgPerS(int point) {
        return drawKgPerS[point];
    }

    /**
     * Vapour pressure at a point.
     *
     * @param point number of the point
     * @return Pa absolute, NaN when not given
     */
    public double vapourPressurePa(int point) {
        return vapourPa[point];
    }

    /**
     * Absolute pressure of the network's zero.
     *
     * @return Pa absolute, NaN when not given
     */
    public double ambientPa() {
        return ambientPa;
    }

    /**
     * Least mass flow a branch can pass.
     *
     * @param branch number of the branch
     * @return kg/s, minus infinity when unlimited
     */
    public double leastFlowKgPerS(int branch) {
        return leastKgPerS[branch];
    }

    /**
     * Most mass flow a branch can pass.
     *
     * @param branch number of the branch
     * @return kg/s, infinity when unlimited
     */
    public double mostFlowKgPerS(int branch) {
        return mostKgPerS[branch];
    }

    /**
     * The pressure scale of what is given: the largest of the spread of given pressures, the drops at zero flow (pump
     * rise, lift) and the set pressures, not under 1 Pa.
     *
     * @return pressure in Pa
     */
    public double pressureScalePa() {
        return scales.pressurePa;
    }

    /**
     * Flow that a nominal pressure drives through a branch; orders branches from narrow to wide.
     *
     * @param branch number of the branch
     * @return mass flow in kg/s; infinity for a law whose drop does not change with flow
     */
    public double nominalFlowKgPerS(int branch) {
        return scales.flowKgPerS[branch];
    }

    /**
     * Secant slope at the nominal flow.
     *
     * @param branch number of the branch
     * @return slope in Pa/(kg/s); 0 for a law whose drop does not change with flow
     */
    public double nominalSlopePaPerKgPerS(int branch) {
        return scales.slopePaPerKgPerS[branch];
    }

    /**
     * The least flow scale: what the pressure scale drives through the most resistive branch.
     *
     * @return mass flow in kg/s, above zero
     */
    public double flowScaleKgPerS() {
        return scales.leastFlowKgPerS;
    }
}
