package org.linedrop.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.linedrop.circuit.FileShape;
import org.linedrop.circuit.Key;
import org.linedrop.circuit.Keys;
import org.linedrop.circuit.Kind;
import org.linedrop.units.Dimension;

/** Schema of circuit files and of catalogue files, from the key table. */
final class CircuitSchema {
    /** Letters, digits, space, - and /: the names the reader takes. */
    private static final String NAME = "^[\\p{L}\\p{N}][\\p{L}\\p{N} /-]*$";

    /** Something, and no comma between digits: a comma is never a decimal point. */
    private static final String FORM = "^(?!.*\\d,\\d).*\\S.*$";

    /** A number first; minus and the fractions may be those of a word processor. */
    private static final String NUMBER_FIRST = "^(?!.*\\d,\\d)\\s*[-+.\u2212\\d\u00bc-\u00be\u215b-\u215e]";

    /** A unit behind it: letters, or one of the signs of inches, feet, degrees and per cent. */
    private static final String WITH_UNIT =
            NUMBER_FIRST + ".*[A-Za-z%\"'\u2033\u2032\u201d\u00b0\u00ba\u00b5\u03bc].*$";

    private static final String LIMIT = "^\\s*(?:at least|at most|between|off because)\\s+\\S.*$";
    private static final String OFF = "^\\s*off because\\s+\\S.*$";

    private final Map<String, Object> definitions = new LinkedHashMap<>();

    private CircuitSchema() {}

    static Map<String, Object> circuit() {
        return new CircuitSchema().circuitFile();
    }

