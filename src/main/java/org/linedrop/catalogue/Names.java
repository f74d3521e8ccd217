package org.linedrop.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Nearest names for messages. */
final class Names {
    /** More than this many wrong letters is another word. */
    private static final int MOST_WRONG = 4;

    /** Part of a name shorter than this says nothing. */
    private static final int LEAST_PART = 3;

    private Names() {}

    /** "Did you mean A?" with the nearest name, or "It must be one of A, B, C". */
    static String hint(String asked, List<String> known) {
        List<String> holding = new ArrayList<>();
        for (String name : known) {
            if (asked.strip().length() >= LEAST_PART
                    && name.toLowerCase(Locale.ROOT).contains(asked.strip().toLowerCase(Locale.ROOT))) {
                holding.add(name);
            }
        }
        if (!holding.isEmpty()) {
            return "Did you mean " + String.join(" or ", holding) + "?";
        }
        String nearest = "";
        int least = MOST_WRONG + 1;
        for (String name : known) {
            int wrong = distance(asked.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
            if (wrong < least && wrong < name.length()) {
                least = wrong;
                nearest = name;
            }
        }
        String all = String.join(", ", known);
        return nearest.isEmpty() ? "It must be one of: " + all : "Did you mean " + nearest + "? (known: " + all + ")";
    }

    /** Letters to insert, delete or replace (Levenshtein 1966). */
    static int distance(String a, String b) {
        List<Integer> previous = new ArrayList<>();
        for (int j = 0; j <= b.length(); j++) {
            previous.add(j);
        }
        for (int i = 1; i <= a.length(); i++) {
            List<Integer> current = new ArrayList<>();
            current.add(i);
            for (int j = 1; j <= b.length(); j++) {
                int replaced = previous.get(j - 1) + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                current.add(Math.min(replaced, Math.min(previous.get(j), current.get(j - 1)) + 1));
            }
            previous = current;
        }
        return previous.get(b.length());
    }
}
