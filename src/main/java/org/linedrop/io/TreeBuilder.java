package org.linedrop.io;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Problem;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;

/** Events to a tree, with the slips that leave a readable file. Used for one file and thrown away. */
final class TreeBuilder {
    private final SourceLines lines;
    private final Set<String> silent;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Open> stack = new ArrayList<>();
    private final List<Cut> cuts = new ArrayList<>();
    private Optional<Problem> fatal = Optional.empty();
    private @Nullable Tree root;
    private @Nullable Event last;
    private int documents;

    TreeBuilder(SourceLines lines, Collection<String> silent) {
        this.lines = lines;
        this.silent = new LinkedHashSet<>(silent);
    }

    /** A mapping or sequence whose end was not read yet. */
    private static final class Open {
        final boolean mapping;
        final boolean braces;
        final int line;
        final int column;
        final List<String> path;
        final List<Tree.Entry> entries = new ArrayList<>();
        final List<Tree> items = new ArrayList<>();
        /** Key to the line it was first given on; only looked up, never walked. */
        final Map<String, Integer> given = new LinkedHashMap<>();

        Tree.@Nullable Text key;

        boolean keyPlain;

        Open(boolean mapping, boolean braces, int line, int column, List<String> path) {
            this.mapping = mapping;
            this.braces = braces;
            this.line = line;
            this.column = column;
            this.path = path;
        }
    }

    /**
     * A place where a remark swallowed something.
     *
     * @param depth  brackets open around it
     * @param value  the value in front of the remark
     * @param size   the dash size in the remark, empty when there is none
     */
    record Cut(int line, int column, int depth, String value, String size) {}

    /** What makes the file unreadable, empty as long as nothing does. */
    Optional<Problem> fatal() {
        return fatal;
    }

    /** The event taken last, null before the first. */
    @Nullable Event last() {
        return last;
    }

    /** Remarks that swallowed something inside brackets that are still open. */
    List<Cut> cuts() {
        return cuts.stream().filter(cut -> cut.depth <= stack.size()).toList();
    }

    /** Whether the place reached lies in braces or square brackets. */
    boolean inBraces() {
        return !stack.isEmpty() && stack.get(stack.size() - 1).braces;
    }

    Reading reading() {
        if (root instanceof Tree.Branch mapping) {
            List<Problem> sorted = new ArrayList<>(problems);
            sorted.sort(Comparator.comparing(Problem::place));
            return new Reading(Optional.of(mapping), sorted);
        }
        Problem problem;
        if (root instanceof Tree.Items list) {
            problem = lines.problem(
                    list.line(),
                    list.column(),
                    "the file begins with a list",
                    "Its keys stand at the start of a line, each with a colon and without \"- \" before it");
        } else if (root instanceof Tree.Text text && !text.text().isEmpty()) {
            problem = lines.problem(
                    text.line(),
                    text.column(),
                    "\"" + SourceLines.shown(text.text()) + "\" is not a key with a value",
                    "Write key: value, with a colon and a space");
        } else {
            problem = lines.problem(1, 1, "the file is empty", "Write at least one key: value");
        }
        return new Reading(Optional.empty(), List.of(problem));
    }

    void take(Event event) {
        int line = event.getStartMark().map(Mark::getLine).orElse(0) + 1;
        int column = event.getStartMark().map(Mark::getColumn).orElse(0) + 1;
        if (event instanceof NodeEvent node) {
            refuseSigns(node, line, column);
        }
        if (fatal.isEmpty()) {
            switch (event.getEventId()) {
                case DocumentStart -> document((DocumentStartEvent) event, line);
                case MappingStart, SequenceStart -> open((CollectionStartEvent) event, line, column);
                case MappingEnd, SequenceEnd -> close();
                case Scalar -> scalar((ScalarEvent) event, line, column);
                default -> {
                    // Starts and ends of stream and document, remarks: nothing to keep.
                }
            }
        }
        last = event;
    }

    private void document(DocumentStartEvent event, int line) {
        documents++;
        if (documents > 1) {
            fatal = Optional.of(lines.problem(
                    line,
                    1,
                    "line " + line + " begins a second document" + (event.isExplicit() ? " with ---" : ""),
                    "A file holds one: delete the line, or use two files"));
        }
    }

    /** Aliases, anchors and tags: in a circuit file always a slip. */
    private void refuseSigns(NodeEvent event, int line, int column) {
        boolean tagged = (event instanceof ScalarEvent scalar && scalar.getTag().isPresent())
                || (event instanceof CollectionStartEvent start
                        && start.getTag().isPresent());
        if (event instanceof AliasEvent || tagged || event.getAnchor().isPresent()) {
            String value = Slips.value(lines.from(line, column), inBraces());
            char sign = value.isEmpty() ? '!' : value.charAt(0);
            fatal = Optional.of(lines.problem(
                    line,
                    column,
                    name(),
                    key(),
                    value,
                    Slips.signMessage(sign),
                    value.isEmpty() ? "Put the value in quotes" : Slips.signHint(value)));
        }
    }

