package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.result.Result;
import org.linedrop.study.Diagnosis.Finding;
import org.linedrop.study.Suspect.Kind;
import org.linedrop.units.Display;

/** Faults planted in one small invented line and read without error. */
class DiagnosisByHandTest {
    private static final Circuit CIRCUIT = Bench.read("""
            points:
              main: {kind: held, pressure: 300 kPa, height: 0 m}
              tap: {kind: draw, takes: 360 L/h, height: 0 m, bore: vessel}
            devices:
              coarse: {kind: filter, drop: 4 kPa at 360 L/h, exponent: 2}
              fine: {kind: filter, drop: 10 kPa at 360 L/h, exponent: 2}
            runs:
              line:
                from: main
                to: tap
                parts:
                  - {law: K, K: 2 x, bore: 8 mm}
                  - {through: coarse}
                  - {tube: steel 3/8 in x 0.035 in, length: 2 m, name: hard line}
                  - {through: fine}
            """, "line.yaml");

    private static List<Reading> read(Circuit as, double errorPa, String... places) {
        Result result = Result.of(as).orThrow();
        List<Reading> readings = new ArrayList<>();
        for (String place : places) {
            Gauge gauge = Reading.read(CIRCUIT, place + " 1 kPa").gauge();
            readings.add(new Reading(gauge, gauge.of(result), errorPa));
        }
        return readings;
    }

