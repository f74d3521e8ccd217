package org.linedrop.report;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.linedrop.circuit.Circuit;
import org.linedrop.study.GaugePlan;
import org.linedrop.units.Display;
import tools.jackson.core.JsonGenerator;

/** What gauges should read, as a page of text, CSV or JSON. */
public final class GaugeReport {
    /** One line of CSV and JSON. */
    private record Line(GaugePlan.Place place, GaugePlan.Case of, GaugePlan.Reading reading) {}

    private static final List<Column<Line>> COLUMNS = List.of(
            Column.text("place", "place", line -> line.place().id()),
            Column.text("at", "at", line -> line.place().at()),
            Column.text("case", "case", line -> line.of().name()),
            Column.number(
                    "staticPressurePa",
                    "gauge",
                    Scale.PRESSURE,
                    line -> line.reading().usualPa()),
            Column.number(
                    "staticPressureLowPa",
                    "gauge low",
                    Scale.PRESSURE,
                    line -> line.reading().lowPa()),
            Column.number(
                    "staticPressureHighPa",
                    "gauge high",
                    Scale.PRESSURE,
                    line -> line.reading().highPa()),
            Column.number(
                    "absolutePressurePa",
                    "absolute",
                    Scale.ABSOLUTE,
                    line -> line.reading().usualPa() + line.of().ambientPa()),
            Column.number(
                    "overManifoldPa",
                    "over manifold",
                    Scale.DROP,
                    line -> line.reading().usualPa() - line.of().manifoldPa()),
            Column.number("boreM", "bore", Scale.BORE, line -> line.place().boreM()),
            Column.number(
                    "heightM", "height", KitColumns.LENGTH, line -> line.place().heightM()));

    private final GaugePlan plan;
    private final Circuit circuit;
    private final Display display;
    private final List<String> lines = new ArrayList<>();

    private GaugeReport(GaugePlan plan, Circuit circuit, Display display) {
        this.plan = plan;
        this.circuit = circuit;
        this.display = display;
    }

    /**
     * A page of text, 120 columns wide.
     *
     * @param plan    the readings
     * @param circuit what they are of
     * @param display units
     * @return the page, ending with a line end
     */
    public static String text(GaugePlan plan, Circuit circuit, Display display) {
        GaugeReport report = new GaugeReport(plan, circuit, display);
        report.sentences();
        report.tables();
        notes(plan, display).forEach(report::line);
        report.lines.add("");
        Safety.cautions(circuit.service()).forEach(report::line);
        report.lines.addAll(Safety.lines());
        return String.join("\n", report.lines) + "\n";
    }

    private void line(String text) {
        lines.addAll(Plain.wrap(text, Plain.WIDTH, 2));
    }

    private void sentences() {
        line("What gauges should read: " + circuit.title() + ". Static pressure over the air outside, in "
                + Scale.PRESSURE.unit(display).symbol()
                + "; in brackets what the narrowest and widest bores sold make of"
                + " it.");
        for (GaugePlan.Case each : plan.cases()) {
            if (!each.solved()) {
                line("NOT SOLVED: case " + each.name() + ": " + each.status() + ". " + each.detail());
            }
        }
    }

    /** Many cases make several tables. */
    private void tables() {
        List<Integer> solved = new ArrayList<>();
        for (int i = 0; i < plan.cases().size(); i++) {
            if (plan.cases().get(i).solved()) {
                solved.add(i);
            }
        }
        int from = 0;
        while (from < solved.size()) {
            int to = solved.size();
            while (to > from + 1 && table(solved.subList(from, to)).naturalWidth() > Plain.WIDTH) {
                to--;
            }
            lines.add("");
            lines.addAll(table(solved.subList(from, to)).lines());
            from = to;
        }
        lines.add("");
    }

    private Table table(List<Integer> cases) {
        Table table = new Table()
                .words("gauge at", 2)
                .numbers("height", KitColumns.LENGTH.unit(display).symbol());
        table.numbers("bore", Scale.BORE.unit(display).symbol());
        for (int i : cases) {
            table.numbers(Plain.clean(plan.cases().get(i).name()), "");
        }
        for (GaugePlan.Place place : plan.places()) {
            List<String> cells = new ArrayList<>(List.of(
                    name(place),
                    KitColumns.LENGTH.number(place.heightM(), display),
                    Double.isInfinite(place.boreM()) ? "vessel" : Scale.BORE.number(place.boreM(), display)));
            for (int i : cases) {
                cells.add(cell(place.readings().get(i)));
            }
            table.row(cells);
        }
        return table;
    }

    private static String name(GaugePlan.Place place) {
        if (!place.kind().isEmpty()) {
            return place.id() + " " + place.at();
        }
        return place.id().contains(place.at()) ? place.id() : place.id() + " (" + place.at() + ")";
    }

    private String cell(GaugePlan.Reading reading) {
        String usual = Scale.PRESSURE.number(reading.usualPa(), display);
        String low = Scale.PRESSURE.number(reading.lowPa(), display);
        String high = Scale.PRESSURE.number(reading.highPa(), display);
        return low.equals(usual) && high.equals(usual) ? usual : usual + " (" + low + " to " + high + ")";
    }

