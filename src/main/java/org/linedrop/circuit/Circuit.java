package org.linedrop.circuit;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Place;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;

/**
 * A vehicle's plumbing in one of its cases, as immutable data. Everything looked up in the catalogue has been copied in.
 *
 * @param title        what it is
 * @param caseName     name of this case
 * @param service      what kind of circuit, picks the usual limits; null when not said
 * @param surroundings fluid, temperature, motion
 * @param engine       what the engine asks, or null
 * @param points       where lines meet
 * @param devices      pumps, filters ...
 * @param runs         the lines
 * @param limits       what must hold
 * @param assumptions  what was taken because nothing was said
 * @param words        the words all of it was read from
 */
public record Circuit(
        String title,
        String caseName,
        @Nullable Service service,
        Surroundings surroundings,
        @Nullable Engine engine,
        List<Point> points,
        List<Device> devices,
        List<Run> runs,
        List<Limit> limits,
        List<Notice> assumptions,
        Said words)
        implements Serializable {

    /** Name of the case as written, where the file gives it none. */
    public static final String UNNAMED_CASE = "as written";

    /** No circuit has a hundredth of them. */
    private static final int MOST_CASES = 10_000;

    /** Values of a file times its cases: some hundred times a large circuit with a case for everything. */
    private static final int MOST_TEXTS_IN_CASES = 2_000_000;

    private static final String CASES = "cases";

    /**
     * What a circuit was read from.
     *
     * @param file name of the file, empty when made by code
     * @param base the file as written
     * @param here the file as it reads in this case
     * @param catalogue the library's rows and those of the file
     */
    public record Said(String file, Tree.Branch base, Tree.Branch here, Catalogue catalogue) implements Serializable {}

    /** Copies the lists. */
    public Circuit {
        points = List.copyOf(points);
        devices = List.copyOf(devices);
        runs = List.copyOf(runs);
        limits = List.copyOf(limits);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Builds a circuit from the words of a circuit file, in the case as written.
     *
     * @param words the words; sections used under a prefix are written out
     * @param file  name of the file for messages, empty when made by code
     * @return the circuit
     * @throws ProblemsException with everything that is wrong, in every case
     */
    public static Circuit of(Tree.Branch words, String file) {
        return of(words, file, List.of());
    }

    /**
     * Builds a circuit from the words of a circuit file and of the catalogue files it names, in the case as written.
     *
     * @param words      the words
     * @param file       name of the file for messages, empty when made by code
     * @param catalogues the files that {@code catalogue: files:} names
     * @return the circuit
     * @throws ProblemsException with everything that is wrong, in every case; also where two neighbouring parts of the
     *                           file as written do not go together
     */
    public static Circuit of(Tree.Branch words, String file, List<CatalogueFile> catalogues) {
        Set<Problem> problems = new LinkedHashSet<>();
        Problems first = new Problems(file);
        Tree.Branch written = new SectionMerge(first).writtenOut(words);
        CatalogueReader own = new CatalogueReader(file);
        Catalogue catalogue = own.read(written, catalogues);
        Tree.Branch said = CatalogueFile.writtenInto(written, catalogues);
        Circuit circuit = read(new Said(file, said, said, catalogue), Joints.REFUSED, first);
        Set<Problem> asWritten = new LinkedHashSet<>(first.list());
        if (said.get(CASES) instanceof Tree.Branch cases && fewEnough(said, cases, first)) {
            for (Tree.Entry entry : cases.entries()) {
                Problems more = new Problems(file);
                CaseReader.check(entry, CaseMerge.thisCase(said), more);
                Tree.Branch here = new CaseMerge(more).in(said, entry.key(), cases);
                problems.addAll(more.list());
                if (here != null && more.isEmpty()) {
                    Problems inCase = new Problems(file);
                    read(new Said(file, said, here, catalogue), Joints.LEFT, inCase);
                    ofCase(entry.key(), inCase.list(), asWritten).forEach(problems::add);
                }
            }
        }
        problems.addAll(first.list());
        problems.removeIf(own::causes);
        problems.addAll(own.problems());
        if (circuit == null || !problems.isEmpty()) {
            List<Problem> sorted = new ArrayList<>(problems);
            sorted.sort(java.util.Comparator.comparing(Problem::place));
            throw new ProblemsException(sorted);
        }
        return circuit;
    }

    /** Every case is a circuit of its own to read: a file can ask for more of them than anybody waits for. */
    private static boolean fewEnough(Tree.Branch said, Tree.Branch cases, Problems problems) {
        long each = 0;
        for (Tree.Entry entry : said.entries()) {
            each += entry.key().equals(CASES) ? 0 : texts(entry.value());
        }
        int count = cases.entries().size();
        boolean few = count <= MOST_CASES && each * count <= MOST_TEXTS_IN_CASES;
        if (!few) {
            problems.add(
                    problems.place(cases.line(), cases.column(), CASES),
                    "",
                    "",
                    count + " cases of " + each + " values: at most " + MOST_CASES + " cases are read, and together "
                            + MOST_TEXTS_IN_CASES + " values",
                    "Split the file, or vary a key instead of writing cases");
        }
        return few;
    }

    private static long texts(Tree tree) {
        long texts = 0;
        if (tree instanceof Tree.Branch branch) {
            for (Tree.Entry entry : branch.entries()) {
                texts += texts(entry.value());
            }
        } else if (tree instanceof Tree.Items list) {
            for (Tree item : list.items()) {
                texts += texts(item);
            }
        } else {
            texts = 1;
        }
        return texts;
    }

    private static @Nullable Circuit read(Said said, Joints joints, Problems problems) {
        return new CircuitReader(said.here(), said.catalogue(), problems).read(said, joints);
    }

    /**
     * The rows its sizes were looked up in.
     *
     * @return the library's rows and those of the file
     */
    public Catalogue catalogue() {
        return words.catalogue();
    }

    /** What is wrong in a case only, with the name of the case; what is wrong as written has been said. */
    private static List<Problem> ofCase(String name, List<Problem> here, Set<Problem> asWritten) {
        List<Problem> own = new ArrayList<>();
        for (Problem problem : here) {
            if (asWritten.contains(problem)) {
                continue;
            }
            Place at = problem.place();
            String path = at.path().isEmpty() ? "case " + name : "case " + name + ", " + at.path();
            own.add(new Problem(
                    new Place(at.file(), at.line(), at.column(), path),
                    problem.key(),
                    problem.value(),
                    problem.message(),
                    problem.hint()));
        }
        return own;
    }

    /**
     * Names of the cases, the file as written first.
     *
     * @return at least one name
     */
    public List<String> caseNames() {
        List<String> names = new ArrayList<>();
        names.add(CaseMerge.thisCase(words.base()));
        if (words.base().get(CASES) instanceof Tree.Branch cases) {
            cases.entries().forEach(entry -> names.add(entry.key()));
        }
        return names;
    }

    /**
     * The circuit in one of its cases. A case asks what would be: where the parts it puts side by side do not go
     * together, that is an assumption and no error.
     *
     * @param name one of {@link #caseNames()}
     * @return the circuit in that case
     * @throws IllegalArgumentException when there is no such case
     */
    public Circuit in(String name) {
        Tree.Branch base = words.base();
        if (name.equals(CaseMerge.thisCase(base))) {
            return built(base, base, Joints.NOTED);
        }
        if (!(base.get(CASES) instanceof Tree.Branch cases) || cases.get(name) == null) {
            throw new IllegalArgumentException("no case \"" + name + "\"; cases are " + String.join(", ", caseNames()));
        }
        Problems problems = new Problems(words.file());
        Tree.Branch here = new CaseMerge(problems).in(base, name, cases);
        if (here == null || !problems.isEmpty()) {
            throw new ProblemsException(problems.list());
        }
        return built(base, here, Joints.NOTED);
    }

    private Circuit built(Tree.Branch base, Tree.Branch here, Joints joints) {
        Problems problems = new Problems(words.file());
        Circuit circuit = read(new Said(words.file(), base, here, words.catalogue()), joints, problems);
        if (circuit == null) {
            throw new ProblemsException(problems.list());
        }
        return circuit;
    }

    /**
     * The circuit with something changed, in the same case. Sizes may be changed freely: whether neighbours still go
     * together is not looked at.
     *
     * @param changes the changes, applied in order
     * @return a new circuit
     * @throws ProblemsException when the changed circuit has problems
     */
    public Circuit with(List<Change> changes) {
        Problems problems = new Problems(words.file());
        CaseMerge merge = new CaseMerge(problems);
        Tree.Branch base = words.base();
        Tree.Branch here = words.here();
        for (Change change : changes) {
            base = merge.apply(base, change.entry(), "change");
            here = merge.apply(here, change.entry(), "change");
        }
        if (!problems.isEmpty()) {
            throw new ProblemsException(problems.list());
        }
        return built(base, here, Joints.LEFT);
    }

    /**
     * Finds a point.
     *
     * @param id its name
     * @return the point, if there is one
     */
    public Optional<Point> point(String id) {
        return points.stream().filter(p -> p.id().equals(id)).findFirst();
    }

    /**
     * Finds a device.
     *
     * @param id its name
     * @return the device, if there is one
     */
    public Optional<Device> device(String id) {
        return devices.stream().filter(d -> d.id().equals(id)).findFirst();
    }
}
