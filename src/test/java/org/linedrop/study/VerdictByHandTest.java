package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Limit;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.units.Display;

/** Verdicts on small invented circuits, each of which has one thing wrong that can be told by hand. */
class VerdictByHandTest {
    /** 800 kg/m3 at 360 L/h through 8 mm. */
    private static final double HEAD_PA = 400 * Math.pow(1e-4 / (Math.PI / 4 * 0.008 * 0.008), 2);

    private static final String HEAD = """
            linedrop: 1
            fluid: bench liquid
            temperature: 20 C
            fluids:
              bench liquid: {density: 800 kg/m3, viscosity: 1 cSt}
            """;
    private static final String TUBE = "{tube: steel 3/8 in x 0.035 in, length: 4 m}";

    private static CaseCheck check(String text) {
        return CaseJudge.check(CircuitFile.read(HEAD + text, "verdict.yaml"));
    }

    /** 300 kPa held, a line, 360 L/h drawn so many metres higher. */
    private static String line(double heightM, String limit, String... parts) {
        return """
                points:
                  main: {kind: held, pressure: 300 kPa, height: 0 m}
                  tap: {kind: draw, takes: 360 L/h, height: %s m, bore: vessel}
                runs:
                  line: {from: main, to: tap, parts: [%s]}
                """.formatted(heightM, String.join(", ", parts))
                + (limit.isEmpty() ? "" : "limits: {tap: {pressure: " + limit + "}}\n");
    }

    @Test
    void withoutALimitThereIsNoVerdict() {
        CaseCheck check = check(line(0, "", TUBE));
        assertThat(check.verdict()).isNull();
        assertThat(check.sentence(Display.METRIC))
                .isEqualTo("NO VERDICT: no limit is given that could be judged; the table says where pressure goes.");
        assertThat(check("this case: idle\n" + line(0, "", TUBE)).sentence(Display.METRIC))
                .startsWith("NO VERDICT: at idle no limit");
        assertThat(check("this case: at idle\n" + line(0, "", TUBE)).sentence(Display.METRIC))
                .startsWith("NO VERDICT: at idle no limit");
    }

    @Test
    void whatIsNotSolvedSaysWhy() {
        CaseCheck check =
                check("this case: idle\n" + line(0, "at least 200 kPa", TUBE).replace("300 kPa", "-101 kPa"));
        assertThat(check.verdict()).isNull();
        assertThat(check.sentence(Display.METRIC))
                .startsWith("NOT SOLVED: at idle not physical. The pressure at tap would be ");
    }

    @Test
    void heightIsNoLine() {
        // 800 kg/m3 x 9.80665 m/s2 x 5 m = 39.2 kPa: without loss 260.8 kPa are left
        CaseCheck check = check(line(5, "at least 270 kPa", TUBE));
        assertThat(check.verdict()).isEqualTo(CaseVerdict.STARVED);
        assertThat(check.mend()).isNull();
        assertThat(check.sentence(Display.METRIC))
                .isEqualTo("STARVED: the tap gets 232.3 kPa, 37.7 kPa short of 270.0. 39.2 kPa is height; no hose saves"
                        + " that. With no line loss at all it would still be 9.2 kPa off.");
        assertThat(check("motion: launch 0.5 g\n" + line(5, "at least 270 kPa", TUBE))
                        .sentence(Display.METRIC))
                .contains(" 39.2 kPa is height and acceleration; no hose saves that.");
        // downhill nothing is lost to height
        assertThat(check(line(-1, "at least 300 kPa", TUBE)).sentence(Display.METRIC))
                .doesNotContain("height");
    }

    @Test
    void tooMuchIsNoLineEither() {
        CaseCheck check = check(line(0, "at most 250 kPa", TUBE));
        assertThat(check.verdict()).isEqualTo(CaseVerdict.OUT_OF_CONTROL);
        assertThat(check.sentence(Display.METRIC))
                .isEqualTo("OUT OF CONTROL: the tap gets 271.5 kPa, 21.5 kPa over 250.0. No line is too small: a"
                        + " restrictor, a regulator or a smaller pump would hold it down.");
    }

