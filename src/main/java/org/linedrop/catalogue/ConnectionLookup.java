package org.linedrop.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/** Finds connections, their threads and their bores by seat and size. */
final class ConnectionLookup {
    private static final Pattern NPT = Pattern.compile("(?:npt\\s+([\\d/ -]+?)|([\\d/ -]+?)\\s*npt)(?:\\s*in)?");
    private static final Pattern BSPP =
            Pattern.compile("(?:(?:g|bspp)\\s*([\\d/ -]+?)|([\\d/ -]+?)\\s*bspp)(?:\\s*in)?");
    private static final Pattern METRIC = Pattern.compile("m(\\d{1,2})\\s*x\\s*(\\d(?:\\.\\d+)?)");
    private static final Pattern BARE_METRIC = Pattern.compile("m\\d{1,2}");

    private ConnectionLookup() {}

    /** Reads one side of an adapter's name. */
    static Connection parse(Catalogue catalogue, String text) {
        String asked = text.strip();
        String lower = asked.toLowerCase(Locale.ROOT);
        String dash = SizeText.dash(asked);
        if (dash != null) {
            return of(catalogue, Seat.FLARE_37, Gender.EITHER, dash, dash);
        }
        if (lower.startsWith("orb")) {
            String size = asked.substring(3).strip();
            return of(catalogue, Seat.O_RING_BOSS, Gender.MALE, dashOf(size, asked), asked);
        }
        if (lower.startsWith("45-degree ")) {
            return of(catalogue, Seat.FLARE_45, Gender.EITHER, dashOf(asked.substring(10), asked), asked);
        }
        if (lower.startsWith("banjo ")) {
            return banjo(catalogue, asked.substring(6));
        }
        if (lower.startsWith("quick-connect ")) {
            return of(catalogue, Seat.QUICK_CONNECT, Gender.EITHER, inchOf(asked.substring(14), asked), asked);
        }
        if (lower.startsWith("barb ")) {
            String size = asked.substring(5);
            String barb = SizeText.dash(size);
            return of(catalogue, Seat.BARB, Gender.MALE, barb != null ? barb : inchOf(size, asked), asked);
        }
        Matcher metric = METRIC.matcher(lower);
        if (metric.matches()) {
            String size = "M" + metric.group(1) + "x" + metric.group(2);
            return of(catalogue, Seat.METRIC, Gender.MALE, size, size);
        }
        if (BARE_METRIC.matcher(lower).matches()) {
            throw new CatalogueException(
                    "connection \"" + asked + "\" has no pitch", "Write it as in " + asked + "x1.5");
        }
        Matcher npt = NPT.matcher(lower);
        if (npt.matches()) {
            return of(catalogue, Seat.TAPER_PIPE, Gender.MALE, inchOf(group(npt), asked), asked);
        }
        Matcher bspp = BSPP.matcher(lower);
        if (bspp.matches()) {
            return of(catalogue, Seat.PARALLEL_PIPE, Gender.MALE, inchOf(group(bspp), asked), asked);
        }
        throw new CatalogueException(
                "connection \"" + asked + "\" is not known",
                "Write -6, ORB -6, 1/4 NPT, G 1/4, M22x1.5, quick-connect 3/8 in or barb 3/8 in");
    }

    /** A banjo bolt; the pitch of a metric one makes no difference to its hole. */
    static Connection banjo(Catalogue catalogue, String bolt) {
        String size = bolt.strip().replaceFirst("(?i)^m(\\d+)\\s*x.*", "M$1").replaceFirst("^m", "M");
        return of(catalogue, Seat.BANJO, Gender.MALE, size, "banjo " + size);
    }

    private static String group(Matcher matcher) {
        String first = matcher.group(1);
        return first == null ? String.valueOf(matcher.group(2)) : first;
    }

    private static String dashOf(String size, String asked) {
        String dash = SizeText.dash(size);
        if (dash == null) {
            throw new CatalogueException("connection \"" + asked + "\" has no dash size", "Write it as in ORB -8");
        }
        return dash;
    }

    private static String inchOf(String size, String asked) {
        String inch = SizeText.inch(size.strip() + (size.contains("in") || size.contains("/") ? "" : " in"));
        if (inch == null) {
            throw new CatalogueException("connection \"" + asked + "\" has no inch size", "Write it as in 1/4 NPT");
        }
        return inch.replace(" in", "");
    }

    /** A connection with its thread, if that is known. */
    static Connection of(Catalogue catalogue, Seat seat, Gender gender, String size, String text) {
        return new Connection(seat, gender, size, thread(catalogue.rows().threads(), seat, size), text, false);
    }

    private static @Nullable ThreadSize thread(List<ThreadSize> threads, Seat seat, String size) {
        for (ThreadSize thread : threads) {
            if (thread.seat() == seat && thread.size().equals(size)) {
                return thread;
            }
        }
        return null;
    }

    /** The bore through a connection. */
    static Figure bore(Catalogue catalogue, Connection connection) {
        Figure bore = boreOrNull(catalogue, connection.seat().word(), connection.size());
        if (bore != null) {
            return bore;
        }
        List<String> known = catalogue.rows().throughBores().stream()
                .filter(b -> b.seat().equals(connection.seat().word()))
                .map(ThroughBore::size)
                .toList();
        String sizes = known.isEmpty() ? "" : "Known sizes: " + String.join(", ", known);
        throw new CatalogueException(
                "no through bore is known for " + connection.seat().word() + " " + connection.size(), sizes);
    }

    static @Nullable Figure boreOrNull(Catalogue catalogue, String seat, String size) {
        for (ThroughBore row : catalogue.rows().throughBores()) {
            if (row.seat().equals(seat) && row.size().equals(size)) {
                return row.boreM();
            }
        }
        return null;
    }
}