    private static List<String> notes(GaugePlan plan, Display display) {
        Scale pressure = Scale.PRESSURE;
        Set<String> ambient = new LinkedHashSet<>();
        Map<String, List<String>> manifold = new LinkedHashMap<>();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (GaugePlan.Case each : plan.cases()) {
            ambient.add(pressure.text(each.ambientPa(), display));
            if (!Double.isNaN(each.manifoldPa())) {
                manifold.computeIfAbsent(pressure.text(each.manifoldPa(), display), text -> new ArrayList<>())
                        .add(each.name());
            }
            least = Math.min(least, each.liftPaPerM());
            most = Math.max(most, each.liftPaPerM());
        }
        double length = KitColumns.perLength(display);
        String low = Scale.DROP.number(least * length, display);
        String high = Scale.DROP.number(most * length, display);
        List<String> notes = new ArrayList<>();
        notes.add(
                "A gauge sits in the wall of the bore named, beside the flow, and reads static pressure; in a vessel the"
                        + " fluid stands still. bore -: none is known.");
        notes.add("Which sensor: a gauge sensor reads the figures above. An absolute sensor reads "
                + String.join(", ", ambient)
                + " more, the air outside. A differential sensor or an injector over the manifold sees the figure less the"
                + " manifold's gauge pressure"
                + (manifold.isEmpty() ? " (not given here)" : " (" + manifoldWords(manifold) + ")")
                + "; a filter's or cooler's drop is its inlet less its outlet. An absolute sensor read as a gauge is wrong"
                + " by one atmosphere.");
        notes.add("Height: a gauge that sits higher than the place, on a hose full of the fluid, reads "
                + (low.equals(high) ? low : low + " to " + high) + " "
                + Scale.DROP.unit(display).symbol() + " less per " + (display.us() ? "foot" : "metre")
                + " (lower: more); under acceleration also by how far ahead or aside it sits. height -: not given.");
        notes.add("Sensor error is not in the bands: a cheap underhood gauge has been seen to fall by 10 to 20 kPa"
                + " (1.5 to 3 psi) as it warms (published; compare cold and hot, or with a second gauge).");
        return notes;
    }

    private static String manifoldWords(Map<String, List<String>> manifold) {
        if (manifold.size() == 1) {
            return manifold.keySet().iterator().next();
        }
        List<String> words = new ArrayList<>();
        manifold.forEach((value, cases) -> words.add(value + " at " + String.join(", ", cases)));
        return String.join("; ", words);
    }

    private static List<Line> readings(GaugePlan plan) {
        List<Line> readings = new ArrayList<>();
        for (GaugePlan.Place place : plan.places()) {
            for (int i = 0; i < plan.cases().size(); i++) {
                if (plan.cases().get(i).solved()) {
                    readings.add(new Line(
                            place, plan.cases().get(i), place.readings().get(i)));
                }
            }
        }
        return readings;
    }

    /**
     * A table for a spreadsheet: a line for each place and case that was solved.
     *
     * @param plan    the readings
     * @param circuit what they are of
     * @param display units of the numbers
     * @return a table, ending with a line end
     */
    public static String csv(GaugePlan plan, Circuit circuit, Display display) {
        List<String> words = new ArrayList<>(Safety.cautions(circuit.service()));
        words.addAll(Safety.lines());
        return CsvReport.written(
                CsvReport.head(COLUMNS, display),
                readings(plan).stream()
                        .map(line -> CsvReport.cells(COLUMNS, line, display))
                        .toList(),
                words);
    }

    /**
     * The readings as JSON, always SI; what is not known is null.
     *
     * @param plan    the readings
     * @param circuit what they are of
     * @return JSON, ending with a line end
     */
    public static String json(GaugePlan plan, Circuit circuit) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = JsonRows.generator(out)) {
            JsonRows objects = new JsonRows(json);
            json.writeStartObject();
            json.writeStringProperty("list", "gauges");
            json.writeStringProperty("title", circuit.title());
            json.writeStringProperty("libraryVersion", Library.version());
            json.writeArrayPropertyStart("cases");
            for (GaugePlan.Case each : plan.cases()) {
                json.writeStartObject();
                json.writeStringProperty("case", each.name());
                json.writeStringProperty("status", each.status());
                objects.number("ambientAbsolutePa", each.ambientPa());
                objects.number("manifoldPa", each.manifoldPa());
                objects.number("liftPaPerM", each.liftPaPerM());
                json.writeEndObject();
            }
            json.writeEndArray();
            objects.array("readings", COLUMNS, readings(plan));
            objects.strings("notes", notes(plan, Display.METRIC));
            objects.strings("cautions", Safety.cautions(circuit.service()));
            objects.strings("safety", Safety.lines());
            json.writeEndObject();
            json.writeRaw('\n');
        }
        return out.toString();
    }
}
