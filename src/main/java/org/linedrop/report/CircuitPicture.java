package org.linedrop.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Position;
import org.linedrop.circuit.Run;
import org.linedrop.report.draw.Canvas;
import org.linedrop.report.draw.Canvas.Anchor;
import org.linedrop.report.draw.Canvas.Look;
import org.linedrop.report.draw.Canvas.Stroke;
import org.linedrop.report.draw.Element;
import org.linedrop.report.draw.Grid;
import org.linedrop.report.draw.Lettering;
import org.linedrop.report.draw.Shades;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.FlowPath;
import org.linedrop.study.PartLoss;
import org.linedrop.units.Display;

/**
 * The circuit as a diagram: places as boxes, runs as lines between them, each part a stretch of its line as wide as its
 * bore and as dark as its share of the loss. Where places are known the front of the vehicle is on top; else fluid runs
 * down the page. Boxes stand in rows; between two rows lines have a channel to get to their track, and their parts below
 * each other on it, so that nothing can cover anything else.
 */
final class CircuitPicture {
    private static final double CHANNEL_PX = 9;
    private static final double LANE_PX = 7;
    private static final double LINE_PX = 13;
    private static final double ITEM_PX = 8;
    private static final double LEAST_ITEM_PX = 24;
    private static final double MOST_WIDTH_PX = 15;
    private static final double LEAST_WIDTH_PX = 3;
    /** A place or track needs at least so much of the width to be read. */
    private static final double PITCH_PX = 92;

    private static final double NARROW_PX = 80;

    private static final Stroke LEAD = Stroke.of(1.5, Shades.MUTED);
    private static final Stroke EDGE = Stroke.of(1.25, Shades.INK);

    private final Result result;
    private final Display display;
    private final List<String> nodes = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final Grid grid;
    private final double widthPx;
    private final double mainPx;
    private final Canvas canvas;
    private final double mostBoreM;
    private final int places;
    private final double[] rowTopPx;
    private final double[] rowEndPx;
    private final double[] zoneTopPx;
    private final double[] zoneEndPx;

    /** A run between two places, with what is found for it on the way. */
    private static final class Line {
        private final String run;
        private final int from;
        private final int to;
        private final List<PartLoss> parts;
        private int upper;
        private int lower;
        private boolean down;
        private double trackPx;
        private double roomPx;
        private double upperPortPx;
        private double lowerPortPx;
        private double upperLanePx;
        private double lowerLanePx;

        Line(String run, int from, int to, List<PartLoss> parts) {
            this.run = run;
            this.from = from;
            this.to = to;
            this.parts = parts;
        }
    }

