package org.linedrop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.fact.Status;

/** Look-ups that succeed, and what failing ones say. */
class CatalogueTest {
    private static final Catalogue ALL = Catalogue.standard();

    private static CatalogueException refused(Runnable lookUp) {
        try {
            lookUp.run();
        } catch (CatalogueException e) {
            return e;
        }
        throw new AssertionError("nothing was refused");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-6", "-6AN", "AN6", "an-6", " - 6 ", "6AN"})
    void readsDashesAsTheTradeWritesThem(String size) {
        assertThat(ALL.hose("race PTFE", size).sizeText()).isEqualTo("-6");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5/16 in", "5/16", "5/16\"", "5/16in"})
    void readsInches(String size) {
        assertThat(ALL.hose("fuel hose", size).sizeText()).isEqualTo("5/16 in");
    }

    @Test
    void everyFamilyOfTheTradeIsThere() {
        assertThat(ALL.families())
                .extracting(HoseFamily::name)
                .containsExactly(
                        "race rubber",
                        "race PTFE",
                        "true-size PTFE",
                        "convoluted PTFE",
                        "MIL-H-8794",
                        "MIL-H-8788",
                        "100R5",
                        "AS1946",
                        "100R14 tube-size",
                        "100R14 true-size",
                        "push-on",
                        "fuel hose",
                        "coolant hose",
                        "brake hose");
        assertThat(ALL.families())
                .allSatisfy(f -> assertThat(ALL.hoses())
                        .anySatisfy(h -> assertThat(h.family()).isEqualTo(f.name())));
    }

    @Test
    void hoseByTextIsHoseByFamilyAndSize() {
        assertThat(ALL.hose("race PTFE -8")).isEqualTo(ALL.hose("race PTFE", "-8"));
        assertThat(ALL.hose("100R14 true-size -6")).isEqualTo(ALL.hose("100R14 true-size", "-6"));
        assertThat(ALL.hose("fuel hose 5/16 in")).isEqualTo(ALL.hose("fuel hose", "5/16 in"));
        assertThat(ALL.hose("coolant hose 1-1/4 in")).isEqualTo(ALL.hose("coolant hose", "1-1/4 in"));
    }

    @Test
    void aNameForTwoBoresShowsBoth() {
        assertThat(refused(() -> ALL.hose("100R14 -6")).message())
                .isEqualTo("100R14 is sold in two bores: write 100R14 tube-size -6 (7.9 mm) or 100R14 true-size -6 "
                        + "(9.5 mm), or give bore:");
        assertThat(refused(() -> ALL.hose("100R14", "-8")).message()).contains("(10.3 mm)", "(12.7 mm)");
    }

    @Test
    void aDashAloneShowsTheRangeOfBores() {
        CatalogueException refused = refused(() -> ALL.hose("-8"));
        assertThat(refused.message()).isEqualTo("hose \"-8\": which hose? The bore of -8 is 9.9 to 12.7 mm by family");
        assertThat(refused.hint()).isEqualTo("For example race PTFE -8; see: linedrop catalogue hoses --dash 8");
    }

    @Test
    void nearestNamesAreOffered() {
        assertThat(refused(() -> ALL.hose("race PFTE -8")).hint()).startsWith("Did you mean race PTFE?");
        assertThat(refused(() -> ALL.hose("garden hose -8")).hint()).contains("race rubber", "brake hose");
        assertThat(refused(() -> ALL.hose("race PTFE")).message()).isEqualTo("\"race PTFE\" has no size");
        assertThat(refused(() -> ALL.hose("race PTFE -7")).hint()).contains("-6", "-8");
        assertThat(refused(() -> ALL.hose("fuel hose -6")).message()).contains("sized by inch");
        assertThat(refused(() -> ALL.hose("race PTFE 3/8 in")).message()).contains("sized by dash");
        assertThat(refused(() -> ALL.hose("race PTFE #8")).hint()).isEqualTo("Write race PTFE -8");
        assertThat(refused(() -> ALL.hose("race PTFE 8")).hint()).isEqualTo("Write race PTFE -8");
        assertThat(refused(() -> ALL.hose("ptfe -6")).hint())
                .isEqualTo("Did you mean race PTFE or true-size PTFE or convoluted PTFE?");
        assertThat(refused(() -> ALL.hose("8")).message()).contains("9.9 to 12.7 mm");
        assertThat(refused(() -> ALL.hose("5/16 in")).hint()).isEqualTo("Write fuel hose 5/16 in");
        assertThat(ALL.hose("race PTFE-6")).isEqualTo(ALL.hose("race PTFE -6"));
        assertThat(refused(() -> ALL.end(ALL.hose("race PTFE -6"), "barb", 0)).message())
                .contains("does not hold on a barb");
        assertThat(refused(() -> ALL.hose("")).message()).contains("no hose family");
    }

