package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.linedrop.fact.Place;
import org.linedrop.fact.Problem;

/** Collects what is wrong while a circuit is read, so that all of it is said at once. */
final class Problems {
    private final String file;
    private final List<Problem> found = new ArrayList<>();

    Problems(String file) {
        this.file = file;
    }

    Place place(int line, int column, String path) {
        return new Place(file, line, column, path);
    }

    void add(Place place, String key, String value, String message, String hint) {
        found.add(new Problem(place, key, value, message, hint));
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** In the order of the file; problems of one line keep the order in which they were found. */
    List<Problem> list() {
        List<Problem> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparing(Problem::place));
        return sorted;
    }
}
