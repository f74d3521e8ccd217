package org.linedrop.validation;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The table of what is validated against what: gathers the claims of the validation tests and writes
 * {@code validation/README.md} and {@code validation/results.csv}. Run after a change that moves a number:
 *
 * <pre>mvn -q test-compile exec:java -Dexec.classpathScope=test -Dmain.class=org.linedrop.validation.Claims</pre>
 */
public final class Claims {
    /**
     * Validation tests that make claims, in the order of the table. Each has a static method {@code claims()} with a row
     * {claim, count, source, kind, tolerance and why, worst deviation, its case} per claim, and may have a static method
     * {@code results()} with a row {claim, case, quantity, expected, unit, deviation, tolerance} per compared figure.
     */
    private static final List<String> TESTS = List.of(
            "org.linedrop.hydraulics.ColebrookValidationTest",
            "org.linedrop.hydraulics.TextbookValidationTest",
            "org.linedrop.hydraulics.SmoothTubesValidationTest",
            "org.linedrop.hydraulics.MeasuredSmallBoreValidationTest",
            "org.linedrop.hydraulics.PublishedLossesValidationTest",
            "org.linedrop.fluid.FluidValidationTest",
            "org.linedrop.catalogue.CatalogueValidationTest",
            "org.linedrop.solver.NetworkValidationTest",
            "org.linedrop.solver.LineValidationTest",
            "org.linedrop.study.LineStudiesValidationTest",
            "org.linedrop.solver.RandomCircuitsPropertyTest",
            "org.linedrop.result.BuildsValidationTest");

    /** Deviations under this are rounding, which may differ between machines. */
    private static final double ROUNDING = 1e-12;

    private Claims() {}

    /** Writes both files under the working directory. */
    public static void main(String[] arguments) throws IOException {
        Files.writeString(Path.of("validation", "README.md"), readme(), StandardCharsets.UTF_8);
        Files.writeString(Path.of("validation", "results.csv"), results(), StandardCharsets.UTF_8);
    }

    /** A deviation as the tables print it. */
    public static String deviation(double value) {
        return value < ROUNDING ? "under 1e-12" : String.format(Locale.ROOT, "%.1e", value);
    }

