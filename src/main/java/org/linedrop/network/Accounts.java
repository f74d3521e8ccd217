package org.linedrop.network;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Explanation.Group;
import org.linedrop.fact.Explanation.Quantity;
import org.linedrop.fact.Explanation.Step;
import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.hydraulics.AreaChange;
import org.linedrop.hydraulics.Band;
import org.linedrop.hydraulics.BoreFriction;
import org.linedrop.hydraulics.Colebrook;
import org.linedrop.hydraulics.CurvedBore;
import org.linedrop.hydraulics.FrictionFactor;
import org.linedrop.hydraulics.LocalLoss;
import org.linedrop.hydraulics.MitreElbow;
import org.linedrop.hydraulics.Nipple;
import org.linedrop.hydraulics.PipeEnd;
import org.linedrop.hydraulics.Restrictor;
import org.linedrop.hydraulics.Reynolds;
import org.linedrop.hydraulics.SweptBend;

/**
 * The laws of plumbing taken apart at one flow, each part evaluated by the same functions of the hydraulics package that
 * the law is made of.
 */
final class Accounts {
    /** Between these lengths over bore the larger part of a restrictor's blend is the law of long ones. */
    private static final double LONG_FROM = 2.5;

    private static final double LONG_TO = 12.5;

    /** Published laws that differ by less are taken as agreeing. */
    private static final double AGREED = 0.2;

    private final Stream stream;
    private final double massFlowKgPerS;
    private final double flow;

    Accounts(Stream stream, double massFlowKgPerS) {
        this.stream = stream;
        this.massFlowKgPerS = massFlowKgPerS;
        this.flow = massFlowKgPerS / stream.densityKgPerM3();
    }

    /** A group on a bore. */
    Group group(String name, String remark, double boreM, List<Step> steps) {
        double reynolds = stream.reynolds(massFlowKgPerS, boreM);
        return new Group(
                name,
                remark,
                boreM,
                stream.velocityMPerS(massFlowKgPerS, boreM),
                reynolds,
                regime(reynolds),
                stream.velocityHeadPa(massFlowKgPerS, boreM),
                steps);
    }

    /** A law that is no law of a bore, evaluated as it is. */
    static Group whole(
            String name,
            Law law,
            double massFlowKgPerS,
            String step,
            String equation,
            List<Quantity> inputs,
            Formula by) {
        double[] dropAndSlope = new double[2];
        law.evaluate(massFlowKgPerS, dropAndSlope);
        double drop = dropAndSlope[0];
        Step one = new Step(step, equation, inputs, Double.NaN, drop, drop, drop, null, by);
        double none = Double.NaN;
        return new Group(name, "", none, none, none, "", none, List.of(one));
    }

    private String regime(double reynolds) {
        if (!(reynolds > stream.transition().fromReynolds())) {
            return "laminar";
        }
        return reynolds < stream.transition().toReynolds() ? "mixed" : "turbulent";
    }

    static Quantity length(String symbol, String meaning, double value) {
        return new Quantity(symbol, meaning, value, "m");
    }

    static Quantity number(String symbol, String meaning, double value) {
        return new Quantity(symbol, meaning, value, "");
    }

    /** A loss of constant coefficient on a bore, without its low Reynolds number term. */
    Step local(
            String name,
            String equation,
            List<Quantity> inputs,
            double boreM,
            double k,
            @Nullable Band band,
            Formula formula) {
        double[] out = new double[2];
        LocalLoss.pressureDrop(flow, boreM, k, 0, stream.densityKgPerM3(), stream.dynamicViscosityPaS(), out);
        double drop = out[0];
        boolean disputed = band != null
                && k != 0
                && (band.lowRatio() < 1 - AGREED || band.highRatio() > 1 + AGREED || band.absolute() > AGREED * k);
        if (band == null || !disputed) {
            return new Step(name, equation, inputs, k, drop, drop, drop, null, formula);
        }
        return new Step(
                name,
                equation,
                inputs,
                k,
                drop,
                drop / k * band.low(k),
                drop / k * band.high(k),
                band.source(),
                formula);
    }

    /** The low Reynolds number term on a bore. */
    Step lowReynolds(double boreM, double k1) {
        double[] out = new double[2];
        LocalLoss.pressureDrop(flow, boreM, 0, k1, stream.densityKgPerM3(), stream.dynamicViscosityPaS(), out);
        double reynolds = stream.reynolds(massFlowKgPerS, boreM);
        List<Quantity> inputs = List.of(number("K1", "low Reynolds number constant", k1));
        double k = reynolds > 0 ? k1 / reynolds : Double.NaN;
        return new Step("low Re", "{K1}/Re", inputs, k, out[0], out[0], out[0], null, LocalLoss.FORMULA);
    }

