package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.linedrop.report.draw.Axis;
import org.linedrop.report.draw.Canvas;
import org.linedrop.report.draw.Canvas.Anchor;
import org.linedrop.report.draw.Canvas.Look;
import org.linedrop.report.draw.Canvas.Stroke;
import org.linedrop.report.draw.Element;
import org.linedrop.report.draw.Lettering;
import org.linedrop.report.draw.Shades;
import org.linedrop.result.DeviceRow;
import org.linedrop.result.PartRow;
import org.linedrop.result.PointRow;
import org.linedrop.result.Result;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.FlowPath;
import org.linedrop.units.Display;
import org.linedrop.units.Units;

/**
 * Pressure along one way as a staircase: down the page is along the line, a step for each row, limits drawn in where they
 * are asked. Where a device adds or takes much more than the line, what lies before and behind it has its own scale.
 */
final class StairPicture {
    private static final double STEP_PX = 20;
    private static final double LINE_PX = 14;
    private static final double BAR_PX = 9;
    /** Thinner, so that what a row loses is seen where height gives it back. */
    private static final double LIFT_PX = 5;

    private static final int MOST_LINES = 3;

    /** A limit farther off than so many times what the scale spans would press the steps to nothing: it is only told. */
    private static final double FAR = 3;
    /** The least span that a scale shows: under it steps are rounding. */
    private static final double LEAST_SPAN_PA = 10;

    private static final Stroke EDGE = Stroke.of(0.75, Shades.INK);
    private static final Stroke WAY = Stroke.of(1.5, Shades.INK);
    private static final Stroke BOUND = new Stroke(1.75, Shades.LIMIT, "5 3");

    private final CaseCheck check;
    private final Result result;
    private final Display display;
    private final double widthPx;
    private final Canvas canvas;
    private final double plotLeftPx;
    private final double plotRightPx;
    private final List<PointRow> points;
    private final int dropPlaces;
    private final List<StairBound> far = new ArrayList<>();

    private StairPicture(CaseCheck check, FlowPath path, Display display, double widthPx) {
        this.check = check;
        this.result = check.result().usual();
        this.display = display;
        this.widthPx = widthPx;
        this.canvas = new Canvas(widthPx);
        boolean narrow = Picture.narrow(widthPx);
        this.plotLeftPx = narrow ? 122 : 236;
        this.plotRightPx = widthPx - (narrow ? 56 : 78);
        this.points = result.points();
        double most = 0;
        for (FlowPath.Leg leg : path.legs()) {
            for (FlowPath.Row met : leg.rows()) {
                most = met.pump() ? most : Math.max(most, Math.abs(met.dropPa()));
            }
        }
        this.dropPlaces = Scale.DROP.decimalsFor(most, display);
    }

    /**
     * Draws one way of a solved case.
     *
     * @param number its number among the ways, from 1
     * @param twin   whether another way passes the same places
     */
    static Picture of(CaseCheck check, FlowPath path, int number, boolean twin, Display display) {
        String runs =
                String.join(", ", path.legs().stream().map(FlowPath.Leg::run).toList());
        String way = String.join(" \u2192 ", path.places()) + (twin ? " by " + runs : "");
        Result result = check.result().usual();
        PartRow first = path.legs().get(0).rows().get(0).row();
        String words = "Pressure from row to row along " + String.join(" to ", path.places()) + " in case "
                + check.caseName() + ", " + Scale.FLOW.text(Math.abs(first.flowM3PerS()), display)
                + " at its start. " + ends(result, path, display);
        return Picture.of(
                "pressure-" + number,
                "Pressure along " + way,
                words,
                width -> new StairPicture(check, path, display, width).drawn(path, "Pressure along " + way, words));
    }

