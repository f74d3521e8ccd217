package org.linedrop.study.kit;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * What the user knows of the things in the list: prices, masses, and how much an end adds to its hose.
 *
 * @param currency what prices are in, as the user wrote it; empty when not said
 * @param rows     the things, by the names of the list
 */
public record OwnFigures(String currency, List<Row> rows) implements Serializable {
    /** Nothing known. */
    public static final OwnFigures NONE = new OwnFigures("", List.of());

    /** Where every such figure is from. */
    static final Source SOURCE = Source.of("your list", Status.GIVEN);

    /** Copies the list. */
    public OwnFigures {
        rows = List.copyOf(rows);
    }

    /**
     * One thing. What is not known is NaN.
     *
     * @param item    name of the thing, as {@link KitItem#item()}
     * @param per     what price and mass are of
     * @param price   of a piece, or of a metre of what is sold by length
     * @param mass    kg of a piece, or kg/m of what is sold by length
     * @param cutOffM what an end adds to the length of its hose, m
     */
    public record Row(String item, Per per, double price, double mass, double cutOffM) implements Serializable {}

    /** What a price or mass is of. */
    public enum Per {
        /** A piece. */
        PIECE,
        /** A metre. */
        METRE,
        /** Whatever the thing is sold by. */
        NOT_SAID
    }

    Optional<Row> of(String item) {
        return rows.stream().filter(row -> row.item().equals(item)).findFirst();
    }

    double price(String item) {
        return of(item).map(Row::price).orElse(Double.NaN);
    }

    double mass(String item) {
        return of(item).map(Row::mass).orElse(Double.NaN);
    }

    double cutOffM(String item) {
        return of(item).map(Row::cutOffM).orElse(Double.NaN);
    }
}
