package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.result.Result;
import org.linedrop.solver.Outcome;
import org.linedrop.study.Diagnosis.Finding;
import org.linedrop.units.Display;

class DiagnosisTest {
    private static final Circuit FEED = Examples.circuit("carburettor-feed.yaml");
    private static final Result HEALTHY = Result.of(FEED).orThrow();
    private static final int TRIALS = 100;

    /** Gauges a careful person fits for a test day: beside both filters and the pump, behind the hard line, flow. */
    private static final List<String> PLACES = List.of(
            "coarse filter inlet",
            "coarse filter outlet",
            "pump outlet",
            "behind feed 4",
            "behind hard line",
            "fine filter inlet",
            "fine filter outlet",
            "front carb",
            "rear carb");

    private static final List<Gauge> GAUGES = PLACES.stream()
            .map(place -> Reading.read(FEED, place + " 10 kPa").gauge())
            .toList();

    private static List<Gauge> gauges() {
        return GAUGES;
    }

    private static List<Reading> readings(Result result, List<Gauge> gauges, Random random, double errorPa) {
        List<Reading> readings = new ArrayList<>();
        for (Gauge gauge : gauges) {
            readings.add(new Reading(gauge, gauge.of(result) + errorPa / 2 * random.nextGaussian(), errorPa));
        }
        return readings;
    }

    /** A fault big enough to be looked for: some gauge reads 3 to 9 kPa otherwise, of the 20 that the carburettors get. */
    private static double fault(Suspect suspect, Random random) {
        double target = 3000 + 6000 * random.nextDouble();
        double healthy = suspect.share(suspect.healthy());
        double away = suspect.kind() == Suspect.Kind.PUMP ? 0 : 1; // a pump gets weak, all else gets more
        double low = 0;
        double high = 1;
        for (int i = 0; i < 7; i++) {
            double share = (low + high) / 2;
            Result result = Result.of(suspect.in(FEED, suspect.value(healthy + share * (away - healthy))));
            boolean more = result.outcome() == Outcome.CONVERGED && effect(result) < target;
            low = more ? share : low;
            high = more ? high : share;
        }
        return suspect.value(healthy + low * (away - healthy));
    }

    private static double effect(Result result) {
        return gauges().stream()
                .mapToDouble(gauge -> Math.abs(gauge.of(result) - gauge.of(HEALTHY)))
                .max()
                .orElse(0);
    }

    @Test
    void itFindsThePlantedFaultInNinetyFiveOfAHundredTrialsAndElseSaysThatItCannotTell() {
        List<Suspect> suspects = Suspect.usual(FEED);
        Diagnoser diagnoser = Diagnoser.of(FEED, gauges(), suspects);
        Random random = new Random(20_240_611);
        int found = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            Suspect planted = suspects.get(trial % suspects.size());
            Result result = Result.of(planted.in(FEED, fault(planted, random))).orThrow();
            // a low-pressure test gauge of 0 to 60 kPa, class 1.6
            Diagnosis diagnosis = diagnoser.diagnose(readings(result, gauges(), random, 1000));
            String what = "trial " + trial + ", planted " + planted + ": " + diagnosis.sentence(Display.METRIC);
            if (diagnosis.finding() == Finding.FOUND) {
                assertThat(diagnosis.suspects().get(0).suspect()).as(what).isEqualTo(planted);
                found++;
            } else {
                assertThat(diagnosis.finding()).as(what).isEqualTo(Finding.CANNOT_TELL);
                assertThat(diagnosis.suspects().subList(0, diagnosis.rivals()))
                        .as(what)
                        .anySatisfy(each -> assertThat(each.suspect()).isEqualTo(planted));
            }
        }
        assertThat(found).isGreaterThanOrEqualTo(95);
    }

    @Test
    void aHealthyCircuitIsNotAccused() {
        Diagnoser diagnoser = Diagnoser.of(FEED, gauges(), Suspect.usual(FEED));
        Random random = new Random(7);
        int silent = 0;
        for (int trial = 0; trial < 30; trial++) {
            silent += diagnoser
                                    .diagnose(readings(HEALTHY, gauges(), random, 1000))
                                    .finding()
                            == Finding.NOTHING_WRONG
                    ? 1
                    : 0;
        }
        // 1 in 100 of each of some ten suspects is let through by the bound
        assertThat(silent).isGreaterThanOrEqualTo(27);
    }

    @Test
    void tooFewGaugesSaySoAndNameTheGaugeThatWouldTell() {
        Suspect filter = Suspect.key(FEED, "fine filter.clog");
        Result result = Result.of(filter.in(FEED, 15)).orThrow();
        List<Gauge> two = List.of(new Gauge("front carb", "pressure"), new Gauge("rear carb", "pressure"));
        Diagnosis diagnosis = Diagnosis.of(FEED, readings(result, two, new Random(3), 1000));
        assertThat(diagnosis.finding()).isEqualTo(Finding.CANNOT_TELL);
        assertThat(diagnosis.gauges()).isNotEmpty();
        assertThat(diagnosis.sentence(Display.METRIC))
                .startsWith("These readings cannot tell.")
                .contains("fine filter clogged", "A gauge at ");
    }

    @Test
    void twoUnknownsAreFittedTogetherWithTheirErrors() {
        Suspect filter = Suspect.key(FEED, "fine filter.clog");
        Suspect pump = Suspect.usual(FEED).stream()
                .filter(each -> each.kind() == Suspect.Kind.PUMP)
                .findFirst()
                .orElseThrow();
        Result result = Result.of(pump.in(filter.in(FEED, 9), 0.8)).orThrow();
        Diagnosis fit = Diagnosis.fit(FEED, readings(result, gauges(), new Random(5), 500), List.of(filter, pump));
        assertThat(fit.fitted().get(0).value()).isBetween(8.0, 10.0);
        assertThat(fit.fitted().get(0).low()).isLessThan(9);
        assertThat(fit.fitted().get(0).high()).isGreaterThan(9);
        assertThat(fit.fitted().get(1).value()).isBetween(0.78, 0.82);
    }

    @Test
    void unknownsThatOneGaugeCannotTellApartAreSaid() {
        List<Suspect> two = List.of(Suspect.key(FEED, "fine filter.clog"), Suspect.key(FEED, "coarse filter.clog"));
        Result result = Result.of(two.get(0).in(FEED, 9)).orThrow();
        List<Gauge> carbs = List.of(new Gauge("front carb", "pressure"), new Gauge("rear carb", "pressure"));
        Diagnosis fit = Diagnosis.fit(FEED, readings(result, carbs, new Random(5), 500), two);
        assertThat(fit.fitted().get(0).low()).isNaN();
        assertThat(fit.sentence(Display.METRIC)).contains("cannot tell these apart");
    }

    @Test
    void aPlaceThatIsNotThereIsSaid() {
        assertThatThrownBy(() -> Reading.read(FEED, "front crab 20 kPa"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("Did you mean front carb");
        assertThatThrownBy(() -> Reading.read(FEED, "pump outlet 20 L/h")).isInstanceOf(ProblemsException.class);
        Reading flow = Reading.read(FEED, "feed 60 L/h +- 2 L/h");
        assertThat(flow.gauge()).isEqualTo(new Gauge("feed", "flow"));
        assertThat(flow.error()).isEqualTo(2e-3 / 3600);
    }
}
