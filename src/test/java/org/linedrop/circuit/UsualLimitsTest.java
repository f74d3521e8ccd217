package org.linedrop.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.fact.Notice;
import org.linedrop.io.CircuitFile;

/** What each service asks where the file says nothing of it. */
class UsualLimitsTest {
    private static final String FILE = """
            linedrop: 1
            service: SERVICE
            fluid: FLUID
            temperature: 90 C
            engine: {speed: 6000 rpm}
            points:
              tank: {kind: tank}
              end: {kind: draw, takes: TAKES}
            devices:
              pump: {kind: pump, curves: [{at: 12 V, pressure: 0 400 800 kPa, flow: 600 500 0 L/h}], runs at: 12 V}
              cooler: {kind: cooler, drop: 20 kPa at 20 L/min with 14 cSt}
            runs:
              line: {from: tank, to: end, parts: [{through: pump}, {through: cooler}]}
            """;

    private static Circuit circuit(String service, String more) {
        String oil = service.contains("fuel") ? "E10" : service.equals("coolant") ? "ethylene glycol 50 %" : "ATF";
        String takes = service.equals("engine oil") ? "20 L/min at 300 kPa with 14 cSt, law: bearings" : "100 L/h";
        return CircuitFile.read(
                FILE.replace("SERVICE", service)
                                .replace("FLUID", oil)
                                .replace("TAKES", takes)
                                .replace("90 C", service.contains("fuel") ? "30 C" : "90 C")
                        + more,
                "");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "injected fuel | pump inlet vacuum at most 10 kPa",
                "carburettor fuel | pump inlet vacuum at most 10 kPa; end pressure at most 55.158 kPa",
                "engine oil | pump inlet vacuum at most 30 kPa; cooler inlet pressure at most 1000 kPa;"
                        + " end pressure at least 413.685 kPa",
                "gearbox oil | pump inlet vacuum at most 30 kPa; cooler flow at least 114 L/h",
                "coolant | pump inlet margin at least 30 kPa",
                "power steering | pump inlet vacuum at most 7 kPa; cooler inlet pressure at most 200 kPa",
                "brake |"
            })
    void eachServiceHasItsOwn(String service, String limits) {
        Circuit circuit = circuit(service, "");
        assertThat(circuit.limits())
                .extracting(limit -> limit.id() + " " + limit.bound().write().replaceAll("(\\.\\d{3})\\d+", "$1"))
                .containsExactlyElementsOf(limits == null ? List.of() : List.of(limits.split("; ")));
        assertThat(circuit.limits()).allMatch(limit -> limit.from().equals("usual: service"));
        assertThat(circuit.assumptions().stream().filter(notice -> notice.id().equals("usual-limit")))
                .hasSameSizeAs(circuit.limits())
                .extracting(Notice::text)
                .allMatch(text -> text.contains("common practice"));
    }

    @Test
    void offBecauseTakesOneAwayAndIsSaid() {
        Circuit circuit = circuit("coolant", "limits: {pump: {inlet margin: off because the tank stands high}}\n");
        assertThat(circuit.limits()).isEmpty();
        assertThat(circuit.assumptions())
                .extracting(Notice::text)
                .contains("inlet margin has no limit here: off because the tank stands high");
    }

    @Test
    void theFilesOwnReplacesIt() {
        Circuit circuit = circuit("power steering", "limits: {pump: {inlet vacuum: at most 9 kPa}}\n");
        assertThat(circuit.limits())
                .extracting(limit -> limit.id() + " " + limit.bound().write() + ", " + limit.from())
                .containsExactly(
                        "pump inlet vacuum at most 9 kPa, this file",
                        "cooler inlet pressure at most 200 kPa, usual: service");
    }
}
