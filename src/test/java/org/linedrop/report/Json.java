package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;

/** JSON as maps, lists, texts, doubles and nulls. */
final class Json {
    private static final JsonFactory STRICT = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private Json() {}

    @SuppressWarnings("unchecked")
    static Map<String, Object> object(String text) {
        try (JsonParser parser = STRICT.createParser(ObjectReadContext.empty(), text)) {
            parser.nextToken();
            Object read = value(parser);
            assertThat(parser.nextToken())
                    .as("one object and nothing behind it")
                    .isNull();
            return (Map<String, Object>) read;
        }
    }

    @SuppressWarnings("unchecked")
    static List<Map<String, Object>> objects(Map<String, Object> in, String key) {
        return (List<Map<String, Object>>) in.get(key);
    }

    private static Object value(JsonParser parser) {
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                Map<String, Object> object = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String key = parser.currentName();
                    parser.nextToken();
                    object.put(key, value(parser));
                }
                yield object;
            }
            case START_ARRAY -> {
                List<Object> list = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    list.add(value(parser));
                }
                yield list;
            }
            case VALUE_STRING -> parser.getString();
            case VALUE_NULL -> null;
            default -> parser.getDoubleValue();
        };
    }
}
