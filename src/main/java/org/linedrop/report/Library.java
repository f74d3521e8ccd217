package org.linedrop.report;

/** What this library is. */
public final class Library {
    private static final String VERSION = "0.1.0";

    private Library() {}

    /**
     * The version of this library.
     *
     * @return for example {@code 0.1.0}
     */
    public static String version() {
        return VERSION;
    }
}
