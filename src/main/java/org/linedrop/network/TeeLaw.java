package org.linedrop.network;

import org.linedrop.hydraulics.Reynolds;
import org.linedrop.hydraulics.Tee;

/**
 * A tee or Y block between three port points and a centre. The centre stands for one and the same port in every pattern,
 * so that the fall of pressure from each port to it is continuous where a leg's flow turns round; which leg loses what is
 * counted from the common leg afterwards.
 *
 * @param tee        its law: legs 0 and 1 are the run of a tee or the legs of a Y block, leg 2 is the branch or common port
 * @param runBoreM   bore of legs 0 and 1
 * @param stream     the fluid in it
 * @param centrePort the port whose pressure the centre has
 * @param share      1, or next to nothing where a network without loss is asked for
 */
record TeeLaw(Tee tee, double runBoreM, Stream stream, int centrePort, double share) implements JunctionLaw {
    private static final int LEGS = 3;

    @Override
    public int legs() {
        return LEGS;
    }

    @Override
    public int evaluate(double[] massFlowKgPerS, double[] dropPa, double[] slope) {
        double density = stream.densityKgPerM3();
        double second = -massFlowKgPerS[1] / density;
        double branch = -massFlowKgPerS[2] / density;
        tee.evaluate(second, branch, density, stream.dynamicViscosityPaS(), slope);
        double fall1 = slope[0];
        double fall2 = slope[1];
        double fall1By1 = slope[2];
        double fall1By2 = slope[3];
        double fall2By1 = slope[4];
        double fall2By2 = slope[5];
        for (int leg = 0; leg < LEGS; leg++) {
            // p(leg) - p(centre) is what leg 0 falls to the centre's port less what it falls to this leg
            double atCentre = pick(centrePort, fall1, fall2);
            dropPa[leg] = share * (atCentre - pick(leg, fall1, fall2));
            double perFlow = -share / density; // flows of the tee count outwards, those of the network inwards
            slope[leg * LEGS] = 0;
            slope[leg * LEGS + 1] = perFlow * (pick(centrePort, fall1By1, fall2By1) - pick(leg, fall1By1, fall2By1));
            slope[leg * LEGS + 2] = perFlow * (pick(centrePort, fall1By2, fall2By2) - pick(leg, fall1By2, fall2By2));
        }
        Tee.Pattern pattern = Tee.pattern(second, branch);
        return pattern.commonPort() + (pattern.divides() ? 0 : LEGS);
    }

    private static double pick(int leg, double first, double second) {
        return leg == 0 ? 0 : leg == 1 ? first : second;
    }

    @Override
    public int commonLeg(int state) {
        return state % LEGS;
    }

    /** One velocity head at 1 m/s over the flow that makes it: the size of things, no more. */
    @Override
    public double typicalSlopePaPerKgPerS() {
        return share * 0.5 / Reynolds.areaM2(runBoreM);
    }

    @Override
    public String stateWord(int state) {
        return state < LEGS ? "dividing" : "combining";
    }
}
