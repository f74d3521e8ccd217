package org.linedrop.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.linedrop.report.draw.Axis;
import org.linedrop.report.draw.Canvas;
import org.linedrop.report.draw.Canvas.Anchor;
import org.linedrop.report.draw.Canvas.Look;
import org.linedrop.report.draw.Canvas.Stroke;
import org.linedrop.report.draw.Element;
import org.linedrop.report.draw.Lettering;
import org.linedrop.report.draw.Shades;
import org.linedrop.result.LimitRow;
import org.linedrop.result.Verdict;
import org.linedrop.study.CaseCheck;
import org.linedrop.units.Display;
import org.linedrop.units.Units;

/** Distance of every case to every limit, from the smallest to the largest bores that are sold. */
final class BandPicture {
    private static final double ROW_PX = 20;
    private static final Stroke EDGE = Stroke.of(0.75, Shades.INK);
    private static final Stroke BOUND = new Stroke(1.75, Shades.LIMIT, "5 3");

    private final Display display;
    private final double widthPx;
    private final Canvas canvas;
    private final double barsPx;
    private final double endPx;

    /** A limit in one case. */
    private record Placed(String caseName, LimitRow row) {}

    private BandPicture(Display display, double widthPx) {
        this.display = display;
        this.widthPx = widthPx;
        this.canvas = new Canvas(widthPx);
        boolean narrow = Picture.narrow(widthPx);
        this.barsPx = narrow ? 116 : 200;
        this.endPx = widthPx - (narrow ? 70 : 150);
    }

    /** Draws the limits that were judged; empty where none was. */
    static List<Picture> of(List<CaseCheck> cases, Display display) {
        Map<String, List<Placed>> limits = new LinkedHashMap<>();
        for (CaseCheck each : cases) {
            for (LimitRow row : Standing.limits(each.result())) {
                if (row.verdict() != Verdict.NOT_JUDGED && Standing.solved(each)) {
                    limits.computeIfAbsent(row.limit().id(), id -> new ArrayList<>())
                            .add(new Placed(each.caseName(), row));
                }
            }
        }
        if (limits.isEmpty()) {
            return List.of();
        }
        String title = "Room to each limit, over the bores that are sold";
        List<String> said = new ArrayList<>();
        limits.forEach((id, placed) -> placed.forEach(each -> said.add(id + " in case " + each.caseName() + " "
                + margin(each.row(), each.row().margin(), display) + " ("
                + margin(each.row(), each.row().marginLow(), display) + " to "
                + margin(each.row(), each.row().marginHigh(), display) + ")")));
        String words = "Margin at usual bores, in brackets from worst to best: " + String.join("; ", said) + ".";
        return List.of(Picture.of(
                "bands", title, words, width -> new BandPicture(display, width).drawn(limits, title, words)));
    }

    private static String margin(LimitRow row, double margin, Display display) {
        Scale scale = Columns.differences(row);
        return scale.signed(margin, display) + " " + scale.unit(display).symbol();
    }

    private Element drawn(Map<String, List<Placed>> limits, String title, String words) {
        double y = 0;
        for (Map.Entry<String, List<Placed>> entry : limits.entrySet()) {
            y = limit(entry.getKey(), entry.getValue(), y) + 12;
        }
        canvas.line(0, y + 8, 22, y + 8, BOUND);
        canvas.text(30, y + 12, Anchor.START, "the limit; left of it is broken", Look.MUTED);
        y += 17;
        for (String line : Lettering.wrap(
                "Bar: from the worst to the best of the bores sold (in oil and suction of the fluid's class too); dot: at"
                        + " usual bores.",
                widthPx,
                Canvas.SMALL_PX,
                6)) {
            canvas.text(0, y + 12, Anchor.START, line, Look.MUTED);
            y += 15;
        }
        return canvas.finished(y + 6, title, words);
    }

    private double limit(String id, List<Placed> placed, double topPx) {
        LimitRow first = placed.get(0).row();
        Scale scale = Columns.differences(first);
        String unit = scale.unit(display).symbol();
        double y = topPx;
        for (String line :
                Lettering.wrap(id + " " + CaseTables.bound(first, display), widthPx - 8, Canvas.TEXT_PX * 1.08, 3)) {
            canvas.text(0, y + 13, Anchor.START, line, Look.BOLD);
            y += 16;
        }
        Axis axis = axis(placed, scale);
        int most = Picture.narrow(widthPx) ? 2 : 6;
        double plotTop = y + 20;
        double plotEnd = plotTop + ROW_PX * placed.size();
        canvas.box(barsPx, plotTop, endPx - barsPx, plotEnd - plotTop, Shades.WASH, Stroke.of(0, Shades.PAPER));
        for (double mark : axis.marks(most)) {
            canvas.line(axis.at(mark), plotTop, axis.at(mark), plotEnd, Stroke.of(1, Shades.GRID));
            canvas.text(axis.at(mark), y + 15, Anchor.MIDDLE, axis.text(mark, most), Look.MUTED);
        }
        canvas.text(widthPx, y + 15, Anchor.END, (Picture.narrow(widthPx) ? "" : "margin, ") + unit, Look.MUTED);
        canvas.line(axis.at(0), plotTop, axis.at(0), plotEnd, BOUND);
        y = plotTop;
        for (Placed each : placed) {
            row(each, scale, axis, y);
            y += ROW_PX;
        }
        return y;
    }

    private Axis axis(List<Placed> placed, Scale scale) {
        double low = 0;
        double high = 0;
        for (Placed each : placed) {
            low = Math.min(low, shown(each.row().marginLow(), scale));
            high = Math.max(high, shown(each.row().marginHigh(), scale));
        }
        return Axis.around(low, high, 1e-3, barsPx, endPx);
    }

    private double shown(double si, Scale scale) {
        return Units.to(si, scale.unit(display));
    }

    private void row(Placed placed, Scale scale, Axis axis, double topPx) {
        LimitRow row = placed.row();
        canvas.text(
                0,
                topPx + 14,
                Anchor.START,
                Lettering.cut(placed.caseName(), barsPx - 8, Canvas.SMALL_PX),
                new Look(Canvas.SMALL_PX, Shades.INK, false));
        double low = axis.at(shown(row.marginLow(), scale));
        double high = axis.at(shown(row.marginHigh(), scale));
        boolean holds = row.verdict() == Verdict.HOLDS;
        canvas.box(low, topPx + 6, Math.max(1.5, high - low), 8, Shades.steps().get(holds ? 1 : 3), EDGE);
        canvas.dot(axis.at(shown(row.margin(), scale)), topPx + 10, 4, Shades.PAPER, Stroke.of(1.5, Shades.INK));
        String margin = scale.signed(row.margin(), display);
        String text =
                Picture.narrow(widthPx) ? margin : margin + "  " + row.verdict().word();
        canvas.text(widthPx, topPx + 14, Anchor.END, text, new Look(Canvas.SMALL_PX, Shades.INK, !holds));
    }
}