    private static Suspect suspect(Kind kind, String subject) {
        return Suspect.usual(CIRCUIT).stream()
                .filter(each -> each.kind() == kind && each.subject().startsWith(subject))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void oneGaugeBetweenEveryTwoThingsTells() {
        Circuit dirty = suspect(Kind.CLOG, "fine").in(CIRCUIT, 5);
        List<Reading> readings = read(dirty, 1000, "coarse inlet", "coarse outlet", "fine inlet", "fine outlet");
        Diagnosis found = Diagnosis.of(CIRCUIT, readings);
        assertThat(found.finding()).isEqualTo(Finding.FOUND);
        assertThat(found.rivals()).isEqualTo(1);
        Diagnosis.Accused first = found.suspects().get(0);
        assertThat(first.suspect()).isEqualTo(suspect(Kind.CLOG, "fine"));
        assertThat(first.value()).isCloseTo(5, within(1e-3));
        assertThat(first.misfit()).isCloseTo(0, within(1e-4));
        assertThat(first.share()).isCloseTo(1, within(1e-6));
        // its outlet alone depends on it: 10 kPa a time, known to 1000 Pa, which are two deviations; by ratio
        double width = 2 * (500 / 10_000.0 / 5);
        assertThat(first.low()).isCloseTo(5 * Math.exp(-width), within(0.01));
        assertThat(first.high()).isCloseTo(5 * Math.exp(width), within(0.01));
        // as written the outlet reads 40 kPa more: 80 deviations
        assertThat(found.misfit()).isCloseTo(80 * 80, within(1.0));
        assertThat(found.readings().get(3).asWritten() - found.readings().get(3).best())
                .isCloseTo(40e3, within(20.0));
        assertThat(found.readings().get(3).best())
                .isCloseTo(found.readings().get(3).reading().value(), within(20.0));
        assertThat(found.readings().get(0).asWritten())
                .isCloseTo(found.readings().get(0).best(), within(1e-3));
        assertThat(found.suspects()).extracting(Diagnosis.Accused::misfit).isSorted();
        assertThat(found.suspects().stream()
                        .mapToDouble(Diagnosis.Accused::share)
                        .sum())
                .isCloseTo(1, within(1e-9));
        assertThat(found.gauges()).isEmpty();
        assertThat(found.sentence(Display.METRIC))
                .startsWith("The readings point at one cause: fine clogged: 5.0 times its clean drop. The next, ")
                .endsWith(", explains them worse.");
    }

    @Test
    void whatIsAsWrittenIsNotAccused() {
        Diagnosis found = Diagnosis.of(CIRCUIT, read(CIRCUIT, 1000, "coarse inlet", "fine inlet", "tap"));
        assertThat(found.finding()).isEqualTo(Finding.NOTHING_WRONG);
        assertThat(found.misfit()).isCloseTo(0, within(1e-9));
        assertThat(found.rivals()).isZero();
        assertThat(found.sentence(Display.METRIC))
                .isEqualTo("The file as written explains the readings within their errors; nothing points at a fault.");
    }

    @Test
    void aGaugeThatWouldTellIsNamedWithWhatItWouldRead() {
        Circuit dirty = suspect(Kind.CLOG, "coarse").in(CIRCUIT, 9);
        // 32 kPa too little at the end: any one thing in the line might take them
        Diagnosis found = Diagnosis.of(CIRCUIT, read(dirty, 1000, "tap"));
        assertThat(found.finding()).isEqualTo(Finding.CANNOT_TELL);
        assertThat(found.rivals()).isEqualTo(4);
        assertThat(found.suspects().subList(0, 4))
                .extracting(each -> each.suspect().subject())
                .containsExactlyInAnyOrder("main.pressure", "coarse.clog", "fine.clog", "hard line");
        for (Diagnosis.Accused each : found.suspects().subList(0, 4)) {
            assertThat(each.share()).isCloseTo(0.25, within(1e-3));
            switch (each.suspect().subject()) {
                case "main.pressure" -> assertThat(each.value()).isCloseTo(268e3, within(20.0));
                case "coarse.clog" -> assertThat(each.value()).isCloseTo(9, within(0.01));
                case "fine.clog" -> assertThat(each.value()).isCloseTo(4.2, within(0.01));
                default -> assertThat(each.value()).isPositive();
            }
        }
        // the fine filter's inlet would read as written but for what is before it
        assertThat(found.gauges()).hasSizeLessThanOrEqualTo(3).isNotEmpty();
        Diagnosis.Hint best = found.gauges().get(0);
        assertThat(best.values()).hasSize(4);
        double low = best.values().stream().mapToDouble(value -> value).min().orElseThrow();
        double high = best.values().stream().mapToDouble(value -> value).max().orElseThrow();
        assertThat(high - low).isCloseTo(32e3, within(50.0));
        assertThat(best.spread()).isCloseTo((high - low) / (0.02 * high), within(1e-6));
        assertThat(found.gauges()).extracting(hint -> -hint.spread()).isSorted();
        assertThat(found.gauges()).extracting(Diagnosis.Hint::gauge).doesNotContain(new Gauge("tap", "pressure"));
        assertThat(found.sentence(Display.METRIC))
                .startsWith("These readings cannot tell. Each of these would explain them: ")
                .contains("coarse clogged: 9.0 times its clean drop", "; fine clogged: 4.2 times its clean drop")
                .contains(" A gauge at " + best.gauge().words() + " would: it would read ")
                .endsWith(" kPa in this order.");
        assertThat(found.sentence(Display.US)).contains(" psi").doesNotContain("would read 2");
    }

    @Test
    void readingsThatContradictHaveNoSingleCause() {
        // both filters dirty
        Circuit both =
                suspect(Kind.CLOG, "coarse").in(suspect(Kind.CLOG, "fine").in(CIRCUIT, 5), 9);
        Diagnosis found = Diagnosis.of(CIRCUIT, read(both, 500, "coarse inlet", "coarse outlet", "fine inlet", "tap"));
        assertThat(found.finding()).isEqualTo(Finding.NO_SINGLE_CAUSE);
        assertThat(found.rivals()).isZero();
        assertThat(found.gauges()).isEmpty();
        assertThat(found.sentence(Display.METRIC))
                .startsWith("No single cause explains the readings; the best, ")
                .contains(", still leaves a misfit of ", " over 4 readings. Look for two faults, for a wrong figure in")
                .contains(String.format(
                        Locale.ROOT, "%.0f", found.suspects().get(0).misfit()));
    }

    @Test
    void twoUnknownsAreFittedExactly() {
        Suspect coarse = suspect(Kind.CLOG, "coarse");
        Suspect fine = suspect(Kind.CLOG, "fine");
        List<Reading> readings =
                read(coarse.in(fine.in(CIRCUIT, 5), 9), 500, "coarse inlet", "coarse outlet", "fine inlet", "tap");
        Diagnosis fit = Diagnosis.fit(CIRCUIT, readings, List.of(coarse, fine));
        assertThat(fit.finding()).isEqualTo(Finding.FITTED);
        assertThat(fit.fitted().get(0).value()).isCloseTo(9, within(1e-2));
        assertThat(fit.fitted().get(1).value()).isCloseTo(5, within(1e-2));
        assertThat(fit.fitted().get(0).low()).isBetween(8.5, 9.0);
        assertThat(fit.fitted().get(0).high()).isBetween(9.0, 9.5);
        assertThat(fit.readings().get(3).best()).isCloseTo(readings.get(3).value(), within(20.0));
        // 32 kPa behind the coarse filter, twice, and 72 behind both, with 250 Pa a deviation
        assertThat(fit.misfit()).isCloseTo(2 * 128.0 * 128 + 288.0 * 288, within(10.0));
        assertThat(fit.sentence(Display.METRIC))
                .isEqualTo(
                        "Fitted together: coarse clogged: 9.0 times its clean drop; fine clogged: 5.0 times its clean"
                                + " drop.");
    }

    @Test
    void whatOneGaugeCannotPartIsSaid() {
        Suspect coarse = suspect(Kind.CLOG, "coarse");
        Suspect fine = suspect(Kind.CLOG, "fine");
        Circuit dirty = coarse.in(CIRCUIT, 9);
        List<Reading> twice =
                List.of(read(dirty, 500, "tap").get(0), read(dirty, 600, "tap").get(0));
        Diagnosis fit = Diagnosis.fit(CIRCUIT, twice, List.of(coarse, fine));
        assertThat(fit.fitted()).allSatisfy(each -> {
            assertThat(each.low()).isNaN();
            assertThat(each.high()).isNaN();
        });
        assertThat(fit.sentence(Display.METRIC))
                .endsWith(" The readings cannot tell these apart: measure at another place, or fit fewer.");
    }

    @Test
    void asManyUnknownsAsCanBeFitted() {
        List<Reading> one = read(CIRCUIT, 500, "tap");
        List<Suspect> two = List.of(suspect(Kind.CLOG, "coarse"), suspect(Kind.CLOG, "fine"));
        assertThatThrownBy(() -> Diagnosis.fit(CIRCUIT, one, two))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("2 unknowns cannot be fitted to 1 readings: one to three can, and not more than there are"
                        + " readings");
        assertThatThrownBy(() -> Diagnosis.fit(CIRCUIT, one, List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Diagnosis.fit(
                        CIRCUIT,
                        read(CIRCUIT, 500, "tap", "coarse inlet", "fine inlet", "coarse outlet"),
                        Suspect.usual(CIRCUIT)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(Suspect.usual(CIRCUIT).size() + " unknowns");
        assertThat(Diagnosis.fit(CIRCUIT, one, two.subList(0, 1))
                        .fitted()
                        .get(0)
                        .value())
                .as("nothing wrong")
                .isCloseTo(1, within(1e-6));
        assertThatThrownBy(() -> Diagnosis.of(CIRCUIT, List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("at least one reading is needed");
        assertThat(Finding.values())
                .extracting(Finding::word)
                .containsExactly("nothing wrong", "found", "cannot tell", "no single cause", "fitted");
    }
}
