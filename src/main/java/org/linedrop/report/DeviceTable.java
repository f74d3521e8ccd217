package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.linedrop.result.DeviceRow;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;

/** A line for each device: what it does and its own figures. */
final class DeviceTable {
    private DeviceTable() {}

    /** What the end of a figure's key says of its unit. */
    private record Ending(String text, Dimension dimension) {}

    /** A duration; whole seconds are enough. */
    private static final String SECONDS = "TimeS";

    private static final List<Ending> ENDINGS = List.of(
            new Ending("AbsolutePa", Dimension.ABSOLUTE_PRESSURE),
            new Ending("M3PerS", Dimension.VOLUME_FLOW),
            new Ending("KgPerS", Dimension.MASS_FLOW),
            new Ending("MPerS", Dimension.SPEED),
            new Ending("Pa", Dimension.PRESSURE_DIFFERENCE),
            new Ending("Ratio", Dimension.RATIO),
            new Ending("K", Dimension.TEMPERATURE_DIFFERENCE),
            new Ending("W", Dimension.POWER),
            new Ending("V", Dimension.VOLTAGE),
            new Ending("M", Dimension.LENGTH));

    static List<String> lines(List<DeviceRow> devices, Display display) {
        return table(devices, display).lines();
    }

    static Table table(List<DeviceRow> devices, Display display) {
        List<Column<DeviceRow>> columns = Columns.seen(Columns.DEVICES);
        Table table = new Table().words("device", 2).words("state", 2);
        for (Column<DeviceRow> column : columns) {
            Column.Form<DeviceRow> form = Objects.requireNonNull(column.form());
            table.numbers(form.heading(), form.unit(display));
        }
        table.words("figures", 0);
        for (DeviceRow device : devices) {
            String name = device.id().contains(device.kind()) ? device.id() : device.id() + " (" + device.kind() + ")";
            List<String> cells = new ArrayList<>(List.of(name, device.state()));
            for (Column<DeviceRow> column : columns) {
                Column.Form<DeviceRow> form = Objects.requireNonNull(column.form());
                cells.add(form.cell().apply(device, new Column.Look(display, 0)));
            }
            List<String> figures = new ArrayList<>();
            for (DeviceRow.Fact fact : device.figures()) {
                // how far a filter is clogged is its state already
                if (Double.isFinite(fact.value()) && !fact.key().equals("clogRatio")) {
                    figures.add(words(fact, display));
                }
            }
            cells.add(String.join(", ", figures));
            table.row(cells);
        }
        return table;
    }

    /** {@code spareFlowRatio 0.53} as {@code spare flow 53 %}. */
    private static String words(DeviceRow.Fact fact, Display display) {
        String key = fact.key();
        if (key.endsWith(SECONDS)) {
            return spaced(key.substring(0, key.length() - 1)) + " " + Math.round(fact.value()) + " s";
        }
        for (Ending ending : ENDINGS) {
            if (key.endsWith(ending.text())) {
                String name = key.substring(0, key.length() - ending.text().length());
                return spaced(name) + " " + Scale.usual(ending.dimension()).text(fact.value(), display);
            }
        }
        return spaced(key) + " " + Scale.PURE.exact(fact.value(), display);
    }

    private static String spaced(String camelCase) {
        return camelCase.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    }
}
