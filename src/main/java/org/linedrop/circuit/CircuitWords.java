package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Inner;

/**
 * The words of a circuit as Linedrop writes them: metric units, one spelling, keys in the order of the key table. The
 * words read back to an equal circuit, bit for bit.
 */
@Inner
public final class CircuitWords {
    private static final Tree.Branch EMPTY = new Tree.Branch(List.of(), 0, 0);

    private final Tree.Branch file;

    private CircuitWords(Tree.Branch file) {
        this.file = file;
    }

    /**
     * Writes the words of a circuit and of its cases. A circuit that was changed while in a case, so that its file
     * does not lead to it any more, becomes a file of its own without cases.
     *
     * @param circuit a built circuit, in any of its cases
     * @return a tree that {@link Circuit#of} reads to an equal circuit: in the same case for a circuit in a case
     */
    public static Tree.Branch of(Circuit circuit) {
        Tree.Branch base = circuit.words().base();
        Tree.Branch here = circuit.words().here();
        Tree.Branch whole = here.equals(base) || leadsTo(circuit, base, here) ? base : here.without("cases");
        return new CircuitWords(whole).whole();
    }

    private static boolean leadsTo(Circuit circuit, Tree.Branch base, Tree.Branch here) {
        return base.get("cases") instanceof Tree.Branch cases
                && cases.get(circuit.caseName()) != null
                && here.equals(new CaseMerge(new Problems("")).in(base, circuit.caseName(), cases));
    }

    private Tree.Branch whole() {
        Tree.Branch made = EMPTY;
        for (Key<?> key : Keys.TOP) {
            made = copied(made, file, key);
        }
        for (String section : Keys.SECTIONS) {
            Tree said = file.get(section);
            if (said != null) {
                made = made.with(section, said instanceof Tree.Branch branch ? section(section, branch) : said);
            }
        }
        return rest(made, file);
    }

    private Tree section(String name, Tree.Branch said) {
        return switch (name) {
            case "engine" -> element(said, FileKeys.ENGINE_KIND);
            case FluidReader.SECTION -> each(said, entry -> element(entry, FluidKeys.FLUID));
            case "points" -> each(said, entry -> element(entry, kind(entry, Keys.POINTS)));
            case "devices" -> each(said, entry -> element(entry, kind(entry, Keys.DEVICES)));
            case "runs" -> each(said, entry -> element(entry, RunKeys.RUN));
            case "limits" -> limits(said);
            case "cases" -> each(said, this::oneCase);
            default -> said;
        };
    }

    /** Makes something of an element. */
    private interface Element {
        Tree made(Tree.Branch said);
    }

    private static Tree.Branch each(Tree.Branch section, Element element) {
        // one list, not entry by entry onto a copy: a section may have thousands
        List<Tree.Entry> made = new ArrayList<>();
        for (Tree.Entry entry : section.entries()) {
            Tree value = entry.value() instanceof Tree.Branch said ? element.made(said) : entry.value();
            made.add(new Tree.Entry(entry.key(), value.line(), value.column(), value));
        }
        return new Tree.Branch(made, 0, 0);
    }

    private static @Nullable Kind kind(Tree.Branch said, List<Kind> kinds) {
        return said.get("kind") instanceof Tree.Text word
                ? kinds.stream()
                        .filter(kind -> kind.word().equals(word.text()))
                        .findFirst()
                        .orElse(null)
                : null;
    }

    private Tree.Branch element(Tree.Branch said, @Nullable Kind kind) {
        Tree.Branch made = EMPTY;
        Tree word = said.get("kind");
        if (word != null) {
            made = made.with("kind", word);
        }
        if (kind != null) {
            for (Key<?> key : kind.keys()) {
                made = copied(made, said, key);
            }
        }
        return rest(made, said);
    }

    /** What no key of the table named is kept as it is. */
    private static Tree.Branch rest(Tree.Branch made, Tree.Branch said) {
        Tree.Branch all = made;
        for (Tree.Entry entry : said.entries()) {
            if (all.get(entry.key()) == null) {
                all = all.with(entry.key(), entry.value());
            }
        }
        return all;
    }

    private Tree.Branch copied(Tree.Branch made, Tree.Branch said, Key<?> key) {
        Tree value = said.get(key.name());
        if (value == null) {
            return made;
        }
        if (value instanceof Tree.Items items) {
            List<Tree> all = new ArrayList<>();
            for (Tree item : items.items()) {
                all.add(item instanceof Tree.Branch branch ? item(branch, key) : item);
            }
            return made.with(key.name(), new Tree.Items(all, 0, 0));
        }
        return made.with(key.name(), value instanceof Tree.Text text ? Tree.text(written(key, text.text())) : value);
    }