    @Test
    void theSizeThatHoldsIsNamed() {
        CaseCheck check = check(line(1, "at least 255 kPa", TUBE, "{law: K, K: 2 x, bore: 8 mm}"));
        assertThat(check.verdict()).isEqualTo(CaseVerdict.ADEQUATE);
        CaseCheck narrow = check(line(1, "at least 270 kPa", TUBE, "{law: K, K: 2 x, bore: 8 mm, name: cock}"));
        assertThat(narrow.verdict()).isEqualTo(CaseVerdict.UNDERSIZED);
        CaseCheck.Culprit culprit = narrow.culprit();
        assertThat(culprit.part()).isEqualTo("line 1");
        assertThat(culprit.allLossPa() - culprit.lossPa())
                .as("two heads and a metre")
                .isCloseTo(2 * HEAD_PA + 800 * 9.80665, within(1.0));
        assertThat(narrow.mend().words()).isEqualTo("line 1 in 1/2 in x 0.035 in");
        double then = narrow.mend().result().usual().point("tap").orElseThrow().staticPressurePa();
        assertThat(narrow.mend().limit().margin()).isCloseTo(then - 270e3, within(1e-6));
        assertThat(narrow.sentence(Display.METRIC))
                .startsWith("UNDERSIZED: the tap gets 260.5 kPa, 9.5 kPa short of 270.0; line 1 takes 29 of the 40 kPa"
                        + " lost on the way. Smallest change that holds: line 1 in 1/2 in x 0.035 in: ")
                .endsWith(" kPa to spare. 7.8 kPa is height; no hose saves that.");
        assertThat(check(line(0, "at least 285 kPa", "{law: K, K: 20 x, bore: 8 mm, name: cock}"))
                        .sentence(Display.METRIC))
                .isEqualTo(
                        "UNDERSIZED: the tap gets 268.3 kPa, 16.7 kPa short of 285.0; the cock (line 1) takes 32 of the"
                                + " 32 kPa lost on the way. No change of size up to two sizes, of one line or of all on the way,"
                                + " holds.");
    }

    @Test
    void oneSizeOfOnePartIsTriedBeforeMore() {
        String hose = "{hose: race PTFE -4, length: 1 m, ends: straight to straight}";
        String reducer = "{union: -4}";
        // both together, for neither does alone
        CaseCheck both = check(line(0, "at least 250 kPa", hose, reducer, hose));
        assertThat(both.mend()).isNotNull();
        assertThat(both.mend().words()).contains("; ").contains("line 1 in ", "line 3 in ");
        // one hose two sizes up, for one size up is not enough and there is only one
        CaseCheck two = check(line(0, "at least 294 kPa", hose));
        assertThat(two.mend().words()).isEqualTo("line 1 in -8");
        CaseCheck one = check(line(0, "at least 280 kPa", hose));
        assertThat(one.mend().words()).isEqualTo("line 1 in -6");
        // the one that loses more is tried first
        CaseCheck longer = check(line(
                0, "at least 120 kPa", hose, reducer, "{hose: race PTFE -4, length: 3 m, ends: straight to straight}"));
        assertThat(longer.mend().words()).isEqualTo("line 3 in -6");
    }

    @Test
    void aLimitBetweenUsualAndWorstBoresIsUnsure() {
        String hose = "{hose: race PTFE -6, length: 2 m, ends: straight to straight}";
        CaseCheck inside = check(line(0, "at least 283 kPa", hose));
        assertThat(inside.verdict()).isEqualTo(CaseVerdict.UNSURE);
        assertThat(inside.mend()).as("it holds as it is").isNull();
        assertThat(inside.sentence(Display.METRIC))
                .startsWith("UNSURE: the tap gets 285.3 kPa, 2.3 kPa inside the limit at usual bores but ")
                .contains(" kPa outside it with the smallest bores sold. Measure the ")
                .contains(" bore of race PTFE -6 first and write \"")
                .endsWith("bore: ... measured\".");
        CaseCheck outside = check(line(0, "at least 286 kPa", hose));
        assertThat(outside.verdict()).isEqualTo(CaseVerdict.UNSURE);
        assertThat(outside.sentence(Display.METRIC))
                .startsWith("UNSURE: the tap gets 285.3 kPa, 0.7 kPa short of 286.0 at usual bores but ")
                .contains(" kPa inside the limit with the largest bores sold. Measure the ")
                .contains(" Smallest change that holds: line 1 in -8: ");
        assertThat(outside.mend()).isNotNull();
        assertThat(outside.measure()).isNotNull();
    }

