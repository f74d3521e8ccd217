package org.linedrop.report;

import java.io.StringWriter;
import java.io.Writer;
import java.util.List;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Notice;
import org.linedrop.result.DeviceRow;
import org.linedrop.result.Result;
import org.linedrop.result.SolveStatus;
import org.linedrop.study.Advice;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.FeedCheck;
import org.linedrop.study.HoseSwell;
import org.linedrop.units.Display;
import tools.jackson.core.JsonGenerator;

/**
 * A checked circuit as JSON. All figures are SI, with as many digits as read back to the same double; what is not
 * known is null. Pressures are gauge unless the key says absolute. Keys come in a fixed order.
 */
public final class JsonReport {
    private final JsonGenerator json;
    private final JsonRows objects;

    private JsonReport(JsonGenerator json) {
        this.json = json;
        this.objects = new JsonRows(json);
    }

    /**
     * Writes the report.
     *
     * @param check the cases, at least one
     * @param out   where to; flushed, not closed
     * @throws tools.jackson.core.JacksonException when writing fails
     */
    public static void write(FeedCheck check, Writer out) {
        try (JsonGenerator json = JsonRows.generator(out)) {
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
        objects.text(
                "service", circuit.service() == null ? null : circuit.service().word());
        json.writeArrayPropertyStart("cases");
        check.cases().forEach(this::one);
        json.writeEndArray();
        objects.array("ratings", RatingTable.COLUMNS, Standing.ratings(check.cases()));
        objects.array("advice", AdviceColumns.ALL, Standing.judged(circuit) ? Advice.of(check.cases()) : List.of());
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
        objects.text("verdict", check.verdict() == null ? null : check.verdict().word());
        json.writeStringProperty("sentence", check.sentence(Display.METRIC));
        objects.text(
                "smallestChange", check.mend() == null ? null : check.mend().words());
        objects.array("largestDraws", DrawColumns.ALL, DrawColumns.of(check));
        json.writeObjectPropertyStart("residuals");
        objects.number("flowImbalance", status.flowImbalance());
        objects.number("lawResidual", status.lawResidual());
        json.writeNumberProperty("iterations", status.iterations());
        json.writeEndObject();
        // the figures of a solve that did not end are no answer
        objects.array("rows", Columns.PARTS, solved ? usual.rows() : List.of());
        objects.array("points", Columns.POINTS, solved ? usual.points() : List.of());
        devices(solved ? usual.devices() : List.of());
        objects.array("hoseSwell", SwellTable.COLUMNS, HoseSwell.of(usual));
        objects.array("limits", Columns.LIMITS, Standing.limits(check.result()));
        objects.array("warnings", Columns.NOTICES, solved ? usual.warnings() : List.<Notice>of());
        objects.array("assumptions", Columns.NOTICES, usual.assumptions());
        json.writeEndObject();
    }

    private void devices(List<DeviceRow> devices) {
        json.writeArrayPropertyStart("devices");
        for (DeviceRow device : devices) {
            json.writeStartObject();
            objects.properties(Columns.DEVICES, device);
            device.figures().forEach(figure -> objects.number(figure.key(), figure.value()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
