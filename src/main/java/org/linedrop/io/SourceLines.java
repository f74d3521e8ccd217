package org.linedrop.io;

import java.util.Arrays;
import java.util.List;
import org.linedrop.fact.Place;
import org.linedrop.fact.Problem;

/** The lines of a file, for messages that quote them. Lines and columns count from 1. */
final class SourceLines {
    private static final int LONGEST_SHOWN = 60;

    private final String file;
    private final List<String> lines;

    SourceLines(String file, String text) {
        this.file = file;
        this.lines = Arrays.asList(text.split("\n", -1));
    }

    /** The line, empty behind the end of the file. */
    String line(int number) {
        return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
    }

    /** The line from a column (counted in code points) to its end. */
    String from(int number, int column) {
        String line = line(number);
        int units = line.codePointCount(0, line.length());
        return column > units ? "" : line.substring(line.offsetByCodePoints(0, column - 1));
    }

    /** The line up to a column (counted in code points), without it. */
    String upTo(int number, int column) {
        String line = line(number);
        return line.substring(0, line.length() - from(number, column).length());
    }

    /** Spaces at the start of a line. */
    int indent(int number) {
        String line = line(number);
        int spaces = 0;
        while (spaces < line.length() && line.charAt(spaces) == ' ') {
            spaces++;
        }
        return spaces;
    }

    /** The nearest line above that holds more than a remark, 0 when there is none. */
    int above(int number) {
        int line = number - 1;
        while (line > 0 && (line(line).isBlank() || line(line).strip().startsWith("#"))) {
            line--;
        }
        return line;
    }

    /** A text as a message shows it. */
    static String shown(String text) {
        String line = text.replaceAll("\\s+", " ").strip();
        return line.length() <= LONGEST_SHOWN ? line : line.substring(0, LONGEST_SHOWN) + " ...";
    }

    Problem problem(int line, int column, String message, String hint) {
        return problem(line, column, "", "", "", message, hint);
    }

    Problem problem(int line, int column, String path, String key, String value, String message, String hint) {
        return new Problem(new Place(file, line, column, path), key, value, message, hint);
    }
}
