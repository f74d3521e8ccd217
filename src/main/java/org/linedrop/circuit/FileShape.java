package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.linedrop.fact.Inner;
import org.linedrop.units.Dimension;

/** Where the kinds of the key table stand in a circuit file: what schemas and documents are made from. */
@Inner
public final class FileShape {
    /** Name of the catalogue's families, in the section and in a file of its own. */
    public static final String HOSES = "hoses";

    private FileShape() {}

    /**
     * The kinds of element a section holds.
     *
     * @param section one of {@link Keys#SECTIONS}, or {@link #HOSES} of the catalogue
     * @return its kinds; one alone where the elements do not say their kind; empty for sections of another build
     */
    public static List<Kind> kinds(String section) {
        return switch (section) {
            case "engine" -> List.of(FileKeys.ENGINE_KIND);
            case "points" -> Keys.POINTS;
            case "devices" -> Keys.DEVICES;
            case "runs" -> List.of(RunKeys.RUN);
            case FluidReader.SECTION -> List.of(FluidKeys.FLUID);
            case HOSES -> List.of(UserHoseKeys.HOSE_FAMILY);
            default -> List.of();
        };
    }

    /**
     * The kinds of what stands in the list that is the value of a key.
     *
     * @param key a key of the table
     * @return the kinds; empty where the value is no list of elements
     */
    public static List<Kind> items(Key<?> key) {
        if (key.equals(DeviceKeys.CURVES_MARK)) {
            return List.of(DeviceKeys.CURVE);
        }
        if (key.equals(RunKeys.VIA_MARK)) {
            return List.of(PointKeys.WAY_POINT);
        }
        return key.equals(RunKeys.PARTS_MARK) ? Keys.PARTS : List.of();
    }

    /**
     * What may be limited, of any point or device.
     *
     * @return quantity to what it measures, in the order of the table
     */
    public static Map<String, Dimension> limits() {
        Map<String, Dimension> all = new LinkedHashMap<>();
        for (List<Kind> kinds : List.of(Keys.POINTS, Keys.DEVICES)) {
            kinds.forEach(kind -> LimitReader.quantities(kind.word()).forEach(all::putIfAbsent));
        }
        all.remove(LimitReader.STATE);
        return all;
    }

    /**
     * The states that a limit on {@code state} may ask for, of any device.
     *
     * @return words, each once
     */
    public static List<String> states() {
        List<String> all = new ArrayList<>();
        Keys.DEVICES.forEach(kind -> all.addAll(LimitReader.states(kind.word())));
        return all.stream().distinct().toList();
    }
}
