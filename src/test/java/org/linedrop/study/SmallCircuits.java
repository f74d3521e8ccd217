package org.linedrop.study;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;

/** Small random circuits of two or three runs and two cases, all invented: the same seed gives the same circuit. */
final class SmallCircuits {
    private static final List<String> HOSES = List.of("race PTFE", "race rubber", "MIL-H-8794");
    private static final List<Integer> DASHES = List.of(6, 8, 10);

    private final Random random;

    private SmallCircuits(long seed) {
        random = new Random(seed);
    }

    /** A tree of a feed and one or two legs, or two lines side by side; limits that some sets hold and others do not. */
    static Circuit of(long seed) {
        return CircuitFile.read(new SmallCircuits(seed).text(), "small-" + seed + ".yaml");
    }

    private String text() {
        int shape = random.nextInt(3);
        StringBuilder text =
                new StringBuilder("linedrop: 1\nfluid: E10\ntemperature: 40 C\nthis case: usual\npoints:\n");
        text.append("  source: {kind: held, pressure: 300 kPa}\n");
        text.append("  split: {kind: joint}\n");
        text.append("  left: {kind: draw, takes: ").append(litres(100, 500)).append("}\n");
        text.append("  right: {kind: draw, takes: ").append(litres(50, 400)).append("}\n");
        text.append("runs:\n");
        run(text, "feed", "source", shape == 0 ? "split" : "left");
        if (shape == 0) {
            run(text, "left leg", "split", "left");
            run(text, "right leg", "split", "right");
        } else if (shape == 1) {
            run(text, "right leg", "left", "right");
        } else {
            run(text, "second", "source", "right");
            run(text, "bridge", "left", "right"); // a loop: nothing may be ruled out unsolved
        }
        double least = 299 - 18 * random.nextDouble() * random.nextDouble();
        text.append(String.format(Locale.ROOT, "limits:%n  left: {pressure: at least %.2f kPa}%n", least));
        text.append(
                random.nextInt(3) == 0
                        ? String.format(Locale.ROOT, "  right: {pressure: between %.2f kPa and 299.9 kPa}%n", least - 5)
                        : String.format(Locale.ROOT, "  right: {pressure: at least %.2f kPa}%n", least - 4));
        text.append("cases:\n  more: {left: {takes: ").append(litres(200, 600)).append("}}\n");
        return text.toString().replace(shape == 0 ? "\u0000" : "  split: {kind: joint}\n", "");
    }

    private void run(StringBuilder text, String name, String from, String to) {
        String hose = HOSES.get(random.nextInt(HOSES.size()));
        int dash = DASHES.get(random.nextInt(DASHES.size()));
        text.append("  ")
                .append(name)
                .append(": {from: ")
                .append(from)
                .append(", to: ")
                .append(to);
        text.append(", parts: [");
        hose(text, hose, dash);
        if (random.nextInt(3) == 0) {
            text.append(", {bulkhead: -").append(dash).append("}, ");
            hose(text, hose, dash);
        }
        text.append("]}\n");
    }

    private void hose(StringBuilder text, String hose, int dash) {
        text.append(String.format(
                Locale.ROOT,
                "{hose: %s -%d, length: %.2f m, ends: straight to %s}",
                hose,
                dash,
                0.3 + 3 * random.nextDouble(),
                random.nextBoolean() ? "90" : "straight"));
    }

    private String litres(int least, int most) {
        return (least + random.nextInt(most - least)) + " L/h";
    }
}
