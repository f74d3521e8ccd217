package org.linedrop.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.fact.Source;
import org.linedrop.result.LimitRow;
import org.linedrop.result.Verdict;
import org.linedrop.study.Advice;
import org.linedrop.study.CaseCheck;
import org.linedrop.units.Display;

/** Cases against limits: a line for each case, a line for each limit. */
final class CaseTables {
    private final List<CaseCheck> cases;
    private final Display display;

    CaseTables(List<CaseCheck> cases, Display display) {
        this.cases = cases;
        this.display = display;
    }

    /** A line for each case: its margins and its verdict. Many limits make several tables. */
    List<String> cases() {
        List<String> ids = new ArrayList<>(byLimit().keySet());
        List<String> lines = new ArrayList<>(List.of("Margin to each limit"));
        int from = 0;
        do {
            int to = ids.size();
            while (to > from + 1 && caseTable(ids.subList(from, to)).naturalWidth() > Plain.WIDTH) {
                to--;
            }
            lines.addAll(caseTable(ids.subList(from, to)).lines());
            from = to;
        } while (from < ids.size());
        return lines;
    }

    /** The same in one table, however wide. */
    Table caseTable() {
        return caseTable(new ArrayList<>(byLimit().keySet()));
    }

    private Table caseTable(List<String> ids) {
        Table table = new Table().words("case", 2);
        for (String id : ids) {
            table.numbers(Plain.clean(id), unit(id));
        }
        table.fixed("verdict", false);
        for (CaseCheck each : cases) {
            List<String> cells = new ArrayList<>(List.of(each.caseName()));
            for (String id : ids) {
                cells.add(Standing.limits(each.result()).stream()
                        .filter(row -> row.limit().id().equals(id))
                        .findFirst()
                        .map(this::margins)
                        .orElse(""));
            }
            cells.add(verdict(each));
            table.row(cells);
        }
        return table;
    }

    private String unit(String id) {
        return byLimit().getOrDefault(id, List.of()).stream()
                .findFirst()
                .map(placed -> Columns.differences(placed.row()).unit(display).symbol())
                .orElse("");
    }

    private String margins(LimitRow row) {
        if (row.verdict() == Verdict.NOT_JUDGED) {
            return "not judged";
        }
        Scale scale = Columns.differences(row);
        String usual = scale.signed(row.margin(), display);
        String least = scale.signed(row.marginLow(), display);
        return usual.equals(least) ? usual : usual + " (" + least + ")";
    }

    private static String verdict(CaseCheck check) {
        if (!Standing.solved(check)) {
            return "NOT SOLVED";
        }
        return check.verdict() == null ? "none" : check.verdict().word().toUpperCase(Locale.ROOT);
    }

    /** A limit in one case. */
    private record Placed(CaseCheck check, LimitRow row) {}

    private Map<String, List<Placed>> byLimit() {
        Map<String, List<Placed>> limits = new LinkedHashMap<>();
        for (CaseCheck each : cases) {
            for (LimitRow row : Standing.limits(each.result())) {
                limits.computeIfAbsent(row.limit().id(), id -> new ArrayList<>())
                        .add(new Placed(each, row));
            }
        }
        return limits;
    }

    /** A line for each limit, in its worst case. */
    List<String> limits() {
        List<String> lines = new ArrayList<>(limitTable().lines());
        for (String note : notes()) {
            lines.addAll(Plain.wrap(note, Plain.WIDTH, 2));
        }
        return lines;
    }

    /** What stands under the limits: what its words mean, rules of thumb, why something was not judged. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add(
                "margin: at usual bores; least, or in brackets: over what is sold (bores; oil, suction: fluid too). Negative is"
                        + " broken.");
        byLimit().values().forEach(placed -> placed.forEach(each -> reason(each, notes)));
        return notes;
    }

    Table limitTable() {
        Table table = new Table()
                .words("limit", 2)
                .words("from", 0)
                .words("worst case", 2)
                .fixed("value", true)
                .fixed("margin", true)
                .fixed("least", true)
                .fixed("verdict", false);
        for (List<Placed> placed : byLimit().values()) {
            Placed worst = placed.get(0);
            for (Placed other : placed) {
                worst = Standing.worse(other.row(), worst.row()) ? other : worst;
            }
            table.row(cells(worst));
        }
        return table;
    }

    /** Rules of thumb are printed apart from the limits: they break nothing. */
    static List<String> advice(List<CaseCheck> cases, Display display) {
        return rules(cases, display).stream()
                .flatMap(rule -> Plain.wrap(rule, Plain.WIDTH, 2).stream())
                .toList();
    }

    /** Title and status; what is nobody's but the trade's is said once. */
    private static String said(Source source) {
        String status = source.status().word();
        return source.title().equals("Custom of the trade") ? status : source.title() + ", " + status;
    }

    /** The same, a line each. */
    static List<String> rules(List<CaseCheck> cases, Display display) {
        List<String> lines = new ArrayList<>();
        for (Advice advice : Advice.of(cases)) {
            Scale scale = Scale.usual(advice.dimension());
            String where = advice.element().isEmpty() ? "" : advice.element() + ": ";
            String line = "advice: " + advice.words() + " at " + (advice.atLeast() ? "least " : "most ")
                    + scale.brief(advice.bound(), display) + " ("
                    + said(advice.source()) + "): " + where
                    + scale.brief(advice.value(), display) + " in case " + advice.caseName() + ", "
                    + AdviceColumns.verdict(advice)
                    + (advice.kept() ? "" : "; a rule of thumb, no limit");
            lines.add(line);
        }
        return lines;
    }

    private List<String> cells(Placed placed) {
        LimitRow row = placed.row();
        Scale differences = Columns.differences(row);
        String verdict = row.verdict().word();
        return List.of(
                row.limit().id() + " " + bound(row, display),
                row.limit().from(),
                placed.check().caseName(),
                row.ofState() ? row.state() : Columns.scale(row).text(row.value(), display),
                differences.signed(row.margin(), display),
                differences.signed(row.marginLow(), display),
                row.verdict() == Verdict.HOLDS ? verdict : verdict.toUpperCase(Locale.ROOT));
    }

    /** The bound in the units of the report. */
    static String bound(LimitRow row, Display display) {
        LimitText bound = row.limit().bound();
        Scale scale = Columns.scale(row);
        if (bound.perRevPerS() > 0) {
            return bound.write();
        }
        return switch (bound.kind()) {
            case AT_LEAST -> "at least " + scale.brief(bound.low(), display);
            case AT_MOST -> "at most " + scale.brief(bound.high(), display);
            case BETWEEN ->
                "between " + scale.brief(bound.low(), display) + " and " + scale.brief(bound.high(), display);
            default -> bound.write();
        };
    }

    private void reason(Placed placed, List<String> reasons) {
        String reason = placed.row().reason();
        if (!reason.isEmpty() && Standing.solved(placed.check())) {
            reasons.add(placed.row().limit().id() + " " + placed.row().verdict().word() + " at "
                    + placed.check().caseName() + ": " + reason);
        }
    }
}
