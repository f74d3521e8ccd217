package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.CatalogueException;
import org.linedrop.catalogue.HoseFamily;
import org.linedrop.catalogue.SizeText;
import org.linedrop.catalogue.UserFamily;
import org.linedrop.circuit.form.Forms;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Problem;
import org.linedrop.fact.Source;

/** Reads the user's own hoses: columns, like a sheet. What is missing comes from the family named in {@code like}. */
final class CatalogueReader {
    static final String FILES = "files";
    private static final String SECTION = "catalogue";
    static final String HOSES = "hoses";
    private static final String EXAMPLE =
            "Write hoses: and below it my hose: {like: race PTFE, sizes: -6 -8, bore: 7.9 10.2 mm measured}";

    private final String file;
    private final List<Problem> found = new ArrayList<>();
    private final List<String> broken = new ArrayList<>();

    CatalogueReader(String file) {
        this.file = file;
    }

    /** The library's rows with those of the section and of the files it names. */
    Catalogue read(Tree.Branch circuit, List<CatalogueFile> files) {
        Catalogue catalogue = Catalogue.standard();
        Tree said = circuit.get(SECTION);
        if (said == null) {
            return catalogue;
        }
        Problems problems = new Problems(file);
        if (!(said instanceof Tree.Branch section)) {
            problem(problems, said, "", "catalogue takes hoses and files", EXAMPLE);
            found.addAll(problems.list());
            return catalogue;
        }
        unknown(section, List.of(HOSES, FILES), problems);
        for (CatalogueFile each : files(section, files, problems)) {
            Problems its = new Problems(each.name());
            Tree.Branch words = each.words().get(SECTION) instanceof Tree.Branch inner ? inner : each.words();
            unknown(words, List.of(HOSES, FileKeys.FORM.name()), its);
            catalogue = hoses(words, catalogue, each.name(), its);
            found.addAll(its.list());
        }
        catalogue = hoses(section, catalogue, file.isEmpty() ? Forms.TITLE : file, problems);
        found.addAll(problems.list());
        return catalogue;
    }

    List<Problem> problems() {
        return found;
    }

    /** Whether a problem of the circuit is only there because a family could not be read. */
    boolean causes(Problem problem) {
        String value = problem.value().toLowerCase(Locale.ROOT);
        return problem.key().equals(RunKeys.HOSE.name()) && broken.stream().anyMatch(value::startsWith);
    }

    private static void unknown(Tree.Branch words, List<String> known, Problems problems) {
        for (Tree.Entry entry : words.entries()) {
            if (!known.contains(entry.key())) {
                problems.add(
                        problems.place(entry.line(), entry.column(), SECTION),
                        entry.key(),
                        "",
                        "a catalogue has no key \"" + entry.key() + "\"",
                        "It takes: " + String.join(", ", known));
            }
        }
    }

    private static void problem(Problems problems, Tree at, String value, String message, String hint) {
        problems.add(problems.place(at.line(), at.column(), SECTION), FILES, value, message, hint);
    }

    /** The files named, of those that were found. */
    private static List<CatalogueFile> files(Tree.Branch section, List<CatalogueFile> given, Problems problems) {
        List<CatalogueFile> taken = new ArrayList<>();
        Tree said = section.get(FILES);
        if (said != null && !(said instanceof Tree.Items)) {
            problem(problems, said, "", "files takes a list", "Write files: [club-hoses.yaml]");
        }
        if (!(said instanceof Tree.Items items)) {
            return taken;
        }
        for (Tree item : items.items()) {
            String name = item instanceof Tree.Text text ? text.text() : "";
            if (!CatalogueFile.beside(name)) {
                problem(
                        problems,
                        item,
                        name,
                        "catalogue file \"" + name + "\" is no plain file name",
                        "Only a file beside this one is read: write its name alone, as in club-hoses.yaml");
                continue;
            }
            CatalogueFile file = given.stream()
                    .filter(each -> each.name().equals(name))
                    .findFirst()
                    .orElse(null);
            if (file == null) {
                problem(
                        problems,
                        item,
                        name,
                        "there is no catalogue file \"" + name + "\" beside this file",
                        "Put it in the same folder, or write its hoses here");
            } else if (taken.contains(file)) {
                problem(problems, item, name, "catalogue file \"" + name + "\" is named twice", "Name it once");
            } else {
                taken.add(file);
            }
        }
        return taken;
    }

    private Catalogue hoses(Tree.Branch words, Catalogue base, String title, Problems problems) {
        Tree said = words.get(HOSES);
        if (said == null) {
            return base;
        }
        if (!(said instanceof Tree.Branch families)) {
            problems.add(
                    problems.place(said.line(), said.column(), SECTION), HOSES, "", "hoses takes families", EXAMPLE);
            return base;
        }
        Catalogue catalogue = base;
        for (Tree.Entry entry : families.entries()) {
            Catalogue with = family(entry, catalogue, title, problems);
            if (with == null) {
                broken.add(entry.key().toLowerCase(Locale.ROOT));
            } else {
                catalogue = with;
            }
        }
        return catalogue;
    }