    private CircuitPicture(Result result, Display display, double widthPx) {
        this.result = result;
        this.display = display;
        collect();
        this.grid = Grid.of(
                spots(),
                lines.stream().map(line -> new Grid.Join(line.from, line.to)).toList());
        int most = 1;
        for (Line line : lines) {
            boolean downward = grid.row(line.from) <= grid.row(line.to);
            line.upper = downward ? line.from : line.to;
            line.lower = downward ? line.to : line.from;
            line.down = downward;
        }
        for (int r = 0; r < grid.rows(); r++) {
            most = Math.max(most, Math.max(grid.count(r), between(r).size()));
        }
        long side = lines.stream().filter(line -> !adjacent(line)).count();
        this.widthPx = Math.max(widthPx, PITCH_PX * (most + side));
        double slot = Math.min(190, Math.max(PITCH_PX, this.widthPx / (most + side + 0.5)));
        this.mainPx = this.widthPx - side * slot;
        this.canvas = new Canvas(this.widthPx);
        this.mostBoreM = lines.stream()
                .flatMap(line -> line.parts.stream())
                .mapToDouble(PartLoss::boreM)
                .max()
                .orElse(0);
        double largest = lines.stream()
                .flatMap(line -> line.parts.stream())
                .mapToDouble(part -> part.line() ? part.lossPa() : 0)
                .max()
                .orElse(0);
        this.places = Scale.DROP.decimalsFor(largest, display);
        this.rowTopPx = new double[grid.rows()];
        this.rowEndPx = new double[grid.rows()];
        this.zoneTopPx = new double[grid.rows()];
        this.zoneEndPx = new double[grid.rows()];
        tracks(slot);
        ports();
        heights();
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

    private void collect() {
        Map<String, List<PartLoss>> byRun = new LinkedHashMap<>();
        for (PartLoss loss : PartLoss.of(result)) {
            byRun.computeIfAbsent(loss.run(), run -> new ArrayList<>()).add(loss);
        }
        for (FlowPath.Leg leg : FlowPath.legs(result)) {
            List<PartLoss> parts = new ArrayList<>(byRun.getOrDefault(leg.run(), List.of()));
            if (leg.rows().stream().anyMatch(FlowPath.Row::backward)) {
                Collections.reverse(parts);
            }
            int from = node(leg.from());
            int to = node(leg.to());
            if (from == to) { // a run back to where it started gets a second box, or it would have no way to go
                to = nodes.size();
                nodes.add(leg.to());
            }
            lines.add(new Line(leg.run(), from, to, parts));
        }
    }

    private int node(String element) {
        if (!nodes.contains(element)) {
            nodes.add(element);
        }
        return nodes.indexOf(element);
    }

    private List<Grid.Spot> spots() {
        List<Grid.Spot> spots = new ArrayList<>();
        for (String node : nodes) {
            Position at = position(node);
            spots.add(at == null ? new Grid.Spot(Double.NaN, Double.NaN) : new Grid.Spot(at.aheadM(), at.leftM()));
        }
        return spots;
    }

    private @Nullable Position position(String element) {
        Circuit circuit = result.circuit();
        Point point = circuit.point(element).orElse(null);
        return point != null
                ? point.position()
                : circuit.device(element).map(Device::position).orElse(null);
    }

    private boolean adjacent(Line line) {
        return grid.row(line.lower) - grid.row(line.upper) == 1;
    }

    /** Lines from a row to the next. */
    private List<Line> between(int row) {
        return lines.stream()
                .filter(line -> adjacent(line) && grid.row(line.upper) == row)
                .toList();
    }

    private double middle(int node) {
        return mainPx * grid.across(node);
    }

    private void tracks(double slotPx) {
        for (int r = 0; r < grid.rows(); r++) {
            List<Line> here = new ArrayList<>(between(r));
            here.sort(java.util.Comparator.comparingDouble(line -> middle(line.upper) + middle(line.lower)));
            double share = mainPx / Math.max(1, here.size());
            for (int i = 0; i < here.size(); i++) {
                Line line = here.get(i);
                double wanted = lone(line.lower, here) ? middle(line.lower) : middle(line.upper);
                double most = i * share + (share < 240 ? Math.min(30, 0.2 * share) : 0.5 * share);
                line.trackPx = Math.max(i * share + 12, Math.min(most, wanted));
                line.roomPx = (i + 1) * share - line.trackPx - 18;
            }
        }
        int n = 0;
        for (Line line : lines) {
            if (!adjacent(line)) {
                line.trackPx = mainPx + n * slotPx + 14;
                line.roomPx = slotPx - 32;
                n++;
            }
        }
    }

    private static boolean lone(int node, List<Line> lines) {
        return lines.stream().filter(line -> line.lower == node).count() == 1;
    }

    /** Where lines leave the boxes, in the order of their tracks. */
    private void ports() {
        for (int node = 0; node < nodes.size(); node++) {
            int number = node;
            List<Line> under = new ArrayList<>(
                    lines.stream().filter(line -> line.upper == number).toList());
            List<Line> over = new ArrayList<>(
                    lines.stream().filter(line -> line.lower == number).toList());
            under.sort(java.util.Comparator.comparingDouble(line -> line.trackPx));
            over.sort(java.util.Comparator.comparingDouble(line -> line.trackPx));
            double wide = boxWidth(node) - 16;
            for (int i = 0; i < under.size(); i++) {
                under.get(i).upperPortPx = port(node, i, under.size(), wide, under.get(i).trackPx);
            }
            for (int i = 0; i < over.size(); i++) {
                over.get(i).lowerPortPx = port(node, i, over.size(), wide, over.get(i).trackPx);
            }
        }
    }

    /** Straight under the track where a box has one line and reaches so far. */
    private double port(int node, int i, int of, double widePx, double trackPx) {
        double middle = middle(node);
        if (of == 1 && Math.abs(trackPx - middle) <= widePx / 2) {
            return trackPx;
        }
        return middle - widePx / 2 + widePx * (i + 0.5) / of;
    }

    private double boxWidth(int node) {
        return Math.min(168, mainPx / grid.count(grid.row(node)) - 8);
    }

    private List<String> boxLines(int node) {
        List<String> text =
                new ArrayList<>(Lettering.wrap(nodes.get(node), boxWidth(node) - 10, Canvas.TEXT_PX * 1.08, 2));
        text.add(Lettering.cut(reading(nodes.get(node)), boxWidth(node) - 8, Canvas.SMALL_PX));
        return text;
    }

    /** What a gauge reads at a point; what kind of thing a device is. */
    private String reading(String element) {
        return result.point(element)
                .map(row -> Scale.PRESSURE.text(row.staticPressurePa(), display))
                .or(() -> result.circuit().device(element).map(Device::kind))
                .orElse("");
    }

    private double boxHeight(int node) {
        return 10 + 14.0 * boxLines(node).size();
    }

    private List<List<String>> items(Line line) {
        List<List<String>> items = new ArrayList<>();
        items.add(runWords(line));
        List<PartLoss> down = new ArrayList<>(line.parts);
        if (!line.down) {
            Collections.reverse(down);
        }
        down.forEach(part -> items.add(partWords(line, part)));
        return items;
    }

    private List<String> runWords(Line line) {
        List<PartRow> rows = result.rows(line.run);
        String flow = rows.isEmpty()
                ? ""
                : ", " + together(Scale.FLOW.text(Math.abs(rows.get(0).flowM3PerS()), display));
        return Lettering.wrap(line.run + flow, line.roomPx, Canvas.SMALL_PX * 1.08, 3);
    }

    private List<String> partWords(Line line, PartLoss part) {
        String drop = " " + Scale.DROP.unit(display).symbol();
        String loss = !part.line()
                ? (part.lossPa() < 0 ? "adds " : "takes ")
                        + together(Scale.DROP.number(Math.abs(part.lossPa()), display, 1) + drop)
                : together(Scale.DROP.number(part.lossPa(), display, places) + drop);
        if (line.roomPx < NARROW_PX) { // size and share stand in the tables
            String bare = part.words().replaceFirst(", [^,]*$", "");
            return Lettering.wrap(bare + ": " + loss, line.roomPx, Canvas.SMALL_PX, 5);
        }
        if (Double.isFinite(part.share())) {
            loss += ", " + together(Scale.SHARE.text(part.share(), display));
        }
        return Lettering.wrap(part.words() + ": " + loss, line.roomPx, Canvas.SMALL_PX, 4);
    }

    /** A figure and its unit stay in one line. */
    private static String together(String figure) {
        return figure.replace(' ', '\u00a0');
    }

    private static double itemHeight(List<String> words) {
        return Math.max(LEAST_ITEM_PX, ITEM_PX + LINE_PX * words.size());
    }

    private double needed(Line line) {
        return items(line).stream().mapToDouble(CircuitPicture::itemHeight).sum() + 6;
    }

    private void heights() {
        double y = 4;
        for (int r = 0; r < grid.rows(); r++) {
            double over = lanes(r, false, y);
            if (r > 0) {
                zoneEndPx[r - 1] = y;
                y = over;
            }
            rowTopPx[r] = y;
            for (int node = 0; node < nodes.size(); node++) {
                if (grid.row(node) == r) {
                    rowEndPx[r] = Math.max(rowEndPx[r], y + boxHeight(node));
                }
            }
            y = lanes(r, true, rowEndPx[r]);
            zoneTopPx[r] = y;
            for (Line line : lines) {
                if (adjacent(line) && grid.row(line.upper) == r) {
                    y = Math.max(y, zoneTopPx[r] + needed(line));
                } else if (!adjacent(line) && grid.row(line.lower) == r + 1) {
                    y = Math.max(y, zoneTopPx[grid.row(line.upper)] + needed(line));
                }
            }
        }
    }

    /** Gives each line that has to go sideways at a row a lane of its own; the channel's end is returned. */
    private double lanes(int row, boolean under, double topPx) {
        int n = 0;
        for (Line line : lines) {
            int node = under ? line.upper : line.lower;
            if (grid.row(node) != row) {
                continue;
            }
            double lane = topPx + CHANNEL_PX + LANE_PX * n;
            double port = under ? line.upperPortPx : line.lowerPortPx;
            if (under) {
                line.upperLanePx = lane;
            } else {
                line.lowerLanePx = lane;
            }
            n += Math.abs(port - line.trackPx) > 0.5 ? 1 : 0;
        }
        return topPx + CHANNEL_PX + LANE_PX * n + 4;
    }

    private Element drawn(String words) {
        lines.forEach(this::line);
        for (int node = 0; node < nodes.size(); node++) {
            box(node);
        }
        double y = legend(rowEndPx[grid.rows() - 1] + 14);
        return canvas.finished(y, "The circuit", words);
    }

    private void box(int node) {
        double left = middle(node) - boxWidth(node) / 2;
        double top = rowTopPx[grid.row(node)];
        canvas.box(left, top, boxWidth(node), boxHeight(node), Shades.WASH, EDGE);
        List<String> text = boxLines(node);
        double y = top + 16;
        for (int i = 0; i < text.size(); i++) {
            boolean last = i == text.size() - 1;
            canvas.text(middle(node), y, Anchor.MIDDLE, text.get(i), last ? Look.MUTED : Look.BOLD);
            y += 14;
        }
    }

    private void line(Line line) {
        double top = zoneTopPx[grid.row(line.upper)];
        double end = zoneEndPx[grid.row(line.lower) - 1];
        double x = line.trackPx;
        double from = rowTopPx[grid.row(line.upper)] + boxHeight(line.upper);
        double to = rowTopPx[grid.row(line.lower)];
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
        List<List<String>> items = items(line);
        double spare = (end - top - needed(line) + 6) / items.size();
        List<PartLoss> down = new ArrayList<>(line.parts);
        if (!line.down) {
            Collections.reverse(down);
        }
        double y = top;
        for (int i = 0; i < items.size(); i++) {
            double height = itemHeight(items.get(i)) + Math.max(0, spare);
            if (i == 0) {
                arrow(x, y + Math.min(height, LEAST_ITEM_PX) / 2, line.down);
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
                base += LINE_PX;
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
        int inLine = Picture.narrow(widthPx) ? 3 : 5;
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
        double least = lines.stream()
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
                grid.placed()
                        ? "Seen from above, the front of the vehicle on top; lengths are not to scale."
                        : "In the order of flow; neither places nor lengths are to scale.");
        for (String text : Lettering.wrap(String.join(" ", notes), widthPx, Canvas.SMALL_PX, 9)) {
            canvas.text(0, y + 12, Anchor.START, text, Look.MUTED);
            y += 15;
        }
        return y + 6;
    }
}
