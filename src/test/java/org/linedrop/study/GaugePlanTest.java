package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;

class GaugePlanTest {
    private static GaugePlan of(String example) throws IOException {
        Circuit circuit = CircuitFile.read(Path.of("src/examples").resolve(example));
        return GaugePlan.of(circuit, circuit.caseNames());
    }

    private static GaugePlan.Place place(GaugePlan plan, String id, String at) {
        return plan.places().stream()
                .filter(place -> place.id().equals(id) && place.at().equals(at))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aReadingForEveryPlaceAndCase() throws IOException {
        GaugePlan plan = of("fuel-feed-516.yaml");
        assertThat(plan.cases().stream().map(GaugePlan.Case::name))
                .containsExactly("full load", "low volts", "hot idle");
        assertThat(plan.places().stream().map(place -> place.id() + " " + place.at()))
                .containsExactly(
                        "tank tank",
                        "regulator held",
                        "rail draw",
                        "pump inlet",
                        "pump outlet",
                        "filter inlet",
                        "filter outlet");
        assertThat(plan.places())
                .allSatisfy(place -> assertThat(place.readings())
                        .hasSize(3)
                        .allSatisfy(
                                reading -> assertThat(reading.usualPa()).isBetween(reading.lowPa(), reading.highPa())));
        // rho g h of the 80 mm of E85 over the outlet: 764 kg/m3 at 40 C as the example's report prints it
        assertThat(place(plan, "tank", "tank").readings().get(0).usualPa())
                .isCloseTo(764 * 9.80665 * 0.080, within(1.0));
        // a vessel that is held reads what is held
        assertThat(place(plan, "regulator", "held").readings())
                .allSatisfy(reading -> assertThat(reading.usualPa()).isCloseTo(400e3, within(1e-3)));
        assertThat(plan.cases().get(0).ambientPa()).isCloseTo(101_325, within(1e-6));
        assertThat(plan.cases().get(0).liftPaPerM()).isCloseTo(764 * 9.80665, within(10.0));
    }

    @Test
    void readingsAreStaticInTheBoreBesideTheDevice() throws IOException {
        Circuit circuit = CircuitFile.read(Path.of("src/examples/fuel-feed-516.yaml"));
        GaugePlan.Place outlet = place(of("fuel-feed-516.yaml"), "filter", "outlet");
        PartRow next = null;
        List<PartRow> rows = Result.of(circuit).rows("supply");
        for (int i = 0; i + 1 < rows.size(); i++) {
            if (rows.get(i).part().equals("filter")) {
                next = rows.get(i + 1);
            }
        }
        assertThat(next).isNotNull();
        double density = next.massFlowKgPerS() / next.flowM3PerS();
        double area = Math.PI / 4 * outlet.boreM() * outlet.boreM();
        double speed = next.flowM3PerS() / area;
        assertThat(outlet.readings().get(0).usualPa())
                .isCloseTo(next.totalPressureInPa() - density * speed * speed / 2, within(1e-3));
    }

    @Test
    void aDeviceWithSeveralPortsHasAReadingAtEach() throws IOException {
        Circuit circuit = CircuitFile.read(Path.of("src/examples/return-style.yaml"));
        GaugePlan plan = GaugePlan.of(circuit, List.of(circuit.caseName()));
        Result result = Result.of(circuit);
        double back = result.rows("return").get(0).staticPressureInPa();
        assertThat(place(plan, "regulator", "return").readings().get(0).usualPa())
                .isCloseTo(back, within(1e-6));
        assertThat(place(plan, "regulator", "return").boreM()).isPositive();
        assertThat(place(plan, "regulator", "inlet").readings().get(0).usualPa())
                .isGreaterThan(
                        place(plan, "regulator", "return").readings().get(0).usualPa());
    }

    @Test
    void narrowBoresTakeFromTheRail() throws IOException {
        GaugePlan plan = of("fuel-feed-516.yaml");
        GaugePlan.Reading rail = place(plan, "rail", "draw").readings().get(0);
        assertThat(rail.hasBand()).isTrue();
        assertThat(rail.lowPa()).isLessThan(rail.usualPa());
        assertThat(rail.highPa()).isGreaterThan(rail.usualPa());
        // measured bores leave no band
        GaugePlan measured = of("own-hose.yaml");
        assertThat(place(measured, "back", "draw").readings())
                .allSatisfy(reading -> assertThat(reading.hasBand()).isFalse());
    }

    @Test
    void aCaseThatIsNotSolvedHasNoReadings() throws IOException {
        Circuit circuit = CircuitFile.read(Path.of("src/test/resources/org/linedrop/report/too-much.yaml"));
        GaugePlan plan = GaugePlan.of(circuit, circuit.caseNames());
        assertThat(plan.cases()).anySatisfy(each -> {
            assertThat(each.solved()).isFalse();
            assertThat(each.detail()).isNotEmpty();
        });
        for (int i = 0; i < plan.cases().size(); i++) {
            boolean solved = plan.cases().get(i).solved();
            for (GaugePlan.Place place : plan.places()) {
                assertThat(Double.isNaN(place.readings().get(i).usualPa())).isEqualTo(!solved);
            }
        }
    }
}