    @Test
    void missingStaysMissing() {
        assertThat(ALL.hose("100R14 tube-size", "-6").workingPressurePa()).isNull();
        assertThat(ALL.hose("MIL-H-8788", "-16").burstPressurePa()).isNull();
        assertThat(ALL.hose("coolant hose", "1-1/4 in").workingPressurePa()).isNull();
    }

    @Test
    void nippleOfRacePtfeMinus6IsTheOneOfTheWorkedExplanation() {
        EndSize end = ALL.end(ALL.hose("race PTFE -6"), "swept", 90);
        assertThat(end.nippleBoreM().value()).isCloseTo(6.35e-3, within(1e-9));
        assertThat(end.nippleBoreM().low()).isCloseTo(5.72e-3, within(1e-5));
        assertThat(end.nippleBoreM().high()).isCloseTo(6.99e-3, within(1e-5));
        assertThat(end.nippleBoreM().status()).isEqualTo(Status.FROM_MEMORY);
        assertThat(end.nippleLengthM().value()).isEqualTo(22e-3);
        assertThat(end.throughBoreM().value()).isCloseTo(7.54e-3, within(5e-6));
        assertThat(end.text()).isEqualTo("end 90 swept");
    }

    @ParameterizedTest
    @CsvSource({
        "120, forged, forged hose ends are made in 45 and 90 (30 and 60 rarely), Write 120 (swept)",
        "75, swept, no swept hose end has 75 degrees, Write one of 30 45 60 90 120 150 180",
        "45, straight, a straight end has no angle, Write straight"
    })
    void anglesNobodyMakes(double angle, String kind, String message, String hint) {
        CatalogueException refused = refused(() -> ALL.end(ALL.hose("race PTFE -6"), kind, angle));
        assertThat(refused.message()).contains(message);
        assertThat(refused.hint()).isEqualTo(hint);
    }

    @Test
    void machinedAndLowProfileAreForged() {
        HoseSize hose = ALL.hose("race rubber -10");
        assertThat(ALL.end(hose, "machined", 90)).isEqualTo(ALL.end(hose, "forged", 90));
        assertThat(ALL.end(hose, "low-profile", 90)).isEqualTo(ALL.end(hose, "forged", 90));
    }

    @Test
    void endsFollowTheirHose() {
        assertThat(ALL.end(ALL.hose("race rubber -6"), "straight", 0).build()).isEqualTo("two-piece");
        assertThat(ALL.end(ALL.hose("race PTFE -6"), "straight", 0).build()).isEqualTo("three-piece");
        assertThat(ALL.end(ALL.hose("push-on -6"), "straight", 0).build()).isEqualTo("push-on");
        assertThat(ALL.end(ALL.hose("race PTFE -6"), "straight", 0, "crimped", "")
                        .nippleBoreM()
                        .value())
                .isCloseTo(0.256 * 0.0254, within(1e-12));
        assertThat(refused(() -> ALL.end(ALL.hose("race PTFE -6"), "straight", 0, "push-on", ""))
                        .hint())
                .isEqualTo("Its ends are three-piece or crimped");
        EndSize barb = ALL.end(ALL.hose("fuel hose 5/16 in"), "barb", 0);
        assertThat(barb.throughBoreM()).isEqualTo(barb.nippleBoreM());
        EndSize banjo = ALL.end(ALL.hose("race PTFE -6"), "banjo", 0, "", "M12");
        assertThat(banjo.lossCoefficient().value()).isEqualTo(4.5);
        assertThat(banjo.throughBoreM().value()).isCloseTo(6.096e-3, within(1e-9));
        assertThat(refused(() -> ALL.end(ALL.hose("race PTFE -6"), "banjo", 0)).message())
                .isEqualTo("banjo: which bolt?");
        assertThat(ALL.end(ALL.hose("race PTFE -6"), "quick-connect", 0, "", "3/8 in")
                        .lossCoefficient()
                        .high())
                .isEqualTo(19);
    }