    static String readme() {
        StringBuilder text = new StringBuilder("""
                # Validation

                **Is it right?** The equations are solved right: the solver meets 30-digit values, closed forms and published
                networks to rounding or to their printed digits. Whether the equations are right for a hose is another
                question, and its answer is less good: pipe friction is 2 to 4 per cent (rms) from measurements in smooth
                tubes, 13 where flow turns turbulent; losses of bends, nipples, valves and fittings differ between
                publications by a fifth to a half, and reports carry that band; bores of hose that nobody measured decide
                most. Nothing here was measured on a vehicle by this project.

                **Against what?** Publications, their tables and examples, open data sets, independent programs for fluid
                properties, closed forms: a row each below. The cases are language-neutral tables in SI in the folders
                beside this page, each with source, status and tolerance; the tests read them from here.

                **To what error?** The column of the worst deviation, with its case. Where the tolerance is each row's own,
                the deviation is the share of that tolerance that was used up. A published value that is missed is a
                failing test or a documented error of its source, never a wider tolerance.

                Kinds: *published* was read in a publication, *from memory* is a publication nobody looked up again,
                *derived* is a closed form or a case built backwards from its answer, *computed* comes from an independent
                program. Deviations are relative; those under 1e-12 are rounding. Every single comparison is in
                `results.csv`. This page and that table are written by the tests' main `org.linedrop.validation.Claims`.

                | claim | cases | source | kind | tolerance and why | worst deviation | its case |
                |---|---|---|---|---|---|---|
                """);
        for (String test : TESTS) {
            for (String[] row : rows(test, "claims")) {
                text.append("| ");
                text.append(Arrays.stream(row)
                        .map(cell -> cell.replace("\n", " ").replace("|", "\\|"))
                        .collect(Collectors.joining(" | ")));
                text.append(" |\n");
            }
        }
        text.append("""

                **What else was tried.** These runs are not in the usual build; the command stands beside each.

                | run | command | what came of it |
                |---|---|---|
                | 100,000 random networks of pipes and pumps, loops, bores 0.5 to 100 mm | `mvn -Pquick,random test` | all converged, 49 on the second attempt, in at most 100 steps |
                | 100,000 random networks with check valves, relief valves and regulators | the same | all converged to states that mean what they say, 350 on the second attempt, in at most 309 steps |
                | 100,000 random networks of everything at once: 0.3 to 1e5 cSt, bores 0.5 to 100 mm, 1 kPa to 1 GPa, Re under 1e-3 to over 1e8, 78,974 of the solved ones with loops, 14,601 with bridges, 79,016 with branches that carry nothing, tees in every pattern, pumps, check, relief and reducing valves in every state they have, closed taps, fixed flows | the same | 84,433 converged to states that mean what they say; 15,442 named a reason, which a second way (a walk along the branches, or the largest flow into the region named) found true for 15,401 and could not tell for 41; 125 given up, 73 of them with tees: an open fault. Without bounds on what is forced through a line (1e17 Pa, Re 1e13) 217 are given up |
                | 1,000 random networks against the reference solver | the same | all within 1e-7 of the largest flow and of the pressure scale |
                | files made to break the reader, examples with bytes, words and numbers changed | `mvn -Pquick,fuzz test` | of the 500,000 files of seed 12 the first 461,817 and the large hostile ones hold; the next was the last fault found, and those behind it were not run since. Found and mended so far: a run from a point to itself, a rated drop of 0, messages of two lines, a slow writer, a pump curve at 0 rpm, a transition from Re 0, bands under nothing, too many cases, a title with a letter nobody has assigned, an end within an escape; files that failed are kept under `src/test/resources/org/linedrop/io/fuzz` |
                | a line of code changed, one at a time, in `units`, `hydraulics`, `network`, `solver` (186, 1,134, 1,273 and 1,605 changes) | `mvn -Pquick,mutation process-test-classes`; what is left stands in `target/pit-reports` | a test noticed at least 96, 88, 87 and 79 % of them; the run stops under 85 in the first three; `solver` is under it, which is open |
                | the same in `study` and `study.kit`, in groups of classes with the quick tests of each (3,085 changes) | the same; one group: `mvn -Pquick,mutation test-compile pitest:mutationCoverage@study-kit` | a test noticed 86 % of them: kit 92, vary 91, band, diagnose, lines, size, check and draw 86 to 87, how-far 74, which is open; measured on a busy machine, where a change that makes a test slow counts as noticed |
                | lines that the tests run | `mvn -B verify`, in `target/site/jacoco` | 95 %; the build stops under 90 |
                """);
        return text.toString();
    }

    static String results() {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build((Writer) text)) {
            csv.writeRecord("claim", "case", "quantity", "expected", "unit", "deviation", "tolerance");
            for (String test : TESTS) {
                List<String[]> rows = rows(test, "results");
                if (rows.isEmpty()) {
                    for (String[] claim : rows(test, "claims")) {
                        csv.writeRecord(claim[0], claim[6], "worst of " + claim[1], "", "", claim[5], claim[4]);
                    }
                }
                rows.forEach(csv::writeRecord);
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return text.toString();
    }

    @SuppressWarnings("unchecked")
    private static List<String[]> rows(String test, String method) {
        try {
            Method found = Class.forName(test).getDeclaredMethod(method);
            found.setAccessible(true);
            return (List<String[]>) found.invoke(null);
        } catch (NoSuchMethodException e) {
            if (method.equals("claims")) {
                throw new IllegalStateException(test + " has no static claims()", e);
            }
            return new ArrayList<>();
        } catch (ClassNotFoundException | IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(test + "." + method + "()", e);
        }
    }
}