    static Map<String, Object> catalogue() {
        CircuitSchema made = new CircuitSchema();
        Map<String, Object> schema = Schema.head(
                "catalogue:1",
                "Linedrop catalogue file",
                "Hoses of your own, in a file beside the circuit file that names it.");
        Map<String, Object> inner = made.ownCatalogue(false);
        Map<String, Object> properties = new LinkedHashMap<>(properties(inner));
        properties.put("catalogue", inner);
        schema.putAll(Schema.closed(properties, List.of()));
        schema.put("$defs", made.definitions);
        return schema;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> properties(Map<String, Object> object) {
        return (Map<String, Object>) Objects.requireNonNull(object.get("properties"));
    }

    private Map<String, Object> circuitFile() {
        Map<String, Object> schema = Schema.head(
                "circuit:1",
                "Linedrop circuit file",
                "Plumbing of a vehicle, a line for each hose with its two ends. Every quantity is a text with its"
                        + " unit.");
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        for (Key<?> key : Keys.TOP) {
            properties.put(key.name(), value(key));
            if (key.required()) {
                required.add(key.name());
            }
        }
        for (String section : Keys.SECTIONS) {
            properties.put(section, section(section));
        }
        schema.putAll(Schema.closed(properties, required));
        schema.put("$defs", definitions);
        return schema;
    }

    private Map<String, Object> section(String section) {
        return switch (section) {
            case "engine" -> kind(FileShape.kinds(section).get(0), false);
            case "catalogue" -> ownCatalogue(true);
            case "limits" -> limits();
            case "cases" -> cases();
            case "sections" -> sections();
            case "uses" -> uses();
            default -> named(section);
        };
    }

    /** Named elements: each has the one kind, or says its kind. */
    private Map<String, Object> named(String section) {
        List<Kind> kinds = FileShape.kinds(section);
        Map<String, Object> named = Schema.object("type", "object", "propertyNames", Schema.object("pattern", NAME));
        if (kinds.size() == 1) {
            named.put("description", kinds.get(0).meaning());
            named.put("additionalProperties", kind(kinds.get(0), false));
        } else if (!kinds.isEmpty()) {
            if (!definitions.containsKey(section)) {
                definitions.put(section, oneOfKinds(kinds));
            }
            named.put("additionalProperties", Schema.reference(section));
        }
        return named;
    }

    /** An element that says its kind: the kind decides which keys it takes. */
    private Map<String, Object> oneOfKinds(List<Kind> kinds) {
        List<Object> words = new ArrayList<>();
        List<Object> choices = new ArrayList<>();
        StringBuilder meanings = new StringBuilder("what it is");
        for (Kind kind : kinds) {
            words.add(kind.word());
            meanings.append(words.size() == 1 ? ": " : "; ")
                    .append(kind.word())
                    .append(" - ")
                    .append(kind.meaning());
            choices.add(Schema.object(
                    "if",
                    Schema.object(
                            "properties",
                            Schema.object("kind", Schema.object("const", kind.word())),
                            "required",
                            List.of("kind")),
                    "then",
                    kind(kind, true)));
        }
        return Schema.object(
                "type",
                "object",
                "properties",
                Schema.object("kind", Schema.object("enum", words, "description", meanings.toString())),
                "required",
                List.of("kind"),
                "allOf",
                choices);
    }

    /** The keys of a kind. */
    private Map<String, Object> kind(Kind kind, boolean saysKind) {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        if (saysKind) {
            properties.put("kind", Schema.object("const", kind.word()));
        }
        for (Key<?> key : kind.keys()) {
            properties.put(key.name(), value(key));
            if (key.required()) {
                required.add(key.name());
            }
        }
        Map<String, Object> made = Schema.closed(properties, required);
        made.put("description", kind.meaning());
        return made;
    }

    /** What stands behind a key. */
    private Map<String, Object> value(Key<?> key) {
        List<Kind> items = FileShape.items(key);
        if (items.isEmpty()) {
            return text(key);
        }
        Map<String, Object> list = Schema.array(items.size() == 1 ? kind(items.get(0), false) : parts(items));
        return Schema.object(
                "description", key.meaning(), "anyOf", List.of(list, Schema.object("enum", List.of("none", ""))));
    }

    private static Map<String, Object> text(Key<?> key) {
        boolean bare = key.example().matches("-?\\d+");
        Map<String, Object> made = Schema.object("type", bare ? List.of("string", "integer") : "string");
        made.put("description", description(key));
        List<Dimension> dimensions = key.dimensions();
        if (!key.words().isEmpty()) {
            List<Object> words = new ArrayList<>(key.words());
            if (bare) {
                key.words().forEach(word -> words.add(Integer.parseInt(word)));
            }
            made.put("enum", words);
            return made;
        }
        made.put("examples", List.of(key.example()));
        if (dimensions.isEmpty()) {
            made.put("pattern", FORM);
        } else {
            made.put("pattern", dimensions.contains(Dimension.RATIO) ? NUMBER_FIRST : WITH_UNIT);
        }
        return made;
    }

    private static String description(Key<?> key) {
        StringBuilder made = new StringBuilder(key.meaning());
        String before = ". ";
        for (Dimension dimension : key.dimensions()) {
            List<String> units = dimension.suggested().stream()
                    .filter(unit -> !unit.isEmpty())
                    .toList();
            made.append(before).append(dimension.words()).append(" in ").append(String.join(", ", units));
            before = ", or ";
        }
        if (!key.range().isEmpty()) {
            made.append("; ").append(key.range());
        }
        return made.toString();
    }

    /** Parts say what they are by one of their keys. */
    private Map<String, Object> parts(List<Kind> kinds) {
        if (!definitions.containsKey("part")) {
            List<Object> one = new ArrayList<>();
            List<Object> choices = new ArrayList<>();
            for (Kind kind : kinds) {
                Map<String, Object> has = Schema.object("required", List.of(kind.word()));
                one.add(has);
                choices.add(Schema.object("if", has, "then", kind(kind, false)));
            }
            Map<String, Object> part = Schema.object("type", "object", "anyOf", one, "allOf", choices);
            definitions.put("part", Schema.object("anyOf", List.of(part, Schema.object("const", "none"))));
        }
        return Schema.reference("part");
    }

    private Map<String, Object> ownCatalogue(boolean inCircuit) {
        Map<String, Object> properties = new LinkedHashMap<>();
        if (!inCircuit) {
            Keys.TOP.stream()
                    .filter(key -> key.name().equals("linedrop"))
                    .forEach(key -> properties.put(key.name(), value(key)));
        }
        properties.put(FileShape.HOSES, named(FileShape.HOSES));
        if (inCircuit) {
            properties.put(
                    "files",
                    Schema.object(
                            "type",
                            "array",
                            "items",
                            Schema.object("type", "string", "examples", List.of("club-hoses.yaml")),
                            "description",
                            "catalogue files beside this one, by name"));
        }
        return Schema.closed(properties, List.of());
    }

    private Map<String, Object> limits() {
        if (!definitions.containsKey("limits")) {
            Map<String, Object> quantities = new LinkedHashMap<>();
            FileShape.limits()
                    .forEach((quantity, dimension) -> quantities.put(
                            quantity,
                            Schema.object(
                                    "type",
                                    "string",
                                    "description",
                                    "at least, at most or between " + dimension.words() + " ("
                                            + String.join(", ", dimension.suggested())
                                            + "), or off because and the reason",
                                    "pattern",
                                    LIMIT)));
            quantities.put(
                    "state",
                    Schema.object(
                            "description",
                            "the state the device must be in, or off because and the reason",
                            "anyOf",
                            List.of(
                                    Schema.object("enum", FileShape.states()),
                                    Schema.object("type", "string", "pattern", OFF))));
            Map<String, Object> bounds = Schema.closed(quantities, List.of());
            bounds.put(
                    "patternProperties",
                    Schema.object(
                            "^pressure over .+",
                            Schema.object(
                                    "type",
                                    "string",
                                    "description",
                                    "at least, at most or between pressure differences, to another point or rail",
                                    "pattern",
                                    LIMIT)));
            Map<String, Object> limits = Schema.object("type", "object", "additionalProperties", bounds);
            limits.put("description", "functions that must hold in every case, by point or device");
            definitions.put("limits", limits);
        }
        return Schema.reference("limits");
    }

    /** A case repeats the file's own words: any key of any element may be given anew. */
    private Map<String, Object> cases() {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("like", Schema.object("type", "string", "description", "the case it starts from"));
        for (Key<?> key : Keys.TOP) {
            if (!key.name().equals("linedrop")) {
                one.put(key.name(), value(key));
            }
        }
        one.put("engine", patch(FileShape.kinds("engine")));
        one.put("limits", limits());
        Map<String, Object> changes = Schema.object("type", "object", "properties", one);
        changes.put(
                "additionalProperties",
                Schema.object(
                        "anyOf",
                        List.of(
                                Schema.object("const", "none", "description", "takes a part out"),
                                Schema.reference("change"))));
        List<Kind> all = new ArrayList<>();
        Keys.SECTIONS.stream()
                .filter(section -> !section.equals("engine"))
                .forEach(section -> all.addAll(FileShape.kinds(section)));
        all.addAll(Keys.PARTS);
        definitions.put("change", patch(all));
        return Schema.object("type", "object", "description", "named sets of changes", "additionalProperties", changes);
    }

    /** Any keys of any of the kinds; where a name has several forms, any of them. */
    private Map<String, Object> patch(List<Kind> kinds) {
        Map<String, List<Object>> forms = new LinkedHashMap<>();
        List<Object> words = new ArrayList<>();
        for (Kind kind : kinds) {
            words.add(kind.word());
            for (Key<?> key : kind.keys()) {
                List<Object> known = forms.computeIfAbsent(key.name(), name -> new ArrayList<>());
                Map<String, Object> value = value(key);
                if (!known.contains(value)) {
                    known.add(value);
                }
            }
        }
        Map<String, Object> properties = new LinkedHashMap<>();
        if (kinds.size() > 1) {
            properties.put("kind", Schema.object("enum", words));
        }
        forms.forEach((name, any) -> properties.put(name, any.size() == 1 ? any.get(0) : Schema.object("anyOf", any)));
        return Schema.closed(properties, List.of());
    }

    private Map<String, Object> sections() {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (String section : List.of("points", "devices", "runs", "limits")) {
            properties.put(section, section(section));
        }
        return Schema.object(
                "type",
                "object",
                "description",
                "pieces of circuit under a name, used below with a prefix",
                "additionalProperties",
                Schema.closed(properties, List.of()));
    }

    private static Map<String, Object> uses() {
        Map<String, Object> properties = Schema.object(
                "section", Schema.object("type", "string", "description", "name of the section"),
                "as", Schema.object("type", "string", "description", "what stands before its names here"));
        return Schema.array(Schema.closed(properties, List.of("section", "as")));
    }
}
