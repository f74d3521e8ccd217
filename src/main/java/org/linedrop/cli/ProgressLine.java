package org.linedrop.cli;

import java.io.PrintStream;
import java.util.Locale;
import org.linedrop.study.Progress;

/** Says on the error stream how far a long study is; a short one says nothing. */
final class ProgressLine implements Progress {
    private static final long FIRST_MS = 3000;
    private static final long NEXT_MS = 5000;
    private static final double NANOS = 1e6;

    private final String what;
    private final PrintStream err;
    private final long start = System.nanoTime();
    private double nextMs = FIRST_MS;

    ProgressLine(String what) {
        this.what = what;
        this.err = System.err; // at once, not with the messages at the end
    }

    @Override
    public void at(long done, long all) {
        double now = (System.nanoTime() - start) / NANOS;
        if (now >= nextMs && done < all) {
            err.printf(Locale.ROOT, "%d of %d %s%n", done, all, what);
            nextMs = now + NEXT_MS;
        }
    }
}
