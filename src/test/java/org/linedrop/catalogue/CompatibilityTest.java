package org.linedrop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.fact.Status;

/** Linings against fluids. */
class CompatibilityTest {
    private static final Catalogue ALL = Catalogue.standard();

    @ParameterizedTest
    @CsvSource({
        "race rubber -6, E85, no",
        "MIL-H-8794 -6, E85, limited",
        "MIL-H-8788 -6, E85, limited",
        "race PTFE -6, E85, yes",
        "true-size PTFE -6, E85 summer, yes",
        "race rubber -6, engine oil, yes",
        "coolant hose 1 in, coolant, yes",
        "coolant hose 1 in, engine oil, no",
        "race rubber -6, brake fluid DOT 4, no",
        "race PTFE -6, molten salt, unknown"
    })
    void grades(String hose, String fluid, String brief) {
        Compatibility found = ALL.compatibility(ALL.hose(hose).liner(), fluid);
        assertThat(found.grade().brief()).isEqualTo(brief);
    }

    @Test
    void ptfeForAnyFuelSaysConductiveInTheSameLine() {
        for (String fuel : List.of("petrol", "petrol E10", "E85", "ethanol", "methanol", "diesel", "biodiesel")) {
            Compatibility row = ALL.compatibility("PTFE", fuel);
            assertThat(row.grade()).as(fuel).isEqualTo(Compatibility.Grade.RECOMMENDED);
            assertThat(row.text())
                    .as(fuel)
                    .contains("recommended", "conductive")
                    .doesNotContain("\n");
        }
        assertThat(ALL.compatibility("PTFE", "engine oil").text()).doesNotContain("conductive");
    }

    @Test
    void whatDoesNotSuitSaysWhatToAskFor() {
        assertThat(ALL.rows().compatibility()).hasSize(105).allSatisfy(row -> {
            if (row.grade() != Compatibility.Grade.RECOMMENDED) {
                assertThat(row.askFor()).as(row.text()).startsWith("ask for ".substring(0, 4));
            }
            assertThat(row.source().status()).isIn(Status.PUBLISHED, Status.FROM_MEMORY);
        });
    }

    @Test
    void everyLiningMeetsEveryFluid() {
        List<String> liners = ALL.rows().compatibility().stream()
                .map(Compatibility::liner)
                .distinct()
                .toList();
        List<String> fluids = ALL.rows().compatibility().stream()
                .map(Compatibility::fluid)
                .distinct()
                .toList();
        assertThat(liners).hasSize(7);
        assertThat(fluids).hasSize(15);
        for (String liner : liners) {
            for (String fluid : fluids) {
                assertThat(ALL.compatibility(liner, fluid).grade()).isNotEqualTo(Compatibility.Grade.UNKNOWN);
            }
        }
        CatalogueTraceTest.read("fluid_names").forEach(row -> assertThat(fluids).contains(row.getField("fluid")));
    }

    @Test
    void severalLiningsCountAsTheWorst() {
        Compatibility fuelHose = ALL.compatibility("NBR or FKM", "E85");
        assertThat(fuelHose.grade()).isEqualTo(Compatibility.Grade.LIMITED);
        assertThat(fuelHose.liner()).isEqualTo("NBR or FKM");
        assertThat(fuelHose.askFor()).isEqualTo("ask for FKM (recommended)");
        assertThat(fuelHose.note()).contains("graded as NBR");
    }
}
