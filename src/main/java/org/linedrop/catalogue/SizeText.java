package org.linedrop.catalogue;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** How sizes are written: {@code -8}, {@code -8AN}, {@code AN8}, {@code 5/16 in}, {@code 1-1/4 in}, {@code 3/8"}. */
public final class SizeText {
    private static final Pattern DASH =
            Pattern.compile("(?:an\\s*-?\\s*(\\d{1,2})|-\\s*(\\d{1,2})\\s*(?:an)?|(\\d{1,2})\\s*an)");
    private static final Pattern INCH =
            Pattern.compile("(?:(\\d{1,2})[- ])?(\\d{1,2})/(\\d{1,2})\\s*(?:in|\")?|(\\d{1,2})\\s*(?:in|\")");
    private static final double INCH_M = 0.0254;

    private SizeText() {}

    /**
     * A dash size in the form that is written back.
     *
     * @param text for example {@code -8}, {@code -8AN} or {@code AN8}
     * @return {@code -8}, or null when it is no dash size
     */
    public static @Nullable String dash(String text) {
        Matcher m = DASH.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!m.matches()) {
            return null;
        }
        for (int i = 1; i <= m.groupCount(); i++) {
            String digits = m.group(i);
            if (digits != null) {
                return "-" + Integer.parseInt(digits);
            }
        }
        return null;
    }

    /**
     * An inch size in the form that is written back.
     *
     * @param text for example {@code 5/16 in}, {@code 5/16}, {@code 1-1/4"} or {@code 1 in}
     * @return {@code 5/16 in}, or null when it is no inch size
     */
    public static @Nullable String inch(String text) {
        Matcher m = INCH.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!m.matches()) {
            return null;
        }
        if (m.group(4) != null) {
            return Integer.parseInt(m.group(4)) + " in";
        }
        String whole = m.group(1) == null ? "" : Integer.parseInt(m.group(1)) + "-";
        return whole + Integer.parseInt(m.group(2)) + "/" + Integer.parseInt(m.group(3)) + " in";
    }

    /**
     * The dash number of a size as it is written back.
     *
     * @param size {@code -8} or {@code 5/16 in}
     * @return 8; of an inch size its sixteenths, rounded
     */
    public static int dashNumber(String size) {
        return size.startsWith("-") ? Integer.parseInt(size.substring(1)) : (int) Math.round(inchM(size) / INCH_M * 16);
    }

    /**
     * The length an inch size names.
     *
     * @param size {@code 5/16 in}, {@code 1-1/4 in} or {@code 1 in}; the unit may be missing
     * @return m
     */
    static double inchM(String size) {
        double inches = 0;
        String bare = size.replace(" in", "");
        for (String piece : bare.split("-", -1)) {
            int slash = piece.indexOf('/');
            inches += slash < 0
                    ? Double.parseDouble(piece)
                    : Double.parseDouble(piece.substring(0, slash)) / Double.parseDouble(piece.substring(slash + 1));
        }
        return inches * INCH_M;
    }
}