    private void open(CollectionStartEvent event, int line, int column) {
        if (stack.size() >= TreeReader.DEEPEST) {
            fatal = Optional.of(lines.problem(
                    line,
                    column,
                    "brackets or lists stand more than " + TreeReader.DEEPEST + " deep in each other",
                    "A circuit needs about six: look for a bracket that is not closed"));
            return;
        }
        if (refusedAsKey(line, column)) {
            return;
        }
        stack.add(new Open(event instanceof MappingStartEvent, event.isFlow(), line, column, path()));
    }

    private boolean refusedAsKey(int line, int column) {
        if (stack.isEmpty()) {
            return false;
        }
        Open top = stack.get(stack.size() - 1);
        if (top.mapping && top.key == null) {
            fatal = Optional.of(lines.problem(
                    line, column, "a list or braces stand where a key should be", "A key is a word and a colon"));
            return true;
        }
        return false;
    }

    private void close() {
        Open top = stack.remove(stack.size() - 1);
        if (top.mapping) {
            add(new Tree.Branch(top.entries, top.line, top.column));
            return;
        }
        boolean listInList = !stack.isEmpty() && !stack.get(stack.size() - 1).mapping;
        add(listInList ? listInList(top) : new Tree.Items(top.items, top.line, top.column));
    }

    /** {@code - - 8} was to be {@code - -8}; no list of a file holds lists. */
    private Tree listInList(Open list) {
        String first = !list.items.isEmpty() && list.items.get(0) instanceof Tree.Text text ? text.text() : "";
        boolean size = list.items.size() == 1 && first.matches("\\d.*");
        problems.add(lines.problem(
                list.line,
                list.column,
                name(),
                "",
                "- " + first,
                list.braces ? "a list stands in a list" : "\"- " + SourceLines.shown(first) + "\" reads as a list",
                size ? "Write -" + SourceLines.shown(first) + " without a space" : "One \"- \" begins one item"));
        return size && !list.braces
                ? new Tree.Text("-" + first, list.line, list.column)
                : new Tree.Items(list.items, list.line, list.column);
    }

    private void scalar(ScalarEvent event, int line, int column) {
        ScalarStyle style = event.getScalarStyle();
        if (style == ScalarStyle.LITERAL || style == ScalarStyle.FOLDED) {
            String value = Slips.value(lines.from(line, column), false);
            fatal = Optional.of(lines.problem(
                    line, column, "\"" + SourceLines.shown(value) + "\" cannot be read here", Slips.limitHint(value)));
            return;
        }
        boolean plain = style == ScalarStyle.PLAIN;
        String text = event.getValue();
        int endLine = event.getEndMark().map(Mark::getLine).orElse(0) + 1;
        int endColumn = event.getEndMark().map(Mark::getColumn).orElse(0) + 1;
        if (plain) {
            text = remark(text, endLine, endColumn);
        } else if (endLine > line) {
            fatal = Optional.of(lines.problem(line, column, SyntaxTrouble.openQuote(lines.from(line, column)), ""));
            return;
        }
        if (plain && endLine > line) {
            continued(line, endLine);
        }
        Open top = stack.isEmpty() ? null : stack.get(stack.size() - 1);
        Tree.Text scalar = new Tree.Text(text, line, column);
        if (top != null && top.mapping && top.key == null) {
            key(top, scalar);
            top.keyPlain = plain;
        } else {
            add(plain ? unglued(scalar, top) : scalar);
        }
    }

    /** A value that goes on in the next line although that line looks like a list or a key of its own. */
    private void continued(int line, int endLine) {
        for (int next = line + 1; next <= endLine; next++) {
            String text = lines.line(next).strip();
            Optional<String[]> glued = Slips.glued(text);
            if (glued.isPresent()) {
                problems.add(lines.problem(
                        next, 1 + lines.indent(next), name(), "", text, Slips.gluedMessage(glued.get()), ""));
            } else if (text.startsWith("- ")) {
                problems.add(lines.problem(
                        next,
                        1 + lines.indent(next),
                        name(),
                        key(),
                        text,
                        "\"" + SourceLines.shown(text) + "\" is read as the rest of line " + (next - 1),
                        "A list stands under a key that has nothing behind its colon"));
            }
        }
    }

