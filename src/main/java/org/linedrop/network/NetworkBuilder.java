package org.linedrop.network;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Collects points and branches of a network, with or without a circuit behind them. Points and branches are numbered
 * from 0 in the order of the calls. Not for use by several threads.
 *
 * <p>Pressures are total pressures over one common zero of the caller's choice; {@link #ambient} says what absolute
 * pressure that zero stands for, which only the check for vapour and vacuum needs. Differences of height stand in the
 * laws, as part of the drop.
 */
public final class NetworkBuilder {
    /** One branch before it is frozen. */
    record Branch(
            int from,
            int to,
            int reference,
            @Nullable Law law,
            @Nullable DeviceLaw device,
            int junction,
            double leastKgPerS,
            double mostKgPerS) {}

    /** One point before it is frozen; pressure is NaN for free points. */
    record Point(double pressurePa, double drawKgPerS) {}

    final List<Point> points = new ArrayList<>();
    final List<Branch> branches = new ArrayList<>();
    final List<JunctionLaw> junctions = new ArrayList<>();
    final List<Double> vapourPa = new ArrayList<>();
    double ambientPa = Double.NaN;

    NetworkBuilder() {}

    /**
     * Adds a point whose pressure is given, such as the surface of a tank.
     *
     * @param totalPressurePa total pressure in Pa over the network's zero, finite
     * @return the number of the point
     */
    public int fixedPoint(double totalPressurePa) {
        if (!Double.isFinite(totalPressurePa)) {
            throw new IllegalArgumentException(
                    "point " + points.size() + ": given pressure must be finite, but is " + totalPressurePa + " Pa");
        }
        return point(new Point(totalPressurePa, 0));
    }

    /**
     * Adds a point whose pressure is sought.
     *
     * @param massDrawKgPerS mass flow that leaves the network there, in kg/s; 0 for a joint, negative for a supply
     * @return the number of the point
     */
    public int freePoint(double massDrawKgPerS) {
        if (!Double.isFinite(massDrawKgPerS)) {
            throw new IllegalArgumentException(
                    "point " + points.size() + ": draw must be finite, but is " + massDrawKgPerS + " kg/s");
        }
        return point(new Point(Double.NaN, massDrawKgPerS));
    }

    private int point(Point point) {
        points.add(point);
        vapourPa.add(Double.NaN);
        return points.size() - 1;
    }

    /**
     * Adds a branch that any flow may pass.
     *
     * @param from first point
     * @param to   second point
     * @param law  its law
     * @return the number of the branch
     */
    public int branch(int from, int to, Law law) {
        return branch(from, to, law, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /**
     * Adds a branch with what it can pass, for example a pump up to its run-out. The limits serve the flow check before
     * the solve, which names the limiting cut when the draws ask for more; they do not bend the law.
     *
     * @param from        first point
     * @param to          second point
     * @param law         its law
     * @param leastKgPerS least mass flow in kg/s, minus infinity when unlimited, at most 0
     * @param mostKgPerS  most mass flow in kg/s, infinity when unlimited, at least 0
     * @return the number of the branch
     */
    public int branch(int from, int to, Law law, double leastKgPerS, double mostKgPerS) {
        if (!(leastKgPerS <= 0 && mostKgPerS >= 0)) {
            throw new IllegalArgumentException("branch " + branches.size()
                    + ": the flows it can pass must span zero, but are " + leastKgPerS + " to " + mostKgPerS + " kg/s");
        }
        return add(new Branch(from, to, -1, law, null, -1, leastKgPerS, mostKgPerS));
    }

    /**
     * Adds a switching or vertical device.
     *
     * @param from           inlet point
     * @param to             outlet point
     * @param referencePoint point whose pressure the device refers to, or -1
     * @param law            its law
     * @return the number of the branch
     */
    public int device(int from, int to, int referencePoint, DeviceLaw law) {
        if (referencePoint >= 0) {
            check(referencePoint);
        }
        if (!(law.wideOpenSlopePaPerKgPerS() > 0 && law.leastFlowKgPerS() <= law.mostFlowKgPerS())) {
            throw new IllegalArgumentException("branch " + branches.size()
                    + ": a device needs a wide-open slope above 0 and a least flow not over its most, but has "
                    + law.wideOpenSlopePaPerKgPerS() + " Pa/(kg/s), " + law.leastFlowKgPerS() + " to "
                    + law.mostFlowKgPerS() + " kg/s");
        }
        return add(new Branch(from, to, referencePoint, null, law, -1, law.leastFlowKgPerS(), law.mostFlowKgPerS()));
    }

    /**
     * Adds a junction: a branch from each port point to the centre point, coupled by one law.
     *
     * @param centre the point in the middle, normally a free point without a draw
     * @param ports  the points at the ports, in the order of the law's legs
     * @param law    its law
     * @return the number of the first leg's branch; the others follow in order
     */
    public int junction(int centre, int[] ports, JunctionLaw law) {
        if (ports.length != law.legs()) {
            throw new IllegalArgumentException("junction " + junctions.size() + ": its law has " + law.legs()
                    + " legs, but " + ports.length + " ports are given");
        }
        if (!(law.typicalSlopePaPerKgPerS() > 0)) {
            throw new IllegalArgumentException("junction " + junctions.size()
                    + ": typical slope must be above 0, but is " + law.typicalSlopePaPerKgPerS() + " Pa/(kg/s)");
        }
        int first = branches.size();
        for (int port : ports) {
            add(new Branch(
                    port,
                    centre,
                    -1,
                    null,
                    null,
                    junctions.size(),
                    Double.NEGATIVE_INFINITY,
                    Double.POSITIVE_INFINITY));
        }
        junctions.add(law);
        return first;
    }

    /**
     * Says what absolute pressure the network's zero stands for. Without it no point is checked for vacuum or vapour.
     *
     * @param absolutePa absolute pressure in Pa where the total pressure is 0: the air pressure when pressures are gauge
     * @return this builder
     */
    public NetworkBuilder ambient(double absolutePa) {
        if (!(absolutePa >= 0 && absolutePa < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("ambient pressure must be at least 0 Pa, but is " + absolutePa);
        }
        ambientPa = absolutePa;
        return this;
    }

    /**
     * Gives the vapour pressure of the fluid at a point. Without it the point is only checked for a vacuum.
     *
     * @param point      the point
     * @param absolutePa vapour pressure in Pa absolute, at least 0
     * @return this builder
     */
    public NetworkBuilder vapour(int point, double absolutePa) {
        check(point);
        if (!(absolutePa >= 0 && absolutePa < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "point " + point + ": vapour pressure must be at least 0 Pa, but is " + absolutePa);
        }
        vapourPa.set(point, absolutePa);
        return this;
    }

    private int add(Branch branch) {
        check(branch.from());
        check(branch.to());
        if (branch.from() == branch.to()) {
            throw new IllegalArgumentException("branch " + branches.size() + ": both ends are point " + branch.from()
                    + "; it must join two points");
        }
        branches.add(branch);
        return branches.size() - 1;
    }

    private void check(int point) {
        if (point < 0 || point >= points.size()) {
            throw new IllegalArgumentException(
                    "there is no point " + point + "; points are 0 to " + (points.size() - 1));
        }
    }

    /**
     * Freezes what was collected. The builder may be used further and built again.
     *
     * @return the network
     */
    public Network build() {
        return new Network(this, null);
    }
}
