package org.linedrop.circuit;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Inner;
import org.linedrop.units.Dimension;

/**
 * One key of the circuit file: the only place where its name, form, range and meaning are said. Reader, writer, cases,
 * ranges and documents walk the tables made of these.
 *
 * @param <V> what its value is once read
 */
@Inner
public final class Key<V> {
    private final String name;
    private final Form<V> form;
    private final boolean required;
    private final String hintWhenMissing;
    private final String meaning;

    private Key(String name, Form<V> form, boolean required, String hintWhenMissing, String meaning) {
        this.name = Objects.requireNonNull(name);
        this.form = form;
        this.required = required;
        this.hintWhenMissing = hintWhenMissing;
        this.meaning = meaning;
    }

    static <V> Key<V> optional(String name, Form<V> form, String meaning) {
        return new Key<>(name, form, false, "", meaning);
    }

    static <V> Key<V> required(String name, Form<V> form, String meaning, String hintWhenMissing) {
        return new Key<>(name, form, true, hintWhenMissing, meaning);
    }

    /**
     * Its name in the file.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * What it means, for documents.
     *
     * @return a phrase with the range and the default
     */
    public String meaning() {
        return meaning;
    }

    /**
     * Whether a circuit without it is an error.
     *
     * @return true when there is no default
     */
    public boolean required() {
        return required;
    }

    /**
     * A value as the file may write it.
     *
     * @return an example
     */
    public String example() {
        return form.example();
    }

    /**
     * The words it takes, where it takes one of a few.
     *
     * @return the words; empty where it takes anything else
     */
    public List<String> words() {
        return form.words();
    }

    /**
     * What its value measures.
     *
     * @return the dimensions its unit may be of, the usual one first; empty for words and forms made of several figures
     */
    public List<Dimension> dimensions() {
        return form.dimensions();
    }

    /**
     * What is believed without a second word.
     *
     * @return a phrase with units; empty where nothing is asked back
     */
    public String range() {
        return form.range();
    }

    Form<V> form() {
        return form;
    }

    String hintWhenMissing() {
        return hintWhenMissing;
    }

    /**
     * How a value is written in the file.
     *
     * @param <V> what the value is once read
     */
    interface Form<V> {
        /**
         * Reads a value.
         *
         * @param text  as written
         * @param scope what it may refer to
         * @return the value
         * @throws FormException when it is none
         */
        V read(String text, Scope scope) throws FormException;

        /**
         * A value as the file may write it.
         *
         * @return an example
         */
        String example();

        /**
         * The same value as Linedrop writes it: metric, one spelling.
         *
         * @param text as somebody wrote it
         * @return text that reads back to an equal value, and is written the same again
         * @throws FormException when it is no value
         */
        String canonical(String text) throws FormException;

        /**
         * The words it takes.
         *
         * @return empty where it is not one of a few
         */
        default List<String> words() {
            return List.of();
        }

        /**
         * What its one figure, or its list of figures, measures.
         *
         * @return empty for words and for forms made of several figures
         */
        default List<Dimension> dimensions() {
            return List.of();
        }

        /**
         * What the number measures that gives the key its name, where other figures may stand behind it.
         *
         * @return null where it has none
         */
        default @Nullable Dimension named() {
            return dimensions().isEmpty() ? null : dimensions().get(0);
        }

        /**
         * What is believed without a second word.
         *
         * @return a phrase with units; empty where nothing is asked back
         */
        default String range() {
            return "";
        }
    }

    /** Why a text is no value. */
    static final class FormException extends Exception {
        private static final long serialVersionUID = 1;
        /** What to do. */
        private final String hint;

        FormException(@Nullable String message, @Nullable String hint) {
            super(message == null ? "" : message);
            this.hint = hint == null ? "" : hint;
        }

        String message() {
            return Objects.requireNonNull(getMessage());
        }

        String hint() {
            return hint;
        }
    }
}
