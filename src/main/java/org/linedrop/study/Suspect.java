package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Pump;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tube;
import org.linedrop.circuit.Valve;
import org.linedrop.circuit.form.Tree;
import org.linedrop.units.Dimension;
import org.linedrop.units.Units;

/**
 * One thing that may be wrong with a circuit, with one number for how much.
 *
 * @param kind    what is wrong
 * @param subject device, point or part; path of a key
 * @param least   lowest value thought of
 * @param healthy the value of the file as written
 * @param most    highest value thought of
 */
public record Suspect(Kind kind, String subject, double least, double healthy, double most) implements Serializable {
    private static final double CLOG_TIMES = 100;
    private static final double BLOCKAGE_MOST = 1e5;
    /** Blockages under this many velocity heads go by the head, those over it by the ratio. */
    private static final double BLOCKAGE_SCALE = 0.5;

    private static final double PUMP_LEAST = 0.2;
    private static final double PUMP_MOST = 1.3;
    private static final double SETTING_WITHIN = 0.5;
    private static final double KEY_TIMES = 5;

    /** What is wrong. */
    public enum Kind {
        /** A filter takes so many times its clean drop. */
        CLOG("clogged"),
        /** A hose, tube or valve takes so many velocity heads of its own bore more than it should. */
        BLOCKAGE("pinched or blocked"),
        /** A pump gives this share of the flow of its table at every pressure. */
        PUMP("off its table"),
        /** What keeps a pressure keeps another one. */
        SETTING("set otherwise"),
        /** Another value of a key that the asker named. */
        KEY("another value");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /**
         * The words of reports.
         *
         * @return lower-case words
         */
        public String word() {
            return word;
        }
    }

