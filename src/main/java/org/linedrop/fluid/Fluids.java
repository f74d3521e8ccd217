package org.linedrop.fluid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.linedrop.fact.Words;

/**
 * Finds fluids by the names users write. Case, spaces, hyphens and per cent signs do not matter; each fluid has one
 * canonical name. Glycol and ethanol take any concentration: {@code ethylene glycol 45 %}, {@code ethanol 74 %}.
 */
public final class Fluids {
    private Fluids() {}

    private static final int SUGGESTIONS = 4;

    /** A fluid with other ways of writing its name. */
    private record Entry(CatalogueFluid fluid, List<String> aliases) {}

    /** A word that stands for several fluids, why it does not say which, and what to write instead. */
    private record Ambiguous(List<String> words, String why, List<String> choices) {}

    private static final List<Entry> ENTRIES = entries();
    private static final List<Ambiguous> AMBIGUOUS = ambiguous();

    /**
     * The fluid a text names.
     *
     * @param text as a user writes it, for example {@code E85 summer}, {@code ethanol 74 %}, {@code engine oil 5W-30}
     * @return the fluid; the same text always gives an equal one
     * @throws UnknownFluidException when the text names none or several; the message says what to write
     */
    public static Fluid find(String text) {
        String key = Names.key(text);
        for (Entry entry : ENTRIES) {
            if (matches(entry, key)) {
                return entry.fluid();
            }
        }
        Blends.Wanted wanted = Blends.parse(text);
        if (wanted != null) {
            return Blends.fluid(wanted);
        }
        for (Ambiguous word : AMBIGUOUS) {
            if (word.words().contains(key)) {
                throw new UnknownFluidException(
                        "fluid \"" + text.strip() + "\" " + word.why() + ". Write " + either(word.choices()),
                        word.choices());
            }
        }
        UnknownFluidException refused = Blends.refusedGrade(text);
        if (refused != null) {
            throw refused;
        }
        List<String> near = near(key);
        throw new UnknownFluidException(
                "fluid \"" + text.strip() + "\" is not known. "
                        + (near.isEmpty()
                                ? "Write one of the listed fluids, or describe a fluid of your own"
                                : "Did you mean " + either(near) + "?"),
                near);
    }

    /**
     * The canonical names of the built-in fluids. Those of any concentration stand here with one example each.
     *
     * @return names in order of family
     */
    public static List<String> names() {
        return ENTRIES.stream().map(e -> e.fluid().name()).toList();
    }

    /**
     * The built-in fluids, with common concentrations of those that take any.
     *
     * @return fluids in the order of {@link #names()}
     */
    public static List<Fluid> all() {
        return ENTRIES.stream().map(e -> (Fluid) e.fluid()).toList();
    }

    /**
     * The words under which linings are judged, as {@link Fluid#family} gives them; one of them makes a user's fluid
     * comparable.
     *
     * @return words of the compatibility table, in order of the fluids
     */
    public static List<String> families() {
        return ENTRIES.stream().map(e -> e.fluid().family()).distinct().toList();
    }

    /**
     * Petrol with any share of ethanol.
     *
     * @param volumePercent ethanol by volume, above 0 to 100
     * @param summer        true when the rest is summer petrol, false for winter
     * @return the blend; at 100 per cent ethanol itself
     * @throws UnknownFluidException outside that range
     */
    public static Fluid ethanolBlend(double volumePercent, boolean summer) {
        return Blends.fluid(
                new Blends.Wanted(summer ? Blends.Kind.ETHANOL : Blends.Kind.ETHANOL_WINTER, volumePercent));
    }

    /**
     * Water with ethylene glycol.
     *
     * @param volumePercent glycol by volume, 0 to 60; below 30 interpolated to water (grade C)
     * @return the coolant; at 0 per cent water
     * @throws UnknownFluidException outside that range
     */
    public static Fluid ethyleneGlycol(double volumePercent) {
        return Blends.fluid(new Blends.Wanted(Blends.Kind.ETHYLENE, volumePercent));
    }

    /**
     * Water with propylene glycol.
     *
     * @param volumePercent glycol by volume, 0 to 60; below 30 interpolated to water (grade C)
     * @return the coolant; at 0 per cent water
     * @throws UnknownFluidException outside that range
     */
    public static Fluid propyleneGlycol(double volumePercent) {
        return Blends.fluid(new Blends.Wanted(Blends.Kind.PROPYLENE, volumePercent));
    }

