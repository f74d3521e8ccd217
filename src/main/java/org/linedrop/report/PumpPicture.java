package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.report.draw.Axis;
import org.linedrop.report.draw.Canvas;
import org.linedrop.report.draw.Canvas.Anchor;
import org.linedrop.report.draw.Canvas.Look;
import org.linedrop.report.draw.Canvas.Stroke;
import org.linedrop.report.draw.Element;
import org.linedrop.report.draw.Lettering;
import org.linedrop.report.draw.Shades;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.SystemCurve;
import org.linedrop.units.Display;
import org.linedrop.units.Unit;
import org.linedrop.units.Units;

/** A pump's own curve with what the plumbing asks of it, in all cases. */
final class PumpPicture {
    private static final int FLOW_MARKS = 6;
    private static final int RISE_MARKS = 6;
    private static final double LEFT_PX = 50;
    private static final double TOP_PX = 24;
    private static final double PLOT_PX = 280;
    /** Letters nearer than this would cover each other; they share a place. */
    private static final double NEAR_PX = 12;
    /** Half the room of a dot. */
    private static final double DOT_PX = 7;

    private static final List<String> DASHES = List.of("", "7 4", "2 3", "10 3 2 3", "5 2", "1 4");

    private final List<SystemCurve> curves;
    private final Display display;
    private final double widthPx;
    private final Canvas canvas;
    private final Axis across;
    private final Axis up;

    /** Where cases run, with their letters. */
    private record Mark(double xPx, double yPx, List<String> letters) {}

    private PumpPicture(List<SystemCurve> curves, Display display, double widthPx) {
        this.curves = curves;
        this.display = display;
        this.widthPx = widthPx;
        this.canvas = new Canvas(widthPx);
        double mostFlow = 0;
        double mostRise = 0;
        for (SystemCurve curve : curves) {
            mostFlow = Math.max(mostFlow, curve.flowM3PerS());
            mostRise = Math.max(mostRise, curve.risePa());
            for (SystemCurve.Place place : curve.table()) {
                mostFlow = Math.max(mostFlow, place.flowM3PerS());
                mostRise = Math.max(mostRise, place.risePa());
            }
        }
        this.across = new Axis(0, 1.04 * flow(mostFlow), LEFT_PX, widthPx - 12);
        this.up = new Axis(0, 1.06 * rise(mostRise), TOP_PX + PLOT_PX, TOP_PX);
    }

    /** A picture for each pump. */
    static List<Picture> of(List<CaseCheck> cases, Display display) {
        List<SystemCurve> all = new ArrayList<>();
        for (CaseCheck each : cases) {
            if (Standing.solved(each)) {
                all.addAll(SystemCurve.of(each.result().usual()));
            }
        }
        List<Picture> pictures = new ArrayList<>();
        for (String pump : all.stream().map(SystemCurve::pump).distinct().toList()) {
            List<SystemCurve> curves =
                    all.stream().filter(curve -> curve.pump().equals(pump)).toList();
            String title = "What " + pump + " gives, and what the line asks of it";
            String words = words(curves, display);
            pictures.add(Picture.of(
                    "pump-" + (pictures.size() + 1),
                    title,
                    words,
                    width -> new PumpPicture(curves, display, width).drawn(title, words)));
        }
        return pictures;
    }

    private static String words(List<SystemCurve> curves, Display display) {
        List<String> cases = new ArrayList<>();
        for (SystemCurve curve : curves) {
            cases.add(curve.caseName() + " " + Scale.FLOW.text(curve.flowM3PerS(), display) + " at "
                    + Scale.PRESSURE.text(curve.risePa(), display));
        }
        return "Pressure rise over flow. The pump runs where its curve meets that of the line: "
                + String.join("; ", cases) + ".";
    }

    private double flow(double si) {
        return Units.to(si, Scale.FLOW.unit(display));
    }

    private double rise(double si) {
        return Units.to(si, Scale.DROP.unit(display));
    }

    private Element drawn(String title, String words) {
        axes();
        List<List<SystemCurve.Place>> tables =
                curves.stream().map(SystemCurve::table).distinct().toList();
        for (int i = curves.size() - 1; i >= 0; i--) {
            line(
                    clipped(curves.get(i).places()),
                    new Stroke(1.75, Shades.steps().get(2), DASHES.get(i % DASHES.size())));
        }
        for (List<SystemCurve.Place> table : tables) {
            line(table, Stroke.of(2.5, Shades.GIVEN));
            for (SystemCurve.Place place : table) {
                canvas.dot(
                        across.at(flow(place.flowM3PerS())),
                        up.at(rise(place.risePa())),
                        2.5,
                        Shades.GIVEN,
                        Stroke.of(1, Shades.PAPER));
            }
        }
        marks();
        return canvas.finished(legend(TOP_PX + PLOT_PX + 48), title, words);
    }

    /** What lies over the top of the picture is left out, so that no line runs along its edge. */
    private List<SystemCurve.Place> clipped(List<SystemCurve.Place> places) {
        return places.stream()
                .filter(place -> rise(place.risePa()) >= 0 && rise(place.risePa()) <= up.high())
                .toList();
    }

    private void line(List<SystemCurve.Place> places, Stroke stroke) {
        double[] at = new double[2 * places.size()];
        for (int i = 0; i < places.size(); i++) {
            at[2 * i] = across.at(flow(places.get(i).flowM3PerS()));
            at[2 * i + 1] = up.at(rise(places.get(i).risePa()));
        }
        canvas.path(at, stroke);
    }

