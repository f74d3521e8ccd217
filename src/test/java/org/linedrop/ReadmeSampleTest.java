package org.linedrop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.Result;
import org.linedrop.study.FeedCheck;
import org.linedrop.units.Display;

/** The library sample of the README: the lines between the marks stand there word for word (see ReadmeTest). */
class ReadmeSampleTest {
    @Test
    void sample() throws IOException {
        // README sample begins
        Circuit feed = CircuitFile.read(Path.of("src/examples/first-feed.yaml"));
        Result result = Result.of(feed).orThrow();
        double railPa = result.point("rail").orElseThrow().staticPressurePa();

        Circuit wider = feed.with(List.of(Change.of("feed 1", "hose", "race PTFE -8")));
        double widerPa = Result.of(wider).orThrow().point("rail").orElseThrow().staticPressurePa();

        String answer = FeedCheck.of(feed).cases().get(0).sentence(Display.METRIC);
        // README sample ends
        assertThat(widerPa).isGreaterThan(railPa);
        assertThat(answer).startsWith("UNDERSIZED: the rail gets ");
    }
}