    /** Straight friction on a bore. */
    Step friction(String name, double boreM, double lengthM, double roughnessM) {
        double[] out = new double[2];
        BoreFriction.pressureDrop(
                flow,
                boreM,
                lengthM,
                roughnessM,
                stream.transition(),
                stream.densityKgPerM3(),
                stream.dynamicViscosityPaS(),
                out);
        Formula formula = switch (regime(stream.reynolds(massFlowKgPerS, boreM))) {
            case "laminar" -> FrictionFactor.LAMINAR;
            case "mixed" -> FrictionFactor.BLEND;
            default -> Colebrook.FORMULA;
        };
        return friction(name, "f {f} x {L}/{d}", boreM, lengthM, roughnessM, out[0], List.of(), formula);
    }

    private Step friction(
            String name,
            String equation,
            double boreM,
            double lengthM,
            double roughnessM,
            double drop,
            List<Quantity> more,
            Formula formula) {
        double head = stream.velocityHeadPa(massFlowKgPerS, boreM);
        double k = head > 0 ? Math.abs(drop) / head : Double.NaN;
        List<Quantity> inputs = new ArrayList<>();
        inputs.add(number("f", "Darcy friction factor", lengthM > 0 ? k * boreM / lengthM : Double.NaN));
        inputs.add(length("L", "length", lengthM));
        inputs.add(length("d", "bore", boreM));
        inputs.add(length("e", "roughness", roughnessM));
        inputs.addAll(more);
        return new Step(name, equation, inputs, k, drop, drop, drop, null, formula);
    }

    /** Friction of a bore on a bend. */
    Step curved(double boreM, double lengthM, double radiusM, double roughnessM) {
        double[] out = new double[2];
        CurvedBore.pressureDrop(
                flow,
                boreM,
                lengthM,
                radiusM,
                roughnessM,
                stream.transition(),
                stream.densityKgPerM3(),
                stream.dynamicViscosityPaS(),
                out);
        double critical = CurvedBore.criticalReynolds(2 * radiusM / boreM);
        boolean laminar = !(stream.reynolds(massFlowKgPerS, boreM) > critical);
        return friction(
                "on its bends",
                "f {f} x {L}/{d}, radius {R}",
                boreM,
                lengthM,
                roughnessM,
                out[0],
                List.of(
                        length("R", "bend radius", radiusM),
                        number("Rec", "Reynolds number up to which the bend keeps it laminar", critical)),
                laminar ? CurvedBore.LAMINAR : CurvedBore.TURBULENT);
    }

    /** A change of bore. */
    Group areaChange(String name, double fromM, double toM) {
        boolean forward = flow >= 0;
        double small = Math.min(fromM, toM);
        double large = Math.max(fromM, toM);
        List<Step> steps = new ArrayList<>();
        change(steps, forward == (toM > fromM), small, large, "narrower", "wider");
        steps.add(lowReynolds(small, AreaChange.k1(small / large)));
        return group("change", name, small, steps);
    }

    private void change(
            List<Step> steps, boolean widens, double smallM, double largeM, String narrows, String widensTo) {
        double beta = smallM / largeM;
        List<Quantity> inputs = List.of(length("d", "small bore", smallM), length("D", "large bore", largeM));
        if (widens) {
            steps.add(local(
                    widensTo,
                    "(1 - ({d}/{D})^2)^2",
                    inputs,
                    smallM,
                    AreaChange.expansionK(beta),
                    null,
                    AreaChange.EXPANSION));
        } else {
            steps.add(local(
                    narrows,
                    "0.5 (1 - ({d}/{D})^2)^0.75",
                    inputs,
                    smallM,
                    AreaChange.contractionK(beta),
                    AreaChange.CONTRACTION_BAND,
                    AreaChange.CONTRACTION));
        }
    }

    /** A nipple between two bores that are not narrower than it. */
    Group nipple(double firstM, double boreM, double lengthM, double secondM, double roughnessM) {
        double inletM = flow >= 0 ? firstM : secondM;
        double outletM = flow >= 0 ? secondM : firstM;
        List<Step> steps = new ArrayList<>();
        change(steps, false, boreM, inletM, "into it", "");
        double jet = Nipple.turbulentK(inletM, boreM, lengthM, outletM)
                - AreaChange.contractionK(boreM / inletM)
                - AreaChange.expansionK(boreM / outletM);
        if (lengthM < Nipple.REATTACHED * boreM) {
            List<Quantity> inputs = List.of(length("l", "length", lengthM), length("d", "bore", boreM));
            steps.add(
                    local("too short", "the jet fills it late, l/d {l}/{d}", inputs, boreM, jet, null, Nipple.FORMULA));
        }
        steps.add(friction("along it", boreM, lengthM, roughnessM));
        change(steps, true, boreM, outletM, "", "out of it");
        double k1 = AreaChange.k1(boreM / firstM) + AreaChange.k1(boreM / secondM);
        steps.add(lowReynolds(boreM, k1));
        return group("nipple", "", boreM, steps);
    }

