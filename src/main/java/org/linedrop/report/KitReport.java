package org.linedrop.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.linedrop.catalogue.Bench;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Status;
import org.linedrop.study.kit.Kit;
import org.linedrop.study.kit.KitCircuit;
import org.linedrop.study.kit.KitHose;
import org.linedrop.study.kit.KitItem;
import org.linedrop.study.kit.KitJoint;
import org.linedrop.study.kit.Wrench;
import org.linedrop.units.Display;

/** A kit as a page of text, CSV or JSON: what to buy first, then how to make it up. */
public final class KitReport {
    /** A list made for size has lines for sizes that this kit has not; a slip of the pen shows in the first few. */
    private static final int UNUSED_SHOWN = 6;

    private final Kit kit;
    private final Display display;
    private final List<String> lines = new ArrayList<>();

    private KitReport(Kit kit, Display display) {
        this.kit = kit;
        this.display = display;
    }

    /** What a CSV file of a kit has a line for. */
    public enum Rows {
        /** Things to buy, with the totals below. */
        PARTS("parts"),
        /** Hoses to make up. */
        HOSES("hoses"),
        /** Joints. */
        JOINTS("joints");

        private final String word;

        Rows(String word) {
            this.word = word;
        }

        /**
         * The word of the option.
         *
         * @return for example {@code hoses}
         */
        public String word() {
            return word;
        }
    }

    /**
     * A page of text, 120 columns wide.
     *
     * @param kit     the kit
     * @param display units
     * @return the page, ending with a line end
     */
    public static String text(Kit kit, Display display) {
        KitReport report = new KitReport(kit, display);
        new KitSentences(kit, display).lines().forEach(report::line);
        report.shopping();
        report.kit.circuits().forEach(report::bench);
        report.clockings();
        report.joints();
        report.alternatives();
        report.notes();
        report.notices();
        return report.ended();
    }

    private void line(String text) {
        lines.addAll(Plain.wrap(text, Plain.WIDTH, 2));
    }

    private void gap() {
        lines.add("");
    }

    private void shopping() {
        gap();
        lines.addAll(Listing.lines("Shopping list", KitColumns.items(kit), kit.items(), display));
        Figure slack = Bench.standard().slackShare();
        Figure change = Bench.standard().lengthChangeShare();
        line("Hose: overall lengths as the files give them. Where you measured the bare path, buy "
                + percent(slack.low()) + " to " + percent(slack.high())
                + " % more: slack, which takes up the change of " + percent(change.low()) + " to +"
                + percent(change.high()) + " % under pressure too. ("
                + slack.source().title() + "; "
                + change.source().title() + ")");
        if (kit.items().stream()
                .anyMatch(item ->
                        item.massEach() != null && item.massEach().status().doubtful())) {
            line("? from memory; of hard line the density of its material times its wall.");
        }
    }

    private static String percent(double share) {
        return Long.toString(Math.round(share * 100));
    }

    private void bench(KitCircuit circuit) {
        if (circuit.hoses().isEmpty()) {
            return;
        }
        gap();
        lines.addAll(Listing.lines(
                "Hoses to make up: " + circuit.title() + ", case " + circuit.caseName(),
                hoseColumns(circuit.hoses()),
                circuit.hoses(),
                display));
    }

    /** Columns of numbers that say nothing in any row are left out for the eye. */
    private static <R> List<Column<R>> told(List<Column<R>> columns, List<R> rows) {
        return columns.stream()
                .filter(column -> !column.isNumber()
                        || rows.stream()
                                .anyMatch(row -> !Double.isNaN(column.number().applyAsDouble(row))))
                .toList();
    }

    private static List<Column<KitHose>> hoseColumns(List<KitHose> hoses) {
        List<Column<KitHose>> columns = new ArrayList<>(told(KitColumns.HOSES, hoses));
        Column<KitHose> clocking = KitColumns.CLOCKING;
        if (!columns.contains(clocking)
                && hoses.stream().anyMatch(hose -> hose.clocking().wanted())) {
            int bends = 0;
            while (!columns.get(bends).key().equals("bends")) {
                bends++;
            }
            columns.add(bends, clocking);
        }
        return columns;
    }

