package org.linedrop.report;

import java.util.ArrayList;
import java.util.Comparator;
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
import org.linedrop.study.PartLoss;
import org.linedrop.units.Display;
import org.linedrop.units.Units;

/** What each part loses, the most first: friction and what ends, bends and fittings take, beside each other. */
final class LossPicture {
    /** More bars than these are not compared any more. */
    private static final int MOST = 16;

    private static final double LINE_PX = 14;
    private static final String FRICTION = Shades.steps().get(3);
    private static final String LOCAL = Shades.steps().get(1);
    private static final Stroke EDGE = Stroke.of(0.75, Shades.INK);

    private final Display display;
    private final Canvas canvas;
    private final double widthPx;
    private final double barsPx;
    private final double endPx;
    private final int places;

    private LossPicture(List<PartLoss> losses, Display display, double widthPx) {
        this.display = display;
        this.canvas = new Canvas(widthPx);
        this.widthPx = widthPx;
        boolean narrow = Picture.narrow(widthPx);
        this.barsPx = narrow ? 128 : 250;
        this.endPx = widthPx - (narrow ? 92 : 130);
        double most = losses.stream().mapToDouble(PartLoss::lossPa).max().orElse(0);
        this.places = Scale.DROP.decimalsFor(most, display);
    }

    /** Draws a solved case; empty where nothing is lost. */
    static List<Picture> of(CaseCheck check, Display display) {
        List<PartLoss> losses = PartLoss.of(check.result().usual()).stream()
                .filter(loss -> loss.line() && loss.lossPa() > 0)
                .sorted(Comparator.comparingDouble(loss -> -loss.lossPa()))
                .toList();
        if (losses.isEmpty()) {
            return List.of();
        }
        PartLoss first = losses.get(0);
        String words = "Loss of each part in case " + check.caseName() + ", the largest first: " + first.run() + " "
                + first.words() + " loses " + Scale.DROP.text(first.lossPa(), display) + ", "
                + Scale.SHARE.text(first.share(), display) + " of all that parts lose.";
        return List.of(Picture.of(
                "losses",
                "What each part loses",
                words,
                width -> new LossPicture(losses, display, width).drawn(losses, words)));
    }

    private Element drawn(List<PartLoss> losses, String words) {
        double most = Units.to(losses.get(0).lossPa(), Scale.DROP.unit(display));
        Axis axis = new Axis(0, most, barsPx, endPx);
        canvas.text(widthPx, 12, Anchor.END, Scale.DROP.unit(display).symbol() + ", share", Look.MUTED);
        double y = 18;
        boolean runs = losses.stream().map(PartLoss::run).distinct().count() > 1;
        for (PartLoss loss : losses.subList(0, Math.min(MOST, losses.size()))) {
            y = bar(loss, runs, axis, y);
        }
        if (losses.size() > MOST) {
            List<PartLoss> rest = losses.subList(MOST, losses.size());
            double sum = rest.stream().mapToDouble(PartLoss::lossPa).sum();
            double share = rest.stream().mapToDouble(PartLoss::share).sum();
            canvas.text(0, y + 14, Anchor.START, rest.size() + " other parts together", Look.MUTED);
            figures(sum, share, y);
            y += 22;
        }
        return canvas.finished(legend(y + 6), "What each part loses", words);
    }

    private double bar(PartLoss loss, boolean runs, Axis axis, double topPx) {
        List<String> lines =
                Lettering.wrap((runs ? loss.run() + " " : "") + loss.words(), barsPx - 10, Canvas.SMALL_PX, 3);
        double y = topPx + 14;
        for (String line : lines) {
            canvas.text(0, y, Anchor.START, line, new Look(Canvas.SMALL_PX, Shades.INK, false));
            y += LINE_PX;
        }
        double friction = axis.at(Units.to(Math.max(0, loss.frictionPa()), Scale.DROP.unit(display)));
        double all = axis.at(Units.to(loss.lossPa(), Scale.DROP.unit(display)));
        if (friction - barsPx > 0.2) {
            canvas.box(barsPx, topPx + 4, friction - barsPx, 13, FRICTION, EDGE);
        }
        if (all - friction > 0.2) {
            canvas.box(friction, topPx + 4, all - friction, 13, LOCAL, EDGE);
        }
        figures(loss.lossPa(), loss.share(), topPx);
        return topPx + 22 + LINE_PX * (lines.size() - 1);
    }

    private void figures(double lossPa, double share, double topPx) {
        canvas.text(widthPx - 42, topPx + 14, Anchor.END, Scale.DROP.number(lossPa, display, places), Look.PLAIN);
        canvas.text(widthPx, topPx + 14, Anchor.END, Scale.SHARE.text(share, display), Look.PLAIN);
    }

    private double legend(double topPx) {
        List<String> colours = List.of(FRICTION, LOCAL);
        List<String> words = List.of("friction along the bore", "ends, bends, fittings and devices");
        double y = topPx;
        for (int i = 0; i < colours.size(); i++) {
            canvas.box(0, y + 2, 14, 11, colours.get(i), EDGE);
            canvas.text(20, y + 12, Anchor.START, words.get(i), Look.MUTED);
            y += 17;
        }
        List<String> note = new ArrayList<>(Lettering.wrap(
                "Left out: height, what pumps add, and what regulators and valves that switch take to do their work. Share: of"
                        + " all that the parts of the circuit lose.",
                widthPx,
                Canvas.SMALL_PX,
                4));
        for (String line : note) {
            canvas.text(0, y + 12, Anchor.START, line, Look.MUTED);
            y += 15;
        }
        return y + 6;
    }
}
