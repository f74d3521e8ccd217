package org.linedrop.network;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Explanation;

/**
 * What a row can tell of itself beyond its terms.
 *
 * @param given      the figures put in
 * @param sense      which way the run goes through it, in words; empty where that says nothing
 * @param against    the same for flow against the run
 * @param boreName   what its own bore is called
 * @param atBore     its terms with another bore of its own; null where changes of bore beside it would have to follow
 * @param otherElbow what the other kind of elbow is called, empty where the row has none
 * @param other      its terms with that elbow, the elbow last; null where the row has none
 */
public record Story(
        List<Explanation.Given> given,
        String sense,
        String against,
        String boreName,
        @Nullable DoubleFunction<List<Term>> atBore,
        String otherElbow,
        @Nullable Supplier<List<Term>> other) {
    static final Story NONE = new Story(List.of(), "", "", "bore", null, "", null);

    /** Copies the list. */
    public Story {
        given = List.copyOf(given);
    }

    static Story of(List<Explanation.Given> given, String boreName, @Nullable DoubleFunction<List<Term>> atBore) {
        return new Story(given, "", "", boreName, atBore, "", null);
    }

    Story through(String sense, String against) {
        return new Story(given, sense, against, boreName, atBore, otherElbow, other);
    }

    Story or(String name, Supplier<List<Term>> terms) {
        return new Story(given, sense, against, boreName, atBore, name, terms);
    }

    /** The figures alone, where the terms are not those of the part. */
    Story bare() {
        return of(given, boreName, null).through(sense, against);
    }
}
