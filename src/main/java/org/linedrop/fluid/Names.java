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
}