    private static String ends(Result result, FlowPath path, Display display) {
        List<FlowPath.Row> last = path.legs().get(path.legs().size() - 1).rows();
        double in = path.legs().get(0).rows().get(0).pressureInPa();
        double out = last.get(last.size() - 1).pressureOutPa();
        String gauge = result.point(path.places().get(path.places().size() - 1))
                .map(point -> "; a gauge there reads " + Scale.PRESSURE.text(point.staticPressurePa(), display))
                .orElse("");
        return "Total pressure starts at " + Scale.PRESSURE.text(in, display) + " and ends at "
                + Scale.PRESSURE.text(out, display) + gauge + ".";
    }

    private Element drawn(FlowPath path, String title, String words) {
        double y = 4;
        List<StairBound> bounds = StairBound.of(check);
        for (StairStretch stretch : StairStretch.of(result, path, display)) {
            y = stretch(stretch, bounds, y) + 14;
        }
        y = legend(bounds.stream().anyMatch(bound -> bound.on(path)), y);
        return canvas.finished(y, title, words);
    }

    /** What a gauge reads at a place: a device that starts a way is left at its outlet, else it is met at its inlet. */
    private Optional<Double> gauge(StairStretch.Stop stop) {
        return points.stream()
                .filter(row -> row.id().equals(stop.place()))
                .findFirst()
                .map(PointRow::staticPressurePa)
                .or(() -> result.device(stop.place())
                        .map(row -> stop.start() ? row.outletPressurePa() : row.inletPressurePa()));
    }

    private String name(StairStretch.Stop stop) {
        boolean device = result.circuit().device(stop.place()).isPresent();
        return stop.place() + (device ? stop.start() ? " outlet" : " inlet" : "");
    }

    private double stretch(StairStretch stretch, List<StairBound> bounds, double topPx) {
        List<StairBound> here = bounds.stream()
                .filter(bound -> stretch.stops().stream().anyMatch(stop -> bound.at(stop)))
                .toList();
        Axis axis = axis(stretch, here);
        double y = topPx;
        if (!stretch.heading().isEmpty()) {
            for (String line : Lettering.wrap(stretch.heading(), widthPx - 8, Canvas.TEXT_PX, 2)) {
                canvas.text(0, y + 12, Anchor.START, line, Look.BOLD);
                y += 16;
            }
        }
        double scaleY = y;
        y += 34;
        double height = 0;
        for (StairStretch.Stop stop : stretch.stops()) {
            height += stopHeight(stop);
        }
        scale(axis, scaleY, y, y + height);
        bounds(here, axis, y, y + height);
        steps(stretch, here, axis, y);
        return y + height;
    }

    private Axis axis(StairStretch stretch, List<StairBound> bounds) {
        boolean started = Double.isFinite(stretch.startPa());
        double low = started ? stretch.startPa() : Double.POSITIVE_INFINITY;
        double high = started ? stretch.startPa() : Double.NEGATIVE_INFINITY;
        for (StairStretch.Stop stop : stretch.stops()) {
            if (stop.row() != null) {
                low = Math.min(
                        low, Math.min(stop.row().pressureInPa(), stop.row().pressureOutPa()));
                high = Math.max(
                        high, Math.max(stop.row().pressureInPa(), stop.row().pressureOutPa()));
            } else {
                double gauge = gauge(stop).orElse(Double.NaN);
                low = Double.isNaN(gauge) ? low : Math.min(low, gauge);
                high = Double.isNaN(gauge) ? high : Math.max(high, gauge);
            }
        }
        double reach = FAR * Math.max(high - low, LEAST_SPAN_PA);
        double from = low - reach;
        double to = high + reach;
        for (StairBound bound : bounds) {
            if (bound.boundPa() >= from && bound.boundPa() <= to) {
                low = Math.min(low, bound.boundPa());
                high = Math.max(high, bound.boundPa());
            }
        }
        return Axis.around(shown(low), shown(high), shown(LEAST_SPAN_PA), plotLeftPx, plotRightPx);
    }

    private double shown(double pressurePa) {
        return Units.to(pressurePa, Scale.PRESSURE.unit(display));
    }

