package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Jobs shared out over threads: order, first failure, stopping, progress. */
@Timeout(60)
class WorkersTest {
    private static final class Heard implements Progress {
        private final List<Long> done = Collections.synchronizedList(new ArrayList<>());
        private volatile boolean stop;

        @Override
        public void at(long reached, long all) {
            assertThat(reached).isBetween(0L, all);
            done.add(reached);
        }

        @Override
        public boolean cancelled() {
            return stop;
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 8, 64})
    void answersComeInOrderWhateverTheThreads(int threads) {
        Heard heard = new Heard();
        List<Integer> squares = Workers.run(20, threads, heard, i -> i * i);
        assertThat(squares)
                .containsExactlyElementsOf(
                        IntStream.range(0, 20).map(i -> i * i).boxed().toList());
        assertThat(heard.done).last().isEqualTo(20L);
        assertThat(heard.done).isSorted();
    }

    @Test
    void eachJobIsDoneOnce() {
        for (int threads : new int[] {1, 2, 5}) {
            AtomicInteger calls = new AtomicInteger();
            Workers.run(50, threads, Progress.NONE, i -> calls.incrementAndGet());
            assertThat(calls).hasValue(50);
        }
    }

    @Test
    void noJobsAreNoTrouble() {
        assertThat(Workers.run(0, 1, Progress.NONE, i -> i)).isEmpty();
        assertThat(Workers.run(0, 4, Progress.NONE, i -> i)).isEmpty();
    }

    @Test
    void oneThreadTellsEveryStep() {
        Heard heard = new Heard();
        Workers.run(3, 1, heard, i -> i);
        assertThat(heard.done).containsExactly(1L, 2L, 3L);
    }

    @Test
    void severalThreadsWorkAtOnce() {
        CountDownLatch both = new CountDownLatch(2);
        List<String> names = Workers.run(2, 2, Progress.NONE, i -> {
            both.countDown();
            try {
                both.await(); // one thread alone would wait for ever
            } catch (InterruptedException stop) {
                throw new IllegalStateException(stop);
            }
            return Thread.currentThread().getName() + (Thread.currentThread().isDaemon() ? " daemon" : "");
        });
        assertThat(names).containsExactlyInAnyOrder("linedrop-1 daemon", "linedrop-2 daemon");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 4})
    void theFirstFailureIsThrownAndNoMoreIsBegun(int threads) {
        AtomicInteger begun = new AtomicInteger();
        assertThatThrownBy(() -> Workers.run(100_000, threads, Progress.NONE, i -> {
                    begun.incrementAndGet();
                    if (i == 10) {
                        throw new IllegalArgumentException("job " + i);
                    }
                    return i;
                }))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("job 10");
        assertThat(begun.get()).isBetween(11, 99_999);
    }

    @Test
    void oneThreadStopsBetweenTwoJobs() {
        Heard heard = new Heard();
        assertThatThrownBy(() -> Workers.run(10, 1, heard, i -> {
                    heard.stop = i == 2;
                    return i;
                }))
                .isInstanceOf(CancellationException.class);
        assertThat(heard.done).containsExactly(1L, 2L, 3L);
    }

    @Test
    void severalThreadsStopAndTakeNoMore() throws InterruptedException {
        Heard heard = new Heard();
        AtomicInteger begun = new AtomicInteger();
        assertThatThrownBy(() -> Workers.run(1_000_000, 2, heard, i -> {
                    begun.incrementAndGet();
                    heard.stop = true;
                    try {
                        Thread.sleep(5);
                    } catch (InterruptedException stop) {
                        Thread.currentThread().interrupt();
                    }
                    return i;
                }))
                .isInstanceOf(CancellationException.class)
                .hasMessage("told to stop");
        Thread.sleep(100);
        int then = begun.get();
        Thread.sleep(100);
        assertThat(begun).as("nobody goes on").hasValue(then);
    }

    @Test
    void progressIsToldWhileThreadsWork() {
        Heard heard = new Heard();
        Workers.run(4, 2, heard, i -> {
            try {
                Thread.sleep(80);
            } catch (InterruptedException stop) {
                Thread.currentThread().interrupt();
            }
            return i;
        });
        assertThat(heard.done).hasSizeGreaterThan(1).last().isEqualTo(4L);
    }

    @Test
    void aWaitingThreadThatIsInterruptedStops() {
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() -> Workers.run(10, 2, Progress.NONE, i -> i))
                    .isInstanceOf(CancellationException.class);
        } finally {
            assertThat(Thread.interrupted()).as("it stays interrupted").isTrue();
        }
    }

    @Test
    void noThreadsAreRefused() {
        assertThatThrownBy(() -> Workers.run(10, 0, Progress.NONE, i -> i))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("threads must be at least 1, but is 0");
    }
}