    @Test
    void everyEndOfEveryHoseHasANippleThatFitsInIt() {
        assertThat(ALL.rows().nipples())
                .hasSizeGreaterThan(150)
                .allSatisfy(n -> assertThat(n.boreM().value())
                        .isLessThanOrEqualTo(
                                ALL.hose(n.family(), n.size()).boreM().value() * (1 + 1e-6)));
    }

    @Test
    void adaptersAreAsNarrowAsTheirNarrowerBore() {
        AdapterSize reducer = ALL.adapter("-6 to -5");
        assertThat(reducer.throughBoreM().value()).isCloseTo(5.94e-3, within(5e-6));
        assertThat(reducer.sealingFaces()).isEqualTo(2);
        assertThat(reducer.kind()).isEqualTo("reducer");
        assertThat(ALL.adapter("M22x1.5 to -12").from().seat()).isEqualTo(Seat.METRIC);
        assertThat(ALL.adapter("ORB -8 to -8").text()).isEqualTo("ORB -8 to -8");
        assertThat(ALL.adapter("1/4 NPT to -6").throughBoreM().value()).isCloseTo(0.282 * 0.0254, within(1e-9));
        assertThat(ALL.adapter("NPT 1/4 to -6")).isEqualTo(ALL.adapter("1/4 NPT to -6"));
        assertThat(ALL.adapter("G 3/8 to -6").from().sizeName()).isEqualTo("G 3/8");
        assertThat(ALL.adapter("-6 to quick-connect 3/8 in").to().size()).isEqualTo("3/8");
        assertThat(ALL.adapter("-6 to -6", 90, false).forged()).isTrue();
        assertThat(ALL.adapter("-6 to -6", 90, true).forged()).isFalse();
        assertThat(ALL.bulkhead("-6").throughBoreM().value()).isCloseTo(7.5438e-3, within(1e-9));
        assertThat(ALL.tee("-8 to -6").branchBoreM())
                .isEqualTo(ALL.bulkhead("-6").fromBoreM());
        assertThat(ALL.yBlock("-8 to -6").sealingFaces()).isEqualTo(3);
        assertThat(refused(() -> ALL.adapter("-6")).message()).contains("two sizes are needed");
        assertThat(refused(() -> ALL.adapter("-6 to fish")).hint()).contains("ORB -6");
        assertThat(refused(() -> ALL.adapter("M22 to -6")).message()).contains("has no pitch");
        assertThat(refused(() -> ALL.bulkhead("-7")).hint()).contains("-6, -8");
    }

    @Test
    void tubesAreOutsideDiameterLessTwoWalls() {
        TubeSize steel = ALL.tube("steel", 5 / 16.0 * 0.0254, 0.028 * 0.0254);
        assertThat(steel.boreM().value()).isCloseTo(6.52e-3, within(1e-5));
        assertThat(steel.dash()).isEqualTo(5);
        assertThat(steel.allowablePressurePa()).isNull();
        TubeSize hard = ALL.tube("6061-T6 aluminium", 0.375 * 0.0254, 0.035 * 0.0254);
        assertThat(hard.allowablePressurePa().value()).isCloseTo(17.926e6, within(1e3));
        assertThat(ALL.tube("aluminium", 0.375 * 0.0254, 0.035 * 0.0254).allowablePressurePa())
                .as("plain aluminium may be soft fuel line")
                .isNull();
        assertThat(ALL.tube("aluminium", 0.010, 0.001).dash()).isZero();
        assertThat(refused(() -> ALL.tube("steel", 0.010, 0.005)).message()).contains("5.000 mm", "10.000 mm");
        assertThat(refused(() -> ALL.tube("steel", Double.NaN, 0.001)).message())
                .contains("NaN");
        assertThat(refused(() -> ALL.tube("steal", 0.010, 0.001)).hint()).startsWith("Did you mean steel?");
    }

    @Test
    void theMessageCarriesTheHint() {
        assertThatExceptionOfType(CatalogueException.class)
                .isThrownBy(() -> ALL.dashSize(7))
                .withMessage(
                        "no dash size -7. It must be one of: -2, -3, -4, -5, -6, -8, -10, -12, -16, -20, -24, -28, -32");
        assertThat(List.of(new CatalogueException("m", ""), new CatalogueException("m?", "h")))
                .extracting(Throwable::getMessage)
                .containsExactly("m", "m? h");
    }
}
