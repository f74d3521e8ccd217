package org.linedrop.catalogue;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** Finds tubes, adapters, bulkheads, tees and Y blocks. */
final class FittingLookup {
    /** A tube table row within this of the outside diameter and wall asked for is that row. */
    private static final double SAME_LENGTH_M = 1e-6;

    private static final double INCH_M = 0.0254;

    private FittingLookup() {}

    static TubeSize tube(Catalogue catalogue, String material, double outsideDiameterM, double wallM) {
        TubeMaterial known = material(catalogue, material);
        if (!(outsideDiameterM > 0)) {
            throw new CatalogueException(
                    "tube outside diameter must be above zero, but is " + millimetres(outsideDiameterM), "");
        }
        if (!(wallM > 0 && wallM < outsideDiameterM / 2)) {
            throw new CatalogueException(
                    "tube wall must be above zero and under half of the outside diameter, but is " + millimetres(wallM)
                            + " of " + millimetres(outsideDiameterM),
                    "Write outside diameter x wall, as in 3/8 in x 0.035 in");
        }
        TubeSize row = null;
        for (TubeSize tube : catalogue.rows().tubes()) {
            if (tube.material().equals(known.name())
                    && Math.abs(tube.outsideDiameterM() - outsideDiameterM) <= SAME_LENGTH_M
                    && Math.abs(tube.wallM() - wallM) <= SAME_LENGTH_M) {
                row = tube;
            }
        }
        double sixteenths = outsideDiameterM / INCH_M * 16;
        int dash = Math.abs(sixteenths - Math.rint(sixteenths)) < 0.01 ? (int) Math.rint(sixteenths) : 0;
        // the two lengths are the user's, so the bore is arithmetic; drawing tolerance is not in it
        Source bore = new Source("Outside diameter less two walls", "drawing tolerance not counted", Status.DERIVED);
        return new TubeSize(
                known.name(),
                outsideDiameterM,
                wallM,
                dash,
                Figure.exact(outsideDiameterM - 2 * wallM, bore),
                roughness(catalogue, known.surface()),
                row == null ? null : row.leastBoreBentM(),
                row == null ? null : row.allowablePressurePa());
    }

    private static TubeMaterial material(Catalogue catalogue, String name) {
        for (TubeMaterial material : catalogue.rows().tubeMaterials()) {
            if (material.name().equalsIgnoreCase(name.strip())) {
                return material;
            }
        }
        List<String> names = catalogue.rows().tubeMaterials().stream()
                .map(TubeMaterial::name)
                .toList();
        throw new CatalogueException("no tube material is called \"" + name + "\"", Names.hint(name, names));
    }

    static Figure roughness(Catalogue catalogue, String surface) {
        for (SurfaceRoughness row : catalogue.rows().roughness()) {
            if (row.surface().equals(surface)) {
                return row.roughnessM();
            }
        }
        List<String> names = catalogue.rows().roughness().stream()
                .map(SurfaceRoughness::surface)
                .toList();
        throw new CatalogueException("no surface is called \"" + surface + "\"", Names.hint(surface, names));
    }

    static AdapterSize adapter(Catalogue catalogue, String text, double angleDeg, boolean bentTube) {
        String[] sides = text.strip().split("\\s+to\\s+", -1);
        if (sides.length != 2) {
            throw new CatalogueException(
                    "adapter \"" + text + "\": two sizes are needed", "Write it as in -6 to -5 or M22x1.5 to -12");
        }
        if (angleDeg != 0) {
            EndLookup.checkAngle("adapter", bentTube ? "swept" : "forged", angleDeg);
        }
        Connection from = ConnectionLookup.parse(catalogue, sides[0]);
        Connection to = ConnectionLookup.parse(catalogue, sides[1]);
        String name = from.sizeName() + " to " + to.sizeName();
        boolean flares = from.seat() == Seat.FLARE_37 && to.seat() == Seat.FLARE_37;
        String kind = !flares ? "adapter" : from.size().equals(to.size()) ? "union" : "reducer";
        Connection first = from.named(kind + " " + name);
        Connection second = to.named(kind + " " + name);
        return new AdapterSize(
                kind,
                name,
                ConnectionLookup.bore(catalogue, from),
                ConnectionLookup.bore(catalogue, to),
                Math.toRadians(angleDeg),
                angleDeg > 0 && !bentTube,
                angleDeg > 0 && bentTube ? EndLookup.constant(catalogue, "swept-bend-ratio") : null,
                2,
                first,
                second);
    }

    /** Bulkhead or union: male 37-degree flare on both sides. */
    static AdapterSize doubleMale(Catalogue catalogue, String kind, String size) {
        Connection side = flare(catalogue, kind, size, Gender.MALE);
        Figure bore = ConnectionLookup.bore(catalogue, side);
        return new AdapterSize(kind, side.size(), bore, bore, 0, false, null, 2, side, side);
    }

    /** Tee ({@code -8}, {@code -8 to -6}) or Y block ({@code -8 to -6}): male 37-degree flares. */
    static JunctionSize junction(Catalogue catalogue, String kind, String text) {
        String[] sides = text.strip().split("\\s+to\\s+", -1);
        if (sides.length > 2) {
            throw new CatalogueException(
                    kind + " \"" + text + "\": one or two sizes are needed", "Write it as in -8 to -6");
        }
        Connection main = flare(catalogue, kind, sides[0], Gender.MALE);
        Connection branch = sides.length == 2 ? flare(catalogue, kind, sides[1], Gender.MALE) : main;
        String name = main.size().equals(branch.size()) ? main.size() : main.size() + " to " + branch.size();
        return new JunctionSize(
                kind,
                name,
                ConnectionLookup.bore(catalogue, main),
                ConnectionLookup.bore(catalogue, branch),
                3,
                main,
                branch);
    }

    private static Connection flare(Catalogue catalogue, String kind, String size, Gender gender) {
        @Nullable String dash = SizeText.dash(size);
        if (dash == null) {
            throw new CatalogueException(
                    kind + " \"" + size.strip() + "\" has no dash size", "Write it as in " + kind + " -6");
        }
        return ConnectionLookup.of(catalogue, Seat.FLARE_37, gender, dash, kind + " " + dash);
    }

    private static String millimetres(double metres) {
        return String.format(Locale.ROOT, "%.3f mm", metres * 1000);
    }

    static DashSize dashSize(Catalogue catalogue, int dash) {
        for (DashSize row : catalogue.dashSizes()) {
            if (row.dash() == dash) {
                return row;
            }
        }
        List<String> known =
                catalogue.dashSizes().stream().map(d -> "-" + d.dash()).toList();
        throw new CatalogueException("no dash size -" + dash, "It must be one of: " + String.join(", ", known));
    }
}
