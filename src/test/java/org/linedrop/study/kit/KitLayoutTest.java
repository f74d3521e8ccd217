package org.linedrop.study.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.catalogue.Bench;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Position;
import org.linedrop.fact.Notice;
import org.linedrop.io.CircuitFile;

/** Where hoses of small invented circuits lie, what meets where, and what other ways save, by hand. */
class KitLayoutTest {
    private static final String HEAD = """
            linedrop: 1
            title: Layout
            fluid: bench liquid
            temperature: 20 C
            fluids:
              bench liquid: {density: 800 kg/m3, viscosity: 1 cSt}
            """;

    private static Circuit circuit(String rest) {
        return CircuitFile.read(HEAD + rest, "layout.yaml");
    }

    private static Kit kit(Circuit circuit) {
        return Kit.of(List.of(circuit), OwnFigures.NONE);
    }

    /** From the origin to a draw some metres ahead, with parts, way-points and devices. */
    private static Circuit straight(double aheadM, String via, String devices, String... parts) {
        return circuit("""
                points:
                  main: {kind: held, pressure: 300 kPa, height: 0 m, ahead: 0 m}
                  tap: {kind: draw, takes: 100 L/h, height: 0 m, ahead: %s m}
                %s
                runs:
                  run: {from: main, to: tap, %s parts: [%s]}
                """.formatted(aheadM, devices, via, String.join(", ", parts)));
    }

    private static String hose(double lengthM, String ends) {
        return "{hose: MIL-H-8794 -6, length: " + lengthM + " m, ends: " + ends + "}";
    }

    private static List<KitCircuit.TooShort> tooShort(Circuit circuit) {
        return kit(circuit).circuits().get(0).stretches();
    }

