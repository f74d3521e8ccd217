package org.linedrop.study.kit;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.linedrop.catalogue.Bench;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Place;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;

/**
 * What to buy for some circuits of one vehicle, and how to make it up. Quantities only: no circuit is solved.
 *
 * @param circuits     circuit by circuit
 * @param items        the shopping list over all circuits
 * @param alternatives what other ways save
 * @param wrenches     spanners for the nuts
 * @param notes        tools and reminders for what is in the list; none for brakes
 * @param currency     what costs are in, empty when not said
 * @param unused       names in the user's list that are nothing here
 */
public record Kit(
        List<KitCircuit> circuits,
        List<KitItem> items,
        List<Alternative> alternatives,
        List<Wrench> wrenches,
        List<Bench.Note> notes,
        String currency,
        List<String> unused)
        implements Serializable {

    /** Copies the lists. */
    public Kit {
        circuits = List.copyOf(circuits);
        items = List.copyOf(items);
        alternatives = List.copyOf(alternatives);
        wrenches = List.copyOf(wrenches);
        notes = List.copyOf(notes);
        unused = List.copyOf(unused);
    }

    /**
     * Makes the kit.
     *
     * @param circuits at least one, each in the case it is to be made up for
     * @param own      what the user knows of prices, masses and cut-offs
     * @return the kit
     * @throws ProblemsException when something sold by length has a price or mass per piece, or the other way round
     */
    public static Kit of(List<Circuit> circuits, OwnFigures own) {
        Tally tally = new Tally(own);
        List<KitCircuit> each = new ArrayList<>();
        List<Alternative> alternatives = new ArrayList<>();
        for (Circuit circuit : circuits) {
            each.add(CircuitKit.of(circuit, tally.add(circuit), own));
            alternatives.addAll(Savings.of(circuit, own));
        }
        List<KitItem> items = tally.items();
        Set<String> known = new LinkedHashSet<>();
        items.forEach(item -> known.add(item.item()));
        check(items, own);
        return new Kit(
                each,
                items,
                alternatives,
                BenchNotes.wrenches(circuits),
                BenchNotes.of(circuits),
                own.currency(),
                own.rows().stream()
                        .map(OwnFigures.Row::item)
                        .filter(item -> !known.contains(item))
                        .toList());
    }

    static void check(List<KitItem> items, OwnFigures own) {
        List<Problem> problems = new ArrayList<>();
        for (KitItem item : items) {
            OwnFigures.Per wrong = item.byLength() ? OwnFigures.Per.PIECE : OwnFigures.Per.METRE;
            if (own.of(item.item()).filter(row -> row.per() == wrong).isPresent()) {
                problems.add(new Problem(
                        Place.code(item.item()),
                        "per",
                        wrong.name().toLowerCase(Locale.ROOT),
                        item.byLength()
                                ? "it is sold by length, but its line says per piece"
                                : "it is sold by the piece, but its line says per length",
                        item.byLength() ? "Write m or ft" : "Write piece"));
            }
        }
        if (!problems.isEmpty()) {
            throw new ProblemsException(problems);
        }
    }

    /**
     * Joints that can be undone, each counted once.
     *
     * @return how many
     */
    public int joints() {
        return circuits.stream().mapToInt(circuit -> circuit.joints().size()).sum();
    }

    /**
     * Places that can leak.
     *
     * @return how many; a banjo has two
     */
    public int leaks() {
        return circuits.stream()
                .flatMap(circuit -> circuit.joints().stream())
                .mapToInt(KitJoint::leaks)
                .sum();
    }

    /**
     * Faces that seal.
     *
     * @return two for each place that can leak
     */
    public int faces() {
        return 2 * leaks();
    }

    /**
     * Pieces of a group.
     *
     * @param group what to count
     * @return how many pieces
     */
    public int pieces(KitItem.Group group) {
        return items.stream()
                .filter(item -> item.group() == group)
                .mapToInt(KitItem::count)
                .sum();
    }

    /**
     * Length of all hose or all tube.
     *
     * @param group what to add up
     * @return m
     */
    public double lengthM(KitItem.Group group) {
        return items.stream()
                .filter(item -> item.group() == group && item.byLength())
                .mapToDouble(KitItem::lengthM)
                .sum();
    }

    /**
     * What hoses and tubes hold.
     *
     * @return m3 at usual bores
     */
    public double volumeM3() {
        return circuits.stream().mapToDouble(KitCircuit::volumeM3).sum();
    }

    /**
     * Mass of what hoses and tubes hold.
     *
     * @return kg at usual bores
     */
    public double fluidKg() {
        return circuits.stream().mapToDouble(KitCircuit::fluidKg).sum();
    }

    /**
     * Mass of what has a known one.
     *
     * @return kg
     */
    public double massKg() {
        return known(KitItem::massKg);
    }

    /**
     * Cost of what has a price.
     *
     * @return in the user's currency
     */
    public double cost() {
        return known(KitItem::cost);
    }

    /**
     * Lines of the list whose mass is not known.
     *
     * @return how many
     */
    public int withoutMass() {
        return (int) items.stream().filter(item -> Double.isNaN(item.massKg())).count();
    }

    /**
     * Lines of the list that have no price.
     *
     * @return how many
     */
    public int withoutPrice() {
        return (int) items.stream().filter(item -> Double.isNaN(item.cost())).count();
    }

    private double known(ToDoubleFunction<KitItem> figure) {
        return items.stream()
                .mapToDouble(figure)
                .filter(value -> !Double.isNaN(value))
                .sum();
    }
}
