package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.CatalogueException;
import org.linedrop.catalogue.EndSize;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.network.Bores;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;

/**
 * The hose ends there are, and what each costs at a flow: its loss, and the length of its own hose that loses as much.
 * No fixed number of feet belongs to an end; in laminar oil it is another than in fuel.
 *
 * @param rows by family, size and end
 */
public record EndCosts(List<Row> rows) implements Serializable {
    /** Ends listed, as a circuit file writes them, with their kind and angle in the catalogue. */
    private static final List<Kind> KINDS = List.of(
            new Kind("straight", "straight", 0),
            new Kind("30", "swept", 30),
            new Kind("45", "swept", 45),
            new Kind("60", "swept", 60),
            new Kind("90", "swept", 90),
            new Kind("120", "swept", 120),
            new Kind("150", "swept", 150),
            new Kind("180", "swept", 180),
            new Kind("45 forged", "forged", 45),
            new Kind("90 forged", "forged", 90));

    /** Copies the list. */
    public EndCosts {
        rows = List.copyOf(rows);
    }

    private record Kind(String text, String kind, int angleDeg) {}

    /**
     * What flows through the ends.
     *
     * @param fluid       name of the fluid
     * @param temperature for example {@code 40 C}
     * @param flow        for example {@code 216 L/h}
     */
    public record Flow(String fluid, String temperature, String flow) implements Serializable {}

    /**
     * One end.
     *
     * @param hose             the hose it is made for
     * @param end              the end
     * @param text             the end as a circuit file writes it
     * @param lossCoefficient  K on the nipple bore at the flow; NaN without a flow
     * @param dropPa           its loss when the flow comes from the hose; NaN without a flow
     * @param dropLowPa        the same at the largest bores sold
     * @param dropHighPa       the same at the smallest bores sold
     * @param equivalentM      length of this hose that loses as much; NaN without a flow
     */
    public record Row(
            HoseSize hose,
            EndSize end,
            String text,
            double lossCoefficient,
            double dropPa,
            double dropLowPa,
            double dropHighPa,
            double equivalentM)
            implements Serializable {}

    /**
     * Lists ends.
     *
     * @param hoses the hoses whose ends are wanted
     * @param flow  what flows, or null for the list alone
     * @return a row for each end that is known
     * @throws org.linedrop.fact.ProblemsException when a value of the flow cannot be read
     */
    public static EndCosts of(List<HoseSize> hoses, @Nullable Flow flow) {
        List<Row> rows = new ArrayList<>();
        for (HoseSize hose : hoses) {
            for (Kind kind : KINDS) {
                end(hose, kind).ifPresent(end -> rows.add(row(hose, end, kind.text(), flow)));
            }
        }
        return new EndCosts(rows);
    }

    private static Optional<EndSize> end(HoseSize hose, Kind kind) {
        try {
            return Optional.of(Catalogue.standard().end(hose, kind.kind(), kind.angleDeg()));
        } catch (CatalogueException notMade) {
            return Optional.empty();
        }
    }

    private static Row row(HoseSize hose, EndSize end, String text, @Nullable Flow flow) {
        if (flow == null) {
            return new Row(hose, end, text, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        }
        LinerQuestion question = new LinerQuestion(
                flow.fluid(),
                flow.temperature(),
                flow.flow(),
                "1 m",
                "none to " + text,
                List.of(hose.dash()),
                List.of(hose.family()));
        Result usual = LinerComparison.solved(question, hose, Bores.USUAL);
        PartRow metre = usual.rows().get(0);
        PartRow made = usual.rows().get(1);
        double atLargest = drop(question, hose, Bores.LARGEST);
        double atSmallest = drop(question, hose, Bores.SMALLEST);
        return new Row(
                hose,
                end,
                text,
                made.lossCoefficient(),
                made.localDropPa(),
                Math.min(atLargest, made.localDropPa()),
                Math.max(atSmallest, made.localDropPa()),
                made.localDropPa() / metre.frictionDropPa());
    }

    private static double drop(LinerQuestion question, HoseSize hose, Bores bores) {
        return LinerComparison.solved(question, hose, bores).rows().get(1).localDropPa();
    }
}
