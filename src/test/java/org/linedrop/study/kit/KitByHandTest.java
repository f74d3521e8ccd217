package org.linedrop.study.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.Seat;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Notice;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;

/** Kits of small invented circuits, counted and measured by hand. */
class KitByHandTest {
    private static final String HEAD = """
            linedrop: 1
            title: Line
            fluid: bench liquid
            temperature: 20 C
            fluids:
              bench liquid: {density: 800 kg/m3, viscosity: 1 cSt}
            """;

    /** One line from a held pressure to a draw; parts are the lines of its list. */
    private static Circuit line(String more, String... parts) {
        return CircuitFile.read(HEAD + """
                points:
                  main: {kind: held, pressure: 300 kPa}
                  tap: {kind: draw, takes: 100 L/h}
                runs:
                  run: {from: main, to: tap, parts: [%s]}
                """.formatted(String.join(", ", parts)) + more, "line.yaml");
    }

    private static Kit kit(Circuit circuit) {
        return Kit.of(List.of(circuit), OwnFigures.NONE);
    }

    private static Kit kit(Circuit circuit, OwnFigures.Row... rows) {
        return Kit.of(List.of(circuit), new OwnFigures("EUR", List.of(rows)));
    }

    private static OwnFigures.Row cutOff(String item, double cutOffM) {
        return new OwnFigures.Row(item, OwnFigures.Per.NOT_SAID, Double.NaN, Double.NaN, cutOffM);
    }