    private void clockings() {
        Map<String, List<String>> missing = new LinkedHashMap<>();
        Map<String, List<String>> cut = new LinkedHashMap<>();
        List<String> uncut = new ArrayList<>();
        boolean wanted = false;
        boolean memory = false;
        List<String> remarks = new ArrayList<>();
        for (KitCircuit circuit : kit.circuits()) {
            for (KitHose hose : circuit.hoses()) {
                wanted |= hose.clocking().wanted();
                memory |= hose.tolerance().status().doubtful();
                if (!hose.clocking().missing().isEmpty()) {
                    missing.computeIfAbsent(hose.clocking().missing(), text -> new ArrayList<>())
                            .add(hose.part());
                }
                if (!hose.clocking().remark().isEmpty()) {
                    remarks.add(hose.part() + ": " + hose.clocking().remark().strip());
                }
                if (!circuit.brake() && Double.isNaN(hose.cutM())) {
                    uncut.add(hose.part());
                } else if (!hose.cutFrom().isEmpty()) {
                    cut.computeIfAbsent(hose.cutFrom(), text -> new ArrayList<>())
                            .add(hose.part());
                }
            }
        }
        if (memory) {
            gap();
            line(
                    "overall: seat to seat, elbows to their centre line; as the file gives it. +-: what a made-up hose may be"
                            + " off (SAE J517-type practice, from memory).");
        }
        if (wanted) {
            line(
                    "clocking: look along the hose with the near end hanging straight down (6 o'clock); the far end stands so"
                            + " many degrees counter-clockwise from it, whichever end you look from (after SAE J517). The wrong"
                            + " sense is scrap.");
        }
        missing.forEach((text, hoses) -> line("Clocking open for " + String.join(", ", hoses) + ": " + text + "."));
        remarks.forEach(this::line);
        cut.forEach((from, hoses) -> line("cut: " + String.join(", ", hoses) + cutBy(from)));
        if (!cut.isEmpty()) {
            line("cut +-: what a cut may be off ("
                    + Bench.standard().cutToleranceM(1).source().title() + ").");
        }
        if (!uncut.isEmpty()) {
            line("No cut length for " + String.join(", ", uncut)
                    + ": what an end adds differs by maker. Measure it, and give it in the list of --prices (column"
                    + " cut-off). Cut = overall less both cut-offs.");
        }
    }

    /** Where the cut-offs are from; hose on barbs has none. */
    private static String cutBy(String from) {
        return from.isEmpty() ? " as long as they are" : " by " + from + ". Other ends, other lengths.";
    }

    private void joints() {
        List<KitColumns.JointKind> kinds = kinds();
        if (kinds.isEmpty()) {
            return;
        }
        gap();
        lines.addAll(Listing.lines("Joints", told(KitColumns.JOINT_KINDS, kinds), kinds, display));
        if (kit.wrenches().stream().anyMatch(wrench -> wrench.nutHex() != null)) {
            line("spanner: across the flats of the tube nut of AN818; nuts of hose ends usually take the same (common"
                    + " practice), bodies do not. Use flat spanners on soft nuts.");
        }
    }

    private List<KitColumns.JointKind> kinds() {
        Map<String, List<KitJoint>> kinds = new LinkedHashMap<>();
        kit.circuits().stream()
                .flatMap(circuit -> circuit.joints().stream())
                .sorted(java.util.Comparator.comparing(KitJoint::seat))
                .forEach(joint -> kinds.computeIfAbsent(joint.seat() + " " + joint.size(), key -> new ArrayList<>())
                        .add(joint));
        return kinds.values().stream().map(this::kind).toList();
    }

    private KitColumns.JointKind kind(List<KitJoint> joints) {
        KitJoint first = joints.get(0);
        Figure hex = first.seat() != org.linedrop.catalogue.Seat.FLARE_37
                ? null
                : kit.wrenches().stream()
                        .filter(wrench -> wrench.size().equals(first.size()))
                        .map(Wrench::nutHex)
                        .findFirst()
                        .orElse(null);
        return new KitColumns.JointKind(
                first.seat().word(),
                first.size(),
                joints.size(),
                joints.stream().mapToInt(KitJoint::leaks).sum(),
                (int) joints.stream().filter(joint -> !joint.stated()).count(),
                hex);
    }

    private void alternatives() {
        if (!kit.alternatives().isEmpty()) {
            gap();
            lines.addAll(Listing.lines("What other ways save", KitColumns.ALTERNATIVES, kit.alternatives(), display));
        }
    }