    private void axes() {
        Unit flows = Scale.FLOW.unit(display);
        Unit rises = Scale.DROP.unit(display);
        double bottom = TOP_PX + PLOT_PX;
        canvas.text(0, 12, Anchor.START, "pressure rise, " + rises.symbol(), Look.MUTED);
        int flowMarks = Picture.narrow(widthPx) ? FLOW_MARKS - 2 : FLOW_MARKS;
        for (double mark : across.marks(flowMarks)) {
            canvas.line(across.at(mark), TOP_PX, across.at(mark), bottom, Stroke.of(1, Shades.GRID));
            canvas.text(across.at(mark), bottom + 16, Anchor.MIDDLE, across.text(mark, flowMarks), Look.MUTED);
        }
        for (double mark : up.marks(RISE_MARKS)) {
            canvas.line(LEFT_PX, up.at(mark), widthPx - 12, up.at(mark), Stroke.of(1, Shades.GRID));
            canvas.text(LEFT_PX - 6, up.at(mark) + 4, Anchor.END, up.text(mark, RISE_MARKS), Look.MUTED);
        }
        canvas.line(LEFT_PX, bottom, widthPx - 12, bottom, Stroke.of(1.25, Shades.INK));
        canvas.line(LEFT_PX, TOP_PX, LEFT_PX, bottom, Stroke.of(1.25, Shades.INK));
        canvas.text(widthPx - 12, bottom + 34, Anchor.END, "flow through the pump, " + flows.symbol(), Look.MUTED);
    }

    private void marks() {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            double x = across.at(flow(curves.get(i).flowM3PerS()));
            double y = up.at(rise(curves.get(i).risePa()));
            Mark near = null;
            for (Mark mark : marks) {
                if (Math.hypot(mark.xPx() - x, mark.yPx() - y) < NEAR_PX) {
                    near = mark;
                }
            }
            if (near == null) {
                marks.add(new Mark(x, y, new ArrayList<>(List.of(letter(i)))));
            } else {
                near.letters().add(letter(i));
            }
            canvas.dot(x, y, 5, Shades.PAPER, Stroke.of(2, Shades.INK));
        }
        List<Box> taken = new ArrayList<>();
        for (SystemCurve curve : curves) {
            double x = across.at(flow(curve.flowM3PerS()));
            double y = up.at(rise(curve.risePa()));
            taken.add(new Box(x - DOT_PX, y - DOT_PX, x + DOT_PX, y + DOT_PX));
        }
        marks.forEach(mark -> letters(mark, taken));
    }

    /** Room that is taken. */
    private record Box(double left, double top, double right, double end) {
        boolean covers(Box other) {
            return left < other.right && other.left < right && top < other.end && other.top < end;
        }
    }

    /** Puts letters as near to their dot as is free: above, right, below, left, then farther off with a line to it. */
    private void letters(Mark mark, List<Box> taken) {
        String letters = String.join(" ", mark.letters());
        double half = Lettering.width(letters, Canvas.TEXT_PX) / 2 + 3;
        for (double away = 16; away < PLOT_PX; away += 8) {
            for (double[] side : new double[][] {{0, -1}, {1, -0.5}, {1, 0.5}, {0, 1}, {-1, 0.5}, {-1, -0.5}}) {
                double x = mark.xPx() + side[0] * (away + half - 8);
                double y = mark.yPx() + side[1] * away;
                Box box = new Box(x - half, y - 8, x + half, y + 8);
                boolean inside = box.left() > LEFT_PX
                        && box.right() < widthPx
                        && box.top() > TOP_PX - 8
                        && box.end() < TOP_PX + PLOT_PX;
                if (inside && taken.stream().noneMatch(box::covers)) {
                    if (away > 24) {
                        canvas.line(mark.xPx(), mark.yPx(), x, y, Stroke.of(0.75, Shades.MUTED));
                    }
                    taken.add(box);
                    canvas.text(x, y + 4, Anchor.MIDDLE, letters, Look.BOLD);
                    return;
                }
            }
        }
    }

    private static String letter(int number) {
        String letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
        return number < letters.length() ? letters.substring(number, number + 1) : Integer.toString(number + 1);
    }

    private double legend(double topPx) {
        double y = topPx;
        canvas.line(0, y + 8, 26, y + 8, Stroke.of(2.5, Shades.GIVEN));
        y = words("the pump's table, as it runs", y);
        for (int i = 0; i < curves.size(); i++) {
            SystemCurve curve = curves.get(i);
            canvas.line(0, y + 8, 26, y + 8, new Stroke(1.75, Shades.steps().get(2), DASHES.get(i % DASHES.size())));
            y = words(
                    letter(i) + "  line in case " + curve.caseName() + ": runs at "
                            + Scale.FLOW.text(curve.flowM3PerS(), display) + " and "
                            + Scale.PRESSURE.text(curve.risePa(), display),
                    y);
        }
        String end = curves.get(0).end();
        for (String line : Lettering.wrap(
                "The line's curve: what its losses and heights ask at other flows, the pressures where its way starts"
                        + " and ends (" + end + ") staying as they are.",
                widthPx,
                Canvas.SMALL_PX,
                6)) {
            canvas.text(0, y + 12, Anchor.START, line, Look.MUTED);
            y += 15;
        }
        return y + 6;
    }

    private double words(String text, double topPx) {
        double y = topPx;
        for (String line : Lettering.wrap(text, widthPx - 36, Canvas.SMALL_PX, 4)) {
            canvas.text(34, y + 12, Anchor.START, line, new Look(Canvas.SMALL_PX, Shades.INK, false));
            y += 15;
        }
        return y + 3;
    }
}
