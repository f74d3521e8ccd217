package org.linedrop.study;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.Examples;
import org.linedrop.circuit.Circuit;
import org.linedrop.report.Golden;
import org.linedrop.units.Display;

/** What is said of every case of every example, in words, as it was read and found to agree with its own figures. */
class VerdictsRegressionTest {
    /** Largest draws take many solves, so they are asked of a few. */
    private static final List<String> WITH_DRAWS =
            List.of("first-feed.yaml", "fuel-feed-516.yaml", "own-hose.yaml", "surge-pot.yaml");

    static Stream<String> examples() {
        return Examples.names().stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyCaseIsJudgedAndSaidAsItWas(String name) {
        StringBuilder text = new StringBuilder();
        Circuit circuit = Examples.circuit(name);
        List<CaseCheck> cases = (WITH_DRAWS.contains(name)
                        ? FeedCheck.of(circuit)
                        : FeedCheck.withoutDraws(circuit, circuit.caseNames()))
                .cases();
        for (CaseCheck check : cases) {
            text.append(check.caseName()).append('\n');
            text.append(check.sentence(Display.METRIC)).append('\n');
            text.append(check.sentence(Display.US)).append('\n');
        }
        for (Advice advice : Advice.of(cases)) {
            text.append(String.format(
                    Locale.ROOT,
                    "%s: %s at %s: %.4g, %s %.4g, %s%n",
                    advice.words(),
                    advice.element(),
                    advice.caseName(),
                    advice.value(),
                    advice.atLeast() ? "at least" : "at most",
                    advice.bound(),
                    advice.kept() ? "kept" : "not kept"));
        }
        Golden.same("../study/verdicts/" + name.replace(".yaml", ".txt"), text.toString());
    }
}
