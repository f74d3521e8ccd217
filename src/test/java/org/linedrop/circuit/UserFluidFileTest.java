package org.linedrop.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.fluid.Fluid;
import org.linedrop.fluid.FluidState;
import org.linedrop.fluid.Fluids;

/** Fluids of the user's own: what a file may say of them, and what is questioned. */
class UserFluidFileTest {
    private static final Tree.Branch PLUMBING = Tree.of("linedrop", "1", "temperature", "40 C")
            .with("points", tree("tank", Tree.of("kind", "tank"), "end", Tree.of("kind", "draw", "takes", "100 L/h")))
            .with("runs", tree("feed", Tree.of("from", "tank", "to", "end", "parts", "none")));

    private static Tree.Branch tree(Object... keys) {
        Tree.Branch made = Tree.of();
        for (int i = 0; i < keys.length; i += 2) {
            made = made.with((String) keys[i], (Tree) keys[i + 1]);
        }
        return made;
    }

    private static Circuit circuit(String fluid, Tree.Branch fluids) {
        return Circuit.of(PLUMBING.with("fluid", Tree.text(fluid)).with("fluids", fluids), "");
    }

    private static Fluid mine(String... keys) {
        return circuit("mine", tree("mine", Tree.of(keys))).surroundings().fluid();
    }

    private static List<String> problems(String... keys) {
        return catchThrowableOfType(ProblemsException.class, () -> mine(keys)).problems().stream()
                .map(Problem::line)
                .toList();
    }

    private static double centistokes(Fluid fluid, double celsius) {
        FluidState state = fluid.at(celsius + 273.15);
        return state.dynamicViscosityPaS() / state.densityKgPerM3() * 1e6;
    }

    @Test
    void twoViscositiesGoThroughTheirPointsAndBetweenByD341() {
        Fluid oil = mine(
                "at", "40 100 C", "viscosity", "125 17.5 cSt from sheet", "density", "868 kg/m3", "density at", "15 C");
        assertThat(centistokes(oil, 40)).isCloseTo(125, within(1e-9 * 125));
        assertThat(centistokes(oil, 100)).isCloseTo(17.5, within(1e-9 * 17.5));
        assertThat(centistokes(oil, 70)).isBetween(38.0, 45.0);
        assertThat(oil.at(288.15).densityKgPerM3()).isCloseTo(868, within(1e-9 * 868));
        assertThat(oil.at(373.15).densityKgPerM3()).isBetween(800.0, 820.0);
    }

    @Test
    void oneFigureReplacesThatOfTheFluidItIsLike() {
        Fluid petrol = Fluids.find("petrol summer");
        Fluid mine = mine("like", "petrol summer", "viscosity", "0.5 cSt measured");
        assertThat(centistokes(mine, 10)).isCloseTo(0.5, within(1e-12));
        assertThat(centistokes(mine, 60)).isCloseTo(0.5, within(1e-12));
        assertThat(mine.at(313.15).densityKgPerM3()).isEqualTo(petrol.at(313.15).densityKgPerM3());
        assertThat(mine.at(313.15).vapourPressurePa())
                .isEqualTo(petrol.at(313.15).vapourPressurePa());
        assertThat(mine.family()).isEqualTo(petrol.family());
    }

    @Test
    void aTableGoesThroughEveryRow() {
        Fluid oil = mine(
                "like",
                "engine oil 5W-30",
                "at",
                "20 40 100 C",
                "viscosity",
                "160 65 11 cSt",
                "density",
                "860 846 806 kg/m3");
        assertThat(centistokes(oil, 20)).isCloseTo(160, within(1e-9 * 160));
        assertThat(centistokes(oil, 100)).isCloseTo(11, within(1e-9 * 11));
        assertThat(oil.at(313.15).densityKgPerM3()).isCloseTo(846, within(1e-9 * 846));
        Fluid dynamic = mine("like", "engine oil 5W-30", "at", "40 100 C", "viscosity", "55 9 cP");
        assertThat(dynamic.at(373.15).dynamicViscosityPaS()).isCloseTo(9e-3, within(1e-12));
    }

    @Test
    void whatIsTheUsersOwnIsAnAssumptionAndACaseMayChangeIt() {
        Circuit circuit = Circuit.of(
                PLUMBING.with("fluid", Tree.text("mine"))
                        .with("fluids", tree("mine", Tree.of("like", "E10", "viscosity", "0.5 cSt measured")))
                        .with("cases", tree("thick", tree("mine", Tree.of("viscosity", "0.7 cSt")))),
                "");
        assertThat(circuit.assumptions())
                .extracting(Notice::text)
                .contains("viscosity (measured) of your own; the rest as E10");
        assertThat(centistokes(circuit.in("thick").surroundings().fluid(), 40)).isCloseTo(0.7, within(1e-12));
    }

