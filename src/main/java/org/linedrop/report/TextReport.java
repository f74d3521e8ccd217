package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.TradeUnits;
import org.linedrop.result.DeviceRow;
import org.linedrop.result.Result;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.FeedCheck;
import org.linedrop.study.HoseSwell;
import org.linedrop.units.Display;

/** A checked circuit as a page of text, 120 columns wide: the answer first, then where it comes from. */
public final class TextReport {
    private final List<CaseCheck> cases;
    private final Circuit circuit;
    private final Display display;
    private final List<String> lines = new ArrayList<>();

    private TextReport(FeedCheck check, Display display) {
        this.cases = check.cases();
        this.circuit = cases.get(0).result().circuit();
        this.display = TradeUnits.of(circuit, display);
    }

    /**
     * Every row of every case.
     *
     * @param check   the cases, at least one
     * @param display units
     * @return the page, ending with a line end
     */
    public static String solve(FeedCheck check, Display display) {
        TextReport report = new TextReport(check, display);
        report.sentences();
        report.cases.forEach(report::tables);
        report.footnotes(report.cases);
        report.judgement();
        report.notices();
        return report.ended();
    }

    /**
     * Every case judged; the rows of the worst.
     *
     * @param check   the cases, at least one
     * @param display units
     * @return the page, ending with a line end
     */
    public static String check(FeedCheck check, Display display) {
        TextReport report = new TextReport(check, display);
        report.sentences();
        report.judgement();
        List<CaseCheck> printed = report.worst();
        printed.forEach(report::tables);
        report.footnotes(printed);
        report.notices();
        return report.ended();
    }

    /** What was not solved, and the worst of what was. */
    private List<CaseCheck> worst() {
        List<CaseCheck> worst = new ArrayList<>();
        for (CaseCheck each : Standing.worstFirst(cases)) {
            worst.add(each);
            if (Standing.solved(each)) {
                break;
            }
        }
        return worst;
    }

    private void sentences() {
        for (FeedCheck.Said each : new FeedCheck(Standing.leading(cases)).said(display)) {
            lines.addAll(Plain.wrap(each.sentence(), Plain.WIDTH, 2));
        }
        lines.add("");
        lines.addAll(Plain.wrap(circuit.title(), Plain.WIDTH, 0));
    }

    private void tables(CaseCheck check) {
        Result result = check.result().usual();
        if (!Standing.solved(check)) {
            lines.add("");
            lines.addAll(Plain.wrap(
                    RunTable.caseWords(result.circuit()) + ": not solved, so there are no figures", Plain.WIDTH, 2));
            return;
        }
        for (Run run : result.circuit().runs()) {
            lines.add("");
            lines.addAll(new RunTable(result, run, display).lines());
        }
        List<DeviceRow> devices = result.devices();
        if (!devices.isEmpty()) {
            lines.add("");
            lines.addAll(DeviceTable.lines(devices, display));
        }
        List<HoseSwell> swells = HoseSwell.of(result);
        if (!swells.isEmpty()) {
            lines.add("");
            lines.addAll(Plain.wrap(SwellTable.heading(check.caseName()), Plain.WIDTH, 2));
            lines.addAll(SwellTable.table(swells, display).lines());
            SwellTable.notes(swells, display).forEach(note -> lines.addAll(Plain.wrap(note, Plain.WIDTH, 2)));
        }
    }

    private void footnotes(List<CaseCheck> printed) {
        printed.stream().filter(Standing::solved).findFirst().ifPresent(check -> {
            lines.add("");
            Footnotes.of(check.result().usual()).forEach(line -> lines.addAll(Plain.wrap(line, Plain.WIDTH, 2)));
        });
    }

    private void judgement() {
        if (!Standing.judged(circuit)) {
            return;
        }
        if (cases.stream().anyMatch(each -> !each.result().limits().isEmpty())) {
            CaseTables tables = new CaseTables(cases, display);
            if (cases.size() > 1) {
                lines.add("");
                lines.addAll(tables.cases());
            }
            lines.add("");
            lines.addAll(tables.limits());
        }
        List<String> advice = CaseTables.advice(cases, display);
        if (!advice.isEmpty()) {
            lines.add("");
            lines.addAll(advice);
        }
        List<String> ratings = RatingTable.lines(Standing.ratings(cases), display);
        if (!ratings.isEmpty()) {
            lines.add("");
            lines.addAll(ratings);
        }
    }

    private void notices() {
        List<CaseCheck> solved = cases.stream().filter(Standing::solved).toList();
        block("Warnings", Notices.lines(solved, Notices::warnings));
        block("Assumptions", Notices.lines(cases, Standing::assumptions));
    }

    private void block(String heading, List<String> block) {
        if (!block.isEmpty()) {
            lines.add("");
            lines.add(heading);
            lines.addAll(block);
        }
    }

    private String ended() {
        lines.add("");
        lines.addAll(Safety.cautions(circuit.service()));
        lines.addAll(Safety.lines());
        return String.join("\n", lines) + "\n";
    }
}
