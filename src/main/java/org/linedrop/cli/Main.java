package org.linedrop.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;

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
        System.exit(Runner.run(arguments, out, err));
    }
}
