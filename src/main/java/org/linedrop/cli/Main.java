package org.linedrop.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.util.concurrent.atomic.AtomicBoolean;

/** The runner's entry point. */
public final class Main {
    private Main() {}

    /**
     * Runs one command and exits with its code.
     *
     * @param arguments the command line
     */
    public static void main(String[] arguments) {
        OutputStream out = new FileOutputStream(FileDescriptor.out);
        OutputStream err = new FileOutputStream(FileDescriptor.err);
        AtomicBoolean ended = new AtomicBoolean();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            if (!ended.get()) {
                Runner.say("stopped before the end", err);
            }
        }));
        int code = Runner.run(arguments, out, err);
        ended.set(true);
        System.exit(code);
    }
}
