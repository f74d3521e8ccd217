package org.linedrop.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.fact.Figure;
import org.linedrop.report.draw.Axis;
import org.linedrop.report.draw.Canvas;
import org.linedrop.report.draw.Canvas.Anchor;
import org.linedrop.report.draw.Canvas.Look;
import org.linedrop.report.draw.Canvas.Stroke;
import org.linedrop.report.draw.Element;
import org.linedrop.report.draw.Lettering;
import org.linedrop.report.draw.Shades;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.LinerQuestion;
import org.linedrop.units.Display;
import org.linedrop.units.Units;

/** Bores of rubber and PTFE hose at the dash sizes that a circuit uses: what is sold under one number. */
final class LinerPicture {
    private static final double INCH_M = 0.0254;
    private static final double ROW_PX = 20;
    private static final Stroke EDGE = Stroke.of(0.75, Shades.INK);
    private static final Stroke DASH = new Stroke(1.75, Shades.LIMIT, "5 3");

    private final Display display;
    private final double widthPx;
    private final Canvas canvas;
    private final double barsPx;
    private final Axis axis;

    private LinerPicture(Map<Integer, List<HoseSize>> sizes, Display display, double widthPx) {
        this.display = display;
        this.widthPx = widthPx;
        this.canvas = new Canvas(widthPx);
        boolean narrow = Picture.narrow(widthPx);
        this.barsPx = narrow ? 128 : 200;
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (Map.Entry<Integer, List<HoseSize>> entry : sizes.entrySet()) {
            double nominal = entry.getKey() / 16.0 * INCH_M;
            low = Math.min(low, nominal);
            high = Math.max(high, nominal);
            for (HoseSize size : entry.getValue()) {
                low = Math.min(low, size.boreM().low());
                high = Math.max(high, size.boreM().high());
            }
        }
        this.axis = Axis.around(shown(low), shown(high), 1e-6, barsPx, widthPx - (narrow ? 66 : 150));
    }

    /** Draws the sizes of the hoses of all cases; empty where there are none. */
    static List<Picture> of(List<CaseCheck> cases, Display display) {
        Circuit circuit = Pictures.circuit(cases);
        Map<String, HoseSize> used = new LinkedHashMap<>();
        for (CaseCheck each : cases) {
            for (Run run : each.result().circuit().runs()) {
                for (Part part : run.parts()) {
                    if (part instanceof Hose hose) {
                        used.putIfAbsent(hose.size().name(), hose.size());
                    }
                }
            }
        }
        if (used.isEmpty()) {
            return List.of();
        }
        Map<Integer, List<HoseSize>> sizes = sizes(circuit, used);
        String title = "Bores sold at the dash sizes used here";
        List<String> said = new ArrayList<>();
        used.values()
                .forEach(size -> said.add(
                        size.name() + " " + Scale.BORE.text(size.boreM().value(), display)));
        String words =
                "Smallest, usual and largest bore of hose by family. Used here: " + String.join(", ", said) + ".";
        return List.of(Picture.of(
                "liners",
                title,
                words,
                width -> new LinerPicture(sizes, display, width).drawn(sizes, used.keySet(), title, words)));
    }

    private static Map<Integer, List<HoseSize>> sizes(Circuit circuit, Map<String, HoseSize> used) {
        Set<String> families = new LinkedHashSet<>(LinerQuestion.USUAL_FAMILIES);
        used.values().forEach(size -> families.add(size.family()));
        Map<Integer, List<HoseSize>> sizes = new TreeMap<>();
        for (HoseSize size : used.values()) {
            sizes.computeIfAbsent(size.dash(), dash -> new ArrayList<>());
        }
        for (String family : families) {
            for (HoseSize size : circuit.catalogue().hoses()) {
                List<HoseSize> there = sizes.get(size.dash());
                if (there != null && size.family().equals(family)) {
                    there.add(used.getOrDefault(size.name(), size));
                }
            }
        }
        // hose of the file's own catalogue, where the lists above do not hold it
        for (HoseSize size : used.values()) {
            List<HoseSize> there = sizes.computeIfAbsent(size.dash(), dash -> new ArrayList<>());
            if (there.stream().noneMatch(each -> each.name().equals(size.name()))) {
                there.add(size);
            }
        }
        return sizes;
    }

