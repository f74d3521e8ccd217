package org.linedrop.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/** Finds the end of a hose, or says why there is none. */
final class EndLookup {
    private static final List<String> KINDS =
            List.of("straight", "swept", "forged", "banjo", "quick-connect", "male", "barb");
    private static final List<Double> SWEPT = List.of(30.0, 45.0, 60.0, 90.0, 120.0, 150.0, 180.0);
    private static final List<Double> FORGED = List.of(30.0, 45.0, 60.0, 90.0);

    private EndLookup() {}

    static EndSize find(Catalogue catalogue, HoseSize hose, String kind, double angleDeg, String build, String detail) {
        String sort = kind.equals("machined") || kind.equals("low-profile") ? "forged" : kind;
        if (!KINDS.contains(sort)) {
            throw new CatalogueException("no hose end is called \"" + kind + "\"", Names.hint(kind, KINDS));
        }
        checkAngle("hose end", sort, angleDeg);
        if (sort.equals("barb") && hose.liner().equals("PTFE")) {
            throw new CatalogueException(
                    hose.name() + ": PTFE hose does not hold on a barb", "Write straight, or take another hose");
        }
        NippleSize nipple = nipple(catalogue, hose, build, sort);
        Connection connection = connection(catalogue, hose, sort, detail);
        Figure through = sort.equals("barb") ? nipple.boreM() : ConnectionLookup.bore(catalogue, connection);
        return new EndSize(
                hose.family(),
                sort,
                nipple.build(),
                hose.dash(),
                hose.sizeText(),
                Math.toRadians(angleDeg),
                nipple.boreM(),
                nipple.lengthM(),
                through,
                sort.equals("swept") ? constant(catalogue, "swept-bend-ratio") : null,
                lossCoefficient(catalogue, sort),
                cutOff(catalogue, hose, sort, angleDeg),
                connection);
    }

    static Figure constant(Catalogue catalogue, String name) {
        for (EndConstant row : catalogue.rows().endConstants()) {
            if (row.name().equals(name)) {
                return row.figure();
            }
        }
        throw new IllegalStateException("no end constant " + name);
    }

    private static @Nullable Figure lossCoefficient(Catalogue catalogue, String kind) {
        return switch (kind) {
            case "banjo" -> constant(catalogue, "banjo-loss-coefficient");
            case "quick-connect" -> constant(catalogue, "quick-connect-loss-coefficient");
            default -> null;
        };
    }

    static void checkAngle(String what, String kind, double angleDeg) {
        String number = plain(angleDeg);
        if (kind.equals("forged") && !FORGED.contains(angleDeg)) {
            String instead = SWEPT.contains(angleDeg) ? "Write " + number + " (swept)" : "Write 45 forged or 90 forged";
            throw new CatalogueException(
                    "\"" + number + " forged\": forged " + what + "s are made in 45 and 90 (30 and 60 rarely)",
                    instead);
        }
        if (kind.equals("swept") && !SWEPT.contains(angleDeg)) {
            throw new CatalogueException(
                    "no swept " + what + " has " + number + " degrees", "Write one of 30 45 60 90 120 150 180");
        }
        if (!kind.equals("forged") && !kind.equals("swept") && angleDeg != 0) {
            throw new CatalogueException(
                    "a " + kind + " end has no angle, but " + number + " was given", "Write " + kind);
        }
    }

    private static String plain(double degrees) {
        return degrees == Math.rint(degrees) ? Long.toString(Math.round(degrees)) : Double.toString(degrees);
    }

    private static NippleSize nipple(Catalogue catalogue, HoseSize hose, String build, String kind) {
        HoseFamily family = catalogue.family(hose.family());
        String usual = family.endBuild();
        String asked = build.isEmpty() || build.equals("reusable") ? usual : build;
        for (NippleSize nipple : catalogue.rows().nipples()) {
            if (nipple.family().equals(hose.family())
                    && nipple.size().equals(hose.sizeText())
                    && nipple.build().equals(asked)) {
                return nipple;
            }
        }
        List<String> builds = catalogue.rows().nipples().stream()
                .filter(n -> n.family().equals(hose.family()) && n.size().equals(hose.sizeText()))
                .map(NippleSize::build)
                .toList();
        if (builds.isEmpty()) {
            throw new CatalogueException(
                    "no hose end is known for " + hose.name(),
                    "Measure one and write end bore: ... measured, or ends: none for a bare piece");
        }
        throw new CatalogueException(
                "no " + asked + " end is known for " + hose.name() + " (" + kind + ")",
                "Its ends are " + String.join(" or ", builds));
    }

    private static Connection connection(Catalogue catalogue, HoseSize hose, String kind, String detail) {
        return switch (kind) {
            case "banjo" -> {
                String bolt = needed(detail, "banjo: which bolt?", "Write banjo M10, M12, M14, M16 or M18");
                yield ConnectionLookup.banjo(catalogue, bolt);
            }
            case "quick-connect" -> {
                String tube = needed(detail, "quick-connect: which tube?", "Write quick-connect 3/8 in");
                yield ConnectionLookup.parse(catalogue, "quick-connect " + tube);
            }
            case "barb" -> {
                String size = hose.sizeText().replace(" in", "");
                yield ConnectionLookup.of(catalogue, Seat.BARB, Gender.FEMALE, size, hose.name());
            }
            default -> {
                String dash = detail.isBlank() ? "-" + hose.dash() : SizeText.dash(detail);
                if (dash == null) {
                    throw new CatalogueException("end \"" + detail + "\" has no dash size", "Write it as in -6");
                }
                Gender gender = kind.equals("male") ? Gender.MALE : Gender.SWIVEL;
                yield ConnectionLookup.of(catalogue, Seat.FLARE_37, gender, dash, hose.name() + " end");
            }
        };
    }

    private static String needed(String detail, String message, String hint) {
        if (detail.isBlank()) {
            throw new CatalogueException(message, hint);
        }
        return detail.strip();
    }

    private static @Nullable Figure cutOff(Catalogue catalogue, HoseSize hose, String kind, double angleDeg) {
        if (!kind.equals("straight") && !kind.equals("swept")) {
            return null;
        }
        double angleRad = Math.toRadians(angleDeg);
        String size = hose.sizeText();
        String lightweight = size + "Z";
        for (CutOff row : catalogue.rows().cutOffs()) {
            if (Math.abs(row.angleRad() - angleRad) < 1e-9
                    && row.cutOff()
                    && !row.doubtful()
                    && row.family().equals(hose.family())
                    && (row.size().equals(size) || row.size().equals(lightweight))) {
                return row.lengthM();
            }
        }
        return null;
    }
}
