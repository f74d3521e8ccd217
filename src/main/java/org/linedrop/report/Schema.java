package org.linedrop.report;

import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonGenerator;

/** JSON Schema (draft 2020-12) as maps, lists and texts in order, and how it is written. */
final class Schema {
    private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";

    private Schema() {}

    /** The head of a schema that stands alone. */
    static Map<String, Object> head(String name, String title, String description) {
        return object("$schema", DRAFT, "$id", "urn:linedrop:" + name, "title", title, "description", description);
    }

    /** Names and values by turns. */
    static Map<String, Object> object(Object... entries) {
        Map<String, Object> made = new LinkedHashMap<>();
        for (int i = 0; i < entries.length; i += 2) {
            made.put((String) entries[i], entries[i + 1]);
        }
        return made;
    }

    static Map<String, Object> reference(String definition) {
        return object("$ref", "#/$defs/" + definition);
    }

    static Map<String, Object> array(Object items) {
        return object("type", "array", "items", items);
    }

    /** An object with these properties and no others. */
    static Map<String, Object> closed(Map<String, Object> properties, List<String> required) {
        return object("type", "object", "properties", properties, "required", required, "additionalProperties", false);
    }

    static String text(Map<String, Object> schema) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = JsonRows.generator(out)) {
            write(json, schema);
            json.writeRaw('\n');
        }
        return out.toString();
    }

    private static void write(JsonGenerator json, Object value) {
        if (value instanceof Map<?, ?> object) {
            json.writeStartObject();
            object.forEach((name, each) -> {
                json.writeName((String) name);
                write(json, each);
            });
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            list.forEach(each -> write(json, each));
            json.writeEndArray();
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value instanceof Integer number) {
            json.writeNumber(number);
        } else {
            json.writeString((String) value);
        }
    }
}