    /** Looks for a dash size that became a remark; gives the value that was meant. */
    private String remark(String value, int line, int column) {
        String behind = lines.from(line, column);
        Optional<String> size = Slips.sizeAsRemark(value, behind);
        boolean swallowsBracket = inBraces() && behind.matches(" +#.*[}\\]].*");
        if (swallowsBracket || (size.isPresent() && inBraces())) {
            // The bracket is gone with the remark: if the file cannot be read, this is why.
            cuts.add(new Cut(line, column, stack.size(), value, size.orElse("")));
        }
        boolean isValue =
                stack.isEmpty() || !stack.get(stack.size() - 1).mapping || stack.get(stack.size() - 1).key != null;
        if (size.isEmpty() || !isValue || inBraces()) {
            return value;
        }
        problems.add(lines.problem(line, column, name(), key(), value, sizeMessage(value), Slips.sizeHint(size.get())));
        return (value + " -" + size.get()).strip();
    }

    static String sizeMessage(String value) {
        return value.isEmpty() ? "nothing stands behind the colon" : "\"" + SourceLines.shown(value) + "\" has no size";
    }

    private void key(Open top, Tree.Text scalar) {
        if (scalar.text().isEmpty()) {
            fatal = Optional.of(lines.problem(
                    scalar.line(), scalar.column(), "nothing stands before the colon", "A key is a word and a colon"));
            return;
        }
        top.key = scalar;
    }

    /** {@code length:0.6 m} alone under a key, or as an item: it was to be a key with its value. */
    private Tree unglued(Tree.Text scalar, @Nullable Open top) {
        boolean own = top == null || !top.mapping || (top.key != null && top.key.line() < scalar.line());
        Optional<String[]> glued = own ? Slips.glued(scalar.text()) : Optional.empty();
        if (glued.isEmpty() || top == null) {
            glued.ifPresent(parts ->
                    fatal = Optional.of(lines.problem(scalar.line(), scalar.column(), Slips.gluedMessage(parts), "")));
            return scalar;
        }
        return new Tree.Branch(
                List.of(gluedEntry(glued.get(), scalar.line(), scalar.column())), scalar.line(), scalar.column());
    }

    private Tree.Entry gluedEntry(String[] parts, int line, int column) {
        problems.add(lines.problem(line, column, name(), parts[0], parts[1], Slips.gluedMessage(parts), ""));
        return new Tree.Entry(parts[0], line, column, new Tree.Text(parts[1], line, column));
    }

    private void add(Tree tree) {
        if (stack.isEmpty()) {
            root = tree;
            return;
        }
        Open top = stack.get(stack.size() - 1);
        if (!top.mapping) {
            top.items.add(tree);
            return;
        }
        Tree.Text key = top.key;
        if (key == null) {
            return;
        }
        top.key = null;
        boolean nothing = tree instanceof Tree.Text text && text.text().isEmpty();
        Optional<String[]> glued = nothing && top.keyPlain ? Slips.glued(key.text()) : Optional.empty();
        Tree.Entry entry = glued.isPresent()
                ? gluedEntry(glued.get(), key.line(), key.column())
                : new Tree.Entry(key.text(), key.line(), key.column(), tree);
        Integer before = top.given.putIfAbsent(entry.key(), entry.line());
        if (before == null) {
            top.entries.add(entry);
        } else {
            twice(entry, before);
        }
    }

    private void twice(Tree.Entry entry, int before) {
        String where = name();
        String both = before == entry.line() ? "both in line " + before : "lines " + before + " and " + entry.line();
        problems.add(lines.problem(
                entry.line(),
                entry.column(),
                "",
                entry.key(),
                "",
                "\"" + SourceLines.shown(entry.key()) + "\" is given twice" + (where.isEmpty() ? "" : " in " + where)
                        + " (" + both + ")",
                "Delete one"));
    }

    private String key() {
        Tree.Text key = stack.isEmpty() ? null : stack.get(stack.size() - 1).key;
        return key == null ? "" : key.text();
    }

    /** The path of what is opened next. */
    private List<String> path() {
        if (stack.isEmpty()) {
            return List.of();
        }
        Open top = stack.get(stack.size() - 1);
        List<String> path = new ArrayList<>(top.path);
        if (!top.mapping) {
            path.add(String.valueOf(top.items.size() + 1));
        } else if (top.key != null && !silent.contains(top.key.text())) {
            path.add(top.key.text());
        }
        return path;
    }

    /** The element reached, as a reader would name it: without the section it stands in. */
    private String name() {
        List<String> path = stack.isEmpty() ? List.of() : stack.get(stack.size() - 1).path;
        if (!stack.isEmpty() && !stack.get(stack.size() - 1).mapping) {
            path = path();
        }
        boolean section = path.size() > 1 && !path.get(1).matches("\\d+");
        return String.join(" ", section ? path.subList(1, path.size()) : path);
    }
}
