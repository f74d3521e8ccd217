package org.linedrop.study.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.report.PriceForm;

/** The kit of a whole car, added up by hand from its three files: fuel, oil and coolant, all invented. */
class KitTest {
    static final Path HERE = Path.of("src/test/resources/org/linedrop/kit");
    private static final Kit CAR = car(OwnFigures.NONE);

    static Kit car(OwnFigures own) {
        return Kit.of(List.of(circuit("fuel"), circuit("oil"), circuit("coolant")), own);
    }

    static Circuit circuit(String name) {
        try {
            return CircuitFile.read(HERE.resolve(name + ".yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static OwnFigures prices() {
        try {
            return PriceForm.read(Files.readString(HERE.resolve("prices.csv")), "prices.csv");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static KitItem item(Kit kit, String name) {
        return kit.items().stream()
                .filter(item -> item.item().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static KitHose hose(Kit kit, String part) {
        return kit.circuits().stream()
                .flatMap(circuit -> circuit.hoses().stream())
                .filter(hose -> hose.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyThingIsCounted() {
        Map<String, Integer> byHand = new LinkedHashMap<>();
        byHand.put("race PTFE -8", 3); // supply 1, 3, 7
        byHand.put("race PTFE -6", 2); // the two legs
        byHand.put("MIL-H-8794 -10", 3); // cooling 1, 5, 7
        byHand.put("coolant hose 1-1/4 in", 3); // out 1, 3, 5
        byHand.put("hose end banjo M14, race PTFE -8", 1); // supply 1
        byHand.put("hose end 90 swept, race PTFE -8", 2); // supply 1, 7
        byHand.put("hose end straight, race PTFE -8", 2); // supply 3
        byHand.put("hose end 45 swept, race PTFE -8", 1); // supply 7
        byHand.put("hose end 90 swept, race PTFE -6", 4); // two of each leg
        byHand.put("hose end straight, MIL-H-8794 -10", 6); // two of each hose
        byHand.put("tube aluminium 1-1/4 in x 0.049 in", 1); // beaded: hose is clamped on it, so no nut and sleeve
        byHand.put("adapter -8 to ORB -8", 2); // one on each side of the filter, the same fitting turned round
        byHand.put("adapter -10 to M22x1.5", 2); // the same at the cooler
        byHand.put("union -10", 1);
        byHand.put("Y block -8 to -6", 1);
        byHand.put("banjo washer M14", 2);
        byHand.put("O-ring AS568-908 (ORB -8)", 2);
        byHand.put("O-ring or washer M22x1.5", 2);
        byHand.put("clamp for hose 1-1/4 in", 6); // two on each coolant hose
        Map<String, Integer> counted = new LinkedHashMap<>();
        CAR.items().forEach(item -> counted.put(item.item(), item.count()));
        assertThat(counted).containsExactlyInAnyOrderEntriesOf(byHand);
        assertThat(CAR.pieces(KitItem.Group.HOSE)).isEqualTo(3 + 2 + 3 + 3);
        assertThat(CAR.pieces(KitItem.Group.HOSE_END)).isEqualTo(1 + 2 + 2 + 1 + 4 + 6);
        assertThat(CAR.pieces(KitItem.Group.ADAPTER)).isEqualTo(2 + 2 + 1);
        assertThat(CAR.pieces(KitItem.Group.TUBE_END)).isZero();
    }

    @Test
    void lengthsAddUp() {
        assertThat(item(CAR, "race PTFE -8").lengthM()).isCloseTo(0.40 + 0.30 + 1.60, within(1e-12));
        assertThat(item(CAR, "race PTFE -6").lengthM()).isCloseTo(0.53 + 0.54, within(1e-12));
        assertThat(item(CAR, "MIL-H-8794 -10").lengthM()).isCloseTo(1.20 + 0.60 + 0.75, within(1e-12));
        assertThat(item(CAR, "coolant hose 1-1/4 in").lengthM()).isCloseTo(0.30 + 0.25 + 0.90, within(1e-12));
        assertThat(CAR.lengthM(KitItem.Group.HOSE)).isCloseTo(2.30 + 1.07 + 2.55 + 1.45, within(1e-12));
        assertThat(CAR.lengthM(KitItem.Group.TUBE)).isCloseTo(1.50, within(1e-12));
    }

    @Test
    void jointsThatCanLeakAddUp() {
        // fuel: tank, pump in, pump out, adapter, filter in, filter out, adapter, Y block; two ends of each leg
        // oil: plate, adapter, cooler in, cooler out, adapter, union, union, plate
        // coolant: engine, tube, tube, radiator in, radiator out, engine
        assertThat(CAR.circuits().stream().map(circuit -> circuit.joints().size()))
                .containsExactly(8 + 4, 8, 6);
        assertThat(CAR.joints()).isEqualTo(26);
        // the banjo has a washer on each side
        assertThat(CAR.leaks()).isEqualTo(26 + 1);
        assertThat(CAR.faces()).isEqualTo(2 * 27);
    }

    @Test
    void volumeAndItsMassAddUp() {
        // usual bores of catalogue hoses, to 0.01 mm: race PTFE 10.31 and 7.94, MIL-H-8794 12.70, 1-1/4 in 31.8
        double fuel = Math.PI / 4 * (0.01031 * 0.01031 * 2.30 + 0.00794 * 0.00794 * 1.07);
        double oil = Math.PI / 4 * 0.0127 * 0.0127 * 2.55;
        double tubeBore = (1.25 - 2 * 0.049) * 0.0254;
        double coolant = Math.PI / 4 * (0.0318 * 0.0318 * 1.45 + tubeBore * tubeBore * 1.50);
        // 0.2 %: the bores above are rounded to 0.01 mm of 7.94 mm, twice
        assertThat(CAR.circuits().get(0).volumeM3()).isCloseTo(fuel, within(2e-3 * fuel));
        assertThat(CAR.circuits().get(1).volumeM3()).isCloseTo(oil, within(2e-3 * oil));
        assertThat(CAR.circuits().get(2).volumeM3()).isCloseTo(coolant, within(2e-3 * coolant));
        assertThat(CAR.volumeM3()).isCloseTo(fuel + oil + coolant, within(2e-3 * (fuel + oil + coolant)));
        for (KitCircuit circuit : CAR.circuits()) {
            assertThat(circuit.volumeLowM3()).isLessThan(circuit.volumeM3());
            assertThat(circuit.volumeHighM3()).isGreaterThan(circuit.volumeM3());
        }
        // petrol with ethanol, engine oil, water and glycol: no denser and no lighter than these (from memory)
        assertThat(CAR.circuits().get(0).fluidKg() / fuel).isBetween(700.0, 760.0);
        assertThat(CAR.circuits().get(1).fluidKg() / oil).isBetween(780.0, 850.0);
        assertThat(CAR.circuits().get(2).fluidKg() / coolant).isBetween(1010.0, 1050.0);
    }

    @Test
    void twoEqualFlaresAreAUnionHoweverTheyAreWritten() {
        Kit kit = Kit.of(List.of(CircuitFile.read("""
                        linedrop: 1
                        fluid: E10
                        temperature: 20 C
                        points:
                          a: {kind: held, pressure: 10 kPa}
                          b: {kind: draw, takes: 60 L/h}
                        runs:
                          r:
                            from: a
                            to: b
                            parts:
                              - {hose: race PTFE -6, length: 1 m, ends: straight to straight}
                              - {adapter: -6 to -6}
                              - {hose: race PTFE -6, length: 1 m, ends: straight to straight}
                              - {adapter: -6 to -8}
                              - {hose: race PTFE -8, length: 1 m, ends: straight to straight}
                        """, "a.yaml")), OwnFigures.NONE);
        assertThat(kit.items()).extracting(KitItem::item).contains("union -6", "reducer -8 to -6");
    }

    @Test
    void massAndCostAddUpWithTheUsersList() {
        Kit kit = car(prices());
        double tubeKg = Math.PI * (1.25 - 0.049) * 0.049 * 0.0254 * 0.0254 * 2710 * 1.50;
        double known = 0.190 * 2.30 + 0.140 * 1.07 + 4 * 0.045 + 0.080 + 6 * 0.015 + tubeKg;
        assertThat(kit.massKg()).isCloseTo(known, within(1e-9));
        assertThat(kit.withoutMass()).isEqualTo(19 - 6);
        assertThat(kit.cost()).isCloseTo(20.00 * 2.30 + 15.00 * 1.07 + 4 * 12.50 + 24.00 + 6 * 1.20, within(1e-9));
        assertThat(kit.withoutPrice()).isEqualTo(19 - 5);
        assertThat(kit.currency()).isEqualTo("EUR");
        assertThat(kit.unused()).containsExactly("union -12");
        assertThat(CAR.withoutPrice()).isEqualTo(19);
    }

    @Test
    void cutIsOverallLessBothCutOffs() {
        // NAVEDTRA 14018 table 5-2: the swivel end of -10 medium-pressure rubber hose adds 1.00 in
        assertThat(hose(CAR, "cooling 1").cutM()).isCloseTo(1.20 - 2 * 0.0254, within(1e-12));
        assertThat(hose(CAR, "left leg 1").cutM()).isNaN();
        assertThat(hose(CAR, "left leg 1").cutFrom()).isEqualTo("cut-off of hose end 90 swept, race PTFE -6 not known");
        Kit kit = car(prices());
        assertThat(hose(kit, "left leg 1").cutM()).isCloseTo(0.53 - 2 * 0.030, within(1e-12));
        assertThat(hose(kit, "left leg 1").cutFrom()).isEqualTo("your list");
        assertThat(hose(kit, "supply 7").cutM()).isNaN();
        // hose that goes over its barbs is cut as long as it is
        assertThat(hose(kit, "out 1").cutM()).isEqualTo(0.30);
    }

    @Test
    void pathAndClockingComeFromWayPoints() {
        // both legs: up out of the Y block, half a metre ahead, then to the left or the right
        KitHose left = hose(CAR, "left leg 1");
        KitHose right = hose(CAR, "right leg 1");
        assertThat(left.pathM()).isCloseTo(0.5, within(1e-12));
        assertThat(left.slackShare()).isCloseTo(0.06, within(1e-12));
        assertThat(right.slackShare()).isCloseTo(0.08, within(1e-12));
        // near end at 6 o'clock: counter-clockwise comes 3 o'clock (right), 12, 9 o'clock (left)
        assertThat(Math.toDegrees(left.clocking().angleRad())).isCloseTo(270, within(1e-9));
        assertThat(Math.toDegrees(right.clocking().angleRad())).isCloseTo(90, within(1e-9));
        KitHose open = hose(CAR, "supply 7");
        assertThat(open.clocking().wanted()).isTrue();
        assertThat(open.clocking().angleRad()).isNaN();
        assertThat(open.clocking().missing()).contains("a run of its own", "via:");
        assertThat(hose(CAR, "supply 1").clocking().wanted()).isFalse();
    }

    @Test
    void bendsAreJudgedByPublishedRadiiOnly() {
        // AC 43.13-1B table 9-3: MIL-H-8794 -10 at least 5.50 in = 139.7 mm
        BendCheck tight = hose(CAR, "cooling 7").bend();
        assertThat(tight.verdict()).isEqualTo(BendCheck.Verdict.TOO_TIGHT);
        assertThat(tight.radiusM()).isEqualTo(0.100);
        assertThat(hose(CAR, "cooling 1").bend().verdict()).isEqualTo(BendCheck.Verdict.TAKEN_AS_STRAIGHT);
        // 200 mm against 117 mm from memory is no proof
        assertThat(hose(CAR, "supply 7").bend().verdict()).isEqualTo(BendCheck.Verdict.NOT_JUDGED);
    }

    @Test
    void alternativesSayWhatTheySave() {
        List<String> names = new ArrayList<>();
        CAR.alternatives().forEach(alternative -> names.add(alternative.name()));
        assertThat(names)
                .containsExactly("case smaller legs", "one hose in place of cooling 5, cooling 6 and cooling 7");
        Alternative legs = CAR.alternatives().get(0);
        assertThat(legs.leaksSaved()).isZero();
        assertThat(legs.changes())
                .contains(
                        new Alternative.Change("hose end 90 swept, race PTFE -6", false, -4),
                        new Alternative.Change("hose end 90 swept, race PTFE -4", false, 4));
        Alternative hose = CAR.alternatives().get(1);
        assertThat(hose.leaksSaved()).isEqualTo(2);
        assertThat(hose.facesSaved()).isEqualTo(4);
        assertThat(hose.changes())
                .containsExactly(
                        new Alternative.Change("hose end straight, MIL-H-8794 -10", false, -2),
                        new Alternative.Change("union -10", false, -1));
    }

    @Test
    void aCaseThatDropsAdaptersSavesTheirJoints() throws IOException {
        // case 3/8 line of the returnless feed takes out the two reducers of the old 5/16 in line
        Circuit feed = CircuitFile.read(Path.of("src/test/resources/org/linedrop/io/returnless.yaml"));
        Kit kit = Kit.of(List.of(feed), OwnFigures.NONE);
        Alternative line = kit.alternatives().stream()
                .filter(alternative -> alternative.name().equals("case 3/8 line"))
                .findFirst()
                .orElseThrow();
        assertThat(line.leaksSaved()).isEqualTo(2);
        Kit other = Kit.of(List.of(feed.in("3/8 line")), OwnFigures.NONE);
        assertThat(kit.leaks() - other.leaks()).isEqualTo(2);
        assertThat(line.changes()).contains(new Alternative.Change("reducer -6 to -5", false, -2));
        // flared tube takes a nut and a sleeve at each end
        assertThat(item(kit, "tube nut and sleeve -5").count()).isEqualTo(2);
        assertThat(item(other, "tube nut and sleeve -6").count()).isEqualTo(2);
    }

    @Test
    void devicesWithoutALawAreNoTrouble() throws IOException {
        for (String file : List.of("oil-loop", "front-cooler")) {
            Kit kit = Kit.of(
                    List.of(CircuitFile.read(Path.of("src/test/resources/org/linedrop/io/" + file + ".yaml"))),
                    OwnFigures.NONE);
            assertThat(kit.joints()).as(file).isPositive();
        }
    }

    @Test
    void bareCoolantHoseIsClampedOnItsTube() throws IOException {
        Kit kit = Kit.of(List.of(CircuitFile.read(Path.of("src/examples/front-radiator.yaml"))), OwnFigures.NONE);
        // four short hoses and two heater hoses, two clamps each; no nut and sleeve on tube that hose goes over
        assertThat(item(kit, "clamp for hose 1-1/4 in").count()).isEqualTo(2 * 4);
        assertThat(item(kit, "clamp for hose 5/8 in").count()).isEqualTo(2 * 2);
        assertThat(kit.pieces(KitItem.Group.TUBE_END)).isZero();
        assertThat(kit.notes()).anyMatch(note -> note.kind().equals("rubber barb"));
    }

    @Test
    void threeLinesAtAPlaceLackAFitting() throws IOException {
        Circuit rails = CircuitFile.read(Path.of("src/examples/twin-rails.yaml"));
        KitCircuit kit = Kit.of(List.of(rails), OwnFigures.NONE).circuits().get(0);
        assertThat(kit.notices())
                .anySatisfy(notice -> assertThat(notice.element() + ": " + notice.text())
                        .startsWith("split: 3 lines meet here and no fitting is named"));
    }

    @Test
    void brakesGetQuantitiesOnly() throws IOException {
        Circuit brake = CircuitFile.read(Path.of("src/test/resources/org/linedrop/report/brake.yaml"));
        Kit kit = Kit.of(List.of(brake), prices());
        assertThat(kit.lengthM(KitItem.Group.HOSE)).isEqualTo(0.40);
        assertThat(kit.notes()).isEmpty();
        assertThat(kit.wrenches()).isEmpty();
        KitHose hose = kit.circuits().get(0).hoses().get(0);
        assertThat(hose.cutM()).isNaN();
        assertThat(hose.bend().verdict()).isEqualTo(BendCheck.Verdict.NOT_ASKED);
    }
}