    private void scale(Axis axis, double topPx, double plotTopPx, double plotEndPx) {
        int most = Picture.narrow(widthPx) ? 3 : 7;
        canvas.box(
                plotLeftPx,
                plotTopPx,
                plotRightPx - plotLeftPx,
                plotEndPx - plotTopPx,
                Shades.WASH,
                Stroke.of(0, Shades.PAPER));
        String unit = Scale.PRESSURE.unit(display).symbol();
        canvas.text(plotLeftPx, topPx + 12, Anchor.START, "total pressure, " + unit, Look.MUTED);
        canvas.text(widthPx, topPx + 12, Anchor.END, "loses", Look.MUTED);
        canvas.text(widthPx, topPx + 27, Anchor.END, Scale.DROP.unit(display).symbol(), Look.MUTED);
        for (double mark : axis.marks(most)) {
            double x = axis.at(mark);
            canvas.line(x, plotTopPx, x, plotEndPx, Stroke.of(1, Shades.GRID));
            canvas.text(x, topPx + 27, Anchor.MIDDLE, axis.text(mark, most), Look.MUTED);
        }
    }

    private void bounds(List<StairBound> bounds, Axis axis, double topPx, double endPx) {
        for (StairBound bound : bounds) {
            double x = axis.at(shown(bound.boundPa()));
            if (axis.holds(shown(bound.boundPa()))) {
                canvas.line(x, topPx, x, endPx, BOUND);
            } else {
                far.add(bound);
            }
        }
    }

    private double stopHeight(StairStretch.Stop stop) {
        if (stop.row() == null) {
            return 8 + LINE_PX * (placeLines(stop).size() + (stop.run().isEmpty() ? 0 : 1));
        }
        return STEP_PX + LINE_PX * (rowLines(stop.row().row()).size() - 1);
    }

    private List<String> placeLines(StairStretch.Stop stop) {
        String gauge = gauge(stop)
                .map(pressurePa -> ", gauge " + Scale.PRESSURE.number(pressurePa, display))
                .orElse("");
        return Lettering.wrap(name(stop) + gauge, plotLeftPx - 10, Canvas.TEXT_PX * 1.08, MOST_LINES);
    }

    private List<String> rowLines(PartRow row) {
        String number = Character.isDigit(row.row().charAt(0)) ? row.row() + " " : "";
        String size = row.size().isEmpty() || Picture.narrow(widthPx) ? "" : ", " + row.size();
        return Lettering.wrap(number + row.name() + size, plotLeftPx - 20, Canvas.SMALL_PX, MOST_LINES);
    }

    private void steps(StairStretch stretch, List<StairBound> bounds, Axis axis, double topPx) {
        double y = topPx;
        double lastX = Double.isFinite(stretch.startPa()) ? axis.at(shown(stretch.startPa())) : Double.NaN;
        double lastY = topPx;
        List<PartLook> dots = new ArrayList<>();
        for (StairStretch.Stop stop : stretch.stops()) {
            double height = stopHeight(stop);
            double middle = y + height / 2;
            if (stop.row() == null) {
                place(stop, bounds, axis, y, dots);
                if (!Double.isNaN(lastX)) {
                    canvas.line(lastX, lastY, lastX, middle, WAY);
                    lastY = middle;
                }
            } else {
                double in = axis.at(shown(stop.row().pressureInPa()));
                double out = axis.at(shown(stop.row().pressureOutPa()));
                if (Double.isNaN(lastX)) {
                    lastY = topPx;
                }
                if (Math.abs(in - lastX) > 0.5) {
                    // what stands between two runs takes this
                    bar(lastX, in, lastY, LIFT_PX, Shades.GIVEN);
                }
                canvas.line(in, lastY, in, middle, WAY);
                double lost =
                        axis.at(shown(stop.row().pressureInPa() - stop.row().lossPa()));
                row(stop.row(), y);
                bar(
                        in,
                        lost,
                        middle,
                        BAR_PX,
                        stop.row().pump()
                                ? Shades.GIVEN
                                : Shades.ofShare(stop.row().row().lossShare()));
                bar(lost, out, middle, LIFT_PX, Shades.HEIGHT);
                device(stop.row().row(), bounds, axis, middle, dots);
                lastX = out;
                lastY = middle;
            }
            y += height;
        }
        if (!Double.isNaN(lastX)) {
            canvas.line(lastX, lastY, lastX, y, WAY);
        }
        dots.forEach(dot -> canvas.dot(dot.xPx(), dot.yPx(), 4.5, dot.fill(), Stroke.of(1.5, dot.edge())));
    }

