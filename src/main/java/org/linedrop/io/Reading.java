package org.linedrop.io;

import java.util.List;
import java.util.Optional;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Problem;

/**
 * What came of reading a file.
 *
 * @param tree     the file's entries; empty when it could not be read at all
 * @param problems what is wrong, in file order. With a tree these are slips that were recognised; the tree holds what
 *                 was most likely meant, so that nothing is complained of twice. Without a tree it is one problem, or
 *                 one per line for characters that do not belong in a text file.
 */
record Reading(Optional<Tree.Branch> tree, List<Problem> problems) {
    /**
     * Copies the list.
     *
     * @param tree     the file's entries, empty when it could not be read
     * @param problems what is wrong, in file order
     */
    Reading {
        problems = List.copyOf(problems);
    }
}
