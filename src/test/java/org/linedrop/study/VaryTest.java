package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.linedrop.Examples;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.result.CaseResult;

class VaryTest {
    private static final Circuit FEED = Examples.circuit("fuel-feed-38.yaml");

    private static VaryQuestion question() {
        return new VaryQuestion(
                List.of(
                        VaryQuestion.Axis.of(FEED, "feed 1.length", 0.2, 1.7, 4),
                        VaryQuestion.Axis.of(FEED, "engine.power", 300_000, 450_000, 3)),
                FEED.caseNames().subList(0, 2));
    }

    /** Part of a job in a process of its own: question and circuit in, rows out. */
    static final class Partition {
        private Partition() {}

        public static void main(String[] files) throws IOException, ClassNotFoundException {
            try (ObjectInputStream in = new ObjectInputStream(Files.newInputStream(Path.of(files[0])));
                    ObjectOutputStream out = new ObjectOutputStream(Files.newOutputStream(Path.of(files[1])))) {
                Circuit circuit = (Circuit) in.readObject();
                VaryQuestion question = (VaryQuestion) in.readObject();
                out.writeObject(Vary.of(circuit, question, question.count() / 2, question.count(), 1, Progress.NONE));
            }
        }
    }

    @Test
    void everyThreadCountGivesTheSameBits() {
        Vary one = Vary.of(FEED, question(), 1, Progress.NONE);
        assertThat(one.rows()).hasSize(24);
        assertThat(Vary.of(FEED, question(), 2, Progress.NONE)).isEqualTo(one);
        assertThat(Vary.of(FEED, question(), 8, Progress.NONE)).isEqualTo(one);
    }

    @Test
    void partOfItInASecondProcessGivesTheSameBits(@TempDir Path folder) throws Exception {
        Vary here = Vary.of(FEED, question(), 2, Progress.NONE);
        Path asked = folder.resolve("asked");
        Path answered = folder.resolve("answered");
        try (ObjectOutputStream out = new ObjectOutputStream(Files.newOutputStream(asked))) {
            out.writeObject(FEED);
            out.writeObject(question());
        }
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        Partition.class.getName(),
                        asked.toString(),
                        answered.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile())
                .start();
        assertThat(other.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(other.exitValue())
                .as(Files.readString(folder.resolve("said")))
                .isZero();
        try (ObjectInputStream in = new ObjectInputStream(Files.newInputStream(answered))) {
            Vary there = (Vary) in.readObject();
            assertThat(there.question()).isEqualTo(here.question());
            assertThat(there.outputs()).isEqualTo(here.outputs());
            assertThat(there.rows()).isEqualTo(here.rows().subList(12, 24));
        }
    }

    @Test
    void aRowIsWhatTheChangedCircuitGives() {
        Vary answer = Vary.of(FEED, question(), 1, Progress.NONE);
        Vary.Row row = answer.rows().get(5);
        assertThat(row.at()).containsExactly(0.7, 450_000.0);
        Circuit changed = FEED.in(row.caseName())
                .with(List.of(
                        org.linedrop.circuit.Change.of("feed 1", "length", "0.7 m"),
                        org.linedrop.circuit.Change.of("engine", "power", "450 kW")));
        CaseResult result = CaseResult.of(changed);
        assertThat(row.values().get(0)).isEqualTo(result.limits().get(0).value());
        assertThat(row.values().get(1)).isEqualTo(result.limits().get(0).margin());
        assertThat(row.verdict().equals("holds")).isEqualTo(result.holds());
        assertThat(row.values().get(0)).isLessThan(answer.rows().get(3).values().get(0));
    }

    @Test
    void itStopsWhenTold() {
        for (int threads : new int[] {1, 2}) {
            List<Long> seen = new ArrayList<>();
            Progress stop = new Progress() {
                @Override
                public void at(long done, long all) {
                    seen.add(done);
                }

                @Override
                public boolean cancelled() {
                    return true;
                }
            };
            VaryQuestion many = new VaryQuestion(
                    List.of(VaryQuestion.Axis.of(FEED, "feed 1.length", 0.2, 1.7, 2_000)), List.of(FEED.caseName()));
            assertThatThrownBy(() -> Vary.of(FEED, many, threads, stop)).isInstanceOf(CancellationException.class);
            assertThat(seen).isEmpty();
        }
    }

    @Test
    void anInterruptedThreadStops() {
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() -> Vary.of(FEED, question(), 1, Progress.NONE))
                    .isInstanceOf(CancellationException.class);
        } finally {
            assertThat(Thread.interrupted()).isTrue();
        }
    }

    @Test
    void aKeyThatIsNotThereOrOutOfItsRangeIsSaid() {
        assertThatThrownBy(() -> VaryQuestion.Axis.of(FEED, "feed 1.lenght", 1, 2, 3))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("length");
        assertThatThrownBy(() -> VaryQuestion.Axis.of(FEED, "feed 1.length", 1, 200, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("30 m");
        assertThatThrownBy(() -> VaryQuestion.Axis.of(FEED, "feed 1.length", 1, 2, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least 2");
    }
}
