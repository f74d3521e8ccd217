package org.linedrop.fluid;

import java.util.Locale;

/** Forms of a fluid's name. */
final class Names {
    private Names() {}

    /** Lower case, everything but letters and digits turned into single hyphens; per cent signs are dropped. */
    static String id(String name) {
        StringBuilder id = new StringBuilder();
        for (char c : name.toLowerCase(Locale.ROOT).toCharArray()) {
            if (Character.isLetterOrDigit(c) || (c == '.' && id.length() > 0)) {
                id.append(c);
            } else if (id.length() > 0 && id.charAt(id.length() - 1) != '-') {
                id.append('-');
            }
        }
        int end = id.length();
        while (end > 0 && id.charAt(end - 1) == '-') {
            end--;
        }
        return id.substring(0, end);
    }

    /** What is compared when a name is looked up: letters, digits and decimal points, in lower case. */
    static String key(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        StringBuilder key = new StringBuilder();
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            boolean point = c == '.'
                    && i > 0
                    && i + 1 < lower.length()
                    && Character.isDigit(lower.charAt(i - 1))
                    && Character.isDigit(lower.charAt(i + 1));
            if (Character.isLetterOrDigit(c) || point) {
                key.append(c);
            }
        }
        return key.toString();
    }

    /** Levenshtein distance with neighbouring letters swapped counted as one. */
    static int distance(String a, String b) {
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
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
