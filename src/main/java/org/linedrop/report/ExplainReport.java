package org.linedrop.report;

import java.io.StringWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Explanation;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.units.Display;
import tools.jackson.core.JsonGenerator;

/** Rows taken apart: text like a worked example, or JSON in SI with every digit. */
public final class ExplainReport {
    private final JsonGenerator json;
    private final JsonRows rows;

    private ExplainReport(JsonGenerator json) {
        this.json = json;
        this.rows = new JsonRows(json);
    }

    /**
     * As text.
     *
     * @param explanations the rows, in the order to print
     * @param display      units
     * @return the page, 120 columns wide, ending with a line end; empty without rows
     */
    public static String text(List<Explanation> explanations, Display display) {
        StringBuilder page = new StringBuilder();
        for (Explanation each : explanations) {
            page.append(page.isEmpty() ? "" : "\n");
            new WorkedExample(each, display)
                    .lines()
                    .forEach(line -> page.append(line).append('\n'));
        }
        return page.toString();
    }

    /**
     * As JSON. Figures are SI; what is not known is null; symbols in the braces of an equation stand for its inputs.
     *
     * @param explanations the rows
     * @return an object with a list of them, ending with a line end
     */
    public static String json(List<Explanation> explanations) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = JsonRows.generator(out)) {
            ExplainReport report = new ExplainReport(json);
            json.writeStartObject();
            json.writeStringProperty("libraryVersion", Library.version());
            json.writeArrayPropertyStart("explanations");
            explanations.forEach(report::one);
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
        return out.toString();
    }

    private void one(Explanation row) {
        json.writeStartObject();
        json.writeStringProperty("row", row.element());
        json.writeStringProperty("case", row.caseName());
        json.writeStringProperty("name", row.name());
        json.writeStringProperty("kind", row.kind());
        json.writeStringProperty("size", row.size());
        Explanation.Flow flow = row.flow();
        json.writeObjectPropertyStart("flow");
        json.writeStringProperty("fluid", flow.fluid());
        rows.number("temperatureK", flow.temperatureK());
        rows.number("densityKgPerM3", flow.densityKgPerM3());
        rows.number("dynamicViscosityPaS", flow.dynamicViscosityPaS());
        rows.number("massFlowKgPerS", flow.massFlowKgPerS());
        rows.number("flowM3PerS", flow.flowM3PerS());
        json.writeStringProperty("sense", flow.sense());
        json.writeArrayPropertyStart("fileLines");
        flow.fileLines().forEach(json::writeNumber);
        json.writeEndArray();
        json.writeEndObject();
        json.writeArrayPropertyStart("given");
        row.given().forEach(this::given);
        json.writeEndArray();
        json.writeArrayPropertyStart("groups");
        row.groups().forEach(this::group);
        json.writeEndArray();
        rows.number("dropPa", row.dropPa());
        comparisons(row);
        json.writeArrayPropertyStart("bands");
        row.bands().forEach(this::band);
        json.writeEndArray();
        rows.strings("remarks", row.remarks());
        json.writeEndObject();
    }

    private void given(Explanation.Given given) {
        Figure figure = given.figure();
        json.writeStartObject();
        json.writeStringProperty("name", given.name());
        rows.number("value", figure.value());
        rows.number("low", figure.low());
        rows.number("high", figure.high());
        json.writeStringProperty("unit", given.unit());
        source("source", figure.source());
        json.writeEndObject();
    }

    private void group(Explanation.Group group) {
        json.writeStartObject();
        groupFields(group);
        json.writeEndObject();
    }

    private void groupFields(Explanation.Group group) {
        json.writeStringProperty("name", group.name());
        json.writeStringProperty("remark", group.remark());
        rows.number("boreM", group.boreM());
        rows.number("velocityMPerS", group.velocityMPerS());
        rows.number("reynolds", group.reynolds());
        rows.text("regime", group.regime().isEmpty() ? null : group.regime());
        rows.number("velocityHeadPa", group.velocityHeadPa());
        json.writeArrayPropertyStart("steps");
        group.steps().forEach(this::step);
        json.writeEndArray();
    }

    private void step(Explanation.Step step) {
        json.writeStartObject();
        json.writeStringProperty("name", step.name());
        json.writeStringProperty("equation", step.equation());
        json.writeArrayPropertyStart("inputs");
        for (Explanation.Quantity input : step.inputs()) {
            json.writeStartObject();
            json.writeStringProperty("symbol", input.symbol());
            json.writeStringProperty("meaning", input.meaning());
            rows.number("value", input.value());
            json.writeStringProperty("unit", input.unit());
            json.writeEndObject();
        }
        json.writeEndArray();
        rows.number("coefficient", step.coefficient());
        rows.number("dropPa", step.dropPa());
        rows.number("lowPa", step.lowPa());
        rows.number("highPa", step.highPa());
        source("spread", step.spread());
        Formula formula = step.formula();
        json.writeObjectPropertyStart("formula");
        json.writeStringProperty("title", formula.title());
        json.writeStringProperty("equation", formula.equation());
        json.writeStringProperty("validity", formula.validity());
        source("source", formula.source());
        json.writeEndObject();
        json.writeEndObject();
    }

    private void comparisons(Explanation row) {
        Explanation.Equivalent equivalent = row.equivalent();
        if (equivalent == null) {
            json.writeNullProperty("equivalent");
        } else {
            json.writeObjectPropertyStart("equivalent");
            json.writeStringProperty("row", equivalent.element());
            json.writeStringProperty("kind", equivalent.kind());
            rows.number("lengthM", equivalent.lengthM());
            rows.number("boreM", equivalent.boreM());
            json.writeEndObject();
        }
        Explanation.Alternative other = row.alternative();
        if (other == null) {
            json.writeNullProperty("alternative");
        } else {
            json.writeObjectPropertyStart("alternative");
            json.writeStringProperty("ifItWere", other.name());
            rows.number("dropPa", other.dropPa());
            rows.number("equivalentM", other.equivalentM());
            json.writeObjectPropertyStart("elbow");
            groupFields(other.group());
            json.writeEndObject();
            json.writeEndObject();
        }
    }

    private void band(Explanation.Spread band) {
        json.writeStartObject();
        json.writeStringProperty("cause", band.cause());
        rows.number("lowM", band.lowM());
        rows.number("highM", band.highM());
        rows.number("lowPa", band.lowPa());
        rows.number("highPa", band.highPa());
        source("source", band.source());
        json.writeEndObject();
    }

    private void source(String key, @Nullable Source source) {
        if (source == null) {
            json.writeNullProperty(key);
            return;
        }
        json.writeObjectPropertyStart(key);
        json.writeStringProperty("title", source.title());
        json.writeStringProperty("locator", source.locator());
        json.writeStringProperty("status", source.status().word());
        json.writeEndObject();
    }
}
