package org.linedrop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.AdapterSize;
import org.linedrop.catalogue.Compatibility;
import org.linedrop.circuit.Adapter;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tube;
import org.linedrop.fact.Figure;
import org.linedrop.fact.ProblemsException;
import org.linedrop.study.SizeAnswer.Fitting;
import org.linedrop.study.kit.KitItem;
import org.linedrop.study.kit.RunItems;

/** What one run may become, and what each of these comes to. */
final class SizeOptions {
    private static final Pattern DIGITS = Pattern.compile("\\d+");
    private static final int SIZES_DOWN = 2;
    private static final int SIZES_UP = 3;

    /** Densities of tube metal, kg/m3: handbook values, from memory; they decide a weight, never a flow. */
    private static final double STEEL = 7850;

    private static final double ALUMINIUM = 2700;
    private static final double COPPER_NICKEL = 8900;

    private final SizeQuestion question;
    private final Circuit circuit;
    private final Set<String> leftOut = new LinkedHashSet<>();
    private final Map<String, KitItem> items = new LinkedHashMap<>();

    SizeOptions(SizeQuestion question, Circuit circuit) {
        this.question = question;
        this.circuit = circuit;
    }

    /**
     * One run in one size.
     *
     * @param run      its name
     * @param words    the size in words
     * @param family   hose family chosen, empty for the one each hose has
     * @param dash     the size, 0 for as written
     * @param added    fittings that the file has not
     * @param dropped  fittings of the file that it has not
     * @param volumeM3 fluid in it
     * @param massKg   hose, tube and fluid; NaN when not known
     * @param price    NaN when not known
     */
    record Option(
            String run,
            String words,
            String family,
            int dash,
            List<Fitting> added,
            List<Fitting> dropped,
            double volumeM3,
            double massKg,
            double price) {

        double amount(SizeQuestion.Objective by) {
            return switch (by) {
                case SMALLEST -> volumeM3;
                case LIGHTEST -> massKg;
                case CHEAPEST -> price;
            };
        }

        boolean asWritten() {
            return dash == 0;
        }

        /** What makes the run so; empty for as written. */
        Optional<Change> change(Circuit inCase) {
            return asWritten() ? Optional.empty() : RunSizes.change(inCase, run, family, dash);
        }
    }

    /** Why choices were left out. */
    List<String> leftOut() {
        return List.copyOf(leftOut);
    }

    /** What the options looked at take, in the order of a kit. */
    List<KitItem> items() {
        List<KitItem> all = new ArrayList<>(items.values());
        all.sort(Comparator.comparing(KitItem::group).thenComparing(item -> counted(item.item())));
        return List.copyOf(all);
    }

    /** A name that sorts -4 before -10. */
    private static String counted(String name) {
        return DIGITS.matcher(name)
                .replaceAll(number -> "0".repeat(Math.max(0, 6 - number.group().length())) + number.group());
    }

    /** Names of the runs whose size may change. */
    List<String> runs() {
        List<String> able = circuit.runs().stream()
                .filter(run -> run.parts().stream().anyMatch(Sizes::changeable))
                .map(Run::id)
                .toList();
        for (String name : question.runs()) {
            if (!able.contains(name)) {
                throw new IllegalArgumentException(
                        "no run \"" + name + "\" with a hose or a tube; there are " + String.join(", ", able));
            }
        }
        return question.runs().isEmpty()
                ? able
                : able.stream().filter(question.runs()::contains).toList();
    }

    /** What a run may become, the least first; of equal ones the narrower. */
    List<Option> of(String run) {
        List<Option> options = new ArrayList<>();
        Run written = run(circuit, run);
        Option asWritten = option(written, circuit, "as written", "", 0);
        if (suits(circuit, written) && known(asWritten)) {
            options.add(asWritten);
        }
        List<String> families = question.families().isEmpty() ? List.of("") : question.families();
        for (String family : families) {
            for (int dash : dashes(written)) {
                String words = (family.isEmpty() ? "" : family + " ") + "-" + dash;
                Optional<Change> change = RunSizes.change(circuit, run, family, dash);
                if (change.isEmpty()) {
                    leftOut.add(run + " " + words + ": not made, or no adapter for it is known");
                    continue;
                }
                try {
                    Circuit changed = circuit.with(List.of(change.get()));
                    if (!changed.runs().equals(circuit.runs()) && suits(changed, run(changed, run))) {
                        Option option = option(run(changed, run), changed, words, family, dash);
                        if (known(option)) {
                            options.add(option);
                        }
                    }
                } catch (ProblemsException wrong) {
                    leftOut.add(
                            run + " " + words + ": " + wrong.problems().get(0).message());
                }
            }
        }
        options.sort(Comparator.comparingDouble((Option option) -> option.amount(question.by()))
                .thenComparingDouble(Option::volumeM3)
                .thenComparing(Option::words));
        return options;
    }

    private boolean known(Option option) {
        boolean known = !Double.isNaN(option.amount(question.by()));
        if (!known) {
            leftOut.add(option.run() + " " + option.words() + ": "
                    + (question.by() == SizeQuestion.Objective.CHEAPEST
                            ? "a price is missing"
                            : "its mass per metre is not known"));
        }
        return known;
    }