    private static Map<String, Integer> counts(Kit kit) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        kit.items().forEach(item -> counts.put(item.item(), item.count()));
        return counts;
    }

    private static List<String> notices(Circuit circuit) {
        return kit(circuit).circuits().get(0).notices().stream()
                .map(notice -> notice.id() + " " + notice.element())
                .toList();
    }

    private static String rubber(double lengthM, String more) {
        return "{hose: MIL-H-8794 -6, length: " + lengthM + " m, ends: straight to straight" + more + "}";
    }

    private static final String DEVICES = """
            devices:
              boss: {kind: filter, drop: 1 kPa at 300 L/h, ports: ORB -6}
              taper: {kind: filter, drop: 1 kPa at 300 L/h, ports: 1/4 NPT}
              pipe: {kind: filter, drop: 1 kPa at 300 L/h, ports: G 1/4}
              metric: {kind: filter, drop: 1 kPa at 300 L/h, ports: M14x1.5}
            """;

    @Test
    void everySeatGetsItsSeal() {
        Kit kit = kit(line(
                DEVICES,
                rubber(1, ""),
                "{adapter: -6 to ORB -6}",
                "{through: boss}",
                "{adapter: ORB -6 to -6}",
                rubber(1, ""),
                "{adapter: -6 to 1/4 NPT}",
                "{through: taper}",
                "{adapter: 1/4 NPT to -6}",
                rubber(1, ""),
                "{adapter: -6 to G 1/4}",
                "{through: pipe}",
                "{adapter: G 1/4 to -6}",
                "{hose: MIL-H-8794 -6, length: 1 m, ends: straight to banjo M14}",
                "{through: metric}",
                "{adapter: M14x1.5 to -6}",
                rubber(1, "")));
        Map<String, Integer> byHand = new LinkedHashMap<>();
        byHand.put("MIL-H-8794 -6", 5);
        byHand.put("hose end straight, MIL-H-8794 -6", 9);
        byHand.put("hose end banjo M14, MIL-H-8794 -6", 1);
        byHand.put("adapter -6 to ORB -6", 2);
        byHand.put("adapter -6 to 1/4 NPT", 2);
        byHand.put("adapter -6 to G 1/4", 2);
        byHand.put("adapter -6 to M14x1.5", 1);
        byHand.put("O-ring AS568-906 (ORB -6)", 2); // AS568 of a -6 boss: 906
        byHand.put("thread sealant, joint of 1/4 NPT", 2);
        byHand.put("bonded seal or washer G 1/4", 2);
        byHand.put("banjo washer M14", 2); // one joint, a washer on each side
        byHand.put("O-ring or washer M14x1.5", 1);
        assertThat(counts(kit)).containsExactlyEntriesOf(byHand);
        // 16 things, each with a joint to the next, and the two ends of the line
        assertThat(kit.joints()).isEqualTo(15 + 2);
        assertThat(kit.leaks()).isEqualTo(17 + 1);
        KitJoint banjo = kit.circuits().get(0).joints().stream()
                .filter(joint -> joint.seat() == Seat.BANJO)
                .findFirst()
                .orElseThrow();
        assertThat(banjo.before()).isEqualTo("run 13");
        assertThat(banjo.after()).isEqualTo("metric");
        assertThat(banjo.size()).isEqualTo("M14");
        assertThat(banjo.stated()).isTrue();
        assertThat(banjo.leaks()).isEqualTo(2);
        assertThat(banjo.faces()).isEqualTo(4);
        assertThat(kit.wrenches()).extracting(Wrench::size).containsExactly("-6");
    }

    @Test
    void theListGoesByGroupsWhateverTheOrderOfTheLine() {
        Kit kit = kit(line(
                "",
                "{valve: ball -6}",
                rubber(1, ""),
                "{union: -6}",
                "{tube: steel 3/8 in x 0.035 in, length: 1 m}",
                "{adapter: -6 to -8}",
                "{valve: -8, kv: 3}",
                "{restrictor: 2.5 mm, length: 2 mm}",
                "{adapter: -8 to -6}",
                rubber(1, "")));
        assertThat(kit.items())
                .extracting(KitItem::group)
                .isSorted()
                .startsWith(KitItem.Group.HOSE)
                .endsWith(KitItem.Group.VALVE);
        assertThat(counts(kit))
                .containsEntry("ball valve -6", 1)
                .containsEntry("valve -8", 1)
                .containsEntry("restrictor 2.50 mm", 1)
                .containsEntry("reducer -8 to -6", 2)
                .containsEntry("tube nut and sleeve -6", 2)
                .containsEntry("tube steel 3/8 in x 0.035 in", 1)
                .hasSize(9);
        assertThat(kit.wrenches()).extracting(Wrench::size).containsExactly("-6", "-8");
        assertThat(kit.items()).extracting(item -> item.group().word()).contains("hose", "hose end", "tube end");
    }

    @Test
    void onlyWhatTurnsIsNamedByItsAngle() {
        Catalogue catalogue = Catalogue.standard();
        assertThat(Tally.adapterName(catalogue.adapter("-6 to 1/4 NPT", 0, false)))
                .isEqualTo("adapter -6 to 1/4 NPT");
        assertThat(Tally.adapterName(catalogue.adapter("-6 to 1/4 NPT", 90, false)))
                .isEqualTo("adapter -6 to 1/4 NPT 90 forged");
        assertThat(Tally.adapterName(catalogue.adapter("1/4 NPT to -6", 45, true)))
                .isEqualTo("adapter -6 to 1/4 NPT 45 swept");
        assertThat(Tally.adapterName(catalogue.adapter("-6 to -8"))).isEqualTo("reducer -8 to -6");
        assertThat(Tally.adapterName(catalogue.adapter("-8 to -6"))).isEqualTo("reducer -8 to -6");
    }

    @Test
    void volumeIsBoreByLength() {
        Circuit circuit = line(
                "",
                rubber(1.5, ""),
                "{union: -6}",
                "{tube: steel 3/8 in x 0.035 in, length: 2 m}",
                "{adapter: -6 to -8}",
                "{valve: ball -8}");
        KitCircuit kit = kit(circuit).circuits().get(0);
        Catalogue catalogue = Catalogue.standard();
        double hoseBore = catalogue.hose("MIL-H-8794 -6").boreM().value();
        double tubeBore = (0.375 - 2 * 0.035) * 0.0254;
        double volume = Math.PI / 4 * (hoseBore * hoseBore * 1.5 + tubeBore * tubeBore * 2);
        assertThat(kit.volumeM3()).isCloseTo(volume, within(1e-9 * volume));
        double low = catalogue.hose("MIL-H-8794 -6").boreM().low();
        assertThat(kit.volumeLowM3()).isBetween(Math.PI / 4 * low * low * 1.5, volume);
        assertThat(kit.volumeHighM3()).isGreaterThan(volume);
        assertThat(kit.fluidKg()).isCloseTo(800 * volume, within(1e-9 * 800 * volume));
        assertThat(kit(circuit).fluidKg()).isEqualTo(kit.fluidKg());
        assertThat(kit.fluid()).isEqualTo("bench liquid");
        assertThat(kit.brake()).isFalse();
    }

    @Test
    void massAndCostAreOfWhatIsKnown() {
        OwnFigures.Row hose = new OwnFigures.Row("MIL-H-8794 -6", OwnFigures.Per.METRE, 8, 0.25, Double.NaN);
        OwnFigures.Row end =
                new OwnFigures.Row("hose end straight, MIL-H-8794 -6", OwnFigures.Per.PIECE, 3, Double.NaN, Double.NaN);
        Kit kit = kit(line("", rubber(1.5, ""), "{union: -6}", rubber(0.5, "")), hose, end);
        assertThat(kit.massKg()).isCloseTo(2.0 * 0.25, within(1e-12));
        assertThat(kit.cost()).isCloseTo(2.0 * 8 + 4 * 3, within(1e-12));
        assertThat(kit.withoutMass()).isEqualTo(2);
        assertThat(kit.withoutPrice()).isEqualTo(1);
        assertThat(kit.unused()).isEmpty();
        OwnFigures.Row wrong = new OwnFigures.Row("MIL-H-8794 -6", OwnFigures.Per.PIECE, 8, Double.NaN, Double.NaN);
        OwnFigures.Row union = new OwnFigures.Row("union -6", OwnFigures.Per.METRE, 8, Double.NaN, Double.NaN);
        Circuit circuit = line("", rubber(1.5, ""), "{union: -6}", rubber(0.5, ""));
        assertThatThrownBy(() -> kit(circuit, wrong, union))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("it is sold by length, but its line says per piece. Write m or ft")
                .hasMessageContaining("it is sold by the piece, but its line says per length. Write piece");
    }

    @Test
    void theCutIsTheHoseLessItsEnds() {
        // NAVEDTRA 14018 table 5-2: 0.77 in for the swivel end of -6 medium-pressure rubber hose
        KitHose known = kit(line("", rubber(1, ""))).circuits().get(0).hoses().get(0);
        assertThat(known.cutM()).isCloseTo(1 - 2 * 0.77 * 0.0254, within(1e-12));
        assertThat(known.cutTolerance()).isNotNull();
        assertThat(known.cutTolerance().value()).as("36 to 48 in").isCloseTo(0.375 * 0.0254, within(1e-12));
        assertThat(known.cutFrom()).isEqualTo("NAVEDTRA 14018, military ends");
        assertThat(known.fromEnd()).isEqualTo("straight");
        assertThat(known.overallM()).isEqualTo(1);
        assertThat(known.slackShare()).isNaN();
        KitHose stub = kit(line("", rubber(0.03, ""))).circuits().get(0).hoses().get(0);
        assertThat(stub.cutM()).isNaN();
        assertThat(stub.cutTolerance()).isNull();
        assertThat(stub.cutFrom()).isEqualTo("the ends alone are longer than the hose");
        KitHose none = kit(line("", rubber(1, "")), cutOff("hose end straight, MIL-H-8794 -6", 0.5))
                .circuits()
                .get(0)
                .hoses()
                .get(0);
        assertThat(none.cutM()).as("nothing is left to cut").isNaN();
        assertThat(none.cutTolerance()).isNull();
        assertThat(none.cutFrom()).isEqualTo("the ends alone are longer than the hose");
    }

    @Test
    void eachCutOffSaysWhereItIsFrom() {
        Circuit circuit = line("", "{hose: MIL-H-8794 -6, length: 1 m, ends: straight to 90}");
        KitHose open = kit(circuit).circuits().get(0).hoses().get(0);
        assertThat(open.cutM()).isNaN();
        assertThat(open.cutFrom())
                .isEqualTo("NAVEDTRA 14018, military ends; cut-off of hose end 90 swept, MIL-H-8794 -6 not known");
        KitHose given = kit(circuit, cutOff("hose end 90 swept, MIL-H-8794 -6", 0.04))
                .circuits()
                .get(0)
                .hoses()
                .get(0);
        assertThat(given.cutM()).isCloseTo(1 - 0.77 * 0.0254 - 0.04, within(1e-12));
        assertThat(given.cutFrom()).isEqualTo("NAVEDTRA 14018, military ends; your list");
        assertThat(given.toEnd()).isEqualTo("90 swept");
        assertThat(kit(circuit, cutOff("hose end 90 swept, MIL-H-8794 -6", 0.04))
                        .unused())
                .isEmpty();
    }

    @Test
    void aRadiusNobodyGaveProvesNothing() {
        KitCircuit kit = kit(line(
                        "",
                        rubber(1, ", bends: 2 x 90"),
                        "{union: -6}",
                        rubber(1, ", bends: 1 x 90 at 80 mm"),
                        "{union: -6}",
                        rubber(1, ", bends: 1 x 90 at 120 mm"),
                        "{union: -6}",
                        rubber(1, "")))
                .circuits()
                .get(0);
        // FAA AC 43.13-1B table 9-3: MIL-H-8794 -6 at least 4.00 in = 101.6 mm
        assertThat(kit.hoses())
                .extracting(hose -> hose.bend().verdict().word())
                .containsExactly("radius not given", "TOO TIGHT", "not under the minimum", "taken as straight");
        assertThat(kit.hoses()).extracting(KitHose::part).containsExactly("run 1", "run 3", "run 5", "run 7");
        assertThat(kit.hoses().get(1).bend().radiusM()).isEqualTo(0.080);
        assertThat(kit.hoses().get(1).bend().leastM().value()).isCloseTo(0.1016, within(1e-12));
        assertThat(kit.hoses().get(1).bend().ofRoute()).isFalse();
    }

    @Test
    void whatIsNotBoughtIsSaid() {
        assertThat(notices(line("", rubber(1, "")))).containsExactly("port-not-stated ");
        assertThat(notices(line("", rubber(1, ""), "{restrictor: 2 mm, length: 2 mm}")))
                .containsExactly("port-not-stated ", "restrictor-inside ");
        assertThat(notices(line("", rubber(1, ""), "{law: K, K: 3 x, bore: 8 mm}")))
                .containsExactly("port-not-stated ", "law-only ");
        Circuit circuit = line(
                "devices:\n  boss: {kind: filter, drop: 1 kPa at 300 L/h, ports: ORB -6}\n"
                        + "  last: {kind: cooler, drop: 1 kPa at 300 L/h}\n",
                rubber(1, ""),
                "{adapter: -6 to ORB -6}",
                "{through: boss}",
                "{through: last}");
        List<Notice> notices = kit(circuit).circuits().get(0).notices();
        assertThat(notices).extracting(Notice::id).containsExactly("port-not-stated", "devices-left-out");
        // the filter says its ports; only the start of the line is not stated, and is said once
        assertThat(notices.get(0).text())
                .endsWith("so what is bought may not go on it (write ports: on a device): main to run 1");
        assertThat(notices.get(1).text()).isEqualTo("devices are no plumbing and not in the list: boss, last");
    }
}
