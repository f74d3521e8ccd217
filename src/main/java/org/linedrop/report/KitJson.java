package org.linedrop.report;

import java.io.StringWriter;
import org.linedrop.study.kit.Kit;
import org.linedrop.study.kit.KitCircuit;
import org.linedrop.units.Display;
import tools.jackson.core.JsonGenerator;

/** A kit as JSON. */
final class KitJson {
    private KitJson() {}

    /** The kit, always SI; what is not known is null. */
    static String text(Kit kit) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = JsonRows.generator(out)) {
            JsonRows objects = new JsonRows(json);
            json.writeStartObject();
            json.writeStringProperty("list", "kit");
            json.writeStringProperty("libraryVersion", Library.version());
            objects.strings("sentences", new KitSentences(kit, Display.METRIC).lines());
            objects.array("parts", KitColumns.items(kit), kit.items());
            json.writeObjectPropertyStart("totals");
            KitTotals.of(kit).forEach(total -> objects.number(total.key(), total.value()));
            json.writeNumberProperty("partsWithoutMass", kit.withoutMass());
            json.writeNumberProperty("partsWithoutPrice", kit.withoutPrice());
            objects.text("currency", Cells.known(kit.currency()));
            json.writeEndObject();
            json.writeArrayPropertyStart("circuits");
            kit.circuits().forEach(circuit -> circuit(circuit, json, objects));
            json.writeEndArray();
            objects.array("alternatives", KitColumns.ALTERNATIVES, kit.alternatives());
            objects.array("spanners", KitColumns.WRENCHES, kit.wrenches());
            objects.array("bench", KitColumns.NOTES, kit.notes());
            objects.strings("unusedOfYourList", kit.unused());
            objects.strings("cautions", KitReport.cautions(kit));
            objects.strings("safety", Safety.lines());
            json.writeEndObject();
            json.writeRaw('\n');
        }
        return out.toString();
    }

    private static void circuit(KitCircuit circuit, JsonGenerator json, JsonRows objects) {
        json.writeStartObject();
        json.writeStringProperty("title", circuit.title());
        json.writeStringProperty("case", circuit.caseName());
        objects.text(
                "service", circuit.service() == null ? null : circuit.service().word());
        json.writeStringProperty("fluid", circuit.fluid());
        objects.number("volumeM3", circuit.volumeM3());
        objects.number("volumeLowM3", circuit.volumeLowM3());
        objects.number("volumeHighM3", circuit.volumeHighM3());
        objects.number("fluidKg", circuit.fluidKg());
        objects.array("hoses", KitColumns.HOSES, circuit.hoses());
        objects.array("joints", KitColumns.JOINTS, circuit.joints());
        json.writeArrayPropertyStart("tooShort");
        for (KitCircuit.TooShort each : circuit.stretches()) {
            json.writeStartObject();
            objects.strings("parts", each.parts());
            objects.number("partsM", each.partsM());
            objects.number("distanceM", each.distanceM());
            json.writeEndObject();
        }
        json.writeEndArray();
        objects.array("notices", Columns.NOTICES, circuit.notices());
        json.writeEndObject();
    }
}