    private void notes() {
        notes("Tools", "tool");
        notes("When making it up", "reminder");
        notes("On the car", "routing");
    }

    private void notes(String heading, String what) {
        List<Bench.Note> notes =
                kit.notes().stream().filter(note -> note.what().equals(what)).toList();
        if (notes.isEmpty()) {
            return;
        }
        gap();
        lines.add(heading);
        for (Bench.Note note : notes) {
            String family = note.family().isEmpty() ? "" : " (" + note.family() + ")";
            String from = note.source().status() == Status.COMMON_PRACTICE
                    ? note.source().status().word()
                    : Columns.source(note.source());
            line("- " + note.kind() + family + ": " + note.text() + " [" + from + "]");
        }
    }

    private void notices() {
        List<String> told = new ArrayList<>();
        for (KitCircuit circuit : kit.circuits()) {
            String of = kit.circuits().size() > 1 ? circuit.title() + ": " : "";
            for (Notice notice : circuit.notices()) {
                told.add("- " + of + (notice.element().isEmpty() ? "" : notice.element() + ": ") + notice.text());
            }
        }
        if (!kit.unused().isEmpty()) {
            int shown = Math.min(kit.unused().size(), UNUSED_SHOWN);
            int more = kit.unused().size() - shown;
            told.add("- of your list of prices, nothing here is called: "
                    + String.join("; ", kit.unused().subList(0, shown))
                    + (more == 0 ? "" : "; and " + more + " more"));
        }
        if (!told.isEmpty()) {
            gap();
            lines.add("Not in the list, or to be looked at");
            told.forEach(this::line);
        }
    }

    private String ended() {
        gap();
        cautions(kit).forEach(this::line);
        lines.addAll(Safety.lines());
        return String.join("\n", lines) + "\n";
    }

    static List<String> cautions(Kit kit) {
        Set<String> cautions = new LinkedHashSet<>();
        kit.circuits().forEach(circuit -> cautions.addAll(Safety.cautions(circuit.service())));
        return List.copyOf(cautions);
    }

    /**
     * A table for a spreadsheet: exact numbers, the safety words in the last lines.
     *
     * @param kit     the kit
     * @param rows    what has a line
     * @param display units of the numbers
     * @return a table, ending with a line end
     */
    public static String csv(Kit kit, Rows rows, Display display) {
        return switch (rows) {
            case PARTS -> parts(kit, display);
            case HOSES ->
                table(
                        kit,
                        KitColumns.HOSES,
                        kit.circuits().stream().flatMap(c -> c.hoses().stream()).toList(),
                        List.of(),
                        display);
            case JOINTS ->
                table(
                        kit,
                        KitColumns.JOINTS,
                        kit.circuits().stream()
                                .flatMap(c -> c.joints().stream())
                                .toList(),
                        List.of(),
                        display);
        };
    }

    private static String parts(Kit kit, Display display) {
        List<Column<KitItem>> columns = KitColumns.items(kit);
        List<List<String>> totals = new ArrayList<>();
        for (KitTotals.Total total : KitTotals.of(kit)) {
            List<String> cells = new ArrayList<>();
            for (Column<KitItem> column : Columns.data(columns)) {
                cells.add(
                        switch (column.key()) {
                            case "group" -> "total";
                            case "item" -> total.name();
                            default ->
                                column.key().equals(total.column())
                                        ? total.scale().exact(total.value(), display)
                                        : "";
                        });
            }
            totals.add(cells);
        }
        return table(kit, columns, kit.items(), totals, display);
    }

    private static <R> String table(
            Kit kit, List<Column<R>> columns, List<R> rows, List<List<String>> more, Display display) {
        List<List<String>> records = new ArrayList<>();
        rows.forEach(row -> records.add(CsvReport.cells(columns, row, display)));
        records.addAll(more);
        List<String> words = new ArrayList<>(cautions(kit));
        words.addAll(Safety.lines());
        return CsvReport.written(CsvReport.head(columns, display), records, words);
    }

    /**
     * The kit as JSON, always SI; what is not known is null.
     *
     * @param kit the kit
     * @return JSON, ending with a line end
     */
    public static String json(Kit kit) {
        return KitJson.text(kit);
    }
}
