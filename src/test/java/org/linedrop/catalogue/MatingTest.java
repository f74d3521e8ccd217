package org.linedrop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every wrong pairing is found, with what to use instead. */
class MatingTest {
    private static final Catalogue ALL = Catalogue.standard();

    private static Connection hoseEnd(String hose) {
        return ALL.end(ALL.hose(hose), "straight", 0).connection();
    }

    private static Connection tube(String text, double odIn) {
        return ALL.tubeEnd(ALL.tube("steel", odIn * 0.0254, 0.028 * 0.0254), text);
    }

    @Test
    void boss8OnFlare8() {
        MatingResult found = Mating.between(
                ALL.connection("ORB -8", Gender.FEMALE, "pump port ORB -8"),
                ALL.connection("-8", Gender.SWIVEL, "flare -8"));
        assertThat(found.kind()).isEqualTo(MatingResult.Kind.BOSS_ON_FLARE);
        assertThat(found.screwsOn()).isTrue();
        assertThat(found.seals()).isFalse();
        assertThat(found.text())
                .isEqualTo("pump port ORB -8 and flare -8 share the 3/4-16 thread and do not seal together: "
                        + "use an ORB -8 to -8 adapter (adds 2 sealing faces)");
        assertThat(found.sealingFacesAdded()).isEqualTo(2);
        assertThat(Mating.between(
                                ALL.connection("-8", Gender.SWIVEL, "flare -8"),
                                ALL.connection("ORB -8", Gender.FEMALE, "pump port ORB -8"))
                        .useInstead())
                .startsWith("use an ORB -8 to -8 adapter");
    }

    @ParameterizedTest
    @CsvSource({"-2", "-3", "-4", "-5", "-6", "-8", "-10", "-12", "-16", "-20", "-24", "-28", "-32"})
    void everyBossSharesItsThreadWithTheFlareOfItsDash(String dash) {
        MatingResult found = Mating.between(
                ALL.connection("ORB " + dash, Gender.FEMALE, "port"), ALL.connection(dash, Gender.SWIVEL, "end"));
        assertThat(found.kind()).isEqualTo(MatingResult.Kind.BOSS_ON_FLARE);
        assertThat(found.screwsOn()).isTrue();
    }

    @Test
    void bossAndFlareOfDifferentDashDoNotScrewTogether() {
        MatingResult found =
                Mating.between(ALL.connection("ORB -8", Gender.FEMALE, "port ORB -8"), hoseEnd("race PTFE -6"));
        assertThat(found.kind()).isEqualTo(MatingResult.Kind.OTHER_SEAT);
        assertThat(found.screwsOn()).isFalse();
        assertThat(found.useInstead()).isEqualTo("use an adapter ORB -8 to -6 (adds 2 sealing faces)");
    }

    @Test
    void tubeFlaresToAnotherSizeThanItsNeighbour() {
        MatingResult found = Mating.between(ALL.bulkhead("-6").to(), tube("5/16 in tube", 0.3125));
        assertThat(found.kind()).isEqualTo(MatingResult.Kind.SIZE_DIFFERS);
        assertThat(found.text())
                .isEqualTo("5/16 in tube flares to -5, its neighbour is -6: an adapter \"-6 to -5\" is missing "
                        + "(adds 2 sealing faces)");
        AdapterSize reducer = ALL.adapter("-6 to -5");
        assertThat(Mating.between(ALL.bulkhead("-6").to(), reducer.from()).seals())
                .isTrue();
        assertThat(Mating.between(reducer.to(), tube("5/16 in tube", 0.3125)).seals())
                .isTrue();
    }

    @Test
    void twoHosesInARow() {
        MatingResult found = Mating.between(hoseEnd("race PTFE -6"), hoseEnd("race PTFE -6"));
        assertThat(found.kind()).isEqualTo(MatingResult.Kind.TWO_SWIVEL_NUTS);
        assertThat(found.text())
                .isEqualTo("two swivel nuts meet; put a union or bulkhead -6 between (adds 2 sealing faces)");
        AdapterSize union = ALL.union("-6");
        assertThat(Mating.between(hoseEnd("race PTFE -6"), union.from()).seals())
                .isTrue();
        assertThat(Mating.between(union.to(), hoseEnd("race PTFE -6")).seals()).isTrue();
        Connection splice = ALL.end(ALL.hose("race PTFE -6"), "male", 0).connection();
        assertThat(Mating.between(hoseEnd("race PTFE -6"), splice).seals()).isTrue();
        assertThat(Mating.between(splice, ALL.bulkhead("-6").from()).kind()).isEqualTo(MatingResult.Kind.TWO_MALES);
    }

