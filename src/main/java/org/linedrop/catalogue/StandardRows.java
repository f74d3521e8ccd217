package org.linedrop.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;

/** Reads the package's CSV files into row records. */
final class StandardRows {
    private static final double INCH_M = 0.0254;

    private final Sources sources = new Sources();

    List<HoseFamily> families() {
        List<HoseFamily> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("hose_families")) {
            rows.add(new HoseFamily(
                    row.text("name"),
                    row.text("liner"),
                    List.of(row.text("graded_liners").split("/", -1)),
                    row.text("size_by").equals("dash"),
                    row.text("sizing"),
                    row.text("convoluted").equals("yes"),
                    row.text("wall"),
                    row.text("end_build"),
                    row.text("description"),
                    "",
                    sources.of(row, "source", "status", "")));
        }
        return rows;
    }

    List<SurfaceRoughness> roughness() {
        List<SurfaceRoughness> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("roughness")) {
            rows.add(new SurfaceRoughness(row.text("surface"), sources.figure(row)));
        }
        return rows;
    }

    /** Sizes of all families; a row for size {@code all} holds for every size that has none of its own. */
    List<HoseSize> hoses(List<HoseFamily> families, List<SurfaceRoughness> surfaces) {
        Map<String, Map<String, Figure>> figures = new LinkedHashMap<>();
        for (CsvTable.Row row : CsvTable.rows("hose_figures")) {
            String key = row.text("family") + " " + row.text("size");
            Figure old = figures.computeIfAbsent(key, k -> new LinkedHashMap<>())
                    .put(row.text("quantity"), sources.figure(row));
            if (old != null) {
                throw row.fault("a second row for " + key + " " + row.text("quantity"), null);
            }
        }
        List<HoseSize> rows = new ArrayList<>();
        for (HoseFamily family : families) {
            Map<String, Figure> all = figures.getOrDefault(family.name() + " all", Map.of());
            Figure roughness = roughnessOf(family.surface(), surfaces);
            for (Map.Entry<String, Map<String, Figure>> entry : figures.entrySet()) {
                String size = entry.getKey().startsWith(family.name() + " ")
                        ? entry.getKey().substring(family.name().length() + 1)
                        : "";
                Figure bore = entry.getValue().get("bore");
                if (!size.isEmpty() && bore != null) {
                    rows.add(hose(family, size, bore, roughness, entry.getValue(), all));
                }
            }
        }
        return rows;
    }

    private static Figure roughnessOf(String surface, List<SurfaceRoughness> surfaces) {
        for (SurfaceRoughness row : surfaces) {
            if (row.surface().equals(surface)) {
                return row.roughnessM();
            }
        }
        throw new IllegalStateException("no roughness for " + surface);
    }

    private static HoseSize hose(
            HoseFamily family,
            String size,
            Figure bore,
            Figure roughness,
            Map<String, Figure> own,
            Map<String, Figure> all) {
        return new HoseSize(
                family.name(),
                SizeText.dashNumber(size),
                size,
                family.liner(),
                bore,
                roughness,
                pick("outside-diameter", own, all),
                pick("bend-radius", own, all),
                pick("working-pressure", own, all),
                pick("proof-pressure", own, all),
                pick("burst-pressure", own, all),
                pick("vacuum", own, all),
                pick("min-temperature", own, all),
                pick("max-temperature", own, all),
                pick("mass", own, all),
                family.convoluted(),
                family.name().equals("brake hose"));
    }

    private static @Nullable Figure pick(String quantity, Map<String, Figure> own, Map<String, Figure> all) {
        Figure figure = own.get(quantity);
        return figure != null ? figure : all.get(quantity);
    }

    List<NippleSize> nipples() {
        List<NippleSize> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("hose_ends")) {
            Figure bore = sources.figure(row);
            String unit = row.text("length_unit");
            Source length = sources.of(
                    row,
                    "length_source",
                    "length_status",
                    "22 mm at -6, other sizes in proportion to the cut-off lengths of NAVEDTRA 14018; "
                            + "band 30 % each way");
            rows.add(new NippleSize(
                    row.text("family"),
                    row.text("build"),
                    row.text("size"),
                    bore,
                    new Figure(
                            sources.toSi(row, row.number("length_low"), unit),
                            sources.toSi(row, row.number("length"), unit),
                            sources.toSi(row, row.number("length_high"), unit),
                            length)));
        }
        return rows;
    }

    List<ThroughBore> throughBores() {
        List<ThroughBore> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("through_bores")) {
            rows.add(new ThroughBore(row.text("seat"), row.text("size"), sources.figure(row)));
        }
        return rows;
    }

    List<EndConstant> endConstants() {
        List<EndConstant> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("end_constants")) {
            rows.add(new EndConstant(
                    row.text("name"),
                    new Figure(row.number("low"), row.number("usual"), row.number("high"), sources.of(row))));
        }
        return rows;
    }

    List<DashSize> dashSizes() {
        List<DashSize> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("dash_sizes")) {
            Source source = sources.of(row, "source", "status", "");
            String pairs = row.text("taper_pipe_pairs");
            rows.add(new DashSize(
                    SizeText.dashNumber(row.text("dash")),
                    row.text("tube_od"),
                    inches(row, "tube_od_in", source),
                    row.text("thread"),
                    row.text("thread_form"),
                    inches(row, "thread_major_in", source),
                    inches(row, "nut_hex_in", source),
                    row.text("boss_thread"),
                    row.text("boss_ring_as568"),
                    sources.of(row, "boss_source", "boss_status", ""),
                    row.text("usual_taper_pipe"),
                    pairs.isEmpty() ? List.of() : List.of(pairs.split("; ", -1)),
                    sources.of(row, "pipe_source", "pipe_status", "")));
        }
        return rows;
    }

    private Figure inches(CsvTable.Row row, String column, Source source) {
        return Figure.exact(sources.toSi(row, row.number(column), "in"), source);
    }

    List<ThreadSize> threads() {
        List<ThreadSize> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("threads")) {
            rows.add(new ThreadSize(
                    Seat.of(row.text("seat")),
                    row.text("size"),
                    row.text("thread"),
                    sources.exact(row, "major", row.text("unit")),
                    row.number("turns_per_in") / INCH_M,
                    row.text("taper").equals("yes")));
        }
        return rows;
    }

    List<TaperPipeSize> taperPipe() {
        List<TaperPipeSize> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("taper_pipe")) {
            rows.add(new TaperPipeSize(
                    row.text("size"),
                    row.number("turns_per_in") / INCH_M,
                    sources.exact(row, "pipe_od_in", "in"),
                    sources.exact(row, "hand_tight_in", "in"),
                    sources.exact(row, "effective_in", "in"),
                    row.text("tap_drill")));
        }
        return rows;
    }

    List<TubeMaterial> tubeMaterials() {
        List<TubeMaterial> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("tube_materials")) {
            rows.add(new TubeMaterial(row.text("material"), row.text("wall_surface"), row.text("description")));
        }
        return rows;
    }

    List<TubeSize> tubes(List<TubeMaterial> materials, List<SurfaceRoughness> surfaces) {
        List<TubeSize> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("tubes")) {
            Source source = sources.of(row);
            double od = sources.toSi(row, row.number("od_in"), "in");
            double wall = sources.toSi(row, row.number("wall_in"), "in");
            Double least = row.numberOrNull("least_bore_bent_in");
            Double allowable = row.numberOrNull("allowable_psi");
            String material = row.text("material");
            String surface = materials.stream()
                    .filter(m -> m.name().equals(material))
                    .findFirst()
                    .orElseThrow(() -> row.fault("no material " + material, null))
                    .surface();
            rows.add(new TubeSize(
                    material,
                    od,
                    wall,
                    (int) Math.round(od / INCH_M * 16),
                    Figure.exact(od - 2 * wall, source),
                    roughnessOf(surface, surfaces),
                    least == null ? null : Figure.exact(sources.toSi(row, least, "in"), source),
                    allowable == null ? null : Figure.exact(sources.toSi(row, allowable, "psi"), source)));
        }
        return rows;
    }

    List<Compatibility> compatibility() {
        List<Compatibility> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("compatibility")) {
            rows.add(new Compatibility(
                    row.text("liner"),
                    row.text("fluid"),
                    Compatibility.Grade.of(row.text("grade")),
                    row.text("ask_for"),
                    row.text("note"),
                    sources.of(row, "source", "status", "")));
        }
        return rows;
    }

    List<FluidName> fluidNames() {
        List<FluidName> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("fluid_names")) {
            rows.add(new FluidName(row.text("name"), row.text("fluid")));
        }
        return rows;
    }

    List<CutOff> cutOffs() {
        List<CutOff> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("cut_off_lengths")) {
            rows.add(new CutOff(
                    row.text("end"),
                    row.text("family"),
                    row.text("size"),
                    Math.toRadians(row.number("angle_deg")),
                    sources.exact(row, "one_end", row.text("unit")),
                    row.text("kind").equals("cut-off"),
                    row.text("doubtful").equals("yes")));
        }
        return rows;
    }

    List<BrakeSwell> brakeSwell() {
        List<BrakeSwell> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("brake_swell")) {
            rows.add(new BrakeSwell(
                    row.text("size"),
                    row.text("class"),
                    sources.toSi(row, row.number("pressure_psi"), "psi"),
                    Figure.exact(
                            sources.toSi(row, row.number("most_swell_cm3_per_ft"), "cm3/ft"),
                            sources.of(row, "source", "status", ""))));
        }
        return rows;
    }

    List<RuleOfThumb> rules() {
        List<RuleOfThumb> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("rules")) {
            rows.add(new RuleOfThumb(
                    row.text("topic"),
                    row.text("rule"),
                    row.numberOrNull("low"),
                    row.numberOrNull("high"),
                    row.text("unit"),
                    sources.of(row)));
        }
        return rows;
    }

    List<SizeUse> sizeUses() {
        List<SizeUse> rows = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("size_uses")) {
            rows.add(new SizeUse(SizeText.dashNumber(row.text("dash")), row.text("use"), sources.of(row)));
        }
        return rows;
    }
}
