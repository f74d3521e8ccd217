package org.linedrop;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.linedrop.fact.Inner;

/** One direction of flow: each package imports only what stands above it here, third parties included. */
class LayersTest {
    private static final String OURS = "org.linedrop.";
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.linedrop");

    /** Package to what it may import: our packages by name, third parties by package prefix. */
    private static final Map<String, List<String>> MAY_IMPORT = new LinkedHashMap<>();

    static {
        MAY_IMPORT.put("fact", List.of());
        MAY_IMPORT.put("units", List.of("fact"));
        MAY_IMPORT.put("hydraulics", List.of("fact"));
        MAY_IMPORT.put("fluid", List.of("fact", "units"));
        MAY_IMPORT.put("catalogue", List.of("fact", "units", "de.siegmar.fastcsv"));
        MAY_IMPORT.put("circuit", List.of("fact", "units", "fluid", "catalogue"));
        MAY_IMPORT.put("network", List.of("fact", "fluid", "catalogue", "circuit", "hydraulics"));
        MAY_IMPORT.put("solver", List.of("fact", "network", "org.ejml"));
        MAY_IMPORT.put(
                "result", List.of("fact", "units", "hydraulics", "fluid", "catalogue", "circuit", "network", "solver"));
        MAY_IMPORT.put(
                "study",
                List.of(
                        "fact",
                        "units",
                        "hydraulics",
                        "fluid",
                        "catalogue",
                        "circuit",
                        "network",
                        "solver",
                        "result",
                        "org.apache.commons.math3"));
        MAY_IMPORT.put("io", List.of("fact", "units", "fluid", "catalogue", "circuit", "org.snakeyaml.engine"));
        MAY_IMPORT.put(
                "report",
                List.of(
                        "fact",
                        "units",
                        "fluid",
                        "catalogue",
                        "circuit",
                        "result",
                        "study",
                        "de.siegmar.fastcsv",
                        "tools.jackson.core"));
        MAY_IMPORT.put(
                "cli",
                List.of(
                        "fact",
                        "units",
                        "hydraulics",
                        "fluid",
                        "catalogue",
                        "circuit",
                        "network",
                        "solver",
                        "result",
                        "study",
                        "io",
                        "report",
                        "picocli"));
    }

    @Test
    void everyPackageStandsInTheTable() {
        assertThat(CLASSES.stream().map(c -> layer(c.getPackageName())).distinct())
                .allSatisfy(layer -> assertThat(MAY_IMPORT).containsKey(layer));
    }

    @Test
    void importsOnlyPointUp() {
        MAY_IMPORT.forEach((layer, above) -> classes()
                .that()
                .resideInAPackage(OURS + layer + "..")
                .should()
                .onlyDependOnClassesThat(describe("stand above " + layer, used -> allowed(layer, above, used)))
                .allowEmptyShould(true)
                .check(CLASSES));
    }

    /** Marks on a page are drawn from figures that somebody else found. */
    @Test
    void drawingKnowsNothingOfPlumbing() {
        classes()
                .that()
                .resideInAPackage(OURS + "report.draw..")
                .should()
                .onlyDependOnClassesThat(describe(
                        "are of Java or of report.draw",
                        used -> allowed("report.draw", List.of(), used)
                                        && !used.getPackageName().startsWith(OURS)
                                || used.getPackageName().startsWith(OURS + "report.draw")
                                || used.isEquivalentTo(Inner.class)))
                .check(CLASSES);
    }

    private static boolean allowed(String layer, List<String> above, JavaClass used) {
        String name = used.getBaseComponentType().getPackageName();
        if (used.getBaseComponentType().isPrimitive()
                || name.startsWith("java.")
                || name.startsWith("org.jspecify.annotations")) {
            return true;
        }
        if (name.startsWith(OURS)) {
            return layer(name).equals(layer) || above.contains(layer(name));
        }
        return above.stream().anyMatch(name::startsWith);
    }

    private static String layer(String packageName) {
        String below = packageName.substring(OURS.length());
        int dot = below.indexOf('.');
        return dot < 0 ? below : below.substring(0, dot);
    }

    /** Nothing is fetched, sent or started: no class knows of the network or of other processes. */
    @Test
    void nothingReachesOutside() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.net..", "javax.net..", "java.rmi..")
                .check(CLASSES);
        noClasses()
                .should()
                .dependOnClassesThat()
                .areAssignableTo(ProcessBuilder.class)
                .check(CLASSES);
    }
}
