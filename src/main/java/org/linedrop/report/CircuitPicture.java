package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Run;
import org.linedrop.report.draw.Canvas;
import org.linedrop.report.draw.Canvas.Anchor;
import org.linedrop.report.draw.Canvas.Look;
import org.linedrop.report.draw.Canvas.Stroke;
import org.linedrop.report.draw.Element;
import org.linedrop.report.draw.Lettering;
import org.linedrop.report.draw.Shades;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.PartLoss;
import org.linedrop.units.Display;

/**
 * The circuit as a diagram: places as boxes, runs as lines between them, each part a stretch of its line as wide as its
 * bore and as dark as its share of the loss. Where places are known the front of the vehicle is on top; else fluid runs
 * down the page. Boxes stand in rows; between two rows lines have a channel to get to their track, and their parts below
 * each other on it, so that nothing can cover anything else.
 */
final class CircuitPicture {
    private static final double MOST_WIDTH_PX = 15;
    private static final double LEAST_WIDTH_PX = 3;

    private static final Stroke LEAD = Stroke.of(1.5, Shades.MUTED);
    private static final Stroke EDGE = Stroke.of(1.25, Shades.INK);

    private final Result result;
    private final Display display;
    private final CircuitLayout layout;
    private final Canvas canvas;
    private final double mostBoreM;

    private CircuitPicture(Result result, Display display, double widthPx) {
        this.result = result;
        this.display = display;
        this.layout = new CircuitLayout(result, display, widthPx);
        this.canvas = new Canvas(layout.widthPx());
        this.mostBoreM = layout.lines().stream()
                .flatMap(line -> line.parts.stream())
                .mapToDouble(PartLoss::boreM)
                .max()
                .orElse(0);
    }

    /** Draws a solved case; empty where nothing is joined. */
    static List<Picture> of(CaseCheck check, Display display) {
        Result result = check.result().usual();
        if (result.rows().isEmpty()) {
            return List.of();
        }
        Circuit circuit = result.circuit();
        List<String> said = new ArrayList<>();
        for (Run run : circuit.runs()) {
            List<PartRow> rows = result.rows(run.id());
            if (!rows.isEmpty()) {
                said.add(run.id() + " from " + run.from().element() + " to "
                        + run.to().element() + " carries "
                        + Scale.FLOW.text(rows.get(0).flowM3PerS(), display));
            }
        }
        String words = "Case " + check.caseName() + ": " + String.join("; ", said) + ".";
        return List.of(Picture.of(
                "circuit", "The circuit", words, width -> new CircuitPicture(result, display, width).drawn(words)));
    }

    private Element drawn(String words) {
        layout.lines().forEach(this::line);
        for (int node = 0; node < layout.nodes(); node++) {
            box(node);
        }
        double y = legend(layout.endPx() + 14);
        return canvas.finished(y, "The circuit", words);
    }

    private void box(int node) {
        double left = layout.middle(node) - layout.boxWidth(node) / 2;
        double top = layout.topPx(node);
        canvas.box(left, top, layout.boxWidth(node), layout.boxHeight(node), Shades.WASH, EDGE);
        List<String> text = layout.boxLines(node);
        double y = top + 16;
        for (int i = 0; i < text.size(); i++) {
            boolean last = i == text.size() - 1;
            canvas.text(layout.middle(node), y, Anchor.MIDDLE, text.get(i), last ? Look.MUTED : Look.BOLD);
            y += 14;
        }
    }

