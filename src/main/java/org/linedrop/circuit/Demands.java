package org.linedrop.circuit;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.circuit.form.Forms;
import org.linedrop.circuit.form.Over;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.fact.Figure;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/** What a draw or rail takes, as the file says it. */
final class Demands {
    /** More than any engine on wheels burns: 2000 hp at 0.85 lb/hp/h of E85 is some 980 L/h. */
    private static final double MOST_BELIEVED_M3_PER_S = 5000 / 3.6e6;

    private static final String ENGINE = "of engine";
    private static final String OVER_MANIFOLD = " over " + Over.MANIFOLD;
    private static final Pattern POINT = Pattern.compile("(\\S+ \\S+(?: \\+/- \\S+ \\S+)? at \\S+ \\S+)(.*)");
    private static final String REALLY = " really";

    private Demands() {}

    static Demand read(String text) {
        if (text.endsWith(ENGINE)) {
            double share = Units.read(
                            text.substring(0, text.length() - ENGINE.length()).strip(), Dimension.RATIO)
                    .si();
            if (!(share >= 0 && share <= 1)) {
                throw new UnitException("\"" + text + "\" is no share", "Write 0 % to 100 % of engine");
            }
            return new Demand.OfEngine(share);
        }
        if (text.contains(" at ")) {
            boolean manifold = text.contains(OVER_MANIFOLD);
            RatedPoint point = RatedPoint.loss(text.replace(OVER_MANIFOLD, "").replace(" over " + Over.AIR, ""));
            return new Demand.AtPressure(
                    point.flow(), point.drop(), point.viscosity(), manifold ? Over.MANIFOLD : Over.AIR);
        }
        if (text.matches("[\\d.]+ ?%")) {
            throw new UnitException("\"" + text + "\" of what?", "Write " + text + " of engine, or a flow: 300 L/h");
        }
        boolean really = text.endsWith(REALLY);
        String plain = really ? text.substring(0, text.length() - REALLY.length()) : text;
        if (KeyForms.isMass(plain)) {
            return new Demand.ByMass(Forms.figure(plain, Dimension.MASS_FLOW));
        }
        return new Demand.ByVolume(Forms.figure(plain, Dimension.VOLUME_FLOW, Dimension.MASS_FLOW));
    }

    /** Questions a flow that is more fuel than an engine burns, where fuel flows or the service is not said. */
    static void question(Fields fields, Demand demand, String id) {
        String text = fields.text(PointKeys.TAKES);
        if (!fields.scope().mayBeFuel()
                || !(demand instanceof Demand.ByVolume volume)
                || !(volume.flowM3PerS().value() > MOST_BELIEVED_M3_PER_S)
                || text.endsWith(REALLY)) {
            return;
        }
        double times = volume.flowM3PerS().value() / MOST_OF_2000_HP;
        fields.problem(
                PointKeys.TAKES,
                String.format(
                        Locale.ROOT,
                        "%s takes %s = %s L/h, some %.0f times what a 2000 hp engine burns on E85",
                        id,
                        text,
                        Units.fixed(volume.flowM3PerS().value(), Units.unit("L/h"), 0),
                        times),
                "Did you mean L/h? If it is so, write " + text + REALLY);
    }

    /** 2000 hp at 0.85 lb/hp/h of E85 at 783 kg/m3: computed. */
    private static final double MOST_OF_2000_HP = 2000 * 0.85 * 0.45359237 / 3600 / 783;

    /** Puts the reference behind the pressure, before what the flow was measured with. */
    private static String overManifold(String text) {
        Matcher point = POINT.matcher(text);
        if (!point.matches()) {
            throw new IllegalStateException("no rated point: " + text);
        }
        return point.group(1) + OVER_MANIFOLD + point.group(2);
    }

    static String write(Demand demand) {
        if (demand instanceof Demand.OfEngine engine) {
            return Units.write(engine.share(), Units.unit("%")) + " " + ENGINE;
        }
        if (demand instanceof Demand.AtPressure at) {
            String text = new RatedPoint(at.pressurePa(), at.flowM3PerS(), at.viscosityM2PerS()).writeFlowFirst();
            return at.over().equals(Over.AIR) ? text : overManifold(text);
        }
        if (demand instanceof Demand.ByMass mass) {
            return Forms.write(mass.flowKgPerS(), Dimension.MASS_FLOW);
        }
        Figure flow = ((Demand.ByVolume) demand).flowM3PerS();
        return Forms.write(flow, Dimension.VOLUME_FLOW);
    }
}