    private static boolean matches(Entry entry, String key) {
        if (Names.key(entry.fluid().name()).equals(key)) {
            return true;
        }
        return entry.aliases().stream().anyMatch(a -> Names.key(a).equals(key));
    }

    private static String either(List<String> names) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < names.size(); i++) {
            text.append(i == 0 ? "" : i == names.size() - 1 ? " or " : ", ");
            text.append('"').append(names.get(i)).append('"');
        }
        return text.toString();
    }

    /** Names that differ in few letters, or that contain what was written. */
    private static List<String> near(String key) {
        record Hit(String name, double distance) {}
        List<Hit> hits = new ArrayList<>();
        for (Entry entry : ENTRIES) {
            List<String> spellings = new ArrayList<>(entry.aliases());
            spellings.add(entry.fluid().name());
            double best = Double.POSITIVE_INFINITY;
            for (String spelling : spellings) {
                String other = Names.key(spelling);
                int distance = Words.edits(key, other);
                if (distance <= Math.max(1, other.length() / 3)) {
                    best = Math.min(best, (double) distance / other.length());
                }
                if (key.length() >= 3 && other.contains(key)) {
                    best = Math.min(best, 0.4);
                }
            }
            if (best < 1) {
                hits.add(new Hit(entry.fluid().name(), best));
            }
        }
        // stable: names of equal distance stay in the order of the table
        hits.sort(Comparator.comparingDouble(Hit::distance));
        return hits.stream().limit(SUGGESTIONS).map(Hit::name).toList();
    }

    private static List<Entry> entries() {
        List<Entry> list = new ArrayList<>();
        add(list, WaterFluids.water(), "pure water");
        add(list, WaterFluids.glycol(true, 50));
        add(list, WaterFluids.glycol(false, 50));
        for (SparkFuels.PetrolClass c : SparkFuels.CLASSES) {
            add(list, SparkFuels.petrol(c), petrolAliases(c.name()));
        }
        add(list, SparkFuels.e10("E10", SparkFuels.SUMMER), "E10 summer", "petrol E10", "gasoline E10");
        add(list, SparkFuels.e10("E10 winter", SparkFuels.WINTER), "petrol E10 winter", "gasoline E10 winter");
        add(list, SparkFuels.e85(true), "summer E85", "E85 class 1");
        add(list, SparkFuels.e85(false), "winter E85", "E85 class 4");
        add(list, SparkFuels.ethanolBlend(74, true));
        add(list, AlcoholFluids.ethanol(), "E100", "ethanol 100 %", "ethyl alcohol");
        add(list, AlcoholFluids.methanol(), "M100", "methanol 100 %", "methyl alcohol");
        add(list, SparkFuels.aviation(), "100LL", "aviation petrol", "aviation gasoline", "avgas");
        add(list, DistillateFuels.en590(), "EN 590", "diesel summer");
        add(list, DistillateFuels.number2(), "diesel D975 2-D", "diesel no. 2", "diesel no. 2-D", "2-D diesel");
        add(list, DistillateFuels.winter(), "winter diesel", "diesel 1-D", "diesel no. 1", "diesel no. 1-D");
        add(list, DistillateFuels.jet(), "jet fuel", "jet A", "kerosene", "aviation kerosene", "jet A1 fuel");
        for (CatalogueFluid oil : OilFluids.all()) {
            add(list, oil, oilAliases(oil.name()));
        }
        for (CatalogueFluid brake : BrakeFluids.all()) {
            String grade = brake.name().substring("brake fluid ".length());
            add(
                    list,
                    brake,
                    grade,
                    grade + " brake fluid",
                    grade.replace("low viscosity", "LV"),
                    "brake fluid " + grade.replace("low viscosity", "LV"));
        }
        add(list, AirFluid.air(), "dry air");
        return List.copyOf(list);
    }

    private static void add(List<Entry> list, CatalogueFluid fluid, String... aliases) {
        list.add(new Entry(fluid, List.of(aliases)));
    }

    private static String[] petrolAliases(String name) {
        String rest = name.substring("petrol ".length());
        return new String[] {
            "gasoline " + rest, rest + " petrol", rest + " gasoline", "petrol class " + rest, "petrol E0 " + rest
        };
    }

    private static String[] oilAliases(String name) {
        List<String> aliases = new ArrayList<>();
        if (name.startsWith("engine oil ")) {
            String grade = name.substring("engine oil ".length());
            aliases.add(grade);
            aliases.add("oil " + grade);
            aliases.add("motor oil " + grade);
            aliases.add(grade + " engine oil");
            aliases.add("engine oil SAE " + grade);
            aliases.add("SAE " + grade);
            if (grade.startsWith("SAE ")) {
                aliases.add("engine oil " + grade.substring("SAE ".length()));
            }
        } else if (name.startsWith("hydraulic oil VG ")) {
            String grade = name.substring("hydraulic oil VG ".length());
            aliases.add("hydraulic oil ISO VG " + grade);
            aliases.add("hydraulic oil " + grade);
            aliases.add("hydraulic fluid VG " + grade);
            aliases.add("ISO VG " + grade);
            aliases.add("VG " + grade);
        } else if (name.startsWith("gear oil ")) {
            String grade = name.substring("gear oil ".length());
            aliases.add("gear oil SAE " + grade);
            aliases.add("gearbox oil " + grade);
            aliases.add(grade);
            aliases.add("SAE " + grade);
        } else if (name.equals("ATF")) {
            aliases.add("automatic transmission fluid");
            aliases.add("transmission fluid");
        } else if (name.equals("ATF low viscosity")) {
            aliases.add("low viscosity ATF");
            aliases.add("automatic transmission fluid low viscosity");
        } else if (name.startsWith("power steering fluid ")) {
            String kind = name.substring("power steering fluid ".length());
            aliases.add("power steering " + kind);
            aliases.add("PSF " + kind);
            aliases.add(kind + " power steering fluid");
        }
        return aliases.toArray(new String[0]);
    }

    private static List<String> startingWith(String start) {
        return names().stream().filter(n -> n.startsWith(start)).toList();
    }

    private static List<Ambiguous> ambiguous() {
        List<String> coolants = List.of("ethylene glycol 50 %", "propylene glycol 40 %");
        return List.of(
                new Ambiguous(
                        List.of("e85", "e85petrol", "flexfuel"),
                        "does not say which class: pump E85 holds 51 to 83 % ethanol and is more volatile in winter",
                        List.of("E85 summer", "E85 winter", "ethanol 74 %")),
                new Ambiguous(
                        List.of("petrol", "gasoline", "petrole0", "e0", "unleaded", "pumppetrol", "gas", "fuel"),
                        "does not say which volatility class, and vapour pressure differs by half",
                        List.of("petrol summer", "petrol winter", "E10", "petrol EN 228 A", "petrol D4814 B")),
                new Ambiguous(
                        List.of("petrola", "petrold", "gasolinea", "gasolined", "petrolclassa", "petrolclassd"),
                        "is a class of two standards with other limits",
                        List.of("petrol D4814 A", "petrol EN 228 A", "petrol D4814 D", "petrol EN 228 D")),
                new Ambiguous(
                        List.of("diesel", "dieselfuel", "derv"),
                        "does not say which grade; viscosity differs by half",
                        List.of("diesel EN 590", "diesel 2-D", "diesel winter")),
                new Ambiguous(
                        List.of("oil", "engineoil", "motoroil"),
                        "does not say which grade",
                        startingWith("engine oil ").subList(0, 5)),
                new Ambiguous(
                        List.of("gearoil", "gearboxoil", "transmissionoil"),
                        "does not say which grade",
                        startingWith("gear oil ")),
                new Ambiguous(
                        List.of("hydraulicoil", "hydraulicfluid"),
                        "does not say which grade",
                        startingWith("hydraulic oil ")),
                new Ambiguous(
                        List.of("powersteeringfluid", "powersteering", "psf"),
                        "does not say which kind",
                        startingWith("power steering fluid ")),
                new Ambiguous(List.of("brakefluid", "dot"), "does not say which grade", startingWith("brake fluid ")),
                new Ambiguous(
                        List.of(
                                "glycol",
                                "coolant",
                                "antifreeze",
                                "ethyleneglycol",
                                "propyleneglycol",
                                "waterglycol",
                                "glycolwater"),
                        "does not say how much glycol, per cent by volume",
                        coolants));
    }
}