    private static final String PUMP = """
            points:
              sump: {kind: held, pressure: 0 kPa}
              tap: {kind: draw, takes: 180 L/h, bore: vessel}
            devices:
              pump: {kind: pump, curves: [{at: 12 V, pressure: 0 100 kPa, flow: 360 0 L/h}], runs at: 12 V}
            runs:
              line: {from: sump, to: tap, parts: [%s]}
            """;

    @Test
    void aPumpThatCannotIsNotTheLine() {
        // at half its flow the pump has half its pressure
        CaseCheck check =
                check(PUMP.formatted("{through: pump}, " + TUBE) + "limits: {tap: {pressure: at least 60 kPa}}\n");
        assertThat(check.verdict()).isEqualTo(CaseVerdict.PUMP_SHORT);
        assertThat(check.culprit().part()).as("no pump is to blame for a loss").isEqualTo("line 2");
        assertThat(check.sentence(Display.METRIC))
                .isEqualTo(
                        "PUMP SHORT: not the line: the tap gets 41.8 kPa, 18.2 kPa short of 60.0; with no line loss at"
                                + " all it would still be 10.0 kPa off.");
    }

    @Test
    void whatCannotBeJudgedIsSaid() {
        CaseCheck check = check(PUMP.formatted("{through: pump}, " + TUBE)
                + "limits: {pump: {inlet margin: at least 20 kPa}, tap: {pressure: at least 10 kPa}}\n");
        assertThat(check.verdict()).isEqualTo(CaseVerdict.ADEQUATE);
        assertThat(check.sentence(Display.METRIC))
                .isEqualTo(
                        "ADEQUATE: every limit that can be judged holds; nearest is tap pressure at 41.8 kPa, 31.8 kPa"
                                + " to spare. Not judged: pump inlet margin (the vapour pressure of the fluid is not known).");
    }

    @Test
    void aSuctionLineIsOnTheWayToItsPump() {
        String suction = PUMP.formatted(TUBE + ", {law: K, K: 30 x, bore: 8 mm}, {through: pump}");
        CaseCheck pressure = check(suction + "limits: {pump: {inlet pressure: at least -5 kPa}}\n");
        // 30 heads at half the flow
        assertThat(pressure.culprit().part()).isEqualTo("line 2");
        assertThat(pressure.culprit().lossPa()).isCloseTo(30 * HEAD_PA / 4, within(1e-3));
        assertThat(pressure.sentence(Display.METRIC))
                .startsWith(
                        "UNDERSIZED: the pump's inlet pressure is -20.4 kPa, 15.4 kPa short of -5.0; line 2 takes 12 of"
                                + " the 20 kPa lost on the way.");
        CaseCheck vacuum = check(suction + "limits: {pump: {inlet vacuum: at most 5 kPa}}\n");
        assertThat(vacuum.sentence(Display.METRIC))
                .startsWith("UNDERSIZED: the pump's inlet vacuum is 20.4 kPa, 15.4 kPa over 5.0; line 2 takes 12");
        // lifted out of a low sump it is not the line
        String low = suction.replace("pressure: 0 kPa}", "pressure: 0 kPa, height: 0 m}")
                .replace("bore: vessel}", "bore: vessel, height: 3 m}")
                .replace("runs at: 12 V}", "runs at: 12 V, height: 3 m}");
        CaseCheck lifted = check(low + "limits: {pump: {inlet vacuum: at most 5 kPa}}\n");
        assertThat(lifted.verdict()).isEqualTo(CaseVerdict.SHORT_AT_THE_INLET);
        assertThat(lifted.sentence(Display.METRIC))
                .startsWith("SHORT AT THE INLET: the pump's inlet vacuum is ")
                .contains(
                        "; line 2 takes 12 kPa. A wider or shorter line, a higher or cooler tank, or a pump in the tank"
                                + " would help.");
        CaseCheck pressed = check(low + "limits: {pump: {inlet pressure: at least -5 kPa}}\n");
        assertThat(pressed.verdict()).isEqualTo(CaseVerdict.SHORT_AT_THE_INLET);
    }

