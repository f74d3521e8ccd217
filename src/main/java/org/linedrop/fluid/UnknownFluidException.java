package org.linedrop.fluid;

import java.util.List;

/** A fluid name that stands for no fluid, or for several. The message says what was read and what to write. */
public final class UnknownFluidException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** Canonical names, best first. */
    private final List<String> suggestions;

    /**
     * Carries the message and the names to choose from.
     *
     * @param message     what is wrong and what to write
     * @param suggestions canonical names, best first; may be empty
     */
    UnknownFluidException(String message, List<String> suggestions) {
        super(message);
        this.suggestions = List.copyOf(suggestions);
    }

    /**
     * Names that were probably meant.
     *
     * @return canonical names, best first; may be empty
     */
    public List<String> suggestions() {
        return suggestions;
    }
}
