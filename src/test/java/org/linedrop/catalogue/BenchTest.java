package org.linedrop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchTest {
    private static final Bench BENCH = Bench.standard();
    private static final double INCH_M = 0.0254;

    /** RMA/IP-2 (2003) table 4-8, copied a second time. */
    @ParameterizedTest
    @CsvSource({"6, 0.125", "12, 0.125", "12.1, 0.188", "24, 0.188", "36, 0.25", "48, 0.375", "72, 0.5", "100, 1.0"})
    void cutTolerance(double lengthIn, double toleranceIn) {
        assertThat(BENCH.cutToleranceM(lengthIn * INCH_M).value()).isCloseTo(toleranceIn * INCH_M, within(1e-12));
    }

    /** After SAE J517, from memory. */
    @ParameterizedTest
    @CsvSource({"12, 0.125", "18, 0.1875", "36, 0.25", "40, 0.40"})
    void assemblyTolerance(double lengthIn, double toleranceIn) {
        assertThat(BENCH.assemblyToleranceM(lengthIn * INCH_M).value()).isCloseTo(toleranceIn * INCH_M, within(1e-12));
    }

    @Test
    void slackTakesUpTheChangeOfLength() {
        assertThat(BENCH.slackShare().low()).isEqualTo(0.05);
        assertThat(BENCH.slackShare().high()).isEqualTo(0.08);
        assertThat(BENCH.lengthChangeShare().low()).isEqualTo(-0.04);
        assertThat(BENCH.lengthChangeShare().high()).isEqualTo(0.02);
        assertThat(BENCH.slackShare().low())
                .isGreaterThan(-BENCH.lengthChangeShare().low());
    }

    @Test
    void everyTubeMaterialHasADensity() {
        assertThat(Catalogue.standard().rows().tubeMaterials())
                .allSatisfy(material -> assertThat(BENCH.densityKgPerM3(material.name()))
                        .as(material.name())
                        .isPresent());
    }

    @Test
    void noReminderIsSharedBetweenRubberAndPtfe() {
        List<String> rubber = texts("rubber ");
        List<String> ptfe = texts("PTFE ");
        assertThat(rubber).isNotEmpty().doesNotContainAnyElementsOf(ptfe);
        assertThat(ptfe).isNotEmpty();
        // what is neither is about seats, tubes and routes, not about an end on a hose
        assertThat(BENCH.notes())
                .filteredOn(note ->
                        !note.kind().startsWith("rubber ") && !note.kind().startsWith("PTFE "))
                .allSatisfy(note -> assertThat(note.text()).doesNotContain("ferrule", "socket", "nipple", "liner"));
    }

    private static List<String> texts(String lining) {
        return BENCH.notes().stream()
                .filter(note -> note.kind().startsWith(lining))
                .map(Bench.Note::text)
                .toList();
    }

    @Test
    void everyKindOfEndHasAReminderAndATool() {
        for (NippleSize nipple : Catalogue.standard().rows().nipples()) {
            String lining =
                    Catalogue.standard().family(nipple.family()).surface().equals("PTFE") ? "PTFE " : "rubber ";
            assertThat(BENCH.notes())
                    .as(nipple.family() + " " + nipple.build())
                    .anyMatch(note -> note.kind().equals(lining + nipple.build())
                            && note.what().equals("reminder"))
                    .anyMatch(note -> note.kind().equals(lining + nipple.build())
                            && note.what().equals("tool"));
        }
    }

    @Test
    void lengthMustBeAboveZero() {
        assertThatThrownBy(() -> BENCH.cutToleranceM(0)).hasMessageContaining("above zero");
        assertThatThrownBy(() -> BENCH.cutToleranceM(Double.NaN)).hasMessageContaining("above zero");
    }
}