    private double shown(double si) {
        return Units.to(si, Scale.BORE.unit(display));
    }

    private Element drawn(Map<Integer, List<HoseSize>> sizes, Set<String> used, String title, String words) {
        int most = Picture.narrow(widthPx) ? 3 : 7;
        canvas.text(
                barsPx, 12, Anchor.START, "bore, " + Scale.BORE.unit(display).symbol(), Look.MUTED);
        for (double mark : axis.marks(most)) {
            canvas.text(axis.at(mark), 28, Anchor.MIDDLE, axis.text(mark, most), Look.MUTED);
        }
        canvas.text(widthPx, 28, Anchor.END, Picture.narrow(widthPx) ? "usual" : "low / usual / high", Look.MUTED);
        double y = 36;
        for (Map.Entry<Integer, List<HoseSize>> entry : sizes.entrySet()) {
            canvas.text(0, y + 14, Anchor.START, "-" + entry.getKey(), Look.BOLD);
            y += ROW_PX;
            double end = y + ROW_PX * entry.getValue().size();
            for (double mark : axis.marks(most)) {
                canvas.line(axis.at(mark), y, axis.at(mark), end, Stroke.of(1, Shades.GRID));
            }
            double nominal = axis.at(shown(entry.getKey() / 16.0 * INCH_M));
            canvas.line(nominal, y, nominal, end, DASH);
            for (HoseSize size : entry.getValue()) {
                row(size, used.contains(size.name()), y);
                y += ROW_PX;
            }
            y += 8;
        }
        return canvas.finished(legend(y), title, words);
    }

    private void row(HoseSize size, boolean used, double topPx) {
        Figure bore = size.boreM();
        String mark = bore.status().doubtful() ? "?" : "";
        canvas.text(
                0,
                topPx + 14,
                Anchor.START,
                Lettering.cut(size.family(), barsPx - 10, Canvas.SMALL_PX * 1.08),
                new Look(Canvas.SMALL_PX, Shades.INK, used));
        double low = axis.at(shown(bore.low()));
        double high = axis.at(shown(bore.high()));
        String fill = Shades.steps().get(used ? 3 : 1);
        canvas.box(low, topPx + 6, Math.max(1.5, high - low), 8, fill, EDGE);
        canvas.dot(
                axis.at(shown(bore.value())),
                topPx + 10,
                4,
                used ? Shades.INK : Shades.PAPER,
                Stroke.of(1.5, Shades.INK));
        String figures = Picture.narrow(widthPx)
                ? number(bore.value()) + mark
                : number(bore.low()) + " / " + number(bore.value()) + " / " + number(bore.high()) + mark;
        canvas.text(widthPx, topPx + 14, Anchor.END, figures, new Look(Canvas.SMALL_PX, Shades.INK, used));
    }

    private String number(double si) {
        return Scale.BORE.number(si, display);
    }

    private double legend(double topPx) {
        double y = topPx;
        canvas.line(0, y + 8, 22, y + 8, DASH);
        canvas.text(30, y + 12, Anchor.START, "dash number in sixteenths of an inch", Look.MUTED);
        y += 17;
        canvas.box(0, y + 4, 22, 8, Shades.steps().get(3), EDGE);
        canvas.text(30, y + 12, Anchor.START, "used in this circuit", Look.MUTED);
        y += 17;
        for (String line : Lettering.wrap(
                "Bar: smallest to largest bore sold under that name; dot: the usual one, which the figures here are for."
                        + " ? from memory or guessed.",
                widthPx,
                Canvas.SMALL_PX,
                6)) {
            canvas.text(0, y + 12, Anchor.START, line, Look.MUTED);
            y += 15;
        }
        return y + 6;
    }
}