    /** A bent-tube elbow; without its arc where that is part of a length counted elsewhere. */
    Group swept(
            String name, SweptBend bend, double angleRad, String remark, double boreM, double roughnessM, boolean arc) {
        double reynolds = Reynolds.of(flow, boreM, stream.densityKgPerM3(), stream.dynamicViscosityPaS());
        double[] excess = new double[2];
        bend.excess(reynolds, excess);
        String held = reynolds < SweptBend.LOWEST_REYNOLDS
                ? ", as at Re 20000"
                : reynolds > SweptBend.HIGHEST_REYNOLDS ? ", as at Re 400000" : "";
        boolean tightReturn = angleRad > Math.PI / 2 + 1e-9 && bend.arcOverBore() < 1.5 * angleRad;
        List<Step> steps = new ArrayList<>();
        steps.add(local(
                "turning",
                "Ito excess at {angle} degrees" + held,
                List.of(number("angle", "deflection in degrees", Math.toDegrees(angleRad))),
                boreM,
                excess[0],
                tightReturn ? SweptBend.BAND_TIGHT_RETURN : SweptBend.BAND,
                SweptBend.FORMULA));
        if (arc) {
            steps.add(friction("arc", boreM, bend.arcOverBore() * boreM, roughnessM));
        }
        steps.add(lowReynolds(boreM, bend.k1()));
        return group(name, remark, boreM, steps);
    }

    /** Two bores that meet at a sharp corner. */
    Group mitre(String name, double boreM, double angleRad) {
        Step corner = local(
                "turning",
                "sharp corner at {angle} degrees, table",
                List.of(number("angle", "deflection in degrees", Math.toDegrees(angleRad))),
                boreM,
                MitreElbow.turbulentK(angleRad),
                MitreElbow.BAND,
                MitreElbow.FORMULA);
        return group(
                name,
                "forged, machined or low-profile: two bores that meet",
                boreM,
                List.of(corner, lowReynolds(boreM, MitreElbow.k1(angleRad))));
    }

    /** A drilled hole, by the law of its length over bore. */
    Group restrictor(Restrictor shape, double holeM, double lengthM) {
        double[] dropAndSlope = new double[2];
        shape.pressureDrop(
                flow, stream.transition(), stream.densityKgPerM3(), stream.dynamicViscosityPaS(), dropAndSlope);
        double drop = dropAndSlope[0];
        boolean isLong = lengthM > LONG_FROM * holeM && lengthM < LONG_TO * holeM;
        Step step = new Step(
                "hole",
                "drilled hole, l/d {l}",
                List.of(number("l", "length over bore", lengthM / holeM)),
                drop / (Math.signum(flow) * stream.velocityHeadPa(massFlowKgPerS, holeM)),
                drop,
                drop * Restrictor.BAND.lowRatio(),
                drop * Restrictor.BAND.highRatio(),
                Restrictor.BAND.source(),
                isLong ? Restrictor.LONG : Restrictor.THICK);
        return group("restrictor", "", holeM, List.of(step));
    }

    /** A part known by one coefficient. */
    Group coefficient(String name, double boreM, double k, double k1, @Nullable Band band, Formula formula) {
        Step turbulent = local("loss", "K {K}", List.of(number("K", "loss coefficient", k)), boreM, k, band, formula);
        return group(name, "", boreM, List.of(turbulent, lowReynolds(boreM, k1)));
    }

    /** Between a vessel and a bore. */
    Group tankEnd(boolean fromVessel, double boreM) {
        boolean entering = fromVessel == flow >= 0;
        Step end = local(
                entering ? "into bore" : "out of bore",
                entering ? "sharp edge" : "all of rho v2/2",
                List.of(),
                boreM,
                entering ? PipeEnd.SHARP_K : PipeEnd.EXIT_K,
                null,
                PipeEnd.FORMULA);
        String name = entering ? "entry" : "exit";
        return group(name, "", boreM, List.of(end, lowReynolds(boreM, PipeEnd.k1())));
    }

    static Formula stated(String title, String equation, Source source) {
        return new Formula(title, equation, source, "as stated");
    }
}
