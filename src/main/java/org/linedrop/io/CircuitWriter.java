package org.linedrop.io;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.CircuitWords;
import org.linedrop.circuit.form.Tree;

/**
 * Writes circuit files. What is written reads back to an equal circuit, bit for bit, in metric units and with keys in
 * the order of the key table; comments of the file a circuit was read from are not kept, sections used with a
 * prefix are written out, and the hoses of catalogue files beside it are written into it.
 */
public final class CircuitWriter {
    private static final String HEAD = "# Written by Linedrop: metric units; comments are not kept.\n";
    private static final int WIDTH = 118;
    /** What may stand without quotation marks, in braces and outside, whatever YAML makes of other signs. */
    private static final Pattern PLAIN = Pattern.compile(
            "(?:[\\p{L}\\p{N}]|-(?=[\\p{L}\\p{N}]))(?:[\\p{L}\\p{N}_./()%+=\\- ]*[\\p{L}\\p{N}_./()%+])?");

    private final StringBuilder text = new StringBuilder();

    private CircuitWriter() {}

    /**
     * Writes a circuit as YAML.
     *
     * @param circuit a built circuit; in a case, its whole file is written
     * @return text of a circuit file, ending with a line end
     */
    public static String write(Circuit circuit) {
        CircuitWriter writer = new CircuitWriter();
        writer.text.append(HEAD);
        for (Tree.Entry entry : CircuitWords.of(circuit).entries()) {
            if (!(entry.value() instanceof Tree.Text)) {
                writer.text.append('\n');
            }
            writer.entry(
                    entry,
                    0,
                    entry.value() instanceof Tree.Branch && !entry.key().equals("engine"));
        }
        return writer.text.toString();
    }

    /**
     * Writes a circuit as JSON: the same tree, every value a text.
     *
     * @param circuit a built circuit; in a case, its whole file is written
     * @return text of a circuit file, ending with a line end
     */
    public static String writeJson(Circuit circuit) {
        CircuitWriter writer = new CircuitWriter();
        writer.json(CircuitWords.of(circuit), 0);
        return writer.text.append('\n').toString();
    }

    private void entry(Tree.Entry entry, int indent, boolean open) {
        String start = " ".repeat(indent) + quoted(entry.key()) + ":";
        Tree value = entry.value();
        String inline = start + " " + inBraces(value);
        boolean list = value instanceof Tree.Items items
                && items.items().stream().anyMatch(item -> !(item instanceof Tree.Text));
        boolean holdsList = value instanceof Tree.Branch branch
                && branch.entries().stream().anyMatch(e -> e.value() instanceof Tree.Items);
        if (value instanceof Tree.Text || (!open && !list && !holdsList && inline.length() <= WIDTH) || empty(value)) {
            text.append(inline).append('\n');
        } else if (value instanceof Tree.Branch branch) {
            text.append(start).append('\n');
            branch.entries().forEach(each -> entry(each, indent + 2, false));
        } else {
            text.append(start).append('\n');
            for (Tree item : ((Tree.Items) value).items()) {
                item(item, indent + 2);
            }
        }
    }

    /** One line of a list; a part that is too long for a line goes on below its first key. */
    private void item(Tree item, int indent) {
        String inline = " ".repeat(indent) + "- " + inBraces(item);
        if (inline.length() <= WIDTH || !(item instanceof Tree.Branch branch) || empty(item)) {
            text.append(inline).append('\n');
            return;
        }
        int start = text.length();
        branch.entries().forEach(each -> entry(each, indent + 2, false));
        text.setCharAt(start + indent, '-');
    }

    private static boolean empty(Tree value) {
        return value instanceof Tree.Branch branch
                ? branch.entries().isEmpty()
                : value instanceof Tree.Items items && items.items().isEmpty();
    }

    private static String inBraces(Tree value) {
        if (value instanceof Tree.Text plain) {
            return quoted(plain.text());
        }
        if (value instanceof Tree.Items items) {
            List<String> all =
                    items.items().stream().map(CircuitWriter::inBraces).toList();
            return "[" + String.join(", ", all) + "]";
        }
        List<String> all = ((Tree.Branch) value)
                .entries().stream()
                        .map(entry -> quoted(entry.key()) + ": " + inBraces(entry.value()))
                        .toList();
        return "{" + String.join(", ", all) + "}";
    }

    private static String quoted(String plain) {
        return PLAIN.matcher(plain).matches() ? plain : string(plain);
    }

    private static String string(String plain) {
        StringBuilder made = new StringBuilder("\"");
        plain.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                made.append('\\').append((char) c);
            } else if (c == '\n' || c == '\t') {
                made.append(c == '\n' ? "\\n" : "\\t");
            } else if (TextDecoder.keeps(c)) {
                made.appendCodePoint(c);
            } else {
                for (char half : Character.toChars(c)) {
                    made.append(String.format(Locale.ROOT, "\\u%04x", (int) half));
                }
            }
        });
        return made.append('"').toString();
    }

    private void json(Tree value, int indent) {
        if (value instanceof Tree.Text plain) {
            text.append(string(plain.text()));
            return;
        }
        boolean branch = value instanceof Tree.Branch;
        String inner = " ".repeat(indent + 2);
        text.append(branch ? '{' : '[');
        String before = "\n";
        if (value instanceof Tree.Branch entries) {
            for (Tree.Entry entry : entries.entries()) {
                text.append(before).append(inner).append(string(entry.key())).append(": ");
                json(entry.value(), indent + 2);
                before = ",\n";
            }
        } else {
            for (Tree item : ((Tree.Items) value).items()) {
                text.append(before).append(inner);
                json(item, indent + 2);
                before = ",\n";
            }
        }
        text.append(empty(value) ? "" : "\n" + " ".repeat(indent)).append(branch ? '}' : ']');
    }
}
