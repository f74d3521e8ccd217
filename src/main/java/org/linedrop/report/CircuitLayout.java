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
import org.linedrop.report.draw.Canvas;
import org.linedrop.report.draw.Grid;
import org.linedrop.report.draw.Lettering;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.study.FlowPath;
import org.linedrop.study.PartLoss;
import org.linedrop.units.Display;

/**
 * Where the circuit's diagram has its boxes, lines and words, so that nothing can cover anything else: boxes stand in rows;
 * between two rows lines have a channel to get to their track, and their parts below each other on it.
 */
final class CircuitLayout {
    private static final double CHANNEL_PX = 9;
    private static final double LANE_PX = 7;
    static final double LINE_PX = 13;
    private static final double ITEM_PX = 8;
    static final double LEAST_ITEM_PX = 24;
    /** A place or track needs at least so much of the width to be read. */
    private static final double PITCH_PX = 92;

    private static final double NARROW_PX = 80;

    private final Result result;
    private final Display display;
    private final List<String> nodes = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final Grid grid;
    private final double widthPx;
    private final double mainPx;
    private final int places;
    private final double[] rowTopPx;
    private final double[] rowEndPx;
    private final double[] zoneTopPx;
    private final double[] zoneEndPx;

    /** A run between two places, with what is found for it on the way. */
    static final class Line {
        final String run;
        final int from;
        final int to;
        final List<PartLoss> parts;
        int upper;
        int lower;
        boolean down;
        double trackPx;
        double roomPx;
        double upperPortPx;
        double lowerPortPx;
        double upperLanePx;
        double lowerLanePx;

        Line(String run, int from, int to, List<PartLoss> parts) {
            this.run = run;
            this.from = from;
            this.to = to;
            this.parts = parts;
        }
    }

    CircuitLayout(Result result, Display display, double widthPx) {
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

    double middle(int node) {
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

    double boxWidth(int node) {
        return Math.min(168, mainPx / grid.count(grid.row(node)) - 8);
    }

    List<String> boxLines(int node) {
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

    double boxHeight(int node) {
        return 10 + 14.0 * boxLines(node).size();
    }

    List<List<String>> items(Line line) {
        List<List<String>> items = new ArrayList<>();
        items.add(runWords(line));
        parts(line).forEach(part -> items.add(partWords(line, part)));
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

    static double itemHeight(List<String> words) {
        return Math.max(LEAST_ITEM_PX, ITEM_PX + LINE_PX * words.size());
    }

    double needed(Line line) {
        return items(line).stream().mapToDouble(CircuitLayout::itemHeight).sum() + 6;
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

    List<Line> lines() {
        return Collections.unmodifiableList(lines);
    }

    int nodes() {
        return nodes.size();
    }

    Grid grid() {
        return grid;
    }

    /** As wide as asked for, or as it needs. */
    double widthPx() {
        return widthPx;
    }

    /** Where a box begins. */
    double topPx(int node) {
        return rowTopPx[grid.row(node)];
    }

    /** Where the last row of boxes ends. */
    double endPx() {
        return rowEndPx[grid.rows() - 1];
    }

    /** Where a line's parts begin. */
    double partsTopPx(Line line) {
        return zoneTopPx[grid.row(line.upper)];
    }

    /** Where the room for a line's parts ends. */
    double partsEndPx(Line line) {
        return zoneEndPx[grid.row(line.lower) - 1];
    }

    /** A line's parts as they stand below each other. */
    static List<PartLoss> parts(Line line) {
        List<PartLoss> down = new ArrayList<>(line.parts);
        if (!line.down) {
            Collections.reverse(down);
        }
        return down;
    }
}
