package org.linedrop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Adapter;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Draw;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tube;
import org.linedrop.fact.Figure;
import org.linedrop.result.CaseResult;
import org.linedrop.result.LimitRow;
import org.linedrop.result.PartRow;
import org.linedrop.result.PointRow;
import org.linedrop.result.Result;
import org.linedrop.result.Verdict;
import org.linedrop.solver.Outcome;
import org.linedrop.units.Units;

/** Ranks the things of one case by what they lose and by what the next size gives. */
final class BottleneckFinder {
    private final CaseCheck check;
    private final Circuit circuit;
    private final Result result;
    private final @Nullable Output output;
    private final String subject;

    BottleneckFinder(CaseCheck check) {
        this.check = check;
        this.result = check.result().usual();
        this.circuit = result.circuit();
        boolean solved = result.outcome() == Outcome.CONVERGED;
        LimitRow decisive = check.decisive();
        if (solved && decisive != null) {
            this.output = Output.of(decisive.limit());
            this.subject = decisive.limit().subject();
        } else {
            this.subject = solved ? leastServed() : "";
            this.output = subject.isEmpty() ? null : Output.pressure(subject);
        }
    }

    /** The draw with the lowest pressure. */
    private String leastServed() {
        return result.points().stream()
                .filter(point ->
                        circuit.point(point.id()).filter(p -> p instanceof Draw).isPresent())
                .min(Comparator.comparingDouble(PointRow::staticPressurePa))
                .map(PointRow::id)
                .orElse("");
    }

    Bottleneck find() {
        if (result.outcome() != Outcome.CONVERGED) {
            return new Bottleneck(
                    check, "", null, Double.NaN, Double.NaN, Double.NaN, Double.NaN, List.of(), List.of());
        }
        List<PartRow> way = way();
        double devices = 0;
        double plumbing = 0;
        double lift = 0;
        for (PartRow row : way) {
            double loss = row.frictionDropPa() + row.localDropPa();
            boolean device = circuit.device(row.part()).isPresent();
            devices += device ? loss : 0;
            plumbing += device ? 0 : loss;
            lift += row.liftDropPa();
        }
        return new Bottleneck(
                check,
                subject,
                output,
                devices + plumbing + lift,
                plumbing,
                devices,
                lift,
                things(way, devices + plumbing),
                output == null ? List.of() : new Measures(circuit, output, way).find());
    }

    /** The rows that matter: those on the way to the subject, and where flow decides those behind it too. No pumps. */
    private List<PartRow> way() {
        List<PartRow> rows = new ArrayList<>(subject.isEmpty() ? result.rows() : Way.to(result, subject));
        if (Bottleneck.beyond(output)) {
            rows.addAll(Way.behind(result, subject));
        }
        if (rows.isEmpty()) {
            rows.addAll(result.rows());
        }
        rows.removeIf(row -> row.kind().endsWith("pump"));
        return rows;
    }

    /** A thing before it has a rank. */
    private record Candidate(
            String place,
            String words,
            double lossPa,
            Sizes.@Nullable Step step,
            String with,
            @Nullable PartRow row) {}

