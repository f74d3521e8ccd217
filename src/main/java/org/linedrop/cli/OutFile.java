package org.linedrop.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** A file to write a report to: it appears whole or not at all. */
final class OutFile {
    private final Path path;

    private OutFile(Path path) {
        this.path = path;
    }

    /** Why it cannot be written. */
    static final class Trouble extends Exception {
        private static final long serialVersionUID = 1;

        Trouble(String message) {
            super(message);
        }
    }

    /**
     * Checks before anything is solved what can be checked.
     *
     * @param name  what was said
     * @param input the file that is read, which must not be written over; null when none is
     */
    static OutFile of(String name, @Nullable String input) throws Trouble, IOException {
        if (name.isBlank()) {
            throw new Trouble("--out needs a file name, but it is empty");
        }
        try {
            Path path = Path.of(name);
            if (Files.isDirectory(path)) {
                throw new Trouble("--out " + name + " is a directory. Name a file in it");
            }
            if (input != null && Files.exists(path) && Files.isSameFile(path, Path.of(input))) {
                throw new Trouble("--out " + name + " is the circuit file itself. Write the report to another file");
            }
            Path real = Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
            Path directory = real.getParent();
            if (directory == null || !Files.isDirectory(directory)) {
                throw new Trouble("cannot write " + name + ": there is no directory " + directory + ". Make it first");
            }
            boolean own = Files.exists(real) ? Files.isWritable(real) : Files.isWritable(directory);
            if (!own) {
                throw new Trouble("may not write " + name + ". Choose a file or directory that is yours");
            }
            return new OutFile(real);
        } catch (InvalidPathException e) {
            throw new Trouble("--out \"" + name + "\" is no file name: " + e.getReason());
        }
    }

    /** Writes a file that must not be there yet. */
    void writeNew(String text) throws Trouble {
        if (Files.exists(path)) {
            throw new Trouble(path + " is there already and is not written over. Name another file");
        }
        write(text);
    }

    void write(String text) throws Trouble {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        try {
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                Files.write(path, bytes, StandardOpenOption.WRITE); // a pipe or device has no whole
                return;
            }
            Path beside = path.resolveSibling(
                    "." + path.getFileName() + "." + ProcessHandle.current().pid() + ".tmp");
            beside.toFile().deleteOnExit(); // where the run is stopped half way
            try {
                Files.write(beside, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                move(beside);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw new Trouble("cannot write " + path + ": " + why(e) + ". Nothing was written");
        }
    }

    private void move(Path beside) throws IOException {
        try {
            Files.move(beside, path, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(beside, path, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static String why(IOException e) {
        if (e instanceof FileSystemException file) {
            return file.getReason() == null ? "no file can be made there" : file.getReason();
        }
        return String.valueOf(e.getMessage());
    }
}
