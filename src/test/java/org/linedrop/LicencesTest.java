package org.linedrop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** The licence of every library used, read from the POM beside its jar, against {@code src/docs/licences.md}. */
class LicencesTest {
    /** Licences that a project under Apache-2.0 may ship. */
    private static final List<String> SHIPPED = List.of("Apache-2.0", "MIT", "BSD");

    /** Groups of what goes into the runner's jar or comes to an embedder. */
    private static final List<String> RUNTIME = List.of(
            "org.ejml",
            "org.apache.commons",
            "de.siegmar",
            "info.picocli",
            "org.snakeyaml",
            "tools.jackson.core:jackson-core",
            "org.jspecify");

    private static Element pom(Path file) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(file.toFile())
                .getDocumentElement();
    }

    private static Element child(Element parent, String name) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element && element.getTagName().equals(name)) {
                return element;
            }
        }
        return null;
    }

    private static String text(Element parent, String name) {
        Element child = parent == null ? null : child(parent, name);
        return child == null ? "" : child.getTextContent().strip();
    }

    /** The licence a POM or one of its parents names. */
    private static String licence(Path file) throws Exception {
        Element pom = pom(file);
        Element licences = child(pom, "licenses");
        if (licences != null) {
            return brief(licences.getTextContent());
        }
        Element parent = child(pom, "parent");
        assertThat(parent).as("no licence in %s", file).isNotNull();
        String artifact = text(parent, "artifactId");
        String version = text(parent, "version");
        Path repository = file.getParent().getParent().getParent();
        for (int i = group(pom).split("\\.", -1).length; i > 0; i--) {
            repository = repository.getParent();
        }
        return licence(repository
                .resolve(text(parent, "groupId").replace('.', '/'))
                .resolve(artifact)
                .resolve(version)
                .resolve(artifact + "-" + version + ".pom"));
    }

    private static String group(Element pom) {
        String own = text(pom, "groupId");
        return own.isEmpty() ? text(child(pom, "parent"), "groupId") : own;
    }

    private static String brief(String licences) {
        String words = licences.toLowerCase(Locale.ROOT);
        if (words.contains("apache")) {
            return "Apache-2.0";
        }
        if (words.contains("lesser general")) {
            return "LGPL";
        }
        if (words.contains("eclipse")) {
            return "EPL-2.0";
        }
        if (words.contains("bsd")) {
            return "BSD";
        }
        return words.contains("mit") ? "MIT" : licences.strip();
    }

    private static Map<String, String> used() throws Exception {
        Map<String, String> used = new TreeMap<>();
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
            if (entry.endsWith(".jar") && !entry.contains("surefire")) {
                Path beside = Path.of(entry.substring(0, entry.length() - ".jar".length()) + ".pom");
                if (!Files.exists(beside)) { // a classifier stands in the jar's name
                    beside = Files.list(beside.getParent())
                            .filter(file -> file.toString().endsWith(".pom"))
                            .findFirst()
                            .orElseThrow();
                }
                Element pom = pom(beside);
                used.put(group(pom) + ":" + text(pom, "artifactId"), licence(beside));
            }
        }
        return used;
    }

    private static Map<String, List<String>> listed() throws IOException {
        Map<String, List<String>> listed = new TreeMap<>();
        for (String line : Files.readAllLines(Path.of("src/docs/licences.md"))) {
            if (line.startsWith("| `")) {
                List<String> cells = new ArrayList<>(Arrays.asList(line.split(" *\\| *", -1)));
                listed.put(cells.get(1).replace("`", ""), cells.subList(2, 4));
            }
        }
        return listed;
    }

    @Test
    void everyLibraryIsListedWithItsLicence() throws Exception {
        Map<String, String> used = used();
        assertThat(used).containsKey("org.ejml:ejml-dsparse").hasSizeGreaterThan(15);
        Map<String, List<String>> listed = listed();
        StringBuilder table = new StringBuilder();
        used.forEach((name, licence) -> table.append("| `")
                .append(name)
                .append("` | ")
                .append(licence)
                .append(" | ")
                .append(isRuntime(name) ? "shipped" : "tests")
                .append(" |\n"));
        listed.keySet().removeIf(name -> name.contains("jazzer")); // in the profile fuzz only
        assertThat(listed.keySet()).as("the table would be:\n" + table).isEqualTo(used.keySet());
        used.forEach((name, licence) -> {
            assertThat(listed.get(name)).as(name).containsExactly(licence, isRuntime(name) ? "shipped" : "tests");
            if (isRuntime(name)) {
                assertThat(licence).as(name).isIn(SHIPPED);
            }
        });
    }

    private static boolean isRuntime(String name) {
        return RUNTIME.stream().anyMatch(each -> name.equals(each) || name.startsWith(each + ":"));
    }
}