    /** Whether every hose stands the fluid; one whose lining is not recommended is not chosen. */
    private boolean suits(Circuit with, Run run) {
        String fluid = with.surroundings().fluid().family();
        for (Part part : run.parts()) {
            if (part instanceof Hose hose && !fluid.isEmpty()) {
                Compatibility row = with.catalogue().compatibility(hose.size().liner(), fluid);
                if (row.grade() == Compatibility.Grade.NOT_RECOMMENDED) {
                    leftOut.add(run.id() + " in " + hose.size().family() + ": its liner ("
                            + hose.size().liner() + ") is not recommended for "
                            + with.surroundings().fluid().name());
                    return false;
                }
            }
        }
        return true;
    }

    private List<Integer> dashes(Run run) {
        if (!question.dashes().isEmpty()) {
            return question.dashes();
        }
        int least = Integer.MAX_VALUE;
        int most = 0;
        for (Part part : run.parts()) {
            int dash = part instanceof Hose hose
                    ? hose.size().dash()
                    : part instanceof Tube tube ? tube.size().dash() : 0;
            least = dash > 0 ? Math.min(least, dash) : least;
            most = Math.max(most, dash);
        }
        List<Integer> near = new ArrayList<>();
        for (int i = 0; i < Sizes.DASHES.size(); i++) {
            int up = Math.max(0, i - SIZES_UP);
            int down = Math.min(Sizes.DASHES.size() - 1, i + SIZES_DOWN);
            if (Sizes.DASHES.get(down) >= least && Sizes.DASHES.get(up) <= most) {
                near.add(Sizes.DASHES.get(i));
            }
        }
        return near;
    }

    private static Run run(Circuit circuit, String name) {
        return circuit.runs().stream()
                .filter(run -> run.id().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Option option(Run run, Circuit with, String words, String family, int dash) {
        double density = with.surroundings().fluidState().densityKgPerM3();
        double volume = 0;
        double mass = 0;
        for (Part part : run.parts()) {
            if (part instanceof Hose hose) {
                volume += area(hose.size().boreM()) * hose.lengthM().value();
                Figure perM = hose.size().massKgPerM();
                mass += perM == null
                        ? Double.NaN
                        : perM.value() * hose.lengthM().value();
            } else if (part instanceof Tube tube) {
                volume += area(tube.size().boreM()) * tube.lengthM().value();
                double outside = tube.size().outsideDiameterM();
                double metal =
                        Math.PI / 4 * outside * outside - area(tube.size().boreM());
                mass += metal * tube.lengthM().value() * metal(tube.size().material());
            }
        }
        List<KitItem> bought = RunItems.of(with, run, question.own());
        for (KitItem item : bought) {
            items.putIfAbsent(item.item(), item);
        }
        List<Fitting> before = fittings(run(circuit, run.id()));
        List<Fitting> after = fittings(run);
        return new Option(
                run.id(),
                words,
                family,
                dash,
                without(after, before),
                without(before, after),
                volume,
                mass + volume * density,
                price(bought));
    }

    private static double area(Figure bore) {
        return Math.PI / 4 * bore.value() * bore.value();
    }

    private static double metal(String material) {
        return material.contains("aluminium") ? ALUMINIUM : material.contains("copper") ? COPPER_NICKEL : STEEL;
    }

    private static List<Fitting> fittings(Run run) {
        List<Fitting> fittings = new ArrayList<>();
        for (Part part : run.parts()) {
            if (part instanceof Adapter adapter) {
                fittings.add(new Fitting(
                        name(adapter.size()),
                        adapter.size().fromBoreM().value(),
                        adapter.size().toBoreM().value(),
                        adapter.size().sealingFaces()));
            }
        }
        return fittings;
    }

    /** In flow order; a union has the same size on both sides. */
    private static String name(AdapterSize size) {
        return size.kind() + " " + (size.kind().equals("union") ? size.from().sizeName() : size.text());
    }

    /** Those of the first list that the second has not, one for one; the same fitting in another size is no change. */
    private static List<Fitting> without(List<Fitting> these, List<Fitting> those) {
        List<Fitting> left = new ArrayList<>(these);
        List<Fitting> others = new ArrayList<>(those);
        left.removeIf(others::remove);
        left.removeIf(fitting -> others.stream()
                .filter(other ->
                        kind(other).equals(kind(fitting)) && !kind(fitting).equals("reducer"))
                .findFirst()
                .map(others::remove)
                .orElse(false));
        return left;
    }

    private static String kind(Fitting fitting) {
        return fitting.words().substring(0, fitting.words().indexOf(' '));
    }

    /** What a run costs; NaN when a price is missing. */
    private double price(List<KitItem> items) {
        double price = 0;
        List<String> missing = new ArrayList<>();
        for (KitItem item : items) {
            if (Double.isNaN(item.cost())) {
                missing.add(item.item());
            }
            price += item.cost();
        }
        if (!missing.isEmpty() && question.by() == SizeQuestion.Objective.CHEAPEST) {
            missing.forEach(item -> leftOut.add(item + ": no price is given"));
        }
        return price;
    }

    static @Nullable Option asWritten(List<Option> options) {
        return options.stream().filter(Option::asWritten).findFirst().orElse(null);
    }
}
