package org.linedrop.fact;

import java.io.Serializable;

/**
 * Where something was said.
 *
 * @param file   name of the file, empty when built by code
 * @param line   line from 1; 0 when built by code
 * @param column column from 1; 0 when unknown
 * @param path   the element as a reader would name it, for example {@code feed 4}
 */
public record Place(String file, int line, int column, String path) implements Serializable, Comparable<Place> {

    /**
     * A place in code.
     *
     * @param path the element's name
     * @return a place with line 0
     */
    public static Place code(String path) {
        return new Place("", 0, 0, path);
    }

    @Override
    public int compareTo(Place other) {
        int byFile = file.compareTo(other.file);
        if (byFile != 0) {
            return byFile;
        }
        return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
    }
}