    @Test
    void anOpenReliefValveHoldsThePressureDown() {
        String relief = """
                points:
                  sump: {kind: tank, depth: 0 m, height: 0 m}
                  mid: {kind: joint, height: 0 m}
                  tap: {kind: draw, takes: 180 L/h, bore: vessel, height: 0 m}
                devices:
                  pump: {kind: pump, curves: [{at: 12 V, pressure: 0 1000 kPa, flow: 400 390 L/h}], runs at: 12 V}
                  relief: {kind: relief valve, opens: 50 kPa, wide open: 60 kPa at 400 L/h}
                runs:
                  line: {from: sump, to: mid, parts: [{through: pump}, {law: K, K: 1 x, bore: 8 mm}]}
                  spill: {from: mid, to: sump, parts: [{law: K, K: 1 x, bore: 8 mm}, {through: relief}]}
                  feed: {from: mid, to: tap, parts: [{law: K, K: 1 x, bore: 8 mm}, %s]}
                """.formatted(TUBE);
        CaseCheck check = check(relief + "limits: {tap: {pressure: at least 80 kPa}}\n");
        assertThat(check.verdict()).isEqualTo(CaseVerdict.OUT_OF_CONTROL);
        // what is pumped, some 399.5 L/h, less 180; between 50 and 60 kPa in proportion to its flow
        assertThat(check.sentence(Display.METRIC))
                .isEqualTo("OUT OF CONTROL: the tap gets 48.1 kPa, 31.9 kPa short of 80.0. The pump is not short: the"
                        + " relief lets go of 3.7 L/min at 55.5 kPa. With no line loss at all it would still be 24.5 kPa"
                        + " off.");
        assertThat(check(relief + "limits: {tap: {pressure: at most 20 kPa}}\n").sentence(Display.METRIC))
                .endsWith(" over 20.0. No line is too small: a restrictor, a regulator or a smaller pump would hold it"
                        + " down.");
    }

    private static String ways(List<PartRow> rows) {
        return String.join(" ", rows.stream().map(PartRow::part).distinct().toList());
    }

    @Test
    void theWayToAPlaceBeginsWherePressureIsMade() {
        Circuit circuit = CircuitFile.read(HEAD + """
                points:
                  sump: {kind: tank, depth: 0 m, height: 0 m}
                  mid: {kind: joint, height: 0 m}
                  far: {kind: draw, takes: 100 L/h, height: 0 m}
                  near: {kind: draw, takes: 100 L/h, height: 0 m}
                devices:
                  pump: {kind: pump, curves: [{at: 12 V, pressure: 0 500 kPa, flow: 400 100 L/h}], runs at: 12 V}
                  filter: {kind: filter, drop: 1 kPa at 100 L/h}
                runs:
                  feed:
                    from: sump
                    to: mid
                    parts:
                      - {law: K, K: 1 x, bore: 8 mm, name: suction}
                      - {through: pump}
                      - {law: K, K: 1 x, bore: 8 mm, name: first}
                  to near: {from: mid, to: near, parts: [{law: K, K: 1 x, bore: 8 mm, name: second}]}
                  to far:
                    from: near
                    to: far
                    parts:
                      - {law: K, K: 1 x, bore: 8 mm, name: third}
                      - {through: filter}
                      - {law: K, K: 1 x, bore: 8 mm, name: fourth}
                limits:
                  filter: {flow: at least 50 L/h, inlet pressure: at least 1 kPa}
                """, "ways.yaml");
        Result result = Result.of(circuit).orThrow();
        assertThat(ways(Way.to(result, "far"))).isEqualTo("first second third filter fourth");
        assertThat(ways(Way.to(result, "near"))).isEqualTo("first second");
        assertThat(ways(Way.to(result, "mid"))).isEqualTo("first");
        assertThat(ways(Way.to(result, "filter"))).isEqualTo("first second third");
        assertThat(ways(Way.to(result, "pump"))).isEqualTo("suction");
        assertThat(ways(Way.to(result, "sump"))).isEmpty();
        assertThat(ways(Way.behind(result, "filter"))).isEqualTo("fourth");
        assertThat(ways(Way.behind(result, "pump"))).isEqualTo("first");
        assertThat(ways(Way.behind(result, "nowhere"))).isEmpty();
        for (Limit limit : circuit.limits()) {
            assertThat(ways(Way.to(result, limit)))
                    .isEqualTo(limit.quantity().equals("flow") ? "first second third fourth" : "first second third");
        }
    }

