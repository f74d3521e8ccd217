package org.linedrop.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Finds a hose by family and size, or says why there is none. */
final class HoseLookup {
    /** A standard's number that the trade uses for two bores. */
    private static final String TWO_BORES = "100R14";

    private static final List<String> ITS_FAMILIES = List.of("100R14 tube-size", "100R14 true-size");

    private static final Pattern BARE_NUMBER = Pattern.compile("#?\\d{1,2}");
    private static final Pattern DIGITS = Pattern.compile("\\d{1,2}");

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
        if (SizeText.dash(asked) != null
                || SizeText.inch(asked) != null
                || BARE_NUMBER.matcher(asked).matches()) {
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
        if (!text.regionMatches(true, 0, name, 0, name.length())) {
            return false;
        }
        return text.length() == name.length() || " -#".indexOf(text.charAt(name.length())) >= 0;
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
        String normal = family.sizedByDash() ? SizeText.dash(size) : SizeText.inch(size);
        if (normal != null) {
            return normal;
        }
        Matcher digits = DIGITS.matcher(size);
        String meant = digits.find() ? "-" + digits.group() : "";
        String write = family.sizedByDash() && sizes.contains(meant)
                ? "Write " + family.name() + " " + meant
                : "Write it as in " + family.name() + " " + example;
        throw new CatalogueException(
                family.name() + " \"" + size.strip() + "\": it is sized by " + (family.sizedByDash() ? "dash" : "inch"),
                write);
    }

    private static CatalogueException twoBores(Catalogue catalogue, String size) {
        String known = SizeText.dash(size);
        String dash = known == null ? "-6" : known;
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

    private static CatalogueException noFamily(Catalogue catalogue, String asked) {
        String inch = SizeText.inch(asked);
        if (inch != null) {
            List<String> names =
                    ofSize(catalogue, inch).stream().map(HoseSize::name).toList();
            return new CatalogueException(
                    "hose \"" + asked + "\": which hose?",
                    names.isEmpty() ? "Write the family before the size" : "Write " + String.join(" or ", names));
        }
        String known = SizeText.dash(asked);
        String dash = known != null ? known : "-" + asked.replace("#", "");
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (HoseSize hose : ofSize(catalogue, dash)) {
            low = Math.min(low, hose.boreM().low());
            high = Math.max(high, hose.boreM().value());
        }
        // from the smallest sold to the largest usual bore: the upper ends of true-size hose are a guessed 3 %
        String range = high > 0
                ? " The bore of " + dash + " is " + millimetres(low) + " to " + millimetres(high) + " mm by family"
                : "";
        return new CatalogueException(
                "hose \"" + asked + "\": which hose?" + range,
                "For example race PTFE " + dash + "; see: linedrop catalogue hoses --dash " + dash.substring(1));
    }

    private static String millimetres(double metres) {
        return String.format(Locale.ROOT, "%.1f", metres * 1000);
    }

    /** All families' hose of one dash or inch size, family by family. */
    static List<HoseSize> ofSize(Catalogue catalogue, String size) {
        String dash = SizeText.dash(size);
        String normal = dash != null ? dash : SizeText.inch(size);
        return catalogue.hoses().stream()
                .filter(h -> h.sizeText().equals(normal))
                .toList();
    }
}
