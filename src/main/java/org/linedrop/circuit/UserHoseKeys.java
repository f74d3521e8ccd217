package org.linedrop.circuit;

import static org.linedrop.circuit.Key.optional;
import static org.linedrop.circuit.Key.required;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.fact.Figure;
import org.linedrop.units.Dimension;

/** Keys of the user's own hoses. */
final class UserHoseKeys {
    static final Key<String> LIKE = required(
            "like",
            KeyForms.words("race PTFE"),
            "the family that gives what is not said here",
            "Write for example: like: race PTFE");
    static final Key<String> SIZES = required(
            "sizes", KeyForms.words("-6 -8 -10"), "its sizes, one for each column", "Write for example: sizes: -6 -8");
    static final Key<List<Figure>> USER_BORE =
            optional("bore", KeyForms.column("7.9 10.2 mm measured", Dimension.LENGTH, 5e-4, 0.1), "inside diameters");
    static final Key<List<Figure>> USER_END_BORE = optional(
            "end bore",
            KeyForms.column("6.6 8.9 mm measured", Dimension.LENGTH, 5e-4, 0.1),
            "bores of the nipples of its ends");
    static final Key<List<Figure>> USER_ROUGHNESS = optional(
            "roughness", KeyForms.column("0.0015 0.0015 mm", Dimension.LENGTH, 0, 2e-3), "roughness of the wall");
    static final Key<List<Figure>> USER_OUTSIDE = optional(
            "outside diameter",
            KeyForms.column("12 15 mm from sheet", Dimension.LENGTH, 1e-3, 0.2),
            "outside diameters");
    static final Key<List<Figure>> USER_BEND_RADIUS = optional(
            "bend radius",
            KeyForms.column("100 120 mm from sheet", Dimension.LENGTH, 1e-3, 3),
            "minimum bend radii, of the centre line");
    static final Key<List<Figure>> USER_WORKING = optional(
            "working pressure",
            KeyForms.column("140 140 bar from sheet", Dimension.GAUGE_PRESSURE, 0, 2e8),
            "highest working pressures");
    static final Key<List<Figure>> USER_PROOF = optional(
            "proof pressure",
            KeyForms.column("280 280 bar from sheet", Dimension.GAUGE_PRESSURE, 0, 4e8),
            "proof pressures");
    static final Key<List<Figure>> USER_BURST = optional(
            "burst pressure",
            KeyForms.column("560 560 bar from sheet", Dimension.GAUGE_PRESSURE, 0, 8e8),
            "least burst pressures");
    static final Key<List<Figure>> USER_VACUUM = optional(
            "vacuum",
            KeyForms.column("28 28 inHg from sheet", Dimension.PRESSURE_DIFFERENCE, 0, 101_325),
            "largest vacua, below the air outside");
    static final Key<List<Figure>> USER_COLDEST = optional(
            "lowest temperature",
            KeyForms.column("-40 -40 C from sheet", Dimension.TEMPERATURE, 173.15, 573.15),
            "lowest temperatures");
    static final Key<List<Figure>> USER_HOTTEST = optional(
            "highest temperature",
            KeyForms.column("150 150 C from sheet", Dimension.TEMPERATURE, 173.15, 673.15),
            "highest temperatures");
    /** Columns of the user's own hoses. */
    static final List<Key<List<Figure>>> HOSE_COLUMNS = List.of(
            USER_BORE,
            USER_END_BORE,
            USER_ROUGHNESS,
            USER_OUTSIDE,
            USER_BEND_RADIUS,
            USER_WORKING,
            USER_PROOF,
            USER_BURST,
            USER_VACUUM,
            USER_COLDEST,
            USER_HOTTEST);

    static final Kind HOSE_FAMILY = new Kind("hose family", "a hose family of the user's own", keys());

    private UserHoseKeys() {}

    private static List<Key<?>> keys() {
        List<Key<?>> keys = new ArrayList<>(List.of(LIKE, SIZES));
        keys.addAll(HOSE_COLUMNS);
        return keys;
    }
}