    /**
     * The usual suspects of a circuit: every filter clogged, every hose, tube and valve pinched, every pump off its
     * table, everything that keeps a pressure set otherwise.
     *
     * @param circuit the circuit in the case that was measured
     * @return in the order of the file
     */
    public static List<Suspect> usual(Circuit circuit) {
        List<Suspect> suspects = new ArrayList<>();
        for (Knob knob : Knob.all(circuit)) {
            switch (knob.key()) {
                case "clog" ->
                    suspects.add(new Suspect(
                            Kind.CLOG, knob.path(), 1, knob.si(), Math.min(knob.most(), CLOG_TIMES * knob.si())));
                case "holds", "opens", "pressure" -> {
                    double width = SETTING_WITHIN * Math.abs(knob.si());
                    double least = Math.max(knob.least(), knob.si() - width);
                    double most = Math.min(knob.most(), knob.si() + width);
                    if (least < most && knob.dimension() != Dimension.TEMPERATURE) {
                        suspects.add(new Suspect(Kind.SETTING, knob.path(), least, knob.si(), most));
                    }
                }
                default -> {}
            }
        }
        for (Device device : circuit.devices()) {
            if (device instanceof Pump) {
                suspects.add(new Suspect(Kind.PUMP, device.id(), PUMP_LEAST, 1, PUMP_MOST));
            }
        }
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                if (part instanceof Hose || part instanceof Tube || part instanceof Valve) {
                    suspects.add(new Suspect(Kind.BLOCKAGE, part.id(), 0, 0, BLOCKAGE_MOST));
                }
            }
        }
        return suspects;
    }

    /**
     * A key as a suspect: a fifth to five times its value where it is above zero, within its range.
     *
     * @param circuit the circuit in the case that was measured
     * @param path    path of the key
     * @return the suspect
     * @throws org.linedrop.fact.ProblemsException when there is no such key
     */
    public static Suspect key(Circuit circuit, String path) {
        Knob knob = Knob.of(circuit, path);
        if (knob.key().equals("clog")) {
            return new Suspect(Kind.CLOG, knob.path(), 1, knob.si(), CLOG_TIMES * knob.si());
        }
        double width = Math.abs(knob.si()) * (KEY_TIMES - 1) + (knob.si() == 0 ? 1 : 0);
        double least = knob.si() > 0 ? knob.si() / KEY_TIMES : knob.si() - width;
        return new Suspect(
                Kind.KEY,
                knob.path(),
                Math.max(knob.least(), least),
                knob.si(),
                Math.min(knob.most(), knob.si() + width));
    }

    /** A measure of it that runs from 0 to 1. */
    double value(double share) {
        if (share <= 0) {
            return least;
        }
        if (share >= 1) {
            return most;
        }
        if (kind == Kind.BLOCKAGE) {
            return BLOCKAGE_SCALE * Math.expm1(share * Math.log1p(most / BLOCKAGE_SCALE));
        }
        return logarithmic() ? least * Math.exp(share * Math.log(most / least)) : least + share * (most - least);
    }

    /** Inverse of {@link #value}. */
    double share(double value) {
        if (kind == Kind.BLOCKAGE) {
            return Math.log1p(value / BLOCKAGE_SCALE) / Math.log1p(most / BLOCKAGE_SCALE);
        }
        return logarithmic() ? Math.log(value / least) / Math.log(most / least) : (value - least) / (most - least);
    }

    private boolean logarithmic() {
        return kind == Kind.CLOG || (kind == Kind.KEY && least > 0);
    }

    /** The circuit with this wrong. */
    Circuit in(Circuit circuit, double value) {
        return kind == Kind.BLOCKAGE && value == 0 ? circuit : circuit.with(List.of(change(circuit, value)));
    }

    private Change change(Circuit circuit, double value) {
        return switch (kind) {
            case PUMP -> pumpGiving(circuit, subject, value);
            case BLOCKAGE -> blocked(circuit, value);
            default -> Knob.of(circuit, subject).to(value);
        };
    }

    /** A pump that gives this share of the flow of its tables. */
    static Change pumpGiving(Circuit circuit, String id, double factor) {
        return new Change(id, pump(circuit, id, factor));
    }

    /** Its tables as written, each with this share of its flow. */
    private static Tree pump(Circuit circuit, String id, double factor) {
        List<Tree> curves = new ArrayList<>();
        if (circuit.words().here().get("devices") instanceof Tree.Branch devices
                && devices.get(id) instanceof Tree.Branch pump
                && pump.get("curves") instanceof Tree.Items tables) {
            for (Tree table : tables.items()) {
                curves.add(table instanceof Tree.Branch curve ? scaled(curve, factor) : table);
            }
        }
        return new Tree.Branch(List.of(new Tree.Entry("curves", 0, 0, new Tree.Items(curves, 0, 0))), 0, 0);
    }

    private static Tree scaled(Tree.Branch curve, double factor) {
        if (!(curve.get("flow") instanceof Tree.Text flow)) {
            return curve;
        }
        String scaled = Units.readList(flow.text(), Dimension.VOLUME_FLOW).stream()
                .map(each -> Units.number(each.si() * factor, Units.unit("m3/s")))
                .collect(Collectors.joining(" "));
        return curve.with("flow", Tree.text(scaled + " m3/s"));
    }

    /** The part with a plain loss in it: before it, so that a gauge behind the part feels it. */
    private Change blocked(Circuit circuit, double value) {
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                if (part.id().equals(subject)) {
                    return blocked(circuit, run, part, value);
                }
            }
        }
        throw new IllegalArgumentException("no part \"" + subject + "\"");
    }

    private Change blocked(Circuit circuit, Run run, Part part, double value) {
        Tree.Branch runs = (Tree.Branch) circuit.words().here().get("runs");
        Tree.Branch words = runs == null ? null : (Tree.Branch) runs.get(run.id());
        if (words == null || !(words.get("parts") instanceof Tree.Items parts)) {
            throw new IllegalStateException("a built circuit has words for " + run.id());
        }
        List<Tree> items = new ArrayList<>();
        boolean behind = false;
        for (int i = 0; i < parts.items().size(); i++) {
            if (!(parts.items().get(i) instanceof Tree.Branch item)) {
                items.add(parts.items().get(i));
                continue;
            }
            boolean named = item.get("name") instanceof Tree.Text;
            String name = item.get("name") instanceof Tree.Text text ? text.text() : run.id() + " " + (i + 1);
            if (name.equals(part.id())) {
                behind = true;
                items.add(Tree.of(
                        "law",
                        "K",
                        "K",
                        Units.write(value, Units.unit("x", Dimension.RATIO)),
                        "bore",
                        Units.write(boreM(part), Units.unit("mm")),
                        "name",
                        "blockage in " + name));
            }
            // the part and what stands behind it move on by one and keep their names
            items.add(behind && !named && item.get("through") == null ? item.with("name", Tree.text(name)) : item);
        }
        Tree changed = new Tree.Items(items, 0, 0);
        return new Change(run.id(), new Tree.Branch(List.of(new Tree.Entry("parts", 0, 0, changed)), 0, 0));
    }

    private static double boreM(Part part) {
        if (part instanceof Hose hose) {
            return hose.size().boreM().value();
        }
        return part instanceof Tube tube ? tube.size().boreM().value() : 0.01;
    }

    /**
     * It in words.
     *
     * @param circuit the circuit
     * @param value   how much
     * @return for example {@code fine filter clogged: 12 times its clean drop}
     */
    public String words(Circuit circuit, double value) {
        String name = subject.contains(".") ? subject.substring(0, subject.lastIndexOf('.')) : subject;
        return switch (kind) {
            case CLOG -> String.format(Locale.ROOT, "%s clogged: %.1f times its clean drop", name, value);
            case BLOCKAGE ->
                String.format(
                        Locale.ROOT,
                        value < 10
                                ? "%s pinched or blocked: K %.1f on its bore more than it should"
                                : "%s pinched or blocked: K %.0f on its bore more than it should",
                        name,
                        value);
            case PUMP -> String.format(Locale.ROOT, "%s gives %.0f %% of the flow of its table", name, 100 * value);
            case SETTING, KEY ->
                subject + " is " + Knob.of(circuit, subject).text(rounded(value)) + " instead of "
                        + Knob.of(circuit, subject).text(healthy);
        };
    }

    private static double rounded(double value) {
        return new java.math.BigDecimal(value)
                .round(new java.math.MathContext(4))
                .doubleValue();
    }
}
