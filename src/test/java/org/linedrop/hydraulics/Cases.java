package org.linedrop.hydraulics;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Arguments of a case, {@code key=value;key=value}, and how a deviation is counted. */
final class Cases {
    private final Map<String, String> values = new LinkedHashMap<>();

    Cases(String text) {
        for (String pair : text.split(";", -1)) {
            int at = pair.indexOf('=');
            values.put(pair.substring(0, at), pair.substring(at + 1));
        }
    }

    String text(String key) {
        String value = values.get(key);
        if (value == null) {
            throw new IllegalArgumentException("no argument " + key + " among " + values.keySet());
        }
        return value;
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    double get(String key) {
        return Double.parseDouble(text(key));
    }

    double get(String key, double otherwise) {
        return has(key) ? get(key) : otherwise;
    }

    double[] list(String key) {
        String[] parts = text(key).split(" ", -1);
        double[] numbers = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            numbers[i] = Double.parseDouble(parts[i]);
        }
        return numbers;
    }

    /** A row of the claims table. */
    static String[] claim(
            String claim, int count, String source, String kind, String tolerance, double worst, String at) {
        String deviation = worst < 1e-4
                ? String.format(Locale.ROOT, "%.1e", worst)
                : String.format(Locale.ROOT, "%.2f %%", 100 * worst);
        return new String[] {claim, Integer.toString(count), source, kind, tolerance, deviation, at};
    }

    /** Bias and root mean square of relative errors. */
    record Scatter(int count, double bias, double rms, double worst, String at) {}

    /** Collects relative errors. */
    static final class Errors {
        private int count;
        private double sum;
        private double squares;
        private double worst;
        private String at = "";

        void add(double relative, String where) {
            count++;
            sum += relative;
            squares += relative * relative;
            if (!(Math.abs(relative) <= worst)) {
                worst = Math.abs(relative);
                at = where;
            }
        }

        Scatter scatter() {
            return new Scatter(count, sum / count, Math.sqrt(squares / count), worst, at);
        }
    }
}