    @Test
    void partsShorterThanTheWayAreTooShort() {
        List<KitCircuit.TooShort> found = tooShort(straight(
                2,
                "",
                "",
                hose(1, "straight to straight"),
                "{union: -6}",
                "{tube: steel 3/8 in x 0.035 in, length: 0.9 m}"));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).parts()).containsExactly("run 1", "run 3");
        assertThat(found.get(0).partsM()).isCloseTo(1.9, within(1e-12));
        assertThat(found.get(0).distanceM()).isEqualTo(2);
        // places are not known better than 2 %
        assertThat(tooShort(straight(2, "", "", hose(1.96, "straight to straight"))))
                .isEmpty();
        assertThat(tooShort(straight(2, "", "", hose(1.95, "straight to straight"))))
                .hasSize(1);
        assertThat(tooShort(straight(2, "", "", hose(2.5, "straight to straight"))))
                .isEmpty();
        // a hose alone with way-points has a path, which says more
        assertThat(tooShort(straight(2, "via: [{ahead: 1 m, height: 0.5 m}],", "", hose(1.9, "straight to straight"))))
                .isEmpty();
        // without places nothing is known
        assertThat(tooShort(circuit("""
                        points:
                          main: {kind: held, pressure: 300 kPa}
                          tap: {kind: draw, takes: 100 L/h}
                        runs:
                          run: {from: main, to: tap, parts: [{hose: MIL-H-8794 -6, length: 0.1 m, ends: straight to straight}]}
                        """))).isEmpty();
    }

    @Test
    void aDeviceWithAPlaceCutsTheRun() {
        Circuit circuit = straight(
                3,
                "",
                "devices: {filter: {kind: filter, drop: 1 kPa at 300 L/h, height: 0 m, ahead: 1 m}}",
                hose(1.05, "straight to straight"),
                "{through: filter}",
                hose(1.5, "straight to straight"));
        List<HosePath.Stretch> stretches = HosePath.of(circuit);
        assertThat(stretches).extracting(HosePath.Stretch::distanceM).containsExactly(1.0, 2.0);
        assertThat(stretches).extracting(HosePath.Stretch::alone).containsExactly(true, true);
        assertThat(stretches).extracting(HosePath.Stretch::partsM).containsExactly(1.05, 1.5);
        assertThat(tooShort(circuit)).extracting(KitCircuit.TooShort::parts).containsExactly(List.of("run 3"));
    }

    @Test
    void aTankHasItsReturnElsewhere() {
        Circuit circuit = circuit("""
                points:
                  tank: {kind: tank, height: 0.2 m, depth: 0.1 m, ahead: 0 m, return height: 0.7 m}
                devices:
                  pump: {kind: pump, curves: [{at: 12 V, pressure: 0 100 200 kPa, flow: 200 100 50 L/h}], runs at: 12 V, height: 0.2 m, ahead: 1 m}
                runs:
                  loop:
                    from: tank
                    to: tank
                    parts:
                      - {hose: MIL-H-8794 -6, length: 1.1 m, ends: straight to straight}
                      - {through: pump}
                      - {hose: MIL-H-8794 -6, length: 1.2 m, ends: straight to straight}
                """);
        List<HosePath.Stretch> stretches = HosePath.of(circuit);
        assertThat(stretches.get(0).distanceM()).isCloseTo(1, within(1e-12));
        assertThat(stretches.get(1).distanceM()).isCloseTo(Math.hypot(1, 0.5), within(1e-12));
    }

    private static KitHose only(Circuit circuit) {
        return kit(circuit).circuits().get(0).hoses().get(0);
    }

    @Test
    void thePathOfAHoseGoesByItsWayPoints() {
        // 1 m ahead, 0.5 m up, 1 m ahead: corners of its own, for its ends are straight
        String via = "via: [{ahead: 1 m, height: 0 m}, {ahead: 1 m, height: 0.5 m}, {ahead: 2 m, height: 0.5 m}],";
        KitHose plain = only(straight(2, via, "", hose(3.3, "straight to straight")));
        assertThat(plain.pathM()).isCloseTo(1 + 0.5 + 1 + 0.5, within(1e-12));
        assertThat(plain.slackShare()).isCloseTo(0.1, within(1e-12));
        // two corners share half a metre, a right angle takes its radius off both legs
        assertThat(plain.bend().radiusM()).isCloseTo(0.25, within(1e-12));
        assertThat(plain.bend().ofRoute()).isTrue();
        // with a radius its three corners are cut: 2 R - pi R / 2 less each
        KitHose bent = only(straight(
                2,
                via,
                "",
                "{hose: MIL-H-8794 -6, length: 3.3 m, ends: straight to straight, bends: 3 x 90 at 110 mm}"));
        assertThat(bent.pathM()).isCloseTo(3 - 3 * 0.11 * (2 - Math.PI / 2), within(1e-12));
        assertThat(bent.bend().radiusM()).isEqualTo(0.11);
        assertThat(bent.bend().ofRoute()).isFalse();
        // bent ends take the first and last corner: the hose itself has one left
        KitHose ended = only(straight(2, via, "", hose(3.3, "90 to 90")));
        assertThat(ended.pathM()).isCloseTo(0.5 + 1, within(1e-12));
        assertThat(only(straight(2, "", "", hose(2.2, "straight to straight"))).pathM())
                .as("no way-points")
                .isNaN();
    }

    @Test
    void clockingIsAskedForTwoBentEnds() {
        assertThat(only(straight(2, "", "", hose(2.2, "90 to straight")))
                        .clocking()
                        .wanted())
                .isFalse();
        assertThat(only(straight(2, "", "", hose(2.2, "straight to 90")))
                        .clocking()
                        .wanted())
                .isFalse();
        assertThat(only(straight(2, "", "", hose(2.2, "90 to none"))).clocking().wanted())
                .isFalse();
        assertThat(only(straight(2, "", "", hose(2.2, "90 to 90"))).clocking().missing())
                .startsWith("no way-points at its two bent ends");
        Circuit nowhere = circuit("""
                points:
                  main: {kind: held, pressure: 300 kPa}
                  tap: {kind: draw, takes: 100 L/h}
                runs:
                  run: {from: main, to: tap, parts: [{hose: MIL-H-8794 -6, length: 1 m, ends: 90 to 90}]}
                """);
        assertThat(only(nowhere).clocking().missing())
                .isEqualTo("no height, ahead and left of what it joins; give those first");
    }

    @Test
    void cornersOfAnyAngleAreMeasured() {
        // 0.4 m ahead, then 0.6 m at 60 degrees
        Position corner = new Position(0.4, 0, 0);
        Position end = new Position(0.4 + 0.6 * Math.cos(Math.PI / 3), 0.6 * Math.sin(Math.PI / 3), 0);
        List<Position> way = List.of(new Position(0, 0, 0), corner, end);
        double tangent = Math.tan(Math.PI / 6);
        assertThat(HosePath.roomM(way)).isCloseTo(0.4 / tangent, within(1e-12));
        assertThat(HosePath.lengthM(way, 0.3)).isCloseTo(1 - 0.3 * (2 * tangent - Math.PI / 3), within(1e-12));
        assertThat(HosePath.lengthM(way, 0)).isCloseTo(1, within(1e-12));
        // three right angles: legs of 1, 0.4, 0.6 and 1 m; the middle legs are shared by two corners each
        List<Position> stairs = List.of(
                new Position(0, 0, 0),
                new Position(1, 0, 0),
                new Position(1, 0.4, 0),
                new Position(1.6, 0.4, 0),
                new Position(1.6, 1.4, 0));
        assertThat(HosePath.roomM(stairs)).isCloseTo(0.2, within(1e-12));
        // a short last leg is not shared
        assertThat(HosePath.roomM(List.of(
                        new Position(0, 0, 0), new Position(1, 0, 0), new Position(1, 1, 0), new Position(1.15, 1, 0))))
                .isCloseTo(0.15, within(1e-12));
        assertThat(HosePath.roomM(List.of(
                        new Position(0, 0, 0),
                        new Position(0.15, 0, 0),
                        new Position(0.15, 1, 0),
                        new Position(1.15, 1, 0))))
                .isCloseTo(0.15, within(1e-12));
        // a way-point given twice turns nothing
        assertThat(HosePath.roomM(List.of(
                        new Position(0, 0, 0), new Position(1, 0, 0), new Position(1, 0, 0), new Position(1, 1, 0))))
                .isInfinite();
    }

    @Test
    void twoRunsThatMeetAtAPointAreOneJoint() {
        String form = """
                points:
                  main: {kind: held, pressure: 300 kPa}
                  mid: {kind: joint}
                  tap: {kind: draw, takes: 100 L/h}
                runs:
                  first: {from: main, to: mid, parts: [{hose: MIL-H-8794 -6, length: 1 m, ends: straight to straight}%s]}
                  second: {from: mid, to: tap, parts: [{hose: MIL-H-8794 -6, length: 1 m, ends: straight to straight}]}
                """;
        Circuit seals = circuit(form.formatted(", {union: -6}"));
        KitCircuit kit = kit(seals).circuits().get(0);
        // main, hose to union, union to hose, tap
        assertThat(kit.joints()).hasSize(4);
        KitJoint met = kit.joints().get(2);
        assertThat(met.before()).isEqualTo("first 2");
        assertThat(met.after()).isEqualTo("second 1");
        assertThat(met.run()).isEqualTo("second");
        assertThat(met.stated()).isTrue();
        assertThat(kit.notices()).extracting(Notice::id).doesNotContain("fitting-missing");
        assertThat(kit.joints().get(0).before()).isEqualTo("main");
        assertThat(kit.joints().get(3).after()).isEqualTo("tap");
        KitCircuit nuts = kit(circuit(form.formatted(""))).circuits().get(0);
        assertThat(nuts.joints()).hasSize(3);
        assertThat(nuts.notices().get(0).id()).isEqualTo("fitting-missing");
        assertThat(nuts.notices().get(0).element()).isEqualTo("mid");
        assertThat(nuts.notices().get(0).text())
                .isEqualTo("two swivel nuts meet; put a union or bulkhead -6 between (adds 2 sealing faces)");
    }

    @Test
    void threeLinesAtAPointNeedAFitting() {
        Circuit circuit = circuit("""
                points:
                  main: {kind: held, pressure: 300 kPa}
                  mid: {kind: joint}
                  tap: {kind: draw, takes: 100 L/h}
                  other: {kind: draw, takes: 100 L/h}
                runs:
                  first: {from: main, to: mid, parts: [{hose: MIL-H-8794 -6, length: 1 m, ends: straight to straight}]}
                  second: {from: mid, to: tap, parts: [{hose: MIL-H-8794 -6, length: 1 m, ends: straight to straight}]}
                  third: {from: mid, to: other, parts: [{hose: MIL-H-8794 -6, length: 1 m, ends: straight to straight}]}
                """);
        KitCircuit kit = kit(circuit).circuits().get(0);
        assertThat(kit.joints()).as("each its own").hasSize(6);
        assertThat(kit.notices().get(0).text())
                .isEqualTo("3 lines meet here and no fitting is named, so none is in the list: write kind: tee or kind:"
                        + " Y block");
    }

    private static List<String> alternatives(Circuit circuit) {
        return kit(circuit).alternatives().stream().map(Alternative::name).toList();
    }

    @Test
    void oneHoseForTwoOfAKindOnly() {
        String hose = hose(1, "straight to straight");
        String other = "{hose: race PTFE -6, length: 1 m, ends: straight to straight}";
        Kit kit = kit(straight(2, "", "", hose, "{union: -6}", hose));
        assertThat(kit.alternatives()).hasSize(1);
        Alternative one = kit.alternatives().get(0);
        assertThat(one.name()).isEqualTo("one hose in place of run 1, run 2 and run 3");
        assertThat(one.circuit()).isEqualTo("Layout");
        assertThat(one.leaksSaved()).isEqualTo(2);
        assertThat(one.facesSaved()).isEqualTo(4);
        assertThat(one.changes())
                .containsExactly(
                        new Alternative.Change("hose end straight, MIL-H-8794 -6", false, -2),
                        new Alternative.Change("union -6", false, -1));
        assertThat(alternatives(straight(2, "", "", hose, "{union: -6}", other)))
                .as("two kinds of hose")
                .isEmpty();
        assertThat(alternatives(straight(2, "", "", hose, "{bulkhead: -6}", hose)))
                .as("a bulkhead is where a wall is")
                .isEmpty();
        assertThat(alternatives(straight(2, "", "", hose, "{union: -6}")))
                .as("a line that ends in a union")
                .isEmpty();
        assertThat(kit(straight(2, "", "", hose, "{union: -6}", hose(1, "none to straight")))
                        .alternatives()
                        .get(0)
                        .changes())
                .as("a bare piece has no end to save")
                .containsExactly(
                        new Alternative.Change("hose end straight, MIL-H-8794 -6", false, -1),
                        new Alternative.Change("union -6", false, -1));
    }

    @Test
    void oneAdapterForTwoInARow() {
        String hose = hose(1, "straight to straight");
        Kit kit = kit(straight(2, "", "", hose, "{adapter: -6 to -8}", "{adapter: -8 to -10}"));
        assertThat(kit.alternatives()).hasSize(1);
        Alternative one = kit.alternatives().get(0);
        assertThat(one.name()).isEqualTo("one adapter in place of run 2 and run 3");
        assertThat(one.leaksSaved()).isEqualTo(1);
        assertThat(one.changes())
                .containsExactly(
                        new Alternative.Change("reducer -8 to -6", false, -1),
                        new Alternative.Change("reducer -10 to -8", false, -1),
                        new Alternative.Change("adapter -6 to -10", false, 1));
        assertThat(alternatives(straight(2, "", "", hose, "{bulkhead: -6}", "{adapter: -6 to -8}")))
                .isEmpty();
        assertThat(alternatives(straight(2, "", "", hose, "{adapter: -6 to -8}", "{bulkhead: -8}")))
                .isEmpty();
    }

    @Test
    void aCaseSavesWhatItChanges() {
        String form = """
                points:
                  main: {kind: held, pressure: 300 kPa}
                  tap: {kind: draw, takes: 100 L/h}
                runs:
                  run:
                    from: main
                    to: tap
                    parts:
                      - {hose: MIL-H-8794 -6, length: 1.5 m, ends: straight to straight, name: near}
                      - {valve: ball -6, name: tap off}
                      - {hose: MIL-H-8794 -6, length: 1.5 m, ends: straight to straight, name: far}
                cases:
                  short: {near: {length: 1.1 m}}
                  hot: {temperature: 40 C}
                  braided: {far: {hose: race PTFE -6}}
                """;
        Kit kit = kit(circuit(form));
        assertThat(kit.alternatives())
                .extracting(Alternative::name)
                .as("a case that changes no part is none")
                .containsExactly("case short", "case braided");
        Alternative cut = kit.alternatives().get(0);
        assertThat(cut.changes()).hasSize(1);
        assertThat(cut.changes().get(0).item()).isEqualTo("MIL-H-8794 -6");
        assertThat(cut.changes().get(0).byLength()).isTrue();
        assertThat(cut.changes().get(0).more()).isCloseTo(-0.4, within(1e-12));
        assertThat(cut.leaksSaved()).isZero();
        assertThat(kit.alternatives().get(1).changes())
                .containsExactlyInAnyOrder(
                        new Alternative.Change("MIL-H-8794 -6", true, -1.5),
                        new Alternative.Change("hose end straight, MIL-H-8794 -6", false, -2),
                        new Alternative.Change("race PTFE -6", true, 1.5),
                        new Alternative.Change("hose end straight, race PTFE -6", false, 2));
        // seen from the case itself, only the others are news
        assertThat(alternatives(circuit(form).in("short"))).doesNotContain("case short");
    }

    @Test
    void notesAreForWhatIsThere() {
        List<Bench.Note> notes =
                kit(straight(2, "", "", hose(2.2, "straight to straight"))).notes();
        assertThat(notes)
                .extracting(Bench.Note::kind)
                .contains("hose", "rubber two-piece", "37-degree flare")
                .doesNotContain("tube", "PTFE three-piece", "banjo", "rubber barb", "rubber crimped");
        assertThat(notes)
                .extracting(Bench.Note::family)
                .contains("MIL-H-8794", "")
                .doesNotContain("race rubber", "MIL-H-8788");
        List<Bench.Note> tube = kit(straight(2, "", "", "{tube: steel 3/8 in x 0.035 in, length: 2.1 m}"))
                .notes();
        assertThat(tube).extracting(Bench.Note::kind).contains("tube").doesNotContain("hose", "rubber two-piece");
        List<Bench.Note> ptfe = kit(straight(2, "", "", "{hose: race PTFE -6, length: 2.2 m, ends: straight to none}"))
                .notes();
        assertThat(ptfe)
                .extracting(Bench.Note::kind)
                .contains("PTFE three-piece")
                .doesNotContain("rubber two-piece");
    }

    @Test
    void spannersAreOfTheNutsThatAreThere() {
        List<Wrench> wrenches = kit(straight(
                        2,
                        "",
                        "",
                        "{hose: MIL-H-8794 -8, length: 2.2 m, ends: straight to straight}",
                        "{adapter: -8 to -6}",
                        "{tube: steel 3/8 in x 0.035 in, length: 2.1 m}"))
                .wrenches();
        assertThat(wrenches).extracting(Wrench::size).containsExactly("-6", "-8");
        // AN818: 0.687 in across the flats of a -6 nut, 0.875 in of a -8
        assertThat(wrenches.get(0).nutHex().value()).isCloseTo(0.687 * 0.0254, within(1e-12));
        assertThat(wrenches.get(1).nutHex().value()).isCloseTo(0.875 * 0.0254, within(1e-12));
    }
}