    private Tree item(Tree.Branch item, Key<?> list) {
        if (list == DeviceKeys.CURVES_MARK) {
            return element(item, DeviceKeys.CURVE);
        }
        return element(item, list == RunKeys.VIA_MARK ? PointKeys.WAY_POINT : partKind(item));
    }

    private static @Nullable Kind partKind(Tree.Branch part) {
        return Keys.PARTS.stream()
                .filter(kind -> part.get(kind.word()) != null)
                .findFirst()
                .orElse(null);
    }

    private static String written(Key<?> key, String text) {
        if (Keys.LISTS.contains(key.name())) {
            return text;
        }
        try {
            return key.form().canonical(text);
        } catch (Key.FormException wrong) {
            return text; // only where a case replaces it by something that can be read
        }
    }

    private Tree.Branch limits(Tree.Branch said) {
        Tree.Branch made = EMPTY;
        for (Tree.Entry subject : said.entries()) {
            Tree.Branch bounds = EMPTY;
            if (subject.value() instanceof Tree.Branch all) {
                String kind = kindWord(subject.key());
                for (Tree.Entry bound : all.entries()) {
                    Tree value = bound.value() instanceof Tree.Text text
                            ? Tree.text(LimitReader.canonical(kind, bound.key(), text.text()))
                            : bound.value();
                    bounds = bounds.with(bound.key(), value);
                }
            }
            made = made.with(subject.key(), bounds);
        }
        return made;
    }

    private String kindWord(String id) {
        for (String section : List.of("points", "devices")) {
            if (file.get(section) instanceof Tree.Branch elements
                    && elements.get(id) instanceof Tree.Branch element
                    && element.get("kind") instanceof Tree.Text word) {
                return word.text();
            }
        }
        return "";
    }

    private Tree.Branch oneCase(Tree.Branch said) {
        Tree.Branch made = EMPTY;
        for (Tree.Entry entry : said.entries()) {
            made = made.with(entry.key(), change(entry));
        }
        return made;
    }

    /** One entry of a case: a key of the file, a section, or an element with some of its keys. */
    private Tree change(Tree.Entry entry) {
        if (entry.value() instanceof Tree.Text text) {
            return Keys.TOP.stream()
                    .filter(key -> key.name().equals(entry.key()))
                    .findFirst()
                    .<Tree>map(key -> Tree.text(written(key, text.text())))
                    .orElse(text);
        }
        if (!(entry.value() instanceof Tree.Branch patch)) {
            return entry.value();
        }
        if (entry.key().equals("engine") || entry.key().equals("limits")) {
            return section(entry.key(), patch);
        }
        return patched(patch, subjectKind(entry.key(), patch));
    }

    /** A patch keeps its own order: where a key was not given before it is added at the end. */
    private Tree.Branch patched(Tree.Branch patch, @Nullable Kind kind) {
        Tree.Branch made = EMPTY;
        for (Tree.Entry entry : patch.entries()) {
            made = made.with(entry.key(), entry.value());
            if (kind != null) {
                for (Key<?> key : kind.keys()) {
                    if (key.name().equals(entry.key())) {
                        made = copied(made, patch, key);
                    }
                }
            }
        }
        return made;
    }

    private @Nullable Kind subjectKind(String id, Tree.Branch patch) {
        if (file.get("points") instanceof Tree.Branch points && points.get(id) instanceof Tree.Branch point) {
            return kind(CaseMerge.merge(point, patch), Keys.POINTS);
        }
        if (file.get("devices") instanceof Tree.Branch devices && devices.get(id) instanceof Tree.Branch device) {
            return kind(CaseMerge.merge(device, patch), Keys.DEVICES);
        }
        if (file.get(FluidReader.SECTION) instanceof Tree.Branch fluids && fluids.get(id) != null) {
            return FluidKeys.FLUID;
        }
        if (!(file.get("runs") instanceof Tree.Branch runs)) {
            return null;
        }
        if (runs.get(id) != null) {
            return RunKeys.RUN;
        }
        for (Tree.Entry run : runs.entries()) {
            if (run.value() instanceof Tree.Branch branch && branch.get("parts") instanceof Tree.Items parts) {
                for (int i = 0; i < parts.items().size(); i++) {
                    if (parts.items().get(i) instanceof Tree.Branch part
                            && CaseMerge.isCalled(part, run.key(), i, id)) {
                        return partKind(CaseMerge.merge(part, patch));
                    }
                }
            }
        }
        return null;
    }
}
