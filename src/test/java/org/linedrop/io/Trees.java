package org.linedrop.io;

import java.util.List;
import org.linedrop.circuit.form.Tree;

/** The tree of words of a text, for tests of other packages. */
public final class Trees {
    private Trees() {}

    /** The tree of a YAML text, which must be readable. */
    public static Tree.Branch of(String yaml) {
        return TreeReader.read("test.yaml", yaml, List.of()).tree().orElseThrow();
    }
}
