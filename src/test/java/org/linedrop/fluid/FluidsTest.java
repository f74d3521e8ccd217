package org.linedrop.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of fluids: forgiving reading, one canonical spelling, suggestions. */
class FluidsTest {

    static java.util.List<String> names() {
        return Fluids.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyCanonicalNameIsFoundAndWrittenBack(String name) {
        assertThat(Fluids.find(name).name()).isEqualTo(name);
        assertThat(Fluids.find(name)).isEqualTo(Fluids.find(name));
        assertThat(Fluids.find("  " + name.toUpperCase(Locale.ROOT).replace(" ", "-") + " "))
                .isEqualTo(Fluids.find(name));
    }

    @Test
    void namesAndIdsAreDistinct() {
        Set<String> ids = new HashSet<>();
        for (Fluid fluid : Fluids.all()) {
            assertThat(ids.add(fluid.id())).as(fluid.id()).isTrue();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "water, water",
        "E85 summer, E85 summer",
        "summer E85, E85 summer",
        "e85-winter, E85 winter",
        "ethanol 74 %, ethanol 74 %",
        "ethanol 74%, ethanol 74 %",
        "ethanol: 74, ethanol 74 %",
        "ethanol 74, ethanol 74 %",
        "74 % ethanol, ethanol 74 %",
        "ethanol 7.4 %, ethanol 7.4 %",
        "ethanol 20 % winter, ethanol 20 % winter",
        "E20 winter, ethanol 20 % winter",
        "E10, E10",
        "E100, ethanol",
        "ethanol 100 %, ethanol",
        "gasoline summer, petrol summer",
        "summer petrol, petrol summer",
        "petrol class D4814 B, petrol D4814 B",
        "glycol 50 %, ethylene glycol 50 %",
        "ethylene-glycol 45%, ethylene glycol 45 %",
        "propylene glycol 40 % vol, propylene glycol 40 %",
        "glycol 0 %, water",
        "engine oil 15W-50, engine oil 15W-50",
        "15w50, engine oil 15W-50",
        "SAE 5W30, engine oil 5W-30",
        "engine oil SAE 30, engine oil SAE 30",
        "engine oil 30, engine oil SAE 30",
        "75W90, gear oil 75W-90",
        "ISO VG 46, hydraulic oil VG 46",
        "DOT 4, brake fluid DOT 4",
        "DOT 5.1, brake fluid DOT 5.1",
        "brake fluid DOT 4 LV, brake fluid DOT 4 low viscosity",
        "Jet A1, jet A-1",
        "100LL, avgas 100LL",
        "automatic transmission fluid, ATF",
        "AIR, air"
    })
    void otherSpellingsAreRead(String written, String canonical) {
        Fluid fluid = Fluids.find(written);
        assertThat(fluid.name()).isEqualTo(canonical);
        assertThat(Fluids.find(fluid.name())).isEqualTo(fluid);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "E85 sumer | E85 summer",
                "engin oil 5W-30 | engine oil 5W-30",
                "metanol | methanol",
                "etanol | ethanol",
                "watr | water",
                "brake fluid DOT 44 | brake fluid DOT 4",
                "prtrol summer | petrol summer",
                "hydraulic oil VG 64 | hydraulic oil VG 46",
                "deisel EN 590 | diesel EN 590"
            })
    void misspeltNamesAreSuggested(String written, String meant) {
        assertThatThrownBy(() -> Fluids.find(written))
                .isInstanceOf(UnknownFluidException.class)
                .hasMessageContaining("\"" + written + "\" is not known. Did you mean")
                .hasMessageContaining("\"" + meant + "\"")
                .satisfies(e -> assertThat(((UnknownFluidException) e).suggestions())
                        .first()
                        .isEqualTo(meant));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "E58 summer | E85 summer | ethanol 58 %",
                "E58 | E85 summer | ethanol 58 %",
                "e-86 winter | E85 winter | ethanol 86 %",
                "E11 | E10 | ethanol 11 %",
                "E8 winter | E10 winter | ethanol 8 %",
                "E850 | E85 summer | ethanol 74 %"
            })
    void aGradeThatNobodySellsIsASlip(String written, String meant, String own) {
        assertThatThrownBy(() -> Fluids.find(written))
                .isInstanceOf(UnknownFluidException.class)
                .hasMessage("fluid \"" + written + "\" is no grade that is sold. Did you mean \"" + meant
                        + "\"? A share of ethanol by volume is written \"" + own + "\"");
        assertThat(Fluids.find("E20").name())
                .isEqualTo(Fluids.find("ethanol 20 %").name());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "E85",
                "petrol",
                "gasoline",
                "petrol A",
                "diesel",
                "oil",
                "engine oil",
                "gear oil",
                "hydraulic oil",
                "power steering fluid",
                "brake fluid",
                "glycol",
                "coolant",
                "ethylene glycol"
            })
    void ambiguousNamesSayWhatToWrite(String written) {
        assertThatThrownBy(() -> Fluids.find(written))
                .isInstanceOf(UnknownFluidException.class)
                .hasMessageMatching("fluid .* (does not say|is a class of two standards).* Write \".*")
                .satisfies(e -> {
                    UnknownFluidException u = (UnknownFluidException) e;
                    assertThat(u.suggestions()).hasSizeGreaterThan(1);
                    for (String name : u.suggestions()) {
                        assertThat(Fluids.find(name).name()).isEqualTo(name);
                    }
                });
    }

    @Test
    void nonsenseGetsNoSuggestion() {
        assertThatThrownBy(() -> Fluids.find("xylophone"))
                .isInstanceOf(UnknownFluidException.class)
                .hasMessage("fluid \"xylophone\" is not known. Write one of the listed fluids, or describe a fluid of"
                        + " your own");
    }

    @Test
    void concentrationsOutsideTheTablesAreRefused() {
        assertThatThrownBy(() -> Fluids.find("glycol 70 %"))
                .isInstanceOf(UnknownFluidException.class)
                .hasMessageContaining("glycol is 70 % by volume; allowed are 0 to 60 %");
        assertThatThrownBy(() -> Fluids.find("ethanol 140 %"))
                .isInstanceOf(UnknownFluidException.class)
                .hasMessageContaining("ethanol is 140 % by volume; allowed are above 0 to 100 %");
        assertThatThrownBy(() -> Fluids.ethanolBlend(Double.NaN, true)).isInstanceOf(UnknownFluidException.class);
    }

    @ParameterizedTest
    @MethodSource("names")
    void fluidsSurviveSerialisation(String name) throws IOException, ClassNotFoundException {
        Fluid fluid = Fluids.find(name);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(fluid);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            Object back = in.readObject();
            assertThat(back).isEqualTo(fluid).hasSameHashCodeAs(fluid);
        }
    }
}
