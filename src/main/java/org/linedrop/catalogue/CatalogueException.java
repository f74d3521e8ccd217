package org.linedrop.catalogue;

import java.util.Objects;

/** A name, size or pairing that the catalogue does not have; says what was asked and what to write instead. */
public final class CatalogueException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** What was read and what it must be. */
    private final String message;

    /** What to do. */
    private final String hint;

    /**
     * A failed look-up.
     *
     * @param message what was read and what it must be, without a full stop at the end
     * @param hint    what to do; empty when the message says it
     */
    public CatalogueException(String message, String hint) {
        super(
                hint.isEmpty()
                        ? message
                        : message + (message.endsWith("?") || message.endsWith(".") ? " " : ". ") + hint);
        this.message = Objects.requireNonNull(message, "message");
        this.hint = Objects.requireNonNull(hint, "hint");
    }

    /**
     * What was read and what it must be.
     *
     * @return the sentence, without the hint
     */
    public String message() {
        return message;
    }

    /**
     * What to do.
     *
     * @return the advice; empty when the message says it
     */
    public String hint() {
        return hint;
    }
}
