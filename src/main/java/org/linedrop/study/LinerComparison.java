package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.CatalogueException;
import org.linedrop.catalogue.Compatibility;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.fluid.Fluid;
import org.linedrop.network.Bores;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.network.Law;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.solver.Outcome;
import org.linedrop.units.Display;

/**
 * Rubber or PTFE at this dash size: the same made-up hose in several families, with what it loses and how well that is
 * known.
 *
 * @param question what was asked
 * @param rows     by dash, then in the order of the families; families that are not made in a size are left out
 * @param missing  family and dash of those left out
 */
public record LinerComparison(LinerQuestion question, List<Row> rows, List<String> missing) implements Serializable {
    /** Pressures before the hose, tried in turn: what a narrow hose in oil would need is more than a feed has. */
    private static final List<String> SUPPLIES = List.of("10 bar", "1000 bar really", "100000 bar really");

    private static final int MOST_EVALUATIONS = 100;
    private static final double FLOW_TOLERANCE = 1e-12;

    /** Copies the lists. */
    public LinerComparison {
        rows = List.copyOf(rows);
        missing = List.copyOf(missing);
    }

    /**
     * One family in one size.
     *
     * @param size            the catalogue row of the hose
     * @param flowM3PerS      the flow asked for
     * @param velocityMPerS   mean velocity in the hose
     * @param reynolds        of the hose
     * @param hoseDropPa      friction along the hose
     * @param endsDropPa      both ends
     * @param madeUpPa        both together, with what the bores sold make of it (the band's low is at the largest bores)
     * @param ratioToFirst    of the made-up loss to that of the first family at the same dash; NaN where that is missing
     * @param equalDropM3PerS flow at which it loses what the first family loses at the flow asked for; NaN likewise
     * @param compatibility   liner against fluid
     */
    public record Row(
            HoseSize size,
            double flowM3PerS,
            double velocityMPerS,
            double reynolds,
            double hoseDropPa,
            double endsDropPa,
            Figure madeUpPa,
            double ratioToFirst,
            double equalDropM3PerS,
            Compatibility compatibility)
            implements Serializable {}

    /**
     * Compares.
     *
     * @param question what
     * @return the answer
     * @throws org.linedrop.fact.ProblemsException when a value of the question cannot be read
     */
    public static LinerComparison of(LinerQuestion question) {
        List<Row> rows = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (int dash : question.dashes()) {
            Row first = null;
            for (String family : question.families()) {
                Optional<HoseSize> size = size(family, dash);
                if (size.isEmpty()) {
                    missing.add(family + " -" + dash);
                    continue;
                }
                Row row = row(question, size.get(), first);
                if (family.equals(question.families().get(0))) {
                    first = row;
                }
                rows.add(row);
            }
        }
        return new LinerComparison(question, rows, missing);
    }

    /** The catalogue row, empty where the family is not made in the size; an unknown family is an error. */
    private static Optional<HoseSize> size(String family, int dash) {
        String name = Catalogue.standard().family(family).name();
        try {
            return Optional.of(Catalogue.standard().hose(name, "-" + dash));
        } catch (CatalogueException notMade) {
            return Optional.empty();
        }
    }

    /**
     * The hose as a circuit of its own - kept pressure, hose, draw - solved.
     *
     * @param more keys of the hose and their values
     */
    static Result solved(LinerQuestion question, HoseSize size, Bores bores, String... more) {
        Result result = null;
        for (String pressure : SUPPLIES) {
            result = Result.of(circuit(question, size, pressure, more), CircuitNetwork.Setting.USUAL.with(bores));
            if (result.outcome() == Outcome.CONVERGED) {
                return result;
            }
        }
        return Objects.requireNonNull(result).orThrow();
    }

    private static Circuit circuit(LinerQuestion question, HoseSize size, String pressure, String... more) {
        Tree.Branch hose = Tree.of("hose", size.name(), "length", question.length(), "ends", question.ends());
        for (int i = 0; i + 1 < more.length; i += 2) {
            hose = hose.with(more[i], Tree.text(more[i + 1]));
        }
        Tree.Branch points = Tree.of()
                .with("before", Tree.of("kind", "held", "pressure", pressure))
                .with("behind", Tree.of("kind", "draw", "takes", question.flow()));
        Tree.Branch line = Tree.of("from", "before", "to", "behind").with("parts", Tree.items(hose));
        return Circuit.of(
                Tree.of("linedrop", "1", "fluid", question.fluid(), "temperature", question.temperature())
                        .with("points", points)
                        .with("runs", Tree.of().with("line", line)),
                "");
    }

    /** Loss of the made-up hose, Pa. */
    static double madeUpPa(LinerQuestion question, HoseSize size, Bores bores, String... more) {
        return solved(question, size, bores, more).rows().stream()
                .mapToDouble(row -> row.frictionDropPa() + row.localDropPa())
                .sum();
    }

    private static Row row(LinerQuestion question, HoseSize size, @Nullable Row first) {
        Result usual = solved(question, size, Bores.USUAL);
        double hose = 0;
        double ends = 0;
        PartRow length = usual.rows().get(0);
        for (PartRow row : usual.rows()) {
            hose += row.frictionDropPa();
            ends += row.localDropPa();
            length = row.kind().equals("hose") ? row : length;
        }
        double low = madeUpPa(question, size, Bores.LARGEST);
        double high = madeUpPa(question, size, Bores.SMALLEST);
        double made = hose + ends;
        Fluid fluid = usual.circuit().surroundings().fluid();
        Status status = Status.weaker(size.boreM().status(), Status.COMPUTED);
        return new Row(
                size,
                length.flowM3PerS(),
                length.velocityMPerS(),
                length.reynolds(),
                hose,
                ends,
                new Figure(
                        Math.min(low, made), made, Math.max(high, made), Source.of("bores of the catalogue", status)),
                first == null ? 1 : made / first.madeUpPa().value(),
                first == null
                        ? length.flowM3PerS()
                        : flowAt(usual, first.madeUpPa().value(), length.flowM3PerS()),
                Catalogue.standard().compatibility(size.liner(), fluid.family()));
    }

    /** The flow at which the branch loses a given pressure. */
    private static double flowAt(Result result, double dropPa, double nearM3PerS) {
        int branch = result.network().runs().get(0).first().branch();
        Law law = result.network().network().law(branch);
        double density =
                result.rows().get(0).massFlowKgPerS() / result.rows().get(0).flowM3PerS();
        double[] out = new double[2];
        UnivariateFunction excess = flow -> {
            law.evaluate(flow * density, out);
            return out[0] - dropPa;
        };
        double high = nearM3PerS;
        while (excess.value(high) < 0) {
            high *= 2;
        }
        return new BrentSolver(FLOW_TOLERANCE, nearM3PerS * FLOW_TOLERANCE).solve(MOST_EVALUATIONS, excess, 0, high);
    }

    /**
     * The row of a family in a size.
     *
     * @param family name of the family
     * @param dash   dash size without its sign
     * @return the row, if the family is made in that size
     */
    public Optional<Row> row(String family, int dash) {
        return rows.stream()
                .filter(row -> row.size().family().equals(family) && row.size().dash() == dash)
                .findFirst();
    }

    /**
     * The answer in words.
     *
     * @param display the units to write
     * @return one or more sentences
     */
    public String sentence(Display display) {
        return LinerSentences.of(this, display);
    }
}
