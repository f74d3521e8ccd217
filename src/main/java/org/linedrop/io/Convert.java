package org.linedrop.io;

import java.util.List;
import org.linedrop.circuit.form.Tree.Branch;
import org.linedrop.circuit.form.Tree.Entry;
import org.linedrop.circuit.form.Tree.Items;
import org.linedrop.circuit.form.Tree.Text;

/** temporary */
final class Convert {
    private Convert() {}

    static Branch branch(Tree.Mapping mapping) {
        List<Entry> entries = mapping.entries().stream()
                .map(entry -> new Entry(entry.key(), entry.line(), entry.column(), tree(entry.value())))
                .toList();
        return new Branch(entries, mapping.line(), mapping.column());
    }

    private static org.linedrop.circuit.form.Tree tree(Tree tree) {
        if (tree instanceof Tree.Mapping mapping) {
            return branch(mapping);
        }
        if (tree instanceof Tree.Sequence sequence) {
            return new Items(sequence.items().stream().map(Convert::tree).toList(), sequence.line(), sequence.column());
        }
        Tree.Text text = (Tree.Text) tree;
        return new Text(text.text(), text.line(), text.column());
    }
}
