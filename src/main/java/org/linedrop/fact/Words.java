package org.linedrop.fact;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Words of a message. */
public final class Words {
    /** Words longer than this are not compared: nobody mistypes a paragraph. */
    private static final int LONGEST = 60;

    private Words() {}

    /**
     * A text as one line that a terminal or a page takes: line ends and control characters become spaces, format
     * characters (those that turn the direction of writing among them) and broken surrogates are left out. A name from a
     * file must not move the cursor or hide what stands beside it.
     *
     * @param text any text
     * @return the text without them
     */
    public static String printable(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints()
                .filter(c -> Character.getType(c) != Character.FORMAT && Character.getType(c) != Character.SURROGATE)
                .map(c -> Character.isISOControl(c)
                                || Character.getType(c) == Character.LINE_SEPARATOR
                                || Character.getType(c) == Character.PARAGRAPH_SEPARATOR
                        ? ' '
                        : c)
                .forEach(clean::appendCodePoint);
        return clean.toString();
    }

    /**
     * The known word a mistyped one most likely stands for: fewest single-letter edits (insert, drop, replace, swap
     * of neighbours), upper and lower case taken as equal, at most a third of the word's length and one at least. Of
     * equals the first in the collection's order is taken.
     *
     * @param word  the word as typed
     * @param known the words to choose from, in an order that does not change from run to run
     * @return the nearest known word, empty when none is near
     */
    public static Optional<String> nearest(String word, Collection<String> known) {
        if (word.isEmpty() || word.length() > LONGEST) {
            return Optional.empty();
        }
        String typed = word.toLowerCase(Locale.ROOT);
        int best = Math.max(1, word.length() / 3) + 1;
        Optional<String> found = Optional.empty();
        for (String candidate : known) {
            if (candidate.length() > LONGEST || Math.abs(candidate.length() - typed.length()) >= best) {
                continue;
            }
            int edits = edits(typed, candidate.toLowerCase(Locale.ROOT));
            // All letters replaced is no likeness: "kg" is not a slip of "m".
            if (edits < best && edits < Math.max(typed.length(), candidate.length())) {
                best = edits;
                found = Optional.of(candidate);
            }
        }
        return found;
    }

    /**
     * How far two words are apart: single-letter edits (insert, drop, replace, swap of neighbours; optimal string
     * alignment), upper and lower case counted as different.
     *
     * @param a one word
     * @param b the other
     * @return the least count of edits, 0 for equal words
     */
    public static int edits(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int least = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    least = Math.min(least, d[i - 2][j - 2] + 1);
                }
                d[i][j] = least;
            }
        }
        return d[a.length()][b.length()];
    }
}
