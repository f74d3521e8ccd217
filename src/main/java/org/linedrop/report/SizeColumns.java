package org.linedrop.report;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.DashSize;
import org.linedrop.catalogue.SizeUse;
import org.linedrop.fact.Status;

/** The columns of dash sizes. */
final class SizeColumns {
    private final Catalogue catalogue;

    SizeColumns(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    List<Column<DashSize>> columns() {
        return Cells.all(
                List.of(
                        Cells.words("size", "size", "size", row -> "-" + row.dash()),
                        Cells.words("tube", "tube", "tube in", DashSize::tubeText),
                        Cells.seen("tube", Cells.BORE, false, DashSize::tubeM)),
                Cells.figure("tubeM", "tube outside diameter", Cells.BORE, DashSize::tubeM),
                List.of(Cells.words("thread", "flare thread", "flare thread", DashSize::threadForm)),
                Cells.figure("threadMajorM", "thread outside diameter", Cells.BORE, DashSize::threadMajorM),
                Cells.figure("nutHexM", "nut across flats", Cells.BORE, DashSize::nutHexM),
                List.of(
                        Cells.seen("nut across flats", Cells.BORE, false, DashSize::nutHexM),
                        Cells.words(
                                "status",
                                "status",
                                "known as",
                                row -> row.tubeM().status().word()),
                        Cells.titled(
                                "source", "source", "from", row -> row.tubeM().source()),
                        Cells.words(
                                "bossThread",
                                "O-ring boss thread",
                                "O-ring boss thread",
                                DashSize::bossThread,
                                row -> row.bossThread()
                                        + (row.bossSource().status().doubtful() ? "?" : "")),
                        Column.text("bossRing", "O-ring boss ring AS568", row -> Cells.known(row.bossRing())),
                        Column.text("bossSource", "O-ring boss source", row -> Cells.said(row.bossSource())),
                        Column.text(
                                "bossStatus",
                                "O-ring boss status",
                                row -> row.bossSource().status().word()),
                        Column.seen("taper pipe", false, this::pipe),
                        Column.text("taperPipe", "taper pipe", row -> Cells.known(row.usualTaperPipe())),
                        Column.text(
                                "taperPipePairs",
                                "taper pipe sold",
                                row -> Cells.known(String.join("; ", row.taperPipePairs()))),
                        Column.text("taperPipeSource", "taper pipe source", row -> Cells.said(row.taperPipeSource())),
                        Column.text(
                                "taperPipeStatus",
                                "taper pipe status",
                                row -> row.taperPipeSource().status().word()),
                        Cells.words("use", "use", "used for", this::use),
                        Column.text("useSource", "use source", row -> useFrom(row, false)),
                        Column.text("useStatus", "use status", row -> useFrom(row, true))));
    }

    private String pipe(DashSize row) {
        if (row.usualTaperPipe().isEmpty()) {
            return "-";
        }
        boolean doubtful = row.taperPipeSource().status().doubtful();
        return row.usualTaperPipe() + " NPT" + (doubtful ? "?" : "");
    }

    private @Nullable String use(DashSize row) {
        String uses = catalogue.sizeUses().stream()
                .filter(use -> use.dash() == row.dash())
                .map(SizeUse::use)
                .distinct()
                .collect(Collectors.joining("; "));
        return Cells.known(uses);
    }

    private @Nullable String useFrom(DashSize row, boolean status) {
        return catalogue.sizeUses().stream()
                .filter(use -> use.dash() == row.dash())
                .findFirst()
                .map(use -> status ? use.source().status().word() : Cells.said(use.source()))
                .orElse(status && use(row) != null ? Status.COMMON_PRACTICE.word() : null);
    }
}