    private List<Bottleneck.Thing> things(List<PartRow> way, double lost) {
        Map<String, List<PartRow>> rows = new LinkedHashMap<>();
        way.forEach(row ->
                rows.computeIfAbsent(row.part(), part -> new ArrayList<>()).add(row));
        List<Candidate> found = new ArrayList<>();
        Set<String> taken = new LinkedHashSet<>();
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                if (Sizes.changeable(part) && rows.containsKey(part.id())) {
                    Sizes.Step step =
                            Sizes.larger(circuit.catalogue(), run, part, 1).orElse(null);
                    taken.add(part.id());
                    found.add(new Candidate(
                            place(run, part), words(part), loss(rows, part.id()), step, "", main(rows.get(part.id()))));
                    companions(run, part, step, rows, taken).ifPresent(found::add);
                }
            }
        }
        for (Map.Entry<String, List<PartRow>> entry : rows.entrySet()) {
            if (taken.add(entry.getKey())) {
                PartRow row = entry.getValue().get(0);
                found.add(new Candidate(placeOf(row), words(row), loss(rows, entry.getKey()), null, "", row));
            }
        }
        found.removeIf(candidate -> !(Math.abs(candidate.lossPa()) > 0));
        found.sort(Comparator.comparingDouble(candidate -> -candidate.lossPa()));
        List<Bottleneck.Thing> things = new ArrayList<>();
        for (Candidate candidate : found) {
            things.add(thing(things.size() + 1, candidate, lost));
        }
        return things;
    }

    /** The adapters that change or fall away with a tube. */
    private Optional<Candidate> companions(
            Run run, Part tube, Sizes.@Nullable Step step, Map<String, List<PartRow>> rows, Set<String> taken) {
        List<String> numbers = new ArrayList<>();
        List<String> words = new ArrayList<>();
        double loss = 0;
        PartRow first = null;
        for (Part part : run.parts()) {
            boolean goes = step != null
                    && part instanceof Adapter
                    && rows.containsKey(part.id())
                    && step.changes().stream().map(Change::subject).anyMatch(part.id()::equals);
            if (goes && taken.add(part.id())) {
                numbers.add(String.valueOf(run.parts().indexOf(part) + 1));
                words.add(words(part));
                loss += loss(rows, part.id());
                first = first == null ? main(rows.get(part.id())) : first;
            }
        }
        return numbers.isEmpty()
                ? Optional.empty()
                : Optional.of(new Candidate(
                        run.id() + " " + String.join("+", numbers),
                        String.join(", ", words),
                        loss,
                        null,
                        tube.id(),
                        first));
    }

    private static double loss(Map<String, List<PartRow>> rows, String part) {
        return rows.getOrDefault(part, List.of()).stream()
                .mapToDouble(row -> row.frictionDropPa() + row.localDropPa())
                .sum();
    }

    /** The row whose bore stands for the thing: the length of a hose or tube. */
    private static PartRow main(@Nullable List<PartRow> rows) {
        List<PartRow> all = rows == null ? List.of() : rows;
        return all.stream()
                .filter(row -> row.kind().equals("hose") || row.kind().equals("tube"))
                .findFirst()
                .orElse(all.get(0));
    }

    private static String place(Run run, Part part) {
        return run.id() + " " + (run.parts().indexOf(part) + 1);
    }

    private String placeOf(PartRow row) {
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                if (part.id().equals(row.part())) {
                    return place(run, part);
                }
            }
        }
        int dot = row.row().indexOf('.');
        return row.run() + " " + (dot < 0 ? row.row() : row.row().substring(0, dot));
    }

    private static String words(Part part) {
        if (part instanceof Hose hose) {
            int ends = (hose.fromEnd() == null ? 0 : 1) + (hose.toEnd() == null ? 0 : 1);
            return hose.size().name() + ", " + Units.fixed(hose.lengthM().value(), Units.unit("m"), 2) + " m"
                    + (ends == 0 ? ", bare" : ends == 1 ? ", one end" : ", two ends");
        }
        if (part instanceof Tube tube) {
            boolean named = !tube.id().matches(".* \\d+");
            return (named ? tube.id() + ", " : tube.size().material() + " tube, ")
                    + Units.fixed(tube.lengthM().value(), Units.unit("m"), 2) + " m";
        }
        if (part instanceof Adapter adapter) {
            boolean named = !adapter.id().matches(".* \\d+");
            return named
                    ? adapter.id()
                    : adapter.size().kind() + " " + adapter.size().text();
        }
        return part.id();
    }

    private String words(PartRow row) {
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                if (part.id().equals(row.part()) && part instanceof Adapter) {
                    return words(part);
                }
            }
        }
        return circuit.device(row.part())
                .map(device ->
                        device.id().contains(device.kind()) ? device.id() : device.id() + " (" + device.kind() + ")")
                .orElse(row.name());
    }

    private Bottleneck.Thing thing(int rank, Candidate of, double lost) {
        double gives = Double.NaN;
        double then = Double.NaN;
        boolean holds = false;
        Sizes.Step step = of.step();
        if (step != null && output != null) {
            CaseResult changed = CaseResult.of(circuit.with(step.changes()));
            if (changed.outcome() == Outcome.CONVERGED) {
                then = output.of(changed.usual());
                gives = towards(then) - towards(output.of(result));
                holds = !changed.limits().isEmpty()
                        && changed.limits().stream()
                                .allMatch(row -> row.verdict() == Verdict.NOT_JUDGED || row.margin() >= 0);
            }
        }
        PartRow row = of.row();
        Figure bore = row != null && row.boreM().value() > 0 ? row.boreM() : null;
        return new Bottleneck.Thing(
                rank,
                of.place(),
                of.words(),
                of.lossPa(),
                lost > 0 ? of.lossPa() / lost : Double.NaN,
                step == null ? "" : step.words(),
                of.with(),
                gives,
                then,
                holds,
                bore == null ? Double.NaN : bore.value(),
                bore == null ? null : bore.source());
    }

    /** The output, with the sign that makes more of it better for its limit. */
    private double towards(double value) {
        LimitRow decisive = check.decisive();
        boolean atMost = decisive != null
                && decisive.limit().bound().nearest(decisive.value())
                        == decisive.limit().bound().high();
        return atMost ? -value : value;
    }
}
