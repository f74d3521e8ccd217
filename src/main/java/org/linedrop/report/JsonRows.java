package org.linedrop.report;

import java.io.Writer;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/** Rows as JSON objects: SI, with as many digits as read back to the same double; what is not known is null. */
final class JsonRows {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER) // the JDK's own digits changed in version 19
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build();

    private final JsonGenerator json;

    JsonRows(JsonGenerator json) {
        this.json = json;
    }

    /** Two spaces a step, and the same line ends on every system. */
    private static final class Indented extends ObjectWriteContext.Base {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
            Separators separators = Separators.createDefaultInstance()
                    .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                    .withArrayEmptySeparator("");
            return new DefaultPrettyPrinter(separators)
                    .withObjectIndenter(indenter)
                    .withArrayIndenter(indenter);
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    }

    static JsonGenerator generator(Writer out) {
        return FACTORY.createGenerator(new Indented(), out);
    }

    <R> void array(String key, List<Column<R>> columns, List<R> rows) {
        json.writeArrayPropertyStart(key);
        for (R row : rows) {
            json.writeStartObject();
            properties(columns, row);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    void strings(String key, List<String> texts) {
        json.writeArrayPropertyStart(key);
        texts.forEach(json::writeString);
        json.writeEndArray();
    }

    <R> void properties(List<Column<R>> columns, R row) {
        for (Column<R> column : Columns.data(columns)) {
            if (column.isNumber()) {
                number(column.key(), column.number().applyAsDouble(row));
            } else {
                text(column.key(), column.text().apply(row));
            }
        }
    }

    void number(String key, double value) {
        if (Double.isFinite(value)) {
            json.writeNumberProperty(key, value == 0 ? 0.0 : value); // no minus zero
        } else {
            json.writeNullProperty(key);
        }
    }

    void text(String key, @Nullable String text) {
        if (text == null) {
            json.writeNullProperty(key);
        } else {
            json.writeStringProperty(key, text);
        }
    }
}
