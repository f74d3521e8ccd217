package org.linedrop.report;

import java.io.StringWriter;
import java.io.Writer;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Notice;
import org.linedrop.result.DeviceRow;
import org.linedrop.result.Result;
import org.linedrop.result.SolveStatus;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.FeedCheck;
import org.linedrop.units.Display;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/**
 * A checked circuit as JSON. All figures are SI, with as many digits as read back to the same double; what is not
 * known is null. Pressures are gauge unless the key says absolute. Keys come in a fixed order.
 */
public final class JsonReport {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER) // the JDK's own digits changed in version 19
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build();

    private final JsonGenerator json;

    private JsonReport(JsonGenerator json) {
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

    /**
     * Writes the report.
     *
     * @param check the cases, at least one
     * @param out   where to; flushed, not closed
     * @throws tools.jackson.core.JacksonException when writing fails
     */
    public static void write(FeedCheck check, Writer out) {
        try (JsonGenerator json = FACTORY.createGenerator(new Indented(), out)) {
            new JsonReport(json).report(check);
            json.writeRaw('\n');
        }
    }

    /**
     * The report as a text.
     *
     * @param check the cases, at least one
     * @return JSON, ending with a line end
     */
    public static String text(FeedCheck check) {
        StringWriter out = new StringWriter();
        write(check, out);
        return out.toString();
    }

    private void report(FeedCheck check) {
        Circuit circuit = check.cases().get(0).result().circuit();
        json.writeStartObject();
        json.writeStringProperty("title", circuit.title());
        fileForm(circuit);
        json.writeStringProperty("libraryVersion", Library.version());
        text("service", circuit.service() == null ? null : circuit.service().word());
        json.writeArrayPropertyStart("cases");
        check.cases().forEach(this::one);
        json.writeEndArray();
        json.writeArrayPropertyStart("cautions");
        Safety.cautions(circuit.service()).forEach(json::writeString);
        json.writeEndArray();
        json.writeArrayPropertyStart("safety");
        Safety.lines().forEach(json::writeString);
        json.writeEndArray();
        json.writeEndObject();
    }

    /** The version of the circuit file's form; null when made by code that said none. */
    private void fileForm(Circuit circuit) {
        Tree form = circuit.words().base().get("linedrop");
        if (form instanceof Tree.Text text && text.text().matches("[0-9]{1,9}")) {
            json.writeNumberProperty("fileForm", Integer.parseInt(text.text()));
        } else {
            json.writeNullProperty("fileForm");
        }
    }

    private void one(CaseCheck check) {
        Result usual = check.result().usual();
        SolveStatus status = SolveStatus.of(usual);
        boolean solved = status.converged();
        json.writeStartObject();
        json.writeStringProperty("case", check.caseName());
        json.writeStringProperty("status", status.word());
        text("verdict", check.verdict() == null ? null : check.verdict().word());
        json.writeStringProperty("sentence", check.sentence(Display.METRIC));
        json.writeObjectPropertyStart("residuals");
        number("flowImbalance", status.flowImbalance());
        number("lawResidual", status.lawResidual());
        json.writeNumberProperty("iterations", status.iterations());
        json.writeEndObject();
        // the figures of a solve that did not end are no answer
        rows("rows", Columns.PARTS, solved ? usual.rows() : List.of());
        rows("points", Columns.POINTS, solved ? usual.points() : List.of());
        devices(solved ? usual.devices() : List.of());
        rows("limits", Columns.LIMITS, Standing.limits(check.result()));
        rows("warnings", Columns.NOTICES, solved ? usual.warnings() : List.<Notice>of());
        rows("assumptions", Columns.NOTICES, usual.assumptions());
        json.writeEndObject();
    }

    private <R> void rows(String key, List<Column<R>> columns, List<R> rows) {
        json.writeArrayPropertyStart(key);
        for (R row : rows) {
            json.writeStartObject();
            properties(columns, row);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void devices(List<DeviceRow> devices) {
        json.writeArrayPropertyStart("devices");
        for (DeviceRow device : devices) {
            json.writeStartObject();
            properties(Columns.DEVICES, device);
            device.figures().forEach(figure -> number(figure.key(), figure.value()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private <R> void properties(List<Column<R>> columns, R row) {
        for (Column<R> column : Columns.data(columns)) {
            if (column.isNumber()) {
                number(column.key(), column.number().applyAsDouble(row));
            } else {
                text(column.key(), column.text().apply(row));
            }
        }
    }

    private void number(String key, double value) {
        if (Double.isFinite(value)) {
            json.writeNumberProperty(key, value == 0 ? 0.0 : value); // no minus zero
        } else {
            json.writeNullProperty(key);
        }
    }

    private void text(String key, @Nullable String text) {
        if (text == null) {
            json.writeNullProperty(key);
        } else {
            json.writeStringProperty(key, text);
        }
    }
}
