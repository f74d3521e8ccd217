package org.linedrop.circuit;

import org.linedrop.circuit.form.Tree;

/** Checks the form of a case before it is applied. */
final class CaseReader {
    private CaseReader() {}

    static void check(Tree.Entry entry, String thisCase, Problems problems) {
        var place = problems.place(entry.line(), entry.column(), "case " + entry.key());
        if (!(entry.value() instanceof Tree.Branch)) {
            problems.add(
                    place,
                    "",
                    "",
                    "a case takes changes",
                    "Write for example " + entry.key() + ": {temperature: 60 C}");
        }
        if (entry.key().equals(thisCase)) {
            problems.add(
                    place,
                    "",
                    entry.key(),
                    "\"" + entry.key() + "\" is the name of the file as written",
                    "Give one of the two another name");
        }
    }
}