    @Test
    void flare45On37() {
        Connection male45 = ALL.connection("45-degree -8", Gender.MALE, "45-degree flare fitting");
        MatingResult sameThread = Mating.between(male45, hoseEnd("race PTFE -8"));
        assertThat(sameThread.kind()).isEqualTo(MatingResult.Kind.FLARE_45_ON_37);
        assertThat(sameThread.screwsOn()).isTrue();
        assertThat(sameThread.message()).contains("3/4-16", "cracks and leaks");
        assertThat(sameThread.useInstead()).contains("flare the tube to 37 degrees", "45-degree -8 to -8");
        MatingResult other = Mating.between(
                ALL.connection("45-degree -6", Gender.MALE, "45-degree flare fitting"), hoseEnd("race PTFE -6"));
        assertThat(other.kind()).isEqualTo(MatingResult.Kind.FLARE_45_ON_37);
        assertThat(other.screwsOn()).as("5/8-18 against 9/16-18").isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "1/4 NPT, ORB -6, true",
        "1/2 NPT, ORB -10, true",
        "1/2 NPT, G 1/2, true",
        "1/4 NPT, G 1/4, true",
        "1/4 NPT, M14x1.5, false",
        "3/8 NPT, -8, false"
    })
    void taperOnStraight(String taper, String straight, boolean starts) {
        MatingResult found = Mating.between(
                ALL.connection(taper, Gender.MALE, taper), ALL.connection(straight, Gender.FEMALE, "port " + straight));
        assertThat(found.kind()).isEqualTo(MatingResult.Kind.TAPER_ON_STRAIGHT);
        assertThat(found.screwsOn()).isEqualTo(starts);
        assertThat(found.useInstead())
                .isEqualTo("use an adapter " + taper + " to " + straight + " (adds 2 sealing faces)");
    }

    @Test
    void barbedHoseBanjoAndTaperJointsSeal() {
        Connection fuelHose = ALL.end(ALL.hose("fuel hose 5/16 in"), "barb", 0).connection();
        assertThat(Mating.between(fuelHose, tube("5/16 in tube", 0.3125)).seals())
                .isTrue();
        assertThat(Mating.between(tube("3/8 in tube", 0.375), fuelHose).seals()).isFalse();
        assertThat(Mating.between(fuelHose, ALL.adapter("barb 5/16 in to -6").from())
                        .seals())
                .isTrue();
        assertThat(Mating.between(fuelHose, fuelHose).message()).startsWith("two hoses meet");
        Connection banjo =
                ALL.end(ALL.hose("race PTFE -6"), "banjo", 0, "", "M12").connection();
        assertThat(Mating.between(banjo, ALL.connection("M12x1.5", Gender.FEMALE, "port"))
                        .seals())
                .isTrue();
        assertThat(Mating.between(banjo, ALL.connection("M14x1.5", Gender.FEMALE, "port"))
                        .seals())
                .isFalse();
        assertThat(Mating.between(ALL.adapter("1/4 NPT to -6").from(), ALL.connection("1/4 NPT", Gender.FEMALE, "port"))
                        .seals())
                .isTrue();
        assertThat(Mating.between(ALL.adapter("ORB -8 to -8").from(), ALL.connection("ORB -8", Gender.FEMALE, "port"))
                        .seals())
                .isTrue();
    }

    @Test
    void whatNobodyStatedIsNotChecked() {
        MatingResult found = Mating.between(Connection.notStated("filter inlet"), hoseEnd("race PTFE -6"));
        assertThat(found.kind()).isEqualTo(MatingResult.Kind.NOT_CHECKED);
        assertThat(found.text()).isEmpty();
    }

    /** Whatever does not seal names a remedy, both ways round finds the same, and the remedy's faces are counted. */
    @Test
    void everyPairOfConnectionsIsAnsweredTheSameBothWays() {
        List<Connection> all = new ArrayList<>();
        for (String text : List.of(
                "-6",
                "-8",
                "ORB -6",
                "ORB -8",
                "45-degree -8",
                "1/4 NPT",
                "G 1/4",
                "G 1/2",
                "M14x1.5",
                "M22x1.5",
                "quick-connect 3/8 in",
                "barb 3/8 in",
                "banjo M14")) {
            for (Gender gender : List.of(Gender.MALE, Gender.SWIVEL, Gender.FEMALE)) {
                all.add(ALL.connection(text, gender, text + " " + gender.word()));
            }
        }
        int faults = 0;
        for (Connection a : all) {
            for (Connection b : all) {
                MatingResult there = Mating.between(a, b);
                MatingResult back = Mating.between(b, a);
                assertThat(there.kind()).as("%s with %s", a.text(), b.text()).isEqualTo(back.kind());
                assertThat(there.screwsOn()).isEqualTo(back.screwsOn());
                if (!there.seals()) {
                    assertThat(there.message()).isNotEmpty();
                    assertThat(there.useInstead()).contains("sealing faces");
                    assertThat(there.sealingFacesAdded()).isEqualTo(2);
                    faults++;
                } else {
                    assertThat(there.useInstead()).isEmpty();
                }
            }
        }
        assertThat(faults).isGreaterThan(1000);
    }
}
