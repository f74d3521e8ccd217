package org.linedrop.fluid;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** Reads validation/fluids and measures how far the fluids are from it. */
final class FluidCases {
    private FluidCases() {}

    /** Files of rows about catalogue fluids. */
    static final List<String> CATALOGUE =
            List.of("water", "glycol", "air", "alcohol", "petrol", "diesel", "oil", "brake");

    /** Files of rows about laws alone: D341 lines through other people's oils, gasoline by Reid pressure. */
    static final List<String> LAWS = List.of("oil-line", "petrol-reid");

    /** One published figure. */
    record Row(
            String fluid,
            PropertyKind kind,
            double temperatureK,
            double value,
            String relation,
            double tolerance,
            String why,
            String source,
            String status) {

        String place() {
            return fluid + ", " + kind.word() + ", " + Text.celsius(temperatureK) + " (" + source + ")";
        }
    }

    static List<NamedCsvRecord> csv(String file) {
        String path = "/validation/fluids/" + file + ".csv";
        InputStream stream = Objects.requireNonNull(FluidCases.class.getResourceAsStream(path), path);
        try (CsvReader<NamedCsvRecord> reader =
                CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double number(NamedCsvRecord r, String field) {
        String text = r.getField(field);
        return text.isEmpty() ? Double.NaN : Double.parseDouble(text);
    }

    static List<Row> rows(String file) {
        List<Row> rows = new ArrayList<>();
        for (NamedCsvRecord r : csv(file)) {
            rows.add(new Row(
                    r.getField("fluid"),
                    PropertyKind.valueOf(
                            r.getField("property").toUpperCase(Locale.ROOT).replace(' ', '_')),
                    number(r, "temperature_K"),
                    number(r, "value_SI"),
                    r.getField("relation"),
                    number(r, "tolerance"),
                    r.getField("why"),
                    r.getField("source"),
                    r.getField("status")));
        }
        return rows;
    }

    static double value(FluidState s, PropertyKind kind) {
        return switch (kind) {
            case DENSITY -> s.densityKgPerM3();
            case DYNAMIC_VISCOSITY -> s.dynamicViscosityPaS();
            case KINEMATIC_VISCOSITY -> s.kinematicViscosityM2PerS();
            case VAPOUR_PRESSURE -> s.vapourPressurePa();
            case BULK_MODULUS -> s.bulkModulusPa();
            case SPECIFIC_HEAT -> s.specificHeatJPerKgK();
        };
    }

    static double ours(String file, Row row) {
        if (file.equals("oil-line")) {
            return OilLine.find(row.fluid()).at(row.kind(), row.temperatureK());
        }
        if (file.equals("petrol-reid")) {
            double psi = Double.parseDouble(row.fluid().replaceAll("[^0-9.]", ""));
            return new PetroleumLaws.GasolinePressure(psi * 6894.757293168, 3).at(row.temperatureK());
        }
        return value(Fluids.find(row.fluid()).at(row.temperatureK()), row.kind());
    }

    /** Relative distance from the row; of an inequality how far it is broken, else zero; NaN stays NaN. */
    static double deviation(double ours, Row row) {
        double relative = ours / row.value() - 1;
        return switch (row.relation()) {
            case "equals" -> Math.abs(relative);
            case "at least" -> Math.max(0, -relative);
            case "at most" -> Math.max(0, relative);
            default -> throw new IllegalArgumentException(row.relation());
        };
    }

    /** An oil of somebody else's table, known by one or two viscosities. */
    record OilLine(String name, D341 line, double rho15, boolean fuel) {

        static OilLine find(String name) {
            for (NamedCsvRecord r : csv("oil-line-definitions")) {
                if (r.getField("line").equals(name)) {
                    boolean sloped = !r.getField("slope").isEmpty();
                    double t1 = number(r, "first_K");
                    double nu1 = number(r, "first_m2_per_s");
                    D341 line = sloped
                            ? D341.sloped(t1, nu1, number(r, "slope"))
                            : D341.through(t1, nu1, number(r, "second_K"), number(r, "second_m2_per_s"));
                    return new OilLine(name, line, number(r, "density_at_15C_kg_per_m3"), sloped);
                }
            }
            throw new IllegalArgumentException(name);
        }

        double at(PropertyKind kind, double temperatureK) {
            PropertyLaw density =
                    fuel ? PetroleumLaws.ExpandedDensity.fuel(rho15) : PetroleumLaws.ExpandedDensity.oil(rho15);
            return switch (kind) {
                case DENSITY -> density.at(temperatureK);
                case KINEMATIC_VISCOSITY -> line.at(temperatureK);
                case DYNAMIC_VISCOSITY -> line.at(temperatureK) * density.at(temperatureK);
                case SPECIFIC_HEAT -> new PetroleumLaws.SpecificHeat(rho15).at(temperatureK);
                default -> throw new IllegalArgumentException(kind.word());
            };
        }
    }

    /** Words of status, the weakest last; that of a group is its weakest. */
    private static final List<String> STATUSES = List.of("published", "computed", "derived", "from memory");

    /** A deviation as the claims table prints it. */
    static String print(double deviation) {
        return deviation < 1e-12 ? "under 1e-12" : String.format(Locale.ROOT, "%.1e", deviation);
    }

    /** Worst case of a group of rows. */
    static final class Worst {
        private int count;
        private double deviation = -1;
        private String place = "";
        private String status = "published";
        private final List<String> sources = new ArrayList<>();
        private final List<String> tolerances = new ArrayList<>();

        void add(double d, Row row) {
            count++;
            if (!(d <= deviation)) {
                deviation = d;
                place = row.place();
            }
            note(sources, row.source());
            if (STATUSES.indexOf(row.status()) > STATUSES.indexOf(status)) {
                status = row.status();
            }
            note(
                    tolerances,
                    row.relation().equals("equals")
                            ? String.format(Locale.ROOT, "%.4g %%: %s", 100 * row.tolerance(), row.why())
                            : row.tolerance() > 0
                                    ? String.format(
                                            Locale.ROOT, "inequality, %.4g %%: %s", 100 * row.tolerance(), row.why())
                                    : "inequality");
        }

        private static void note(List<String> list, String text) {
            if (!list.contains(text)) {
                list.add(text);
            }
        }

        String[] claim(String name) {
            return new String[] {
                name,
                String.valueOf(count),
                String.join("; ", sources),
                status,
                String.join("; ", tolerances),
                print(deviation),
                place
            };
        }
    }

    /** The claim a row belongs to. */
    static String group(String file, Row row) {
        boolean tribology = file.equals("oil-line") && row.source().startsWith("Stachowiak");
        return (tribology ? "thirteen oils" : row.fluid()) + ", " + row.kind().word();
    }

    /** Rows of a file grouped by fluid and property, each with its worst deviation. */
    static Map<String, Worst> measure(String file) {
        Map<String, Worst> groups = new LinkedHashMap<>();
        for (Row row : rows(file)) {
            if (!row.relation().equals("refused")) {
                double d = deviation(ours(file, row), row);
                groups.computeIfAbsent(group(file, row), k -> new Worst()).add(d, row);
            }
        }
        return groups;
    }
}