    /** The catalogue with one family; null where something is wrong with it. */
    private static @Nullable Catalogue family(Tree.Entry entry, Catalogue base, String title, Problems problems) {
        String name = entry.key();
        var place = problems.place(entry.line(), entry.column(), name);
        if (!CircuitReader.NAME_LETTERS.matcher(name).matches()) {
            problems.add(
                    place, "", name, "\"" + name + "\" cannot be a name", "Names are letters, digits, space, - and /");
            return null;
        }
        if (!(entry.value() instanceof Tree.Branch branch)) {
            problems.add(place, "", "", "a hose family has keys like, sizes and bore", EXAMPLE);
            return null;
        }
        Fields fields = new Fields(branch, name, UserHoseKeys.HOSE_FAMILY, List.of(), new Scope(base, false), problems);
        String like = fields.get(UserHoseKeys.LIKE);
        String sizesText = fields.get(UserHoseKeys.SIZES);
        if (like == null || sizesText == null) {
            return null;
        }
        HoseFamily model;
        try {
            model = base.family(like);
        } catch (CatalogueException wrong) {
            fields.problem(UserHoseKeys.LIKE, wrong.message(), wrong.hint());
            return null;
        }
        List<String> sizes = sizes(fields, sizesText, model);
        List<UserFamily.Row> rows = sizes.isEmpty() ? List.of() : rows(fields, sizes, title);
        if (rows.isEmpty()
                || UserHoseKeys.HOSE_FAMILY.keys().stream()
                        .anyMatch(key -> fields.has(key) && fields.get(key) == null)) {
            return null;
        }
        try {
            return base.with(new UserFamily(name, model.name(), rows));
        } catch (CatalogueException wrong) {
            problems.add(place, "", name, wrong.message(), wrong.hint());
            return null;
        }
    }

    /** {@code -6 -8 -10} or {@code 5/16 3/8 in}; empty where something is wrong. */
    private static List<String> sizes(Fields fields, String text, HoseFamily model) {
        List<String> sizes = new ArrayList<>();
        String bare = text.strip().replaceFirst("\\s*in$", "");
        for (String word : (model.sizedByDash() ? text.strip() : bare).split("\\s+", -1)) {
            String size = model.sizedByDash() ? SizeText.dash(word) : SizeText.inch(word + " in");
            if (size == null) {
                fields.problem(
                        UserHoseKeys.SIZES,
                        "size \"" + word + "\" cannot be read: " + model.name() + " is sized by "
                                + (model.sizedByDash() ? "dash" : "inch"),
                        model.sizedByDash() ? "Write sizes: -6 -8 -10" : "Write sizes: 5/16 3/8 in");
                return List.of();
            }
            if (sizes.contains(size)) {
                fields.problem(UserHoseKeys.SIZES, "size " + size + " is given twice", "Give each size one column");
                return List.of();
            }
            sizes.add(size);
        }
        return sizes;
    }

    /** A row for each size; empty where a column has another number of figures. */
    private static List<UserFamily.Row> rows(Fields fields, List<String> sizes, String title) {
        boolean whole = true;
        for (Key<List<Figure>> column : UserHoseKeys.HOSE_COLUMNS) {
            List<Figure> figures = fields.get(column);
            if (figures != null && figures.size() != sizes.size()) {
                fields.problem(
                        column,
                        column.name() + ": " + figures.size()
                                + (figures.size() == 1 ? " figure stands" : " figures stand") + " against "
                                + sizes.size() + (sizes.size() == 1 ? " size" : " sizes"),
                        "Give one figure for each size, or leave the line out");
                whole = false;
            }
        }
        List<UserFamily.Row> rows = new ArrayList<>();
        for (int i = 0; whole && i < sizes.size(); i++) {
            Cells cells = new Cells(fields, i, title);
            rows.add(new UserFamily.Row(
                    sizes.get(i),
                    cells.get(UserHoseKeys.USER_BORE),
                    cells.get(UserHoseKeys.USER_END_BORE),
                    cells.get(UserHoseKeys.USER_ROUGHNESS),
                    cells.get(UserHoseKeys.USER_OUTSIDE),
                    cells.get(UserHoseKeys.USER_BEND_RADIUS),
                    cells.get(UserHoseKeys.USER_WORKING),
                    cells.get(UserHoseKeys.USER_PROOF),
                    cells.get(UserHoseKeys.USER_BURST),
                    cells.get(UserHoseKeys.USER_VACUUM),
                    cells.get(UserHoseKeys.USER_COLDEST),
                    cells.get(UserHoseKeys.USER_HOTTEST),
                    null));
        }
        return rows;
    }

    /** The figures of one size, each with the line it stands in. */
    private record Cells(Fields fields, int column, String title) {
        @Nullable Figure get(Key<List<Figure>> key) {
            List<Figure> figures = fields.get(key);
            if (figures == null) {
                return null;
            }
            Figure figure = figures.get(column);
            int line = fields.place(key).line();
            String where = UserRows.LOCATOR + (line == 0 ? "" : ", line " + line);
            return new Figure(figure.low(), figure.value(), figure.high(), new Source(title, where, figure.status()));
        }
    }
}
