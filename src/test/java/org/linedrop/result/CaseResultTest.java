package org.linedrop.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.fluid.Band;
import org.linedrop.io.CircuitFile;
import org.linedrop.network.CircuitNetwork;

class CaseResultTest {
    private static LimitRow limit(CaseResult result, String id) {
        return result.limits().stream()
                .filter(row -> row.limit().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void volatilityOfTheClassDecidesASuctionMargin() {
        Circuit feed = Examples.circuit("fuel-feed-38.yaml")
                .with(List.of(Change.limit("pump", "inlet margin", "at least 1 kPa")));
        LimitRow row = limit(CaseResult.of(feed), "pump inlet margin");
        Result volatileFuel = Result.of(feed, CircuitNetwork.Setting.USUAL.with(Band.THIN));
        assertThat(row.marginLow()).isLessThan(row.margin() - 1000);
        assertThat(row.marginLow()).isCloseTo(volatileFuel.margin(row.limit()), within(1e-6));
    }

    @Test
    void viscosityOfTheClassDecidesColdOil() {
        String file = """
                linedrop: 1
                service: engine oil
                fluid: engine oil 15W-50
                temperature: 20 C
                points:
                  head:    {kind: held, pressure: 500 kPa}
                  gallery: {kind: draw, takes: 12 L/min}
                runs:
                  line:
                    from: head
                    to: gallery
                    parts:
                      - {hose: race rubber -12, length: 1.5 m, ends: 90 to 45, bore: 17.5 mm measured, end bore: 14 mm measured}
                limits:
                  gallery: {pressure: at least 100 kPa}
                """;
        CaseResult oil = CaseResult.of(CircuitFile.read(file, ""));
        LimitRow row = limit(oil, "gallery pressure");
        Result thick = Result.of(oil.circuit(), CircuitNetwork.Setting.USUAL.with(Band.THICK));
        assertThat(row.marginLow()).isLessThan(row.margin());
        assertThat(row.marginLow()).isLessThanOrEqualTo(thick.margin(row.limit()) + 1e-6);
    }

    @Test
    void measuredBoresLeaveNoBand() {
        Circuit feed = Examples.circuit("first-feed.yaml");
        Circuit measured = feed.with(List.of(
                Change.of("feed 1", "bore", "7.9 mm measured"), Change.of("feed 1", "end bore", "6.4 mm measured")));
        assertThat(limit(CaseResult.of(feed), "rail pressure").marginHigh()
                        - limit(CaseResult.of(feed), "rail pressure").marginLow())
                .isGreaterThan(500);
        LimitRow row = limit(CaseResult.of(measured), "rail pressure");
        assertThat(row.marginHigh() - row.marginLow()).isLessThan(1);
    }
}
