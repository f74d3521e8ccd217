package org.linedrop.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.util.concurrent.atomic.AtomicBoolean;
import org.linedrop.catalogue.Catalogue;

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
        readAhead(arguments);
        int code = Runner.run(arguments, out, err);
        ended.set(true);
        System.exit(code);
    }

    /** Every command with an argument needs the catalogue: a second core reads it while the command line is taken apart. */
    private static void readAhead(String[] arguments) {
        if (arguments.length > 1) {
            Thread reader = new Thread(Catalogue::standard, "catalogue");
            reader.setDaemon(true);
            reader.start();
        }
    }
}
