package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Limit;
import org.linedrop.circuit.Run;
import org.linedrop.fact.ProblemsException;
import org.linedrop.result.CaseResult;
import org.linedrop.result.LimitRow;
import org.linedrop.result.PartRow;
import org.linedrop.result.PointRow;
import org.linedrop.result.Result;
import org.linedrop.result.Verdict;
import org.linedrop.solver.Outcome;
import org.linedrop.units.Dimension;

/**
 * What becomes of a circuit when one or two of its keys take other values. Every variant is solved for itself from the
 * same start, so that neither threads nor processes nor the order change a bit of any row.
 *
 * @param question what was varied
 * @param outputs  what the values of each row are
 * @param rows     by number of the variant
 */
public record Vary(VaryQuestion question, List<Output> outputs, List<Row> rows) implements Serializable {

    /** Copies the lists. */
    public Vary {
        outputs = List.copyOf(outputs);
        rows = List.copyOf(rows);
    }

    /** What an output is. */
    public enum Kind {
        /** What a limit is on, at usual bores. */
        LIMITED,
        /** Its distance to the bound at usual bores, negative when broken. */
        MARGIN,
        /** Static gauge pressure of a point. */
        PRESSURE,
        /** Volume flow of a run, positive in its sense. */
        FLOW
    }

    /**
     * One of the values of a row.
     *
     * @param kind      what it is
     * @param subject   point, device or run
     * @param quantity  what of it
     * @param dimension of its SI value
     */
    public record Output(Kind kind, String subject, String quantity, Dimension dimension) implements Serializable {}

    /**
     * One variant.
     *
     * @param number   its number, from 0
     * @param caseName its case
     * @param at       the values of the keys, SI
     * @param status   {@code converged}, how else the solve ended, or why there is no such circuit
     * @param verdict  {@code holds}, {@code broken} or {@code unsure}, of all limits that can be judged, at all bores
     *                 sold; empty when not solved or without limits
     * @param values   in the order of the outputs, SI; NaN when not known
     */
    public record Row(int number, String caseName, List<Double> at, String status, String verdict, List<Double> values)
            implements Serializable {
        /** Copies the lists. */
        public Row {
            at = List.copyOf(at);
            values = List.copyOf(values);
        }
    }

    /**
     * Solves all variants.
     *
     * @param circuit  the circuit
     * @param question what to vary
     * @param threads  on how many threads, at least 1
     * @param progress told how far it is, asked whether to stop
     * @return the answer, the same to the bit for any number of threads
     * @throws ProblemsException                             when a key is not there in one of the cases
     * @throws java.util.concurrent.CancellationException when it was told to stop
     */
    public static Vary of(Circuit circuit, VaryQuestion question, int threads, Progress progress) {
        return of(circuit, question, 0, question.count(), threads, progress);
    }

    /**
     * Solves some of the variants: a partition of a larger job.
     *
     * @param circuit  the circuit
     * @param question the whole question
     * @param from     number of the first variant
     * @param to       number behind the last
     * @param threads  on how many threads, at least 1
     * @param progress told how far it is, asked whether to stop
     * @return an answer with these rows, the same to the bit as in the whole
     */
    public static Vary of(Circuit circuit, VaryQuestion question, int from, int to, int threads, Progress progress) {
        if (!(from >= 0 && from <= to && to <= question.count())) {
            throw new IllegalArgumentException("variants " + from + " to " + to + " of " + question.count());
        }
        List<Output> outputs = outputs(circuit);
        List<Turned> cases = new ArrayList<>();
        for (String name : question.cases()) {
            Circuit inCase = circuit.in(name);
            cases.add(new Turned(
                    inCase,
                    question.axes().stream()
                            .map(axis -> Knob.of(inCase, axis.path()))
                            .toList()));
        }
        List<Row> rows = Workers.run(to - from, threads, progress, i -> {
            int number = from + i;
            int inCase = question.caseOf(number);
            return cases.get(inCase)
                    .row(number, question.cases().get(inCase), question.values(number), outputs);
        });
        return new Vary(question, outputs, rows);
    }

    private static List<Output> outputs(Circuit circuit) {
        List<Output> outputs = new ArrayList<>();
        for (Limit limit : circuit.limits()) {
            Dimension dimension = limit.bound().dimension();
            outputs.add(new Output(Kind.LIMITED, limit.subject(), limit.quantity(), dimension));
            outputs.add(new Output(
                    Kind.MARGIN,
                    limit.subject(),
                    limit.quantity(),
                    dimension == Dimension.GAUGE_PRESSURE ? Dimension.PRESSURE_DIFFERENCE : dimension));
        }
        circuit.points()
                .forEach(point ->
                        outputs.add(new Output(Kind.PRESSURE, point.id(), "pressure", Dimension.GAUGE_PRESSURE)));
        for (Run run : circuit.runs()) {
            outputs.add(new Output(Kind.FLOW, run.id(), "flow", Dimension.VOLUME_FLOW));
        }
        return outputs;
    }

    /** A case with its knobs. */
    private record Turned(Circuit circuit, List<Knob> knobs) {
        Row row(int number, String name, List<Double> at, List<Output> outputs) {
            List<Change> changes = new ArrayList<>();
            for (int i = 0; i < at.size(); i++) {
                changes.add(knobs.get(i).to(at.get(i)));
            }
            CaseResult result;
            try {
                result = CaseResult.of(circuit.with(changes));
            } catch (ProblemsException wrong) {
                String why = wrong.problems().get(0).message();
                return new Row(
                        number,
                        name,
                        at,
                        "not possible: " + why,
                        "",
                        outputs.stream().map(output -> Double.NaN).toList());
            }
            boolean solved = result.outcome() == Outcome.CONVERGED;
            Map<String, Double> known = solved ? values(result) : Map.of();
            return new Row(
                    number,
                    name,
                    at,
                    result.outcome().word(),
                    solved ? verdict(result) : "",
                    outputs.stream()
                            .map(output -> known.getOrDefault(
                                    key(output.kind(), output.subject(), output.quantity()), Double.NaN))
                            .toList());
        }
    }

    private static String key(Kind kind, String subject, String quantity) {
        return kind + " " + subject + " " + quantity;
    }

    private static Map<String, Double> values(CaseResult result) {
        Map<String, Double> values = new LinkedHashMap<>();
        for (LimitRow row : result.limits()) {
            values.put(key(Kind.LIMITED, row.limit().subject(), row.limit().quantity()), row.value());
            values.put(key(Kind.MARGIN, row.limit().subject(), row.limit().quantity()), row.margin());
        }
        Result usual = result.usual();
        for (PointRow row : usual.points()) {
            values.put(key(Kind.PRESSURE, row.id(), "pressure"), row.staticPressurePa());
        }
        for (Run run : result.circuit().runs()) {
            List<PartRow> rows = usual.rows(run.id());
            if (!rows.isEmpty()) {
                values.put(key(Kind.FLOW, run.id(), "flow"), rows.get(0).flowM3PerS());
            }
        }
        return values;
    }

    private static String verdict(CaseResult result) {
        if (result.limits().stream().allMatch(row -> row.verdict() == Verdict.NOT_JUDGED)) {
            return "";
        }
        if (result.holds()) {
            return Verdict.HOLDS.word();
        }
        boolean unsure = result.usual().boilingAtPump().isEmpty()
                && result.limits().stream().noneMatch(row -> row.verdict() == Verdict.BROKEN);
        return unsure ? Verdict.UNSURE.word() : Verdict.BROKEN.word();
    }
}
