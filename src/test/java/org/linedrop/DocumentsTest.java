package org.linedrop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.linedrop.report.Library;

/** The pages say what the code says. */
class DocumentsTest {
    @Test
    void physicsPageHasEveryLaw() throws IOException {
        assertThat(PhysicsPage.all()).hasSizeGreaterThan(20);
        assertThat(PhysicsPage.between(Files.readString(PhysicsPage.PAGE)))
                .as("run the main of PhysicsPage")
                .isEqualTo(PhysicsPage.laws());
    }

    @Test
    void everyPackageSaysWhatItHolds() throws IOException {
        List<Path> packages;
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/org/linedrop"))) {
            packages = files.filter(Files::isDirectory).toList();
        }
        String developers = Files.readString(Path.of("DEVELOPERS.md"));
        for (Path folder : packages) {
            boolean code;
            try (Stream<Path> files = Files.list(folder)) {
                code = files.anyMatch(file -> file.toString().endsWith(".java"));
            }
            if (code) {
                String info = Files.readString(folder.resolve("package-info.java"));
                String words = info.substring(info.indexOf("/**") + 3, info.indexOf("*/"));
                assertThat(words.replaceAll("[\\s*]+", " ").length())
                        .as(folder.toString())
                        .isGreaterThan(80);
                assertThat(info).contains("@NullMarked");
                String name =
                        Path.of("src/main/java/org/linedrop").relativize(folder).toString();
                assertThat(developers).contains("| `" + name.replace('/', '.') + "` |");
            }
        }
    }

    @Test
    void readmeIsShort() throws IOException {
        assertThat(Files.readAllLines(Path.of("README.md"))).hasSizeBetween(60, 120);
    }

    @Test
    void linksLeadSomewhere() throws IOException {
        Pattern link = Pattern.compile("\\]\\(([^)#:]+)(?:#[^)]*)?\\)");
        for (String page : List.of(
                "README.md",
                "DEVELOPERS.md",
                "src/docs/physics.md",
                "src/docs/circuit-file.md",
                "src/docs/embedding.md",
                "src/docs/changes.md")) {
            Matcher links = link.matcher(Files.readString(Path.of(page)));
            while (links.find()) {
                assertThat(Path.of(page).resolveSibling(links.group(1)))
                        .as(page)
                        .exists();
            }
        }
    }

    @Test
    void changeNotesHaveThisVersion() throws IOException {
        String pom = Files.readString(Path.of("pom.xml"));
        Matcher version =
                Pattern.compile("<version>([0-9.]+)(?:-SNAPSHOT)?</version>").matcher(pom);
        assertThat(version.find()).isTrue();
        assertThat(Files.readString(Path.of("src/docs/changes.md"))).contains("\n## " + version.group(1));
        assertThat(Library.version()).isEqualTo(version.group(1));
        String written = version.group().replace("<version>", "").replace("</version>", "");
        for (String each : List.of("src/consumer/pom.xml", "src/docs/embedding.md", "benchmarks/pom.xml")) {
            assertThat(Files.readString(Path.of(each))).as(each).contains("<version>" + written + "</version>");
        }
        for (String each : List.of("README.md", ".ci/run")) {
            assertThat(Files.readString(Path.of(each))).as(each).contains("linedrop-" + written + "-runner.jar");
        }
    }
}
