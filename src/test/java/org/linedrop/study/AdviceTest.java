package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Status;
import org.linedrop.io.CircuitFile;
import org.linedrop.report.CsvReport;
import org.linedrop.report.TextReport;
import org.linedrop.result.PartRow;
import org.linedrop.units.Display;

/** Rules of thumb by service: what they are held against, and that they break nothing. */
class AdviceTest {
    private static Circuit example(String name, String service) throws IOException {
        String text = Files.readString(Path.of("src/examples").resolve(name));
        return CircuitFile.read(service.isEmpty() ? text : text.replaceAll("(?m)^service: .*$", service), name);
    }

    private static Advice rule(FeedCheck check, String words) {
        return Advice.of(check.cases()).stream()
                .filter(advice -> advice.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void speedIsThatOfTheFastestBoreOfItsKindOverAllCases() throws IOException {
        FeedCheck check = FeedCheck.of(example("carburettor-feed.yaml", ""));
        Advice suction = rule(check, "speed in a suction line");
        double fastest = check.cases().stream()
                .flatMap(each -> each.result().usual().rows("feed").stream())
                .filter(row -> row.row().startsWith("1."))
                .filter(row -> row.kind().equals("hose"))
                .mapToDouble(PartRow::velocityMPerS)
                .max()
                .orElseThrow();
        assertThat(suction.value()).isEqualTo(fastest);
        assertThat(suction.bound()).isEqualTo(0.9);
        assertThat(suction.element()).isEqualTo("feed 1.2");
        assertThat(suction.source().status()).isEqualTo(Status.COMMON_PRACTICE);
        assertThat(rule(check, "speed in a pressure line").bound()).isEqualTo(4.6);
    }

    @Test
    void theShareIsOfWhatThePlumbingLosesOnTheWay() throws IOException {
        FeedCheck check = FeedCheck.of(example("fuel-feed-516.yaml", ""), List.of("full load"));
        Advice share = rule(check, "share of one part in the loss");
        CaseCheck one = check.cases().get(0);
        double all = Way.to(one.result().usual(), one.decisive().limit().subject()).stream()
                .filter(row -> !row.kind().equals("pump"))
                .mapToDouble(row -> row.frictionDropPa() + row.localDropPa())
                .sum();
        assertThat(share.element()).isEqualTo("old hard line");
        assertThat(share.value()).isCloseTo(one.culprit().lossPa() / all, within(1e-12));
        assertThat(share.kept()).isFalse();
    }

    @Test
    void aLimitOfTheFilesOwnTakesThePlaceOfAdvice() throws IOException {
        Circuit circuit = example("fuel-feed-516.yaml", "");
        assertThat(circuit.limits()).anyMatch(limit -> limit.id().equals("pump spare flow"));
        assertThat(Advice.of(FeedCheck.of(circuit).cases()))
                .extracting(Advice::words)
                .doesNotContain("spare flow of a pump")
                .contains("suction: margin of a pump over boiling");
    }

    @Test
    void theMarginOverBoilingIsThatOfThePump() throws IOException {
        FeedCheck check = FeedCheck.of(example("fuel-feed-516.yaml", ""));
        Advice margin = rule(check, "suction: margin of a pump over boiling");
        double least = check.cases().stream()
                .mapToDouble(each -> each.result()
                        .usual()
                        .device("pump")
                        .orElseThrow()
                        .figure("inletMarginPa")
                        .orElseThrow())
                .min()
                .orElseThrow();
        assertThat(margin.value()).isCloseTo(least, within(1e-6));
        assertThat(margin.bound()).isEqualTo(20_000);
    }

    @Test
    void noServiceNoAdvice() throws IOException {
        assertThat(Advice.of(FeedCheck.of(example("first-feed.yaml", "altitude: 0 m"))
                        .cases()))
                .isEmpty();
        assertThat(Advice.of(FeedCheck.of(example("first-feed.yaml", "service: brake"))
                        .cases()))
                .isEmpty();
    }

    @Test
    void adviceThatIsNotKeptBreaksNothing() throws IOException {
        FeedCheck check = FeedCheck.of(example("fuel-feed-38.yaml", ""));
        boolean broken = Advice.of(check.cases()).stream().anyMatch(advice -> !advice.kept());
        assertThat(broken).isTrue();
        assertThat(check.cases()).allMatch(each -> each.result().holds());
        assertThat(TextReport.check(check, Display.METRIC)).contains("; a rule of thumb, no limit");
        assertThat(CsvReport.limits(check, Display.METRIC)).contains("advice: ");
    }
}
