package org.linedrop.network;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.catalogue.AdapterSize;
import org.linedrop.catalogue.EndSize;
import org.linedrop.circuit.Route;
import org.linedrop.hydraulics.AreaChange;
import org.linedrop.hydraulics.BoreFriction;
import org.linedrop.hydraulics.CurvedBore;
import org.linedrop.hydraulics.FittingLoss;
import org.linedrop.hydraulics.LocalLoss;
import org.linedrop.hydraulics.MitreElbow;
import org.linedrop.hydraulics.Nipple;
import org.linedrop.hydraulics.PipeEnd;
import org.linedrop.hydraulics.SweptBend;

/** Laws of hose, tube, ends and fittings at one state of the fluid, in the sense of the run. */
final class PlumbingLaws {
    /** Machined and drawn bores of fittings. */
    private static final double FITTING_ROUGHNESS_M = 1.5e-6;
    /** Centre-line radius over bore of a bent-tube end of which nothing is known. */
    private static final double SWEPT_RATIO = 1.5;

    private final Stream stream;

    PlumbingLaws(Stream stream) {
        this.stream = stream;
    }

    private Law term(FlowTerm.Drop drop) {
        return new FlowTerm(stream.densityKgPerM3(), drop);
    }

    Law friction(double boreM, double lengthM, double roughnessM) {
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        return term((flow, out) -> BoreFriction.pressureDrop(
                flow, boreM, lengthM, roughnessM, stream.transition(), density, viscosity, out));
    }

    /** A length of bore that lies on a bend. */
    Law curved(double boreM, double lengthM, double radiusM, double roughnessM) {
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        return term((flow, out) -> CurvedBore.pressureDrop(
                flow, boreM, lengthM, radiusM, roughnessM, stream.transition(), density, viscosity, out));
    }

    Law local(double boreM, double turbulentK, double k1) {
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        return term((flow, out) -> LocalLoss.pressureDrop(flow, boreM, turbulentK, k1, density, viscosity, out));
    }

    /** A change from one bore to another; infinite on one side is a vessel. */
    Law areaChange(double fromBoreM, double toBoreM) {
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        return term((flow, out) -> AreaChange.pressureDrop(flow, fromBoreM, toBoreM, density, viscosity, out));
    }

    /** From a tank into a bore, or out of it where the flow turns round. */
    Law tankEntry(double boreM) {
        return tankEnd(boreM, PipeEnd.SHARP_K, PipeEnd.EXIT_K);
    }

    /** From a bore into a tank, or the other way where the flow turns round. */
    Law tankExit(double boreM) {
        return tankEnd(boreM, PipeEnd.EXIT_K, PipeEnd.SHARP_K);
    }

    private Law tankEnd(double boreM, double forwardK, double backwardK) {
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        return term((flow, out) ->
                LocalLoss.directed(flow, boreM, forwardK, backwardK, PipeEnd.k1(), density, viscosity, out));
    }

    /** A swept bend of given angle and centre-line radius over bore. */
    Law swept(double boreM, double angleRad, double radiusOverBore) {
        SweptBend bend =
                SweptBend.of(angleRad, Math.min(SweptBend.WIDEST, Math.max(SweptBend.TIGHTEST, radiusOverBore)));
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        return term((flow, out) ->
                bend.pressureDrop(flow, boreM, FITTING_ROUGHNESS_M, stream.transition(), density, viscosity, out));
    }

    /** Two bores that meet at a sharp corner. */
    Law mitre(double boreM, double angleRad) {
        return local(boreM, MitreElbow.turbulentK(angleRad), MitreElbow.k1(angleRad));
    }

    private Law nipple(double firstBoreM, double boreM, double lengthM, double secondBoreM) {
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        // a measured nipple wider than its hose or fitting is no nipple there: no change of area on that side
        double first = Math.max(firstBoreM, boreM);
        double second = Math.max(secondBoreM, boreM);
        return term((flow, out) -> Nipple.pressureDrop(
                flow,
                first,
                boreM,
                lengthM,
                second,
                FITTING_ROUGHNESS_M,
                stream.transition(),
                density,
                viscosity,
                out));
    }

    /**
     * The terms of a hose end.
     *
     * @param hoseFirst whether the flow of the run comes from the hose
     */
    List<Law> end(EndSize end, double hoseBoreM, double nippleBoreM, double throughBoreM, boolean hoseFirst) {
        List<Law> terms = new ArrayList<>();
        double length = end.nippleLengthM().value();
        terms.add(
                hoseFirst
                        ? nipple(hoseBoreM, nippleBoreM, length, throughBoreM)
                        : nipple(throughBoreM, nippleBoreM, length, hoseBoreM));
        switch (end.kind()) {
            case "swept" ->
                terms.add(swept(
                        throughBoreM,
                        end.angleRad(),
                        end.bendRatio() == null ? SWEPT_RATIO : end.bendRatio().value()));
            case "forged" -> terms.add(mitre(throughBoreM, end.angleRad()));
            case "banjo" -> terms.add(local(throughBoreM, stated(end, FittingLoss.BANJO), FittingLoss.BANJO.k1()));
            case "quick-connect" ->
                terms.add(
                        local(throughBoreM, stated(end, FittingLoss.QUICK_COUPLING), FittingLoss.QUICK_COUPLING.k1()));
            default -> {
                // straight, male, barb: the nipple is all there is
            }
        }
        return terms;
    }

    private static double stated(EndSize end, FittingLoss usual) {
        return end.lossCoefficient() == null
                ? usual.turbulentK()
                : end.lossCoefficient().value();
    }

    /** The terms of an adapter: its change of bore, its joint, its corner. */
    List<Law> adapter(AdapterSize size, double fromBoreM, double toBoreM) {
        List<Law> terms = new ArrayList<>();
        double small = Math.min(fromBoreM, toBoreM);
        terms.add(local(small, FittingLoss.UNION.turbulentK(), FittingLoss.UNION.k1()));
        if (fromBoreM != toBoreM) {
            terms.add(areaChange(fromBoreM, toBoreM));
        }
        if (size.angleRad() > 0) {
            terms.add(size.forged() ? mitre(small, size.angleRad()) : swept(small, size.angleRad(), SWEPT_RATIO));
        }
        return terms;
    }

    /** The bends of a tube beyond the straight friction of their length. */
    List<Law> tubeBends(Route bends, double boreM) {
        double ratio = bends.radiusM() / boreM;
        double angle = Math.min(bends.angleRad(), Math.PI);
        List<Law> terms = new ArrayList<>();
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        SweptBend bend = SweptBend.of(angle, Math.min(SweptBend.WIDEST, Math.max(SweptBend.TIGHTEST, ratio)));
        FlowTerm.Drop turning = (flow, out) -> bend.turningDrop(flow, boreM, density, viscosity, out);
        Law one = term(turning);
        terms.add(new Scaled(one, bends.count() * bends.angleRad() / angle));
        return terms;
    }
}
