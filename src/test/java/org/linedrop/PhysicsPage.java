package org.linedrop;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.linedrop.fact.Formula;

/**
 * Writes the laws into {@code src/docs/physics.md}, between its marks, from the formulas beside the laws. Run after a law
 * was added or its formula changed:
 *
 * <pre>mvn -q test-compile exec:java -Dexec.classpathScope=test -Dmain.class=org.linedrop.PhysicsPage</pre>
 */
public final class PhysicsPage {
    static final Path PAGE = Path.of("src", "docs", "physics.md");
    private static final String BEGIN = "<!-- laws begin -->\n";
    private static final String END = "<!-- laws end -->\n";

    private PhysicsPage() {}

    /** Writes the page under the working directory. */
    public static void main(String[] arguments) throws IOException {
        String page = Files.readString(PAGE);
        int begin = page.indexOf(BEGIN) + BEGIN.length();
        Files.writeString(PAGE, page.substring(0, begin) + laws() + page.substring(page.indexOf(END)));
    }

    /** What stands between the marks of the page. */
    static String between(String page) {
        return page.substring(page.indexOf(BEGIN) + BEGIN.length(), page.indexOf(END));
    }

    /** A law of the library: where its formula stands. */
    record Law(String owner, String field, Formula formula) {}

    /** Every formula that a class of the laws holds, by class and field. */
    static List<Law> all() {
        List<Law> laws = new ArrayList<>();
        try {
            for (JavaClass each : new ClassFileImporter()
                    .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                    .importPackages("org.linedrop")) {
                for (Field field : Class.forName(each.getName()).getDeclaredFields()) {
                    if (Modifier.isStatic(field.getModifiers()) && field.getType() == Formula.class) {
                        field.setAccessible(true);
                        String owner = each.getName().substring("org.linedrop.".length());
                        laws.add(new Law(owner, field.getName(), (Formula) field.get(null)));
                    }
                }
            }
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
        laws.sort(Comparator.comparing(Law::owner).thenComparing(Law::field));
        return laws;
    }

    static String laws() {
        StringBuilder text = new StringBuilder();
        for (Law law : all()) {
            Formula formula = law.formula();
            String locator = formula.source().locator().isEmpty()
                    ? ""
                    : ", " + formula.source().locator();
            text.append("\n**")
                    .append(formula.title())
                    .append("** (`")
                    .append(law.owner())
                    .append("`)\n\n");
            text.append("    ")
                    .append(formula.equation().replace("\n", "\n    "))
                    .append("\n\n");
            text.append("Range: ").append(formula.validity()).append(".  \nSource: ");
            text.append(formula.source().title()).append(locator).append(" (");
            text.append(formula.source().status().word()).append(").\n");
        }
        return text.append('\n').toString();
    }
}
