package org.linedrop.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.fluid.Fluids;
import org.linedrop.io.CircuitFile;

/** A rated point of an oil or glycol part says with which liquid; fuel and water are their own. */
class RatedLiquidTest {
    private static String oilLoop() throws IOException {
        return Files.readString(Path.of("src/test/resources/org/linedrop/io/front-cooler.yaml"));
    }

    private static List<String> problems(String text) {
        return catchThrowableOfType(ProblemsException.class, () -> CircuitFile.read(text, "oil.yaml"))
                .problems()
                .stream()
                .map(Problem::line)
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "drop: 55 kPa at 45 L/min | cooler: drop",
                "drop: 25 kPa at 45 L/min | filter: drop",
                "drop: 12 kPa at 45 L/min | plate: drop",
                "leaks: 3 L/min at 400 kPa | oil pump: leaks",
                "wide open: 560 kPa at 60 L/min | relief: wide open",
                "takes: 40 L/min at 350 kPa | gallery: takes"
            })
    void everyRatedPointOfAnOilCircuitNeedsIt(String point, String where) throws IOException {
        String text = oilLoop();
        assertThat(text).contains(point + " with 14 cSt");
        String bare = point.substring(point.indexOf(": ") + 2);
        assertThat(problems(text.replace(point + " with 14 cSt", point)))
                .singleElement()
                .asString()
                .endsWith(where + " \"" + bare + "\": with which liquid? Cold oil is ten times thicker than hot, cold"
                        + " coolant three times. Write the viscosity it was rated with, for example " + bare
                        + " with 14 cSt (hot engine oil; water at 20 C is 1 cSt)");
    }

    @Test
    void theWordsBehindItStayBehind() throws IOException {
        assertThat(problems(oilLoop().replace("25 kPa at 45 L/min with 14 cSt", "25 kPa at 45 L/min from sheet")))
                .singleElement()
                .asString()
                .contains("for example 25 kPa at 45 L/min with 14 cSt from sheet (");
    }

    @ParameterizedTest
    @CsvSource({
        "engine oil 15W-50, true",
        "ATF, true",
        "gear oil 75W-90, true",
        "power steering fluid synthetic, true",
        "ethylene glycol 50 %, true",
        "brake fluid DOT 4, true",
        "water, false",
        "E85 summer, false",
        "petrol summer, false",
        "methanol, false",
        "diesel EN 590, false",
        "jet A-1, false",
        "air, false"
    })
    void oilAndGlycolNeedItAndFuelDoesNot(String fluid, boolean needed) {
        assertThat(RatedLiquid.needed(Fluids.find(fluid), true)).isEqualTo(needed);
    }

    @Test
    void aFuelFilterNeedsNone() {
        Tree.Branch filter = Tree.of("kind", "filter", "drop", "6 kPa at 300 L/h");
        assertThatCode(() -> Circuit.of(
                        Tree.of("linedrop", "1", "fluid", "E10", "temperature", "20 C")
                                .with(
                                        "points",
                                        Tree.of()
                                                .with("tank", Tree.of("kind", "tank"))
                                                .with("end", Tree.of("kind", "draw", "takes", "100 L/h")))
                                .with("devices", Tree.of().with("filter", filter))
                                .with(
                                        "runs",
                                        Tree.of()
                                                .with(
                                                        "feed",
                                                        Tree.of("from", "tank", "to", "end")
                                                                .with(
                                                                        "parts",
                                                                        Tree.items(Tree.of("through", "filter"))))),
                        ""))
                .doesNotThrowAnyException();
    }
}