    /** A dot that is drawn last, over the lines. */
    private record PartLook(double xPx, double yPx, String fill, String edge) {}

    private void place(StairStretch.Stop stop, List<StairBound> bounds, Axis axis, double topPx, List<PartLook> dots) {
        double y = topPx + 15;
        for (String line : placeLines(stop)) {
            canvas.text(0, y, Anchor.START, line, Look.BOLD);
            y += LINE_PX;
        }
        if (!stop.run().isEmpty()) {
            canvas.text(
                    10,
                    y,
                    Anchor.START,
                    Lettering.cut("run " + stop.run(), plotLeftPx - 20, Canvas.SMALL_PX),
                    Look.MUTED);
        }
        double middle = topPx + stopHeight(stop) / 2;
        gauge(stop)
                .ifPresent(pressurePa ->
                        dots.add(new PartLook(axis.at(shown(pressurePa)), middle, Shades.PAPER, Shades.GIVEN)));
        bounds.stream()
                .filter(bound -> bound.at(stop) && !far.contains(bound))
                .forEach(bound ->
                        dots.add(new PartLook(axis.at(shown(bound.boundPa())), middle, Shades.LIMIT, Shades.LIMIT)));
    }

    /** Where a limit on a device is asked, and what is there. */
    private void device(PartRow row, List<StairBound> bounds, Axis axis, double middlePx, List<PartLook> dots) {
        for (StairBound bound : bounds) {
            if (bound.subject().equals(row.part()) && !far.contains(bound)) {
                dots.add(new PartLook(axis.at(shown(bound.boundPa())), middlePx, Shades.LIMIT, Shades.LIMIT));
                result.device(row.part())
                        .map(DeviceRow::inletPressurePa)
                        .ifPresent(inlet ->
                                dots.add(new PartLook(axis.at(shown(inlet)), middlePx, Shades.PAPER, Shades.GIVEN)));
            }
        }
    }

    private void row(FlowPath.Row met, double topPx) {
        double y = topPx + 14;
        for (String line : rowLines(met.row())) {
            canvas.text(10, y, Anchor.START, line, new Look(Canvas.SMALL_PX, Shades.INK, false));
            y += LINE_PX;
        }
        canvas.text(
                widthPx,
                topPx + 14,
                Anchor.END,
                met.dropPa() == 0 ? "-" : Scale.DROP.number(met.dropPa(), display, dropPlaces),
                Look.PLAIN);
    }

    private void bar(double fromPx, double toPx, double middlePx, double tallPx, String fill) {
        if (Math.abs(toPx - fromPx) > 0.3) {
            canvas.box(Math.min(fromPx, toPx), middlePx - tallPx / 2, Math.abs(toPx - fromPx), tallPx, fill, EDGE);
        }
    }

    private double legend(boolean limits, double topPx) {
        List<String> words = new ArrayList<>(
                List.of(
                        "Down the page is along the line, one step for each row. Bars: what the row loses, darker with its share"
                                + " of the run's loss; grey: height and acceleration. Ring: what a gauge at the place reads (static pressure)."));
        if (limits) {
            words.add("Dashed: a limit; its dot stands where it is asked.");
        }
        for (StairBound bound : far.stream().distinct().toList()) {
            words.add("The limit of " + bound.subject() + " at " + Scale.PRESSURE.text(bound.boundPa(), display)
                    + " lies outside the picture.");
        }
        double y = topPx;
        for (String line : Lettering.wrap(String.join(" ", words), widthPx, Canvas.SMALL_PX, 12)) {
            canvas.text(0, y + 12, Anchor.START, line, Look.MUTED);
            y += 15;
        }
        return y + 6;
    }
}
