package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.fact.Inner;

/**
 * The key table: every kind of element with its keys. Nothing else names a key; the keys themselves are in a class for each
 * part of the file.
 */
@Inner
public final class Keys {

    /** Kinds of point, by the word of {@code kind:}. */
    static final List<Kind> POINTS = List.of(
            new Kind(
                    "tank",
                    "a vessel with a free surface",
                    with(PointKeys.PLACE, PointKeys.DEPTH, PointKeys.RETURN_HEIGHT, PointKeys.CAP, PointKeys.VOLUME)),
            new Kind(
                    "draw",
                    "something that takes fluid",
                    with(PointKeys.PLACE, PointKeys.TAKES, PointKeys.DRAW_LAW, PointKeys.DUTY, PointKeys.GAUGE_BORE)),
            new Kind("joint", "where runs meet", with(PointKeys.PLACE, PointKeys.GAUGE_BORE)),
            new Kind(
                    Junction.TEE,
                    "a tee: port run for two runs, port branch for one",
                    with(PointKeys.PLACE, PointKeys.TEE_SIZE)),
            new Kind(
                    Junction.Y_BLOCK,
                    "a Y block: port common for one run, port leg for two",
                    with(PointKeys.PLACE, PointKeys.Y_SIZE)),
            new Kind(
                    "held",
                    "a point whose pressure something else keeps",
                    with(PointKeys.PLACE, PointKeys.HELD_PRESSURE, PointKeys.HELD_HEAD)));

    /** Kinds of device, by the word of {@code kind:}. */
    static final List<Kind> DEVICES = DeviceKeys.ALL;

    /** Kinds of part, by the key that names what it is. */
    public static final List<Kind> PARTS = RunKeys.PARTS;

    /** Keys that hold more than one value and have a reader of their own. */
    static final List<String> LISTS =
            List.of(DeviceKeys.CURVES_MARK.name(), RunKeys.PARTS_MARK.name(), RunKeys.VIA_MARK.name());

    /** Keys of the whole file that hold one value. */
    public static final List<Key<?>> TOP = FileKeys.ALL;

    /** Keys of the whole file that hold more than one value, in the order in which they are written. */
    public static final List<String> SECTIONS = List.of(
            "engine", "fluids", "catalogue", "points", "devices", "runs", "limits", "cases", "sections", "uses");

    private Keys() {}

    private static List<Key<?>> with(List<Key<?>> first, Key<?>... more) {
        List<Key<?>> all = new ArrayList<>(first);
        all.addAll(List.of(more));
        return all;
    }
}
