package org.linedrop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntFunction;

/** Does the same to many, each for itself, so that neither order nor number of threads can reach an answer. */
final class Workers {
    private static final long LOOK_EVERY_MS = 50;

    private Workers() {}

    /**
     * Does it.
     *
     * @param <T>      what is made of each
     * @param count    how many
     * @param threads  on how many threads, at least one
     * @param progress told how far it is, asked whether to stop
     * @param job      from a number, 0 to {@code count - 1}; must not look at anything that changes
     * @return what was made, by number
     * @throws CancellationException when it was told to stop
     */
    static <T> List<T> run(int count, int threads, Progress progress, IntFunction<T> job) {
        if (!(threads >= 1)) {
            throw new IllegalArgumentException("threads must be at least 1, but is " + threads);
        }
        return threads == 1 ? here(count, progress, job) : there(count, Math.min(threads, count), progress, job);
    }

    private static <T> List<T> here(int count, Progress progress, IntFunction<T> job) {
        List<T> made = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            check(progress);
            made.add(job.apply(i));
            progress.at(i + 1L, count);
        }
        return made;
    }

    private static void check(Progress progress) {
        if (progress.cancelled()) {
            throw new CancellationException("told to stop");
        }
    }

    /** What became of one: a value or what was thrown. */
    private static final class Done<T> {
        private final AtomicReferenceArray<T> made;
        private final AtomicReferenceArray<RuntimeException> thrown;
        private final AtomicInteger next = new AtomicInteger();
        private final AtomicInteger done = new AtomicInteger();

        Done(int count) {
            made = new AtomicReferenceArray<>(count);
            thrown = new AtomicReferenceArray<>(count);
        }

        void work(int count, IntFunction<T> job) {
            for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
                try {
                    made.set(i, job.apply(i));
                } catch (RuntimeException wrong) {
                    thrown.set(i, wrong);
                    next.set(count);
                }
                done.incrementAndGet();
            }
        }
    }

    private static <T> List<T> there(int count, int threads, Progress progress, IntFunction<T> job) {
        Done<T> all = new Done<>(count);
        CountDownLatch running = new CountDownLatch(threads);
        for (int t = 0; t < threads; t++) {
            Thread thread = new Thread(
                    () -> {
                        try {
                            all.work(count, job);
                        } finally {
                            running.countDown();
                        }
                    },
                    "linedrop-" + (t + 1));
            thread.setDaemon(true);
            thread.start();
        }
        try {
            while (!running.await(LOOK_EVERY_MS, TimeUnit.MILLISECONDS)) {
                check(progress);
                progress.at(all.done.get(), count);
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new CancellationException("told to stop");
        } finally {
            all.next.set(count); // whoever still works takes no more
        }
        List<T> made = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            RuntimeException wrong = all.thrown.get(i);
            if (wrong != null) {
                throw wrong;
            }
        }
        for (int i = 0; i < count; i++) {
            made.add(all.made.get(i));
        }
        progress.at(count, count);
        return made;
    }
}
