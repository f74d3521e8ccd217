package org.linedrop.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.linedrop.result.SolveStatus;
import org.linedrop.result.Verdict;
import org.linedrop.study.CaseVerdict;

/** Schema of {@link JsonReport}, from the column lists. */
final class ResultSchema {
    private ResultSchema() {}

    static Map<String, Object> result() {
        Map<String, Object> schema = Schema.head(
                "result:1",
                "Linedrop results",
                "Written by linedrop solve and check with --format json. All figures are SI; what is not known is"
                        + " null. Pressures are gauge unless the key says absolute.");
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("title", text("what the circuit is"));
        properties.put(
                "fileForm",
                Schema.object(
                        "type",
                        List.of("integer", "null"),
                        "description",
                        "the form of the circuit file; null when code made it without saying one"));
        properties.put("libraryVersion", text("version of the library"));
        properties.put("service", nullable("what kind of circuit"));
        properties.put("cases", Schema.array(one()));
        properties.put("ratings", described("each hose's ratings, over all cases", rows(RatingTable.COLUMNS)));
        properties.put("advice", described("rules of thumb, over all cases", rows(AdviceColumns.ALL)));
        properties.put(
                "cautions", described("cautions of this service", Schema.array(Schema.object("type", "string"))));
        properties.put("safety", described("the safety lines", Schema.array(Schema.object("type", "string"))));
        schema.putAll(all(properties));
        return schema;
    }

    private static Map<String, Object> one() {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("case", text("name of the case"));
        properties.put(
                "status",
                Schema.object(
                        "enum",
                        SolveStatus.words(),
                        "description",
                        "how the solve ended; rows are empty unless converged"));
        List<Object> verdicts = new ArrayList<>();
        Arrays.stream(CaseVerdict.values()).forEach(verdict -> verdicts.add(verdict.word()));
        properties.put(
                "verdict",
                Schema.object(
                        "description",
                        "what is wrong with the case, if anything; null when not solved or not judged",
                        "anyOf",
                        List.of(Schema.object("enum", verdicts), Schema.object("type", "null"))));
        properties.put("sentence", text("the answer in a sentence, metric"));
        properties.put("smallestChange", nullable("the smallest change of size that was solved and holds"));
        properties.put(
                "largestDraws",
                described(
                        "the largest draws that hold, as built and with that change; empty where there is none to say,"
                                + " and in linedrop solve, which does not look for them",
                        rows(DrawColumns.ALL)));
        properties.put(
                "residuals",
                all(Schema.object(
                        "flowImbalance", number("largest flow that does not balance, over the flow scale"),
                        "lawResidual", number("largest law that does not hold, over the pressure scale"),
                        "iterations", Schema.object("type", "integer", "description", "steps of the solver"))));
        properties.put("rows", rows(Columns.PARTS));
        properties.put("points", rows(Columns.POINTS));
        Map<String, Object> device = new LinkedHashMap<>(row(Columns.DEVICES));
        device.put(
                "additionalProperties",
                Schema.object(
                        "type", List.of("number", "null"), "description", "figures of its kind, SI unit in the key"));
        properties.put("devices", Schema.array(device));
        properties.put(
                "hoseSwell",
                described(
                        "the most that each brake hose may swell; empty for other circuits", rows(SwellTable.COLUMNS)));
        properties.put("limits", limits());
        properties.put("warnings", rows(Columns.NOTICES));
        properties.put("assumptions", rows(Columns.NOTICES));
        return all(properties);
    }

    private static Map<String, Object> limits() {
        List<Object> words = new ArrayList<>();
        Arrays.stream(Verdict.values()).forEach(verdict -> words.add(verdict.word()));
        Map<String, Object> properties = columns(Columns.LIMITS);
        properties.put("verdict", Schema.object("enum", words, "description", "verdict of the limit"));
        return Schema.array(all(properties));
    }

    private static <R> Map<String, Object> rows(List<Column<R>> columns) {
        return Schema.array(row(columns));
    }

    private static <R> Map<String, Object> row(List<Column<R>> columns) {
        return all(columns(columns));
    }

    private static <R> Map<String, Object> columns(List<Column<R>> columns) {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (Column<R> column : Columns.data(columns)) {
            properties.put(column.key(), column.isNumber() ? number(words(column)) : nullable(column.name()));
        }
        return properties;
    }

    private static <R> String words(Column<R> column) {
        if (column.fixedScale() == null) {
            return column.name() + ", in the SI unit of the key unit";
        }
        String si = column.fixedScale().metric().dimension().si();
        return si.isEmpty() ? column.name() : column.name() + ", " + si;
    }

    private static Map<String, Object> all(Map<String, Object> properties) {
        return Schema.closed(properties, List.copyOf(properties.keySet()));
    }

    private static Map<String, Object> described(String words, Map<String, Object> schema) {
        schema.put("description", words);
        return schema;
    }

    private static Map<String, Object> text(String words) {
        return Schema.object("type", "string", "description", words);
    }

    private static Map<String, Object> nullable(String words) {
        return Schema.object("type", List.of("string", "null"), "description", words + "; null when there is none");
    }

    private static Map<String, Object> number(String words) {
        return Schema.object("type", List.of("number", "null"), "description", words);
    }
}
