package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.Examples;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.FileShape;
import org.linedrop.circuit.Key;
import org.linedrop.circuit.Keys;
import org.linedrop.circuit.Kind;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;
import org.linedrop.io.Trees;
import org.linedrop.study.FeedCheck;

/** The schemas against everything that is shipped and against files with one thing wrong; judged by a validator. */
class SchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema CIRCUIT = REGISTRY.getSchema(SchemaReport.circuit());
    private static final Schema CATALOGUE = REGISTRY.getSchema(SchemaReport.catalogue());
    private static final Schema RESULT = REGISTRY.getSchema(SchemaReport.result());

    private static List<String> complaints(Schema schema, String json) {
        return schema.validate(json, InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    /** The file's own tree as JSON: every scalar a text. */
    private static String json(String yaml) {
        StringBuilder made = new StringBuilder();
        append(Trees.of(yaml), made);
        return made.toString();
    }

    private static void append(Tree tree, StringBuilder made) {
        if (tree instanceof Tree.Branch branch) {
            String before = "{";
            for (Tree.Entry entry : branch.entries()) {
                made.append(before).append(quoted(entry.key())).append(':');
                append(entry.value(), made);
                before = ",";
            }
            made.append(branch.entries().isEmpty() ? "{}" : "}");
        } else if (tree instanceof Tree.Items items) {
            String before = "[";
            for (Tree item : items.items()) {
                made.append(before);
                append(item, made);
                before = ",";
            }
            made.append(items.items().isEmpty() ? "[]" : "]");
        } else {
            made.append(quoted(((Tree.Text) tree).text()));
        }
    }

    private static String quoted(String text) {
        return '"'
                + text.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\t", "\\t")
                + '"';
    }

    /** Every circuit file of the tree that reads without problems. */
    static List<Path> files() throws IOException {
        List<Path> found = new ArrayList<>();
        for (String folder : List.of("src/examples", "src/test/resources", "src/main/resources")) {
            try (Stream<Path> paths = Files.walk(Path.of(folder))) {
                paths.filter(path -> path.toString().endsWith(".yaml"))
                        .filter(path -> reads(path))
                        .sorted()
                        .forEach(found::add);
            }
        }
        return found;
    }

    private static boolean reads(Path path) {
        try {
            CircuitFile.read(path);
            return true;
        } catch (ProblemsException | IOException wrong) {
            return false;
        }
    }

    @Test
    void thereIsSomethingToJudge() throws IOException {
        assertThat(files()).hasSizeGreaterThan(15);
    }

    @ParameterizedTest
    @MethodSource("files")
    void whatReadsIsTaken(Path file) throws IOException {
        assertThat(complaints(CIRCUIT, json(Files.readString(file)))).isEmpty();
    }

    /** Small circuits with every kind of device between them; the case as written is enough to see every list. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "src/examples/first-feed.yaml",
                "src/examples/y-block.yaml",
                "src/examples/own-hose.yaml",
                "src/test/resources/org/linedrop/report/brake.yaml",
                "src/test/resources/org/linedrop/report/too-much.yaml",
                "src/main/resources/org/linedrop/cli/new-feed.yaml",
                "src/main/resources/org/linedrop/cli/new-oil.yaml",
                "src/main/resources/org/linedrop/cli/new-coolant.yaml"
            })
    void resultsAreTaken(String file) throws IOException {
        Circuit circuit = CircuitFile.read(Path.of(file));
        String json = JsonReport.text(FeedCheck.of(circuit, List.of(circuit.caseName())));
        assertThat(complaints(RESULT, json)).isEmpty();
    }

    @Test
    void ownHosesAreTaken() {
        String yaml = "hoses:\n  club hose:\n    like: race PTFE\n    sizes: -6 -8\n    bore: 7.9 10.2 mm measured\n";
        assertThat(complaints(CATALOGUE, json(yaml))).isEmpty();
        assertThat(complaints(CATALOGUE, json("linedrop: 1\ncatalogue:\n  " + yaml.replace("\n", "\n  "))))
                .isEmpty();
        assertThat(complaints(CATALOGUE, json(yaml.replace("    like: race PTFE\n", ""))))
                .isNotEmpty();
        assertThat(complaints(CATALOGUE, json(yaml.replace("7.9 10.2 mm", "7,9 10,2 mm"))))
                .isNotEmpty();
        assertThat(complaints(CATALOGUE, json(yaml.replace("bore:", "boar:")))).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "length: 0.50 m | length: 0.50 | no unit",
                "length: 0.50 m | length: 0,50 m | a comma between digits",
                "length: 0.50 m | lenght: 0.50 m | an unknown key",
                "ends: straight to 90} | name: bare} | a hose without ends",
                "temperature: 40 C | title2: x | no temperature",
                "service: injected fuel | service: injected fuels | a word that is none of the few",
                "kind: tank | kind: tanks | a kind that is none of the few",
                "kind: tank, | | no kind",
                "linedrop: 1 | linedrop: 2 | another form",
                "at least 375 kPa | 375 kPa | a bound without at least",
                "runs at: 13.5 V | runs at: 13.5 | volts without V",
                "cases: | casses: | an unknown section",
                "{through: pump} | {true: pump} | a part of no kind",
                "pump: {runs at: 12.0 V} | pump: {run at: 12.0 V} | a case that changes an unknown key"
            })
    void whatIsWrongIsRefused(String good, String bad, String what) throws IOException {
        String yaml = Files.readString(Examples.path("fuel-feed-516.yaml"));
        assertThat(yaml).contains(good);
        String json = json(yaml.replaceFirst(java.util.regex.Pattern.quote(good), bad == null ? "" : bad));
        assertThat(complaints(CIRCUIT, json)).as(what).isNotEmpty();
    }

    @Test
    void resultWithoutAFigureIsRefused() {
        String json = JsonReport.text(FeedCheck.of(Examples.circuit("first-feed.yaml")));
        assertThat(complaints(RESULT, json)).isEmpty();
        assertThat(complaints(RESULT, json.replace("\"boreM\"", "\"bore\""))).isNotEmpty();
        assertThat(complaints(RESULT, json.replace("\"status\": \"converged\"", "\"status\": \"done\"")))
                .isNotEmpty();
    }

    @Test
    void everyKeyIsExplained() {
        String circuit = SchemaReport.circuit();
        List<Kind> kinds = new ArrayList<>();
        Keys.SECTIONS.forEach(section -> kinds.addAll(FileShape.kinds(section)));
        kinds.addAll(Keys.PARTS);
        kinds.addAll(FileShape.kinds(FileShape.HOSES));
        assertThat(kinds).hasSizeGreaterThan(20);
        List<Key<?>> keys = new ArrayList<>(Keys.TOP);
        kinds.forEach(kind -> keys.addAll(kind.keys()));
        for (Key<?> key : keys) {
            assertThat(circuit).contains('"' + key.name() + "\": {").contains('"' + key.meaning());
        }
        for (Kind kind : kinds) {
            assertThat(circuit).contains('"' + kind.meaning() + '"');
        }
        assertThat(circuit)
                .contains("a length in mm, m, in, ft; from 0.001 m up to 30 m, beyond that with \\\"really\\\"");
    }
}
