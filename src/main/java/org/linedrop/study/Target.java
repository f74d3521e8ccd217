package org.linedrop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Limit;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Run;
import org.linedrop.fact.Place;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.fact.Words;
import org.linedrop.result.Result;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * What somebody wants to be reached: a pressure or flow of a value, or two that are equal.
 *
 * @param words  as asked
 * @param output what is to reach it
 * @param value  the value wanted in SI; NaN where another output is
 * @param other  the output it is to be equal to, null where a value is wanted
 */
record Target(
        String words, Output output, double value, @Nullable Output other) {
    private static final String EQUAL = " equal to ";
    private static final List<String> ZEROS = List.of("at least 0 kPa", "at least 0 L/h", "at least 0 %");

    /**
     * Reads a target.
     *
     * @param text {@code rail pressure 375 kPa}, {@code left leg flow equal to right leg flow}
     */
    static Target read(Circuit circuit, String text) {
        String said = text.strip();
        int equal = said.indexOf(EQUAL);
        if (equal > 0) {
            Output left = output(circuit, said.substring(0, equal).strip(), text);
            Output right =
                    output(circuit, said.substring(equal + EQUAL.length()).strip(), text);
            if (left.dimension() != right.dimension()) {
                throw problem(
                        circuit,
                        text,
                        left.id() + " and " + right.id() + " are no like figures",
                        "Compare two pressures or two flows");
            }
            return new Target(said, left, Double.NaN, right);
        }
        int number = firstNumber(circuit, said);
        Output output = output(circuit, said.substring(0, number).strip(), text);
        try {
            double value = Units.read(said.substring(number).strip(), output.dimension())
                    .si();
            return new Target(said, output, value, null);
        } catch (UnitException wrong) {
            throw problem(circuit, text, wrong.message(), wrong.hint());
        }
    }

    /** Where the value starts: behind the name, which may hold figures of its own. */
    private static int firstNumber(Circuit circuit, String said) {
        String name = subject(circuit, said).orElse("");
        for (int i = name.length(); i < said.length(); i++) {
            char c = said.charAt(i);
            boolean starts = Character.isDigit(c)
                    || (c == '-' && i + 1 < said.length() && Character.isDigit(said.charAt(i + 1)));
            if (starts) {
                return i;
            }
        }
        throw problem(
                circuit,
                said,
                "target \"" + said + "\": which value?",
                "Write for example \"rail pressure 375 kPa\", or \"left leg flow equal to right leg flow\"");
    }

    /** The longest name of an element that a text starts with. */
    private static Optional<String> subject(Circuit circuit, String said) {
        return names(circuit).stream()
                .filter(name -> said.startsWith(name + " "))
                .max(Comparator.comparingInt(String::length));
    }

    private static List<String> names(Circuit circuit) {
        List<String> names = new ArrayList<>();
        circuit.points().stream().map(Point::id).forEach(names::add);
        circuit.devices().stream().map(Device::id).forEach(names::add);
        circuit.runs().stream().map(Run::id).forEach(names::add);
        return names;
    }

    private static Output output(Circuit circuit, String name, String whole) {
        String subject = subject(circuit, name).orElseThrow(() -> {
            List<String> names = names(circuit);
            String first = name.contains(" ") ? name.substring(0, name.lastIndexOf(' ')) : name;
            String hint = Words.nearest(first, names)
                    .map(near -> "Did you mean " + near + "?")
                    .orElse("Points, devices and runs here: " + String.join(", ", names));
            return problem(circuit, whole, "target \"" + name + "\" names nothing here", hint);
        });
        String quantity = name.substring(subject.length()).strip();
        boolean run = circuit.runs().stream().anyMatch(each -> each.id().equals(subject));
        if (run) {
            if (quantity.equals("flow")) {
                return Output.flow(subject);
            }
            throw problem(circuit, whole, "a run has no " + quantity, "Write \"" + subject + " flow\"");
        }
        if (quantity.equals("pressure") && circuit.point(subject).isPresent()) {
            return Output.pressure(subject);
        }
        ProblemsException last = null;
        for (String bound : ZEROS) {
            try {
                Circuit limited = circuit.with(List.of(Change.limit(subject, quantity, bound)));
                Optional<Limit> limit = limited.limits().stream()
                        .filter(each -> each.subject().equals(subject)
                                && each.quantity().equals(quantity))
                        .findFirst();
                if (limit.isPresent()) {
                    return Output.of(limit.get());
                }
            } catch (ProblemsException otherUnit) {
                last = last == null ? otherUnit : last;
            }
        }
        Problem first = last == null ? null : last.problems().get(0);
        throw problem(
                circuit,
                whole,
                first == null ? subject + " has no " + quantity : first.message(),
                first == null ? "" : first.hint());
    }

    private static ProblemsException problem(Circuit circuit, String text, String message, String hint) {
        return new ProblemsException(
                List.of(new Problem(new Place(circuit.words().file(), 0, 0, ""), "target", text, message, hint)));
    }

    /** How far a result is over the target, in SI; NaN when it is not known. */
    double over(Result result) {
        double reached = output.of(result);
        return reached - (other == null ? value : other.of(result));
    }

    /** What the distance is measured by. */
    double scale() {
        if (other == null && value != 0) {
            return Math.abs(value);
        }
        return output.dimension() == Dimension.VOLUME_FLOW ? 1e-6 : 1e3;
    }
}