    @Test
    void aRatedPointInAFluidOfNoFamilyIsLeftToTheService() {
        String[] water = {"viscosity", "1 cSt", "density", "1000 kg/m3"};
        assertThat(mine(water).family()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "like = petrol summer; viscosity = 5 cSt"
                        + " | mine: viscosity \"5 cSt\": petrol summer at 40 C is near 0.45 cSt; 5 cSt is thin oil."
                        + " Keep it? Write \"5 cSt really\"",
                "judged as = petrol E10; viscosity = 5 cSt; density = 750 kg/m3"
                        + " | mine: viscosity \"5 cSt\": E10 at 40 C is near 0.49 cSt; 5 cSt is thin oil."
                        + " Keep it? Write \"5 cSt really\"",
                "like = engine oil 15W-50; at = 40 100 C; viscosity = 17.5 2 cSt"
                        + " | mine: viscosity \"17.5 2 cSt\": engine oil 15W-50 at 40 C is near 125 cSt; 17.5 cSt is oil."
                        + " Keep it? Write \"17.5 2 cSt really\"",
                "like = petrol summer; density = 0.95 kg/L"
                        + " | mine: density \"0.95 kg/L\": petrol summer at 40 C is near 722 kg/m3."
                        + " Keep it? Write \"0.95 kg/L really\"",
                "like = engine oil 15W-50; at = 40 100 C; viscosity = 17.5 125 cSt"
                        + " | mine: viscosity \"17.5 125 cSt\" does not fall. A liquid gets thinner when hot: give the"
                        + " figure of the coldest column first",
                "like = engine oil 15W-50; at = 100 40 C; viscosity = 125 17.5 cSt"
                        + " | mine: temperatures of a fluid rise from one column to the next. Sort the columns",
                "like = engine oil 15W-50; at = 40 100 C; viscosity = 125 cSt"
                        + " | mine: viscosity: 1 figure stands against 2 temperatures. Give one figure for each"
                        + " temperature",
                "like = engine oil 15W-50; viscosity = 125 17.5 cSt"
                        + " | mine: viscosity: 2 figures stand against no temperature. Give at: with a temperature for"
                        + " each",
                "like = engine oil 15W-50; at = 100 C; viscosity = 17.5 cSt"
                        + " | mine: one temperature says nothing of the others. Give two, for example at: 40 100 C;"
                        + " without at: a figure holds at every temperature",
                "at = 40 100 C; viscosity = 125 17.5 cSt"
                        + " | mine: density is missing. Give density: 868 kg/m3 and density at: 15 C, or like: and a"
                        + " fluid near it",
                "like = engine oil 15W-50"
                        + " | mine: mine has no figure of its own. Give one, or write its name after fluid:",
                "like = engine oil 15W-50; viscosity = 125"
                        + " | mine: viscosity \"125\" has no unit. Centistokes? Write 125 cSt. (cSt, mm2/s, mPa s, cP"
                        + " are read)",
                "like = engine oil 15W-50; viscosity = 125 cSt +/- 5 cSt"
                        + " | mine: viscosity \"125 cSt +/- 5 cSt\": a fluid's figures take no band. Write the figure"
                        + " alone",
                "like = engine oil 15W-50; thickness = 125 cSt"
                        + " | mine: a fluid has no key \"thickness\". It takes: like, judged as, at, viscosity, density,"
                        + " density at, vapour pressure"
            })
    void everyMistakeIsSaidInItsOwnWords(String keys, String message) {
        String[] words = keys.split(" = |; ");
        assertThat(problems(words)).containsExactly(message);
    }

    @Test
    void whatIsInsistedOnIsTaken() {
        assertThat(centistokes(mine("like", "petrol summer", "viscosity", "5 cSt really"), 40))
                .isCloseTo(5, within(1e-12));
    }

    @Test
    void namesOfTheLibraryAreTaken() {
        List<Problem> problems = catchThrowableOfType(
                        ProblemsException.class,
                        () -> circuit("E10", tree("E10", Tree.of("like", "E10", "viscosity", "0.5 cSt"))))
                .problems();
        assertThat(problems)
                .extracting(Problem::line)
                .containsExactly("E10: \"E10\" is a fluid of the library. Give yours another name");
    }

    @Test
    void anOwnNameWithASlipIsSuggested() {
        List<Problem> problems = catchThrowableOfType(
                        ProblemsException.class,
                        () -> circuit("club oyl", tree("club oil", Tree.of("like", "E10", "viscosity", "0.5 cSt"))))
                .problems();
        assertThat(problems)
                .singleElement()
                .extracting(Problem::line)
                .asString()
                .endsWith("did you mean your own club oil?");
    }
}