    @Test
    void theWayBehindARegulatorEndsInTheTank() {
        Circuit circuit = CircuitFile.read(HEAD + """
                points:
                  tank: {kind: tank, depth: 0 m, height: 0 m}
                  back: {kind: joint, height: 0 m}
                  rail: {kind: draw, takes: 50 L/h, height: 0 m}
                devices:
                  pump: {kind: pump, curves: [{at: 12 V, pressure: 0 800 kPa, flow: 400 300 L/h}], runs at: 12 V}
                  regulator: {kind: bypass regulator, holds: 300 kPa over air, wide open: 30 kPa at 350 L/h, height: 0 m}
                runs:
                  supply: {from: tank, to: regulator.inlet, parts: [{through: pump}, {law: K, K: 1 x, bore: 8 mm}]}
                  feed: {from: regulator.inlet, to: rail, parts: [{law: K, K: 1 x, bore: 8 mm}]}
                  spill: {from: regulator.return, to: back, parts: [{law: K, K: 1 x, bore: 8 mm}]}
                  last: {from: back, to: tank, parts: [{law: K, K: %s x, bore: 8 mm}]}
                limits:
                  regulator: {state: in control}
                """.formatted(1), "return.yaml");
        Result result = Result.of(circuit).orThrow();
        assertThat(ways(Way.after(result, "regulator"))).isEqualTo("spill 1 last 1");
        assertThat(CaseJudge.check(circuit).sentence(Display.METRIC))
                .startsWith("ADEQUATE: every limit holds; nearest is the regulator, in control with ")
                .endsWith(" kPa left to throttle.");
        Circuit narrow = circuit.with(List.of(Change.of("last 1", "K", "500 x")));
        CaseCheck limited = CaseJudge.check(narrow);
        assertThat(limited.verdict()).isEqualTo(CaseVerdict.RETURN_LIMITED);
        assertThat(limited.culprit().part()).isEqualTo("last 1");
        assertThat(limited.sentence(Display.METRIC))
                .startsWith("RETURN-LIMITED: the regulator cannot come below ")
                .contains(" over its 300.0 kPa setting; ", " of that is its return line, ", " the open regulator. No")
                .doesNotContain("height");
        Circuit open = circuit.with(List.of(Change.of("regulator", "wide open", "900 kPa at 350 L/h")));
        CaseCheck lost = CaseJudge.check(open);
        assertThat(lost.verdict()).isEqualTo(CaseVerdict.OUT_OF_CONTROL);
        assertThat(lost.mend()).isNull();
        assertThat(lost.sentence(Display.METRIC))
                .startsWith("OUT OF CONTROL: the regulator cannot come below ")
                .endsWith(" the open regulator. A return line without any loss would not bring it back: less flow or a"
                        + " larger regulator would.");
    }

    @Test
    void ofTwoBrokenLimitsTheGraverIsSaid() {
        // the tap is under its limit by its line, main is over its own by nobody's
        CaseCheck check = check(
                line(0, "at least 280 kPa", TUBE).replace("limits: {", "limits: {main: {pressure: at most 100 kPa}, "));
        assertThat(check.verdict()).isEqualTo(CaseVerdict.OUT_OF_CONTROL);
        assertThat(check.decisive().limit().subject()).isEqualTo("main");
        CaseCheck tap = check(
                line(0, "at least 280 kPa", TUBE).replace("limits: {", "limits: {main: {pressure: at most 400 kPa}, "));
        assertThat(tap.verdict()).isEqualTo(CaseVerdict.UNDERSIZED);
        assertThat(tap.decisive().limit().subject()).isEqualTo("tap");
    }
}
