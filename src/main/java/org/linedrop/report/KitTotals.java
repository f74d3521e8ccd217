package org.linedrop.report;

import java.util.List;
import org.linedrop.study.kit.Kit;
import org.linedrop.study.kit.KitItem;

/** The sums of a kit, once for every form it is written in. */
final class KitTotals {
    private KitTotals() {}

    /**
     * One sum.
     *
     * @param key    its name in JSON
     * @param name   its name in CSV
     * @param column the column of the shopping list that it stands in
     * @param scale  its units
     * @param value  SI
     */
    record Total(String key, String name, String column, Scale scale, double value) {}

    static List<Total> of(Kit kit) {
        return List.of(
                count("hosePieces", "hoses", kit.pieces(KitItem.Group.HOSE)),
                length("hoseM", "hose", kit.lengthM(KitItem.Group.HOSE)),
                count("hoseEnds", "hose ends", kit.pieces(KitItem.Group.HOSE_END)),
                count("tubePieces", "tubes", kit.pieces(KitItem.Group.TUBE)),
                length("tubeM", "tube", kit.lengthM(KitItem.Group.TUBE)),
                count("adapters", "adapters", kit.pieces(KitItem.Group.ADAPTER)),
                count("joints", "joints", kit.joints()),
                count("leaks", "places that can leak", kit.leaks()),
                count("faces", "sealing faces", kit.faces()),
                new Total("volumeM3", "held by hose and tube", "volumeM3", KitColumns.VOLUME, kit.volumeM3()),
                new Total("fluidKg", "fluid held", "massKg", KitColumns.MASS, kit.fluidKg()),
                new Total("massKg", "parts of known mass", "massKg", KitColumns.MASS, kit.massKg()),
                new Total(
                        "cost",
                        "parts with a price",
                        "cost",
                        Scale.PURE,
                        kit.withoutPrice() == kit.items().size() ? Double.NaN : kit.cost()));
    }

    private static Total count(String key, String name, int count) {
        return new Total(key, name, "pieces", Scale.PURE, count);
    }

    private static Total length(String key, String name, double lengthM) {
        return new Total(key, name, "lengthM", KitColumns.LENGTH, lengthM);
    }
}
