package org.linedrop.circuit;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Tree;
import org.linedrop.circuit.form.TubeChoice;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Inner;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * A key of one element that holds one number, as far as the key table knows it: what studies move. Compound values
 * count by the number that gives the key its name: {@code drop: 6 kPa at 300 L/h} by its pressure, {@code holds: 300 kPa
 * over manifold} by its pressure; what else they say stays. A tube has a key {@value #BORE} here that it has not in a
 * file: outside diameter less two walls, moved by its wall. A pump with tables has a key {@value #TABLE}: a factor on all
 * flows of its tables as they are written, so 1 in every circuit; the pressures stay.
 */
@Inner
public final class NumberKey implements Serializable {
    private static final long serialVersionUID = 1;
    private static final String BORE = "bore";
    private static final String TABLE = "table";
    private static final String REALLY = " really";
    /** Thinnest and thickest wall a tube's bore is moved to, over its outside diameter: nothing is sold beyond. */
    private static final double THINNEST = 0.01;

    private static final double THICKEST = 0.4;

    /** The element, empty for the file itself. */
    private final String subject;

    /** Run and number of a part that has a name of its own. */
    private final String otherName;

    /** Name of the key as a path names it. */
    private final String key;

    /** Name of the key that a change writes. */
    private final String writtenKey;

    /** How the number stands in the value. */
    private final NumberShape shape;

    /** The value as written, or an example of one. */
    private final String text;

    /** A pump's tables, null for every other key. */
    private final Tree.@Nullable Items tables;

    /** The number, null when the circuit does not give it. */
    private final @Nullable Figure figure;

    /** What it measures. */
    private final Dimension dimension;

    /** The lowest that is believed. */
    private final double least;

    /** The highest that is believed. */
    private final double most;

    private NumberKey(
            Element element,
            String key,
            String writtenKey,
            String text,
            NumberShape.Held held,
            boolean given,
            double least,
            double most) {
        this.subject = element.subject();
        this.otherName = element.otherName();
        this.key = key;
        this.writtenKey = writtenKey;
        this.shape = held.shape();
        this.text = text;
        this.figure = given ? held.figure() : null;
        this.dimension = held.dimension();
        this.least = least;
        this.most = most;
        this.tables = held.shape() == NumberShape.TABLE
                        && element.words().get(DeviceKeys.CURVES_MARK.name()) instanceof Tree.Items items
                ? items
                : null;
    }

    /**
     * All of them in a circuit, in its present case: those it gives and those it could give.
     *
     * @param circuit the circuit
     * @return keys of the file, of the engine, of points, devices and parts, in the order of the file
     */
    public static List<NumberKey> of(Circuit circuit) {
        Scope scope = new Scope(circuit.catalogue(), false); // nothing is complained of here
        List<NumberKey> all = new ArrayList<>();
        for (Element element : Element.of(circuit.words().here())) {
            for (Key<?> key : element.kind().keys()) {
                number(element, key, scope).ifPresent(all::add);
            }
            if (element.words().get(RunKeys.TUBE.name()) instanceof Tree.Text tube) {
                all.add(tubeBore(element, tube.text()));
            }
            if (element.words().get(DeviceKeys.CURVES_MARK.name()) instanceof Tree.Items) {
                Figure one = Figure.exact(1, Source.of("its tables as they are", Status.GIVEN));
                NumberShape.Held held = new NumberShape.Held(NumberShape.TABLE, one, Dimension.RATIO);
                all.add(new NumberKey(element, TABLE, DeviceKeys.CURVES_MARK.name(), "", held, true, 0.01, 100));
            }
        }
        return all;
    }

    /**
     * Names of all elements that have keys.
     *
     * @param circuit the circuit
     * @return names as a change may use them, parts by both of theirs; the file itself is the empty one
     */
    public static List<String> subjects(Circuit circuit) {
        List<String> names = new ArrayList<>();
        for (Element element : Element.of(circuit.words().here())) {
            names.add(element.subject());
            if (!element.otherName().isEmpty()) {
                names.add(element.otherName());
            }
        }
        return names;
    }

    /**
     * Names of all keys an element takes, whatever they hold.
     *
     * @param circuit the circuit
     * @param subject the element, empty for the file itself
     * @return names; empty when there is no such element
     */
    public static List<String> keyNames(Circuit circuit, String subject) {
        return Element.of(circuit.words().here()).stream()
                .filter(element -> element.isCalled(subject))
                .findFirst()
                .map(element -> element.kind().keyNames())
                .orElse(List.of());
    }

    private static Optional<NumberKey> number(Element element, Key<?> key, Scope scope) {
        if (Keys.LISTS.contains(key.name())) {
            return Optional.empty();
        }
        boolean given = element.words().get(key.name()) instanceof Tree.Text;
        String text = element.words().get(key.name()) instanceof Tree.Text said ? said.text() : key.example();
        try {
            Object value = key.form().read(text, scope);
            return NumberShape.held(key, value).map(held -> {
                double most = text.endsWith(REALLY)
                        ? Double.POSITIVE_INFINITY
                        : held.shape().most(key);
                return new NumberKey(
                        element,
                        key.name(),
                        key.name(),
                        text,
                        held,
                        given,
                        held.shape().least(key, value),
                        most);
            });
        } catch (Key.FormException | UnitException noValue) {
            return Optional.empty();
        }
    }

    private static NumberKey tubeBore(Element element, String text) {
        TubeChoice tube = TubeChoice.read(text);
        double outside = tube.outsideDiameterM();
        Figure bore = Figure.exact(tube.boreM(), Source.of("outside diameter less two walls", Status.GIVEN));
        return new NumberKey(
                element,
                BORE,
                RunKeys.TUBE.name(),
                text,
                new NumberShape.Held(NumberShape.TUBE_BORE, bore, Dimension.LENGTH),
                true,
                outside * (1 - 2 * THICKEST),
                outside * (1 - 2 * THINNEST));
    }

    /**
     * The element it belongs to.
     *
     * @return its name as a change uses it; empty for the file itself
     */
    public String subject() {
        return subject;
    }

    /**
     * Its own name.
     *
     * @return name of the key
     */
    public String key() {
        return key;
    }

    /**
     * Where it stands.
     *
     * @return for example {@code feed 1.length}, or {@code temperature}
     */
    public String path() {
        return subject.isEmpty() ? key : subject + "." + key;
    }

    /**
     * Whether it is meant by the name of an element.
     *
     * @param name name of an element, or run and number of a part
     * @return true when it belongs to that element
     */
    public boolean isOf(String name) {
        return name.equals(subject) || (!otherName.isEmpty() && name.equals(otherName));
    }

    /**
     * The number the circuit gives.
     *
     * @return in SI, empty when the circuit leaves the key out
     */
    public Optional<Figure> figure() {
        return Optional.ofNullable(figure);
    }

    /**
     * What it measures.
     *
     * @return its dimension
     */
    public Dimension dimension() {
        return dimension;
    }

    /**
     * The lowest that the key takes.
     *
     * @return in SI; may be minus infinity
     */
    public double least() {
        return least;
    }

    /**
     * The highest that the key takes without a second word.
     *
     * @return in SI; may be infinity
     */
    public double most() {
        return most;
    }

    /**
     * The change that gives it another number; band, status and what else the value says stay.
     *
     * @param was the figure it has now: its own, or what holds where the circuit does not give it
     * @param si  the number wanted, within {@link #least()} and {@link #most()}
     * @return a change whose text reads back to the number, bit for bit
     */
    public Change with(Figure was, double si) {
        if (tables != null) {
            return new Change(subject, Tree.of().with(writtenKey, scaled(tables, si)));
        }
        String written = shape.with(text, moved(was, si), dimension);
        return subject.isEmpty() ? Change.of(key, written) : Change.of(subject, writtenKey, written);
    }

    /** Tables with all flows times a factor. */
    private static Tree.Items scaled(Tree.Items tables, double factor) {
        List<Tree> all = new ArrayList<>();
        for (Tree item : tables.items()) {
            if (item instanceof Tree.Branch curve
                    && curve.get(DeviceKeys.CURVE_FLOW.name()) instanceof Tree.Text flows) {
                List<Quantity> said = Units.readList(flows.text(), Dimension.VOLUME_FLOW);
                double[] made =
                        said.stream().mapToDouble(flow -> flow.si() * factor).toArray();
                String text = Units.writeList(made, said.get(0).unit());
                all.add(curve.with(DeviceKeys.CURVE_FLOW.name(), new Tree.Text(text, flows.line(), flows.column())));
            } else {
                all.add(item);
            }
        }
        return new Tree.Items(all, tables.line(), tables.column());
    }

    /** The band moves along, no lower than the key takes. */
    private Figure moved(Figure was, double si) {
        if (si == was.value()) {
            return was;
        }
        double low = Math.min(si, Math.max(least, si + (was.low() - was.value())));
        return new Figure(low, si, si + (was.high() - was.value()), was.source());
    }
}
