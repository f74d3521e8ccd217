package org.linedrop.circuit;

import java.util.Optional;
import org.linedrop.circuit.form.Factor;
import org.linedrop.circuit.form.Forms;
import org.linedrop.circuit.form.Motion;
import org.linedrop.circuit.form.Over;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.circuit.form.Rise;
import org.linedrop.circuit.form.TubeChoice;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.Units;

/** How a value is written around the one number that gives its key the name; what else it says is kept. */
enum NumberShape {
    /** {@code 0.45 m +/- 0.01 m measured}. */
    FIGURE,
    /** {@code 13.5 V}, without words behind it. */
    QUANTITY,
    /** {@code 5 x}, {@code 0.5 x engine}. */
    FACTOR,
    /** {@code 300 kPa over manifold}. */
    OVER,
    /** {@code 6 kPa at 300 L/h}: the drop. */
    DROP,
    /** {@code 3 L/min at 400 kPa}: the flow. */
    FLOW,
    /** {@code 23 kPa from 20 to 400 L/h}: the gain. */
    RISE,
    /** {@code 50 % of engine}. */
    SHARE,
    /** {@code launch 0.9 g}: how much. */
    MOTION,
    /** {@code steel 5/16 in x 0.028 in}: the bore; outside diameter kept, wall changed. */
    TUBE_BORE,
    /** A factor on the flows of a pump's tables. */
    TABLE;

    private static final Source FILE = Source.of(Forms.TITLE, Status.GIVEN);

    /**
     * The number of a value.
     *
     * @param figure    in SI
     * @param dimension what it measures
     */
    record Held(NumberShape shape, Figure figure, Dimension dimension) {}

    /** The number in a value that was read by a key, empty when it holds none or several of one rank. */
    static Optional<Held> held(Key<?> key, Object value) {
        if (value instanceof Figure figure && key.form() instanceof KeyForms.NumberForm form) {
            return Optional.of(new Held(FIGURE, figure, form.dimension()));
        }
        if (value instanceof KeyForms.Flow flow) {
            return Optional.of(
                    new Held(FIGURE, flow.figure(), flow.byMass() ? Dimension.MASS_FLOW : Dimension.VOLUME_FLOW));
        }
        if (value instanceof Quantity quantity) {
            return Optional.of(new Held(QUANTITY, Figure.exact(quantity.si(), FILE), quantity.dimension()));
        }
        if (value instanceof Double length && Double.isFinite(length)) {
            return Optional.of(new Held(QUANTITY, Figure.exact(length, FILE), Dimension.LENGTH));
        }
        if (value instanceof Demand demand) {
            return Optional.of(demand(demand));
        }
        return compound(key, value);
    }

    private static Held demand(Demand demand) {
        if (demand instanceof Demand.OfEngine engine) {
            return new Held(SHARE, Figure.exact(engine.share(), FILE), Dimension.RATIO);
        }
        if (demand instanceof Demand.AtPressure at) {
            return new Held(FLOW, at.flowM3PerS(), Dimension.VOLUME_FLOW);
        }
        if (demand instanceof Demand.ByMass mass) {
            return new Held(FIGURE, mass.flowKgPerS(), Dimension.MASS_FLOW);
        }
        return new Held(FIGURE, ((Demand.ByVolume) demand).flowM3PerS(), Dimension.VOLUME_FLOW);
    }

    private static Optional<Held> compound(Key<?> key, Object value) {
        if (value instanceof Factor factor) {
            return Optional.of(new Held(FACTOR, factor.figure(), Dimension.RATIO));
        }
        if (value instanceof Over over) {
            return Optional.of(new Held(OVER, over.pressurePa(), Dimension.PRESSURE_DIFFERENCE));
        }
        if (value instanceof RatedPoint point) {
            return Optional.of(
                    key.form().named() == Dimension.VOLUME_FLOW
                            ? new Held(FLOW, point.flow(), Dimension.VOLUME_FLOW)
                            : new Held(DROP, point.drop(), Dimension.PRESSURE_DIFFERENCE));
        }
        if (value instanceof Rise rise) {
            return Optional.of(new Held(RISE, Figure.exact(rise.risePa(), FILE), Dimension.PRESSURE_DIFFERENCE));
        }
        if (value instanceof Motion motion && (motion.aheadMPerS2() == 0) != (motion.leftMPerS2() == 0)) {
            double amount = Math.abs(motion.aheadMPerS2() + motion.leftMPerS2());
            return Optional.of(new Held(MOTION, Figure.exact(amount, FILE), Dimension.ACCELERATION));
        }
        return Optional.empty();
    }

    /** The lowest that a key takes. */
    double least(Key<?> key, Object value) {
        return switch (this) {
            case FIGURE -> key.form() instanceof KeyForms.NumberForm form ? form.least() : 0;
            case FACTOR -> value instanceof Factor factor && factor.of().isEmpty() ? 1 : 0;
            case OVER -> Double.NEGATIVE_INFINITY;
            default -> 0;
        };
    }

    /** The highest that a key takes without a second word. */
    double most(Key<?> key) {
        return switch (this) {
            case FIGURE -> key.form() instanceof KeyForms.NumberForm form ? form.most() : Double.POSITIVE_INFINITY;
            case SHARE -> 1;
            default -> Double.POSITIVE_INFINITY;
        };
    }

    /** The value as it reads with another number. */
    String with(String text, Figure to, Dimension dimension) {
        return switch (this) {
            case FIGURE -> Forms.write(to, dimension) + (text.endsWith(" really") ? " really" : "");
            case QUANTITY -> Units.write(to.value(), Units.metric(to.value(), dimension));
            case FACTOR -> new Factor(to, Factor.read(plain(text)).of()).write();
            case OVER -> new Over(to, Over.read(plain(text)).reference()).write();
            case DROP -> {
                RatedPoint point = RatedPoint.read(plain(text));
                yield new RatedPoint(to, point.flow(), point.viscosity()).write();
            }
            case FLOW -> {
                RatedPoint point = RatedPoint.read(plain(text));
                yield new RatedPoint(point.drop(), to, point.viscosity()).writeFlowFirst();
            }
            case RISE -> {
                Rise rise = Rise.read(plain(text));
                yield new Rise(to.value(), rise.fromM3PerS(), rise.toM3PerS(), rise.status()).write();
            }
            case SHARE -> Units.write(to.value(), Units.unit("%")) + " of engine";
            case MOTION -> {
                Motion motion = Motion.read(plain(text));
                yield new Motion(
                                Math.copySign(to.value(), motion.aheadMPerS2()) * used(motion.aheadMPerS2()),
                                Math.copySign(to.value(), motion.leftMPerS2()) * used(motion.leftMPerS2()))
                        .write();
            }
            case TABLE -> throw new IllegalStateException("tables are no text");
            case TUBE_BORE -> {
                TubeChoice tube = TubeChoice.read(text);
                yield new TubeChoice(
                                tube.material(), tube.outsideDiameterM(), wall(tube.outsideDiameterM(), to.value()))
                        .write();
            }
        };
    }

    private static double used(double component) {
        return component == 0 ? 0 : 1;
    }

    /** The wall that leaves a bore; to the last bit where a double can. */
    private static double wall(double outsideM, double boreM) {
        double wall = (outsideM - boreM) / 2;
        for (double near : new double[] {wall, Math.nextUp(wall), Math.nextDown(wall)}) {
            if (outsideM - 2 * near == boreM) {
                return near;
            }
        }
        return wall;
    }

    private static String plain(String text) {
        return text.endsWith(" really") ? text.substring(0, text.length() - " really".length()) : text;
    }
}
