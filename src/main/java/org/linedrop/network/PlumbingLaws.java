package org.linedrop.network;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.AdapterSize;
import org.linedrop.catalogue.EndSize;
import org.linedrop.circuit.Route;
import org.linedrop.fact.Explanation;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Formula;
import org.linedrop.hydraulics.AreaChange;
import org.linedrop.hydraulics.Band;
import org.linedrop.hydraulics.BoreFriction;
import org.linedrop.hydraulics.ConvolutedBore;
import org.linedrop.hydraulics.CurvedBore;
import org.linedrop.hydraulics.FittingLoss;
import org.linedrop.hydraulics.FlowCoefficient;
import org.linedrop.hydraulics.LocalLoss;
import org.linedrop.hydraulics.MitreElbow;
import org.linedrop.hydraulics.Nipple;
import org.linedrop.hydraulics.PipeEnd;
import org.linedrop.hydraulics.Restrictor;
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

    /** An account at the state of this fluid. */
    private interface Told {
        Explanation.Group by(Accounts accounts);
    }

    private Term term(FlowTerm.Drop drop, Told told) {
        return lawTerm(new FlowTerm(stream.densityKgPerM3(), drop), told);
    }

    private Term lawTerm(Law law, Told told) {
        return new Term(law, massFlow -> told.by(new Accounts(stream, massFlow)));
    }

    Term friction(String name, double boreM, double lengthM, double roughnessM) {
        BoreFriction friction = BoreFriction.of(
                boreM, lengthM, roughnessM, stream.transition(), stream.densityKgPerM3(), stream.dynamicViscosityPaS());
        return lawTerm(
                new BoreTerm(stream.densityKgPerM3(), friction, null, null),
                told -> told.group(name, "", boreM, List.of(told.friction("friction", boreM, lengthM, roughnessM))));
    }

    /** A convoluted bore of which nothing was measured; a bend adds nothing to it that anybody published. */
    Term convoluted(String name, double boreM, double lengthM) {
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        double pitch = ConvolutedBore.USUAL_PITCH_OVER_BORE * boreM;
        Law law = new FlowTerm(
                density,
                (flow, out) -> ConvolutedBore.pressureDrop(flow, boreM, pitch, lengthM, density, viscosity, out));
        return new Term(
                law,
                massFlow -> Accounts.whole(
                        name,
                        law,
                        massFlow,
                        "convoluted",
                        "(f + 64/Re) L/D rho v2/2, pitch 0.2 D assumed",
                        List.of(),
                        ConvolutedBore.FORMULA));
    }

    /** A bore that was measured to lose some multiple of a smooth straight one. */
    Term multiplied(String name, double boreM, double lengthM, double factor) {
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        Law law = new FlowTerm(
                density,
                (flow, out) -> ConvolutedBore.multipliedDrop(
                        flow, boreM, lengthM, factor, stream.transition(), density, viscosity, out));
        return new Term(
                law,
                massFlow -> Accounts.whole(
                        name,
                        law,
                        massFlow,
                        "measured",
                        "loss factor x friction of a smooth straight bore",
                        List.of(),
                        BoreFriction.FORMULA));
    }

    /** A length of bore that lies on a bend. */
    Term curved(String name, double boreM, double lengthM, double radiusM, double roughnessM) {
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        return term(
                (flow, out) -> CurvedBore.pressureDrop(
                        flow, boreM, lengthM, radiusM, roughnessM, stream.transition(), density, viscosity, out),
                told -> told.group(
                        name,
                        "the part that lies on bends",
                        boreM,
                        List.of(told.curved(boreM, lengthM, radiusM, roughnessM))));
    }

    private Law local(double boreM, double turbulentK, double k1) {
        return directed(boreM, turbulentK, turbulentK, k1);
    }

    private Law directed(double boreM, double forwardK, double backwardK, double k1) {
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        return new LocalTerm(
                density,
                LocalLoss.of(boreM, forwardK, k1, density, viscosity),
                LocalLoss.of(boreM, backwardK, k1, density, viscosity));
    }

    /** A change from one bore to another; infinite on one side is a vessel. */
    Term areaChange(String name, double fromBoreM, double toBoreM) {
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        return lawTerm(
                new LocalTerm(
                        density,
                        AreaChange.of(fromBoreM, toBoreM, true, density, viscosity),
                        AreaChange.of(fromBoreM, toBoreM, false, density, viscosity)),
                told -> told.areaChange(name, fromBoreM, toBoreM));
    }

    /** From a tank into a bore, or out of it where the flow turns round. */
    Term tankEntry(double boreM) {
        return tankEnd(boreM, PipeEnd.SHARP_K, PipeEnd.EXIT_K, true);
    }

    /** From a bore into a tank, or the other way where the flow turns round. */
    Term tankExit(double boreM) {
        return tankEnd(boreM, PipeEnd.EXIT_K, PipeEnd.SHARP_K, false);
    }

    private Term tankEnd(double boreM, double forwardK, double backwardK, boolean fromTank) {
        return lawTerm(directed(boreM, forwardK, backwardK, PipeEnd.k1()), told -> told.tankEnd(fromTank, boreM));
    }

    /** A swept bend of given angle and centre-line radius over bore. */
    Term swept(String name, double boreM, double angleRad, double radiusOverBore, String remark) {
        SweptBend bend =
                SweptBend.of(angleRad, Math.min(SweptBend.WIDEST, Math.max(SweptBend.TIGHTEST, radiusOverBore)));
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        return term(
                (flow, out) -> bend.pressureDrop(
                        flow, boreM, FITTING_ROUGHNESS_M, stream.transition(), density, viscosity, out),
                told -> told.swept(name, bend, angleRad, remark, boreM, FITTING_ROUGHNESS_M, true));
    }

    /** Two bores that meet at a sharp corner. */
    Term mitre(String name, double boreM, double angleRad) {
        return lawTerm(
                local(boreM, MitreElbow.turbulentK(angleRad), MitreElbow.k1(angleRad)),
                told -> told.mitre(name, boreM, angleRad));
    }

    private Term nipple(double firstBoreM, double boreM, double lengthM, double secondBoreM) {
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        // a measured nipple wider than its hose or fitting is no nipple there: no change of area on that side
        double first = Math.max(firstBoreM, boreM);
        double second = Math.max(secondBoreM, boreM);
        Nipple shape = Nipple.of(first, boreM, lengthM, second);
        return lawTerm(
                new BoreTerm(
                        density,
                        shape.friction(FITTING_ROUGHNESS_M, stream.transition(), density, viscosity),
                        shape.edges(true, density, viscosity),
                        shape.edges(false, density, viscosity)),
                told -> told.nipple(first, boreM, lengthM, second, FITTING_ROUGHNESS_M));
    }

    /**
     * The terms of a hose end.
     *
     * @param kind      the kind of end, which may be another than its own
     * @param hoseFirst whether the flow of the run comes from the hose
     */
    List<Term> end(
            EndSize end, String kind, double hoseBoreM, double nippleBoreM, double throughBoreM, boolean hoseFirst) {
        List<Term> terms = new ArrayList<>();
        double length = end.nippleLengthM().value();
        terms.add(
                hoseFirst
                        ? nipple(hoseBoreM, nippleBoreM, length, throughBoreM)
                        : nipple(throughBoreM, nippleBoreM, length, hoseBoreM));
        switch (kind) {
            case "swept" -> terms.add(sweptEnd(end, throughBoreM));
            case "forged" -> terms.add(mitre("elbow", throughBoreM, end.angleRad()));
            case "banjo" -> terms.add(known("banjo", throughBoreM, end.lossCoefficient(), FittingLoss.BANJO));
            case "quick-connect" ->
                terms.add(known("coupling", throughBoreM, end.lossCoefficient(), FittingLoss.QUICK_COUPLING));
            default -> {
                // straight, male, barb: the nipple is all there is
            }
        }
        return terms;
    }

    private Term sweptEnd(EndSize end, double throughBoreM) {
        Figure ratio = end.bendRatio();
        return swept(
                "elbow",
                throughBoreM,
                end.angleRad(),
                ratio == null ? SWEPT_RATIO : ratio.value(),
                bentTube(ratio == null ? SWEPT_RATIO : ratio.value(), ratio == null));
    }

    private static String bentTube(double ratio, boolean assumed) {
        return "bent tube, R/D " + Math.round(ratio * 100) / 100.0 + (assumed ? " (assumed)" : "");
    }

    /** A part that is known by a coefficient, stated or usual. */
    private Term known(String name, double boreM, @Nullable Figure stated, FittingLoss usual) {
        double k = stated == null ? usual.turbulentK() : stated.value();
        String equation = "K = " + k + ", + " + Math.round(usual.k1()) + "/Re";
        Formula formula =
                Accounts.stated("K of a " + name, equation, stated == null ? usual.source() : stated.source());
        Band band = stated == null
                ? Band.ratios(usual.bandLow() / k, usual.bandHigh() / k, usual.source())
                : Band.ratios(stated.low() / k, stated.high() / k, stated.source());
        return lawTerm(
                local(boreM, k, usual.k1()), told -> told.coefficient(name, boreM, k, usual.k1(), band, formula));
    }

    /** The terms of an adapter: its change of bore, its joint, its corner. */
    List<Term> adapter(AdapterSize size, boolean forged, double fromBoreM, double toBoreM) {
        List<Term> terms = new ArrayList<>();
        double small = Math.min(fromBoreM, toBoreM);
        terms.add(known("union", small, null, FittingLoss.UNION));
        if (fromBoreM != toBoreM) {
            terms.add(areaChange("from its one bore to its other", fromBoreM, toBoreM));
        }
        if (size.angleRad() > 0) {
            terms.add(
                    forged
                            ? mitre("elbow", small, size.angleRad())
                            : swept("elbow", small, size.angleRad(), SWEPT_RATIO, bentTube(SWEPT_RATIO, true)));
        }
        return terms;
    }

    /** A drilled hole between two bores; one wider than a bore is no change of area on that side. */
    Term restrictor(double fromBoreM, double holeM, double lengthM, double toBoreM) {
        Restrictor shape = Restrictor.of(Math.max(fromBoreM, holeM), holeM, lengthM, Math.max(toBoreM, holeM));
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        return term(
                (flow, out) -> shape.pressureDrop(flow, stream.transition(), density, viscosity, out),
                told -> told.restrictor(shape, holeM, lengthM));
    }

    /** An open valve of a known build. */
    Term valve(String name, double boreM, FittingLoss usual) {
        return known(name, boreM, null, usual);
    }

    /** An open valve of known Kv, taken exactly. */
    Term valve(String name, double boreM, Figure kv) {
        double k = FlowCoefficient.lossCoefficient(kv.value(), boreM);
        double low = kv.value() / kv.high();
        double high = kv.value() / kv.low();
        Formula law = FlowCoefficient.FORMULA;
        Band band = kv.hasBand() ? Band.ratios(low * low, high * high, kv.source()) : null;
        return lawTerm(local(boreM, k, 0), told -> told.coefficient(name, boreM, k, 0, band, law));
    }

    /** The bends of a tube beyond the straight friction of their length. */
    List<Term> tubeBends(Route bends, double boreM) {
        double ratio = bends.radiusM() / boreM;
        double angle = Math.min(bends.angleRad(), Math.PI);
        double density = stream.densityKgPerM3();
        double viscosity = stream.dynamicViscosityPaS();
        SweptBend bend = SweptBend.of(angle, Math.min(SweptBend.WIDEST, Math.max(SweptBend.TIGHTEST, ratio)));
        String remark = bentTube(ratio, false) + "; friction of the arc is counted with the length of the tube";
        Term one = term(
                (flow, out) -> bend.turningDrop(flow, boreM, density, viscosity, out),
                told -> told.swept("bends", bend, angle, remark, boreM, 0, false));
        return List.of(one.times(bends.count() * bends.angleRad() / angle));
    }
}
