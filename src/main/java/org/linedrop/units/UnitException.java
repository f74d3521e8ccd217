package org.linedrop.units;

/**
 * A value that cannot be read. {@link #message()} begins with the value in quotation marks, so that a key put in front
 * makes a sentence: {@code length "0.45" has no unit}.
 */
public final class UnitException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** What is wrong. */
    private final String message;

    /** What to do. */
    private final String hint;

    /**
     * Says what is wrong and what to do.
     *
     * @param message what was read and what is wrong with it, without a full stop
     * @param hint    what to write instead; empty when the message says it
     */
    public UnitException(String message, String hint) {
        super(hint.isEmpty() ? message : message + (message.endsWith("?") ? " " : ". ") + hint);
        this.message = message;
        this.hint = hint;
    }

    /**
     * What is wrong.
     *
     * @return what was read, in quotation marks, and what is wrong with it
     */
    public String message() {
        return message;
    }

    /**
     * What to do.
     *
     * @return what to write instead, empty when the message says it
     */
    public String hint() {
        return hint;
    }
}