    private void line(CircuitLayout.Line line) {
        double top = layout.partsTopPx(line);
        double end = layout.partsEndPx(line);
        double x = line.trackPx;
        double from = layout.topPx(line.upper) + layout.boxHeight(line.upper);
        double to = layout.topPx(line.lower);
        canvas.path(
                new double[] {
                    line.upperPortPx,
                    from,
                    line.upperPortPx,
                    line.upperLanePx,
                    x,
                    line.upperLanePx,
                    x,
                    end,
                    x,
                    line.lowerLanePx,
                    line.lowerPortPx,
                    line.lowerLanePx,
                    line.lowerPortPx,
                    to
                },
                LEAD);
        List<List<String>> items = layout.items(line);
        double spare = (end - top - layout.needed(line) + 6) / items.size();
        List<PartLoss> down = CircuitLayout.parts(line);
        double y = top;
        for (int i = 0; i < items.size(); i++) {
            double height = CircuitLayout.itemHeight(items.get(i)) + Math.max(0, spare);
            if (i == 0) {
                arrow(x, y + Math.min(height, CircuitLayout.LEAST_ITEM_PX) / 2, line.down);
            } else {
                part(down.get(i - 1), x, y, height);
            }
            double base = y + 15;
            for (String words : items.get(i)) {
                canvas.text(
                        x + 14,
                        base,
                        Anchor.START,
                        words,
                        i == 0
                                ? new Look(Canvas.SMALL_PX, Shades.INK, true)
                                : new Look(Canvas.SMALL_PX, Shades.INK, false));
                base += CircuitLayout.LINE_PX;
            }
            y += height;
        }
    }

    private void arrow(double x, double y, boolean down) {
        double tip = down ? 6 : -6;
        canvas.area(new double[] {x - 6, y - tip, x + 6, y - tip, x, y + tip}, Shades.INK);
    }

    private void part(PartLoss part, double x, double top, double height) {
        boolean device = result.circuit().device(part.part()).isPresent();
        String fill = part.line() ? Shades.ofShare(part.share()) : Shades.GIVEN;
        if (device) {
            double tall = Math.min(height - 6, 22);
            canvas.box(x - 9, top + 4, 18, tall, fill, Stroke.of(1.5, Shades.INK));
        } else {
            double wide = width(part.boreM());
            canvas.box(x - wide / 2, top + 1, wide, height - 2, fill, Stroke.of(0.9, Shades.INK));
        }
    }

    private double width(double boreM) {
        return mostBoreM > 0 ? Math.max(LEAST_WIDTH_PX, MOST_WIDTH_PX * boreM / mostBoreM) : LEAST_WIDTH_PX;
    }

    private double legend(double topPx) {
        double y = topPx;
        canvas.text(0, y + 12, Anchor.START, "share of what all parts lose:", Look.MUTED);
        y += 18;
        int inLine = Picture.narrow(layout.widthPx()) ? 3 : 5;
        List<String> steps = Shades.steps();
        for (int i = 0; i < steps.size(); i++) {
            double x = i % inLine * 106.0;
            canvas.box(x, y + 2, 14, 11, steps.get(i), Stroke.of(0.75, Shades.INK));
            canvas.text(x + 20, y + 12, Anchor.START, Shades.words().get(i), Look.MUTED);
            if (i % inLine == inLine - 1 || i == steps.size() - 1) {
                y += 17;
            }
        }
        List<String> notes = new ArrayList<>();
        double least = layout.lines().stream()
                .flatMap(line -> line.parts.stream())
                .mapToDouble(PartLoss::boreM)
                .filter(bore -> bore > 0)
                .min()
                .orElse(0);
        if (least > 0) {
            notes.add("Width of a line: its bore, " + Scale.BORE.number(least, display) + " to "
                    + Scale.BORE.text(mostBoreM, display) + ".");
        }
        notes.add("Boxes on a line are devices; blue: what makes or sets pressure.");
        notes.add("Under a place: what a gauge there reads.");
        notes.add(
                layout.grid().placed()
                        ? "Seen from above, the front of the vehicle on top; lengths are not to scale."
                        : "In the order of flow; neither places nor lengths are to scale.");
        for (String text : Lettering.wrap(String.join(" ", notes), layout.widthPx(), Canvas.SMALL_PX, 9)) {
            canvas.text(0, y + 12, Anchor.START, text, Look.MUTED);
            y += 15;
        }
        return y + 6;
    }
}
