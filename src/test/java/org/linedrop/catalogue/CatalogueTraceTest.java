package org.linedrop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Status;

/** Fifty figures picked at random trace to their source row; every row has a source and a status. */
class CatalogueTraceTest {
    private static final Catalogue ALL = Catalogue.standard();
    private static final long SEED = 20_240_601;

    /** Unit factors written down a second time, from NIST SP 811 table B.8. */
    private static final Map<String, Double> TO_SI =
            Map.of("in", 2.54e-2, "mm", 1e-3, "psi", 6.894757e3, "inHg", 3.386389e3);

    record Picked(String what, Figure figure, String file, Map<String, String> key) {}

    @Test
    void fiftyFiguresTraceToTheirSourceRow() {
        List<Picked> all = figures();
        assertThat(all).hasSizeGreaterThan(700);
        Random random = new Random(SEED);
        Map<String, String> titles = new LinkedHashMap<>();
        read("sources").forEach(s -> titles.put(s.getField("key"), s.getField("title")));
        for (int i = 0; i < 50; i++) {
            Picked picked = all.get(random.nextInt(all.size()));
            NamedCsvRecord row = row(picked);
            Figure figure = picked.figure();
            assertThat(figure.source().title()).as(picked.what()).isEqualTo(titles.get(row.getField("source")));
            assertThat(figure.status().word()).as(picked.what()).isEqualTo(row.getField("status"));
            assertThat(figure.source().locator()).as(picked.what()).endsWith(row.getField("note"));
            assertThat(figure.low()).as(picked.what()).isCloseTo(si(row, "low"), near(figure));
            assertThat(figure.value()).as(picked.what()).isCloseTo(si(row, "usual"), near(figure));
            assertThat(figure.high()).as(picked.what()).isCloseTo(si(row, "high"), near(figure));
        }
    }

    /** 1e-6: the factors above are rounded to seven digits. */
    private static org.assertj.core.data.Offset<Double> near(Figure figure) {
        return within(1e-6 * Math.abs(figure.value()));
    }

    @Test
    void everyRowOfEveryFileHasASourceAndAStatus() {
        List<String> keys = read("sources").stream().map(r -> r.getField("key")).toList();
        List<String> words =
                java.util.Arrays.stream(Status.values()).map(Status::word).toList();
        for (String file : List.of(
                "hose_families",
                "hose_figures",
                "hose_ends",
                "through_bores",
                "end_constants",
                "dash_sizes",
                "threads",
                "taper_pipe",
                "tubes",
                "roughness",
                "compatibility",
                "cut_off_lengths",
                "brake_swell",
                "rules",
                "size_uses",
                "bench_notes",
                "bench_figures")) {
            assertThat(read(file)).as(file).isNotEmpty().allSatisfy(row -> {
                assertThat(keys).as("%s %s", file, row).contains(row.getField("source"));
                assertThat(words).as("%s %s", file, row).contains(row.getField("status"));
            });
        }
    }

    @Test
    void everySourceIsUsed() {
        List<String> used = new ArrayList<>();
        for (String file : List.of(
                "hose_families",
                "hose_figures",
                "hose_ends",
                "through_bores",
                "end_constants",
                "dash_sizes",
                "threads",
                "taper_pipe",
                "tubes",
                "roughness",
                "compatibility",
                "cut_off_lengths",
                "brake_swell",
                "rules",
                "size_uses",
                "bench_notes",
                "bench_figures")) {
            read(file).forEach(r -> used.add(r.getField("source")));
        }
        read("dash_sizes").forEach(r -> used.addAll(List.of(r.getField("boss_source"), r.getField("pipe_source"))));
        assertThat(read("sources")).allSatisfy(r -> assertThat(used).contains(r.getField("key")));
    }

    private static List<Picked> figures() {
        List<Picked> all = new ArrayList<>();
        for (HoseSize hose : ALL.hoses()) {
            add(all, hose, "bore", hose.boreM());
            add(all, hose, "outside-diameter", hose.outsideDiameterM());
            add(all, hose, "bend-radius", hose.minBendRadiusM());
            add(all, hose, "working-pressure", hose.workingPressurePa());
            add(all, hose, "proof-pressure", hose.proofPressurePa());
            add(all, hose, "burst-pressure", hose.burstPressurePa());
            add(all, hose, "vacuum", hose.vacuumPa());
            add(all, hose, "min-temperature", hose.minTemperatureK());
            add(all, hose, "max-temperature", hose.maxTemperatureK());
            add(all, hose, "mass", hose.massKgPerM());
        }
        for (NippleSize nipple : ALL.rows().nipples()) {
            all.add(new Picked(
                    nipple.family() + " " + nipple.size() + " " + nipple.build(),
                    nipple.boreM(),
                    "hose_ends",
                    Map.of("family", nipple.family(), "size", nipple.size(), "build", nipple.build())));
        }
        for (ThroughBore bore : ALL.rows().throughBores()) {
            all.add(new Picked(
                    bore.seat() + " " + bore.size(),
                    bore.boreM(),
                    "through_bores",
                    Map.of("seat", bore.seat(), "size", bore.size())));
        }
        for (SurfaceRoughness row : ALL.rows().roughness()) {
            all.add(new Picked(row.surface(), row.roughnessM(), "roughness", Map.of("surface", row.surface())));
        }
        return all;
    }

    private static void add(List<Picked> all, HoseSize hose, String quantity, Figure figure) {
        if (figure != null) {
            all.add(new Picked(
                    hose.name() + " " + quantity,
                    figure,
                    "hose_figures",
                    Map.of("family", hose.family(), "size", hose.sizeText(), "quantity", quantity)));
        }
    }

    private static NamedCsvRecord row(Picked picked) {
        NamedCsvRecord found = null;
        for (NamedCsvRecord row : read(picked.file())) {
            boolean matches = picked.key().entrySet().stream().allMatch(e -> {
                String cell = row.getField(e.getKey());
                return cell.equals(e.getValue()) || (e.getKey().equals("size") && cell.equals("all"));
            });
            if (matches && (found == null || !row.getField("size").equals("all"))) {
                found = row;
            }
        }
        return Objects.requireNonNull(found, picked.what());
    }

    private static double si(NamedCsvRecord row, String column) {
        double value = Double.parseDouble(row.getField(column));
        String unit = row.getField("unit");
        return unit.equals("C") ? value + 273.15 : value * TO_SI.getOrDefault(unit, 1.0);
    }

    static List<NamedCsvRecord> read(String file) {
        List<NamedCsvRecord> rows = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder()
                .ofNamedCsvRecord(new InputStreamReader(
                        Objects.requireNonNull(Catalogue.class.getResourceAsStream(file + ".csv"), file),
                        StandardCharsets.UTF_8))) {
            reader.forEach(rows::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }
}
