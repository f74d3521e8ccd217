package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.linedrop.study.EndCosts;
import org.linedrop.study.EndCosts.Row;
import org.linedrop.units.Dimension;
import org.linedrop.units.Units;

/** Hose ends, and what each costs at a flow, as a list. */
public final class EndReport {
    private static final double FOOT_M = Units.from(1, Units.unit("ft", Dimension.LENGTH));

    private EndReport() {}

    /**
     * The list.
     *
     * @param costs the ends
     * @param flow  what flows, null where only the ends are listed
     * @return the list
     */
    public static Listing<Row> of(EndCosts costs, EndCosts.@Nullable Flow flow) {
        List<String> notes = new ArrayList<>();
        notes.add(
                "30 to 180 are bent tube (swept); forged, machined and low-profile elbows are one law. The turn alone of a"
                        + " forged 90 costs 4 to 5 times that of a bent one; the nipple is the same. ? from memory, guessed or"
                        + " taken from something alike.");
        if (flow == null) {
            notes.add("What an end costs: add --fluid, --temperature and --flow.");
        } else {
            notes.add(
                    "Flow from the hose into the end. In brackets: what the largest and the smallest bores sold make of"
                            + " it. as hose: the length of its own hose that loses as much at this flow; another flow or fluid"
                            + " gives another length.");
        }
        String heading = flow == null
                ? "Hose ends: nipple and through bores."
                : "Hose ends at " + flow.flow() + " of " + flow.fluid() + " at " + flow.temperature() + ".";
        return Listing.of("ends", heading, columns(flow != null), costs.rows(), notes);
    }

    private static List<Column<Row>> columns(boolean costs) {
        List<Column<Row>> columns = new ArrayList<>();
        columns.add(Cells.words("family", "family", "hose", row -> row.hose().family()));
        columns.add(Cells.words("size", "size", "size", row -> row.hose().sizeText()));
        columns.add(Cells.words("end", "end", "end", Row::text));
        columns.add(Cells.seen("nipple", Scale.BORE, true, row -> row.end().nippleBoreM()));
        columns.add(Cells.seen("through", Scale.BORE, true, row -> row.end().throughBoreM()));
        if (costs) {
            columns.add(Column.<Row>number("lossCoefficient", "K", Scale.PURE, Row::lossCoefficient)
                    .as("K on nipple", null, (row, look) -> String.format(Locale.ROOT, "%.2f", row.lossCoefficient())));
            columns.add(Column.<Row>number("dropPa", "loss", Scale.DROP, Row::dropPa)
                    .as(
                            "loses (low-high)",
                            Scale.DROP,
                            (row, look) -> Scale.DROP.number(row.dropPa(), look.display()) + " ("
                                    + Scale.DROP.number(row.dropLowPa(), look.display()) + "-"
                                    + Scale.DROP.number(row.dropHighPa(), look.display()) + ")"));
            columns.add(Column.number("dropLowPa", "loss low", Scale.DROP, Row::dropLowPa));
            columns.add(Column.number("dropHighPa", "loss high", Scale.DROP, Row::dropHighPa));
            columns.add(Column.<Row>number("equivalentM", "as hose", Scale.usual(Dimension.LENGTH), Row::equivalentM)
                    .as(
                            "as hose, m (ft)",
                            null,
                            (row, look) -> String.format(
                                    Locale.ROOT, "%.2f (%.1f)", row.equivalentM(), row.equivalentM() / FOOT_M)));
        } else {
            columns.add(Column.seen(
                    "nipple known",
                    false,
                    row -> row.end().nippleBoreM().status().word()));
            columns.add(Column.seen(
                    "nipple from",
                    false,
                    row -> row.end().nippleBoreM().source().title()));
        }
        columns.addAll(Cells.figure(
                "nippleBoreM", "nipple bore", Scale.BORE, row -> row.end().nippleBoreM()));
        columns.addAll(Cells.figure(
                "nippleLengthM", "nipple length", Scale.BORE, row -> row.end().nippleLengthM()));
        columns.addAll(Cells.figure(
                "throughBoreM", "through bore", Scale.BORE, row -> row.end().throughBoreM()));
        return List.copyOf(columns);
    }
}
