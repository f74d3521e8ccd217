package org.linedrop.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Finds a hose by family and size, or says why there is none. */
final class HoseLookup {
    /** A standard's number that the trade uses for two bores. */
    private static final String TWO_BORES = "100R14";

    private static final List<String> ITS_FAMILIES = List.of("100R14 tube-size", "100R14 true-size");

    private HoseLookup() {}

    static HoseSize find(Catalogue catalogue, String family, String size) {
        if (family.strip().equalsIgnoreCase(TWO_BORES) && family(catalogue, family) == null) {
            throw twoBores(catalogue, size);
        }
        HoseFamily known = family(catalogue, family);
        if (known == null) {
            List<String> names =
                    catalogue.families().stream().map(HoseFamily::name).toList();
            throw new CatalogueException("no hose family is called \"" + family + "\"", Names.hint(family, names));
        }
        String normal = normalSize(catalogue, known, size);
        for (HoseSize hose : catalogue.hoses()) {
            if (hose.family().equals(known.name()) && hose.sizeText().equals(normal)) {
                return hose;
            }
        }
        throw new CatalogueException(
                known.name() + " has no " + normal, "It is made in " + String.join(", ", sizes(catalogue, known)));
    }

    /** Family and size in one text, {@code race PTFE -8}. */
    static HoseSize find(Catalogue catalogue, String text) {
        String asked = text.strip();
        if (SizeText.dash(asked) != null) {
            throw noFamily(catalogue, asked);
        }
        String best = "";
        List<String> names = new ArrayList<>();
        catalogue.families().forEach(f -> names.add(f.name()));
        names.add(TWO_BORES);
        for (String name : names) {
            if (startsWith(asked, name) && name.length() > best.length()) {
                best = name;
            }
        }
        if (best.isEmpty()) {
            int cut = sizeStart(asked);
            return find(catalogue, asked.substring(0, cut).strip(), asked.substring(cut));
        }
        return find(catalogue, best, asked.substring(best.length()));
    }

    private static boolean startsWith(String text, String name) {
        return text.regionMatches(true, 0, name, 0, name.length())
                && (text.length() == name.length() || text.charAt(name.length()) == ' ');
    }

    /** Where the size of an unknown family may start: at the last blank before a digit or a dash. */
    private static int sizeStart(String text) {
        for (int i = text.length() - 1; i > 0; i--) {
            if (text.charAt(i - 1) == ' ' && (Character.isDigit(text.charAt(i)) || text.charAt(i) == '-')) {
                return i;
            }
        }
        return text.length();
    }

    static @Nullable HoseFamily family(Catalogue catalogue, String name) {
        for (HoseFamily family : catalogue.families()) {
            if (family.name().equalsIgnoreCase(name.strip())) {
                return family;
            }
        }
        return null;
    }

    private static List<String> sizes(Catalogue catalogue, HoseFamily family) {
        return catalogue.hoses().stream()
                .filter(h -> h.family().equals(family.name()))
                .map(HoseSize::sizeText)
                .toList();
    }

    private static String normalSize(Catalogue catalogue, HoseFamily family, String size) {
        List<String> sizes = sizes(catalogue, family);
        String example = sizes.isEmpty() ? "-6" : sizes.get(sizes.size() / 2);
        if (size.isBlank()) {
            throw new CatalogueException(
                    "\"" + family.name() + "\" has no size",
                    "If you wrote #8: YAML drops everything after \" #\". Write it as in " + family.name() + " "
                            + example);
        }
        String dash = SizeText.dash(size);
        String inch = SizeText.inch(size);
        if (family.sizedByDash()) {
            if (dash == null) {
                throw new CatalogueException(
                        family.name() + " \"" + size.strip() + "\": it is sized by dash",
                        "Write it as in " + family.name() + " " + example);
            }
            return dash;
        }
        if (inch == null) {
            throw new CatalogueException(
                    family.name() + " \"" + size.strip() + "\": it is sized by inch",
                    "Write it as in " + family.name() + " " + example);
        }
        return inch;
    }

    private static CatalogueException twoBores(Catalogue catalogue, String size) {
        String dash = SizeText.dash(size) == null ? "-6" : SizeText.dash(size);
        StringBuilder names = new StringBuilder();
        for (String family : ITS_FAMILIES) {
            for (HoseSize hose : catalogue.hoses()) {
                if (hose.family().equals(family) && hose.sizeText().equals(dash)) {
                    names.append(names.isEmpty() ? "" : " or ")
                            .append(hose.name())
                            .append(" (")
                            .append(millimetres(hose.boreM().value()))
                            .append(" mm)");
                }
            }
        }
        if (names.isEmpty()) {
            names.append(String.join(" or ", ITS_FAMILIES));
        }
        return new CatalogueException(TWO_BORES + " is sold in two bores: write " + names + ", or give bore:", "");
    }

    private static CatalogueException noFamily(Catalogue catalogue, String size) {
        String dash = SizeText.dash(size);
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (HoseSize hose : catalogue.hoses()) {
            if (hose.sizeText().equals(dash)) {
                low = Math.min(low, hose.boreM().low());
                high = Math.max(high, hose.boreM().value());
            }
        }
        // from the smallest sold to the largest usual bore: the upper ends of true-size hose are a guessed 3 %
        String range = high > 0
                ? " The bore of " + dash + " is " + millimetres(low) + " to " + millimetres(high) + " mm by family."
                : "";
        String number = dash == null ? "8" : dash.substring(1);
        return new CatalogueException(
                "hose \"" + size + "\": which hose?" + range,
                "For example race PTFE " + dash + "; see: linedrop catalogue hoses --dash " + number);
    }

    private static String millimetres(double metres) {
        return String.format(Locale.ROOT, "%.1f", metres * 1000);
    }
}
