package org.linedrop.catalogue;

import java.io.Serializable;
import org.linedrop.fact.Source;

/**
 * Whether a liner stands a fluid.
 *
 * @param liner  lining, as the compatibility table names it
 * @param fluid  fluid, as the compatibility table names it
 * @param grade  the verdict
 * @param askFor what to ask the seller for; empty when nothing special
 * @param note   why, with limits
 * @param source who says so
 */
public record Compatibility(String liner, String fluid, Grade grade, String askFor, String note, Source source)
        implements Serializable {

    /** How well a liner stands a fluid. */
    public enum Grade {
        /** Suits. */
        RECOMMENDED("recommended", "yes"),
        /** Short life or within narrow limits. */
        LIMITED("limited", "limited"),
        /** Liner not recommended. */
        NOT_RECOMMENDED("not recommended", "no"),
        /** No row. */
        UNKNOWN("unknown", "unknown");

        private final String word;
        private final String brief;

        Grade(String word, String brief) {
            this.word = word;
            this.brief = brief;
        }

        /**
         * The word of the table.
         *
         * @return for example {@code not recommended}
         */
        public String word() {
            return word;
        }

        /**
         * The word of a narrow column.
         *
         * @return {@code yes}, {@code limited}, {@code no} or {@code unknown}
         */
        public String brief() {
            return brief;
        }

        /**
         * The grade of a data row.
         *
         * @param word its word
         * @return the grade
         */
        static Grade of(String word) {
            for (Grade grade : values()) {
                if (grade.word.equals(word)) {
                    return grade;
                }
            }
            throw new IllegalArgumentException("no grade is called \"" + word + "\"");
        }
    }

    /**
     * One line: liner, fluid, grade, what to ask for, status.
     *
     * @return for example {@code PTFE with E85: recommended; ask for a conductive (carbon-black) liner (published)}
     */
    public String text() {
        return liner + " with " + fluid + ": " + grade.word() + (askFor.isEmpty() ? "" : "; " + askFor) + " ("
                + source.status().word() + ")";
    }
}
