package org.linedrop.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.linedrop.fact.Words;

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
            int wrong = Words.edits(asked.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
            if (wrong < least && wrong < name.length()) {
                least = wrong;
                nearest = name;
            }
        }
        String all = String.join(", ", known);
        return nearest.isEmpty() ? "It must be one of: " + all : "Did you mean " + nearest + "? (known: " + all + ")";
    }
}
