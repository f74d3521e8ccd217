package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.Compatibility;
import org.linedrop.catalogue.DashSize;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.catalogue.NippleSize;
import org.linedrop.catalogue.TubeSize;
import org.linedrop.fluid.Fluid;
import org.linedrop.fluid.PropertyInfo;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;

/** What the catalogue and the fluids know, as lists with source and status. */
public final class CatalogueReport {
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double STEP_K = 10;
    /** A table over temperature with more lines than these is read no better. */
    private static final int MOST_LINES = 16;

    private static final String MARK = "? from memory, guessed or taken from something alike";
    private static final String EXACT =
            "csv and json give every figure with low, usual and high, its source and status.";

    private CatalogueReport() {}

    /**
     * Dash sizes and what goes with them.
     *
     * @param catalogue the rows
     * @param sizes     those to list
     * @return the list
     */
    public static Listing<DashSize> sizes(Catalogue catalogue, List<DashSize> sizes) {
        return Listing.of(
                "sizes",
                "Dash sizes: sixteenths of an inch of the tube they go with. The bore of a hose is another matter.",
                new SizeColumns(catalogue).columns(),
                sizes,
                List.of(
                        "An O-ring boss and a flare of one dash share their thread and do not seal together.",
                        MARK + "; used for: common practice, decides nothing",
                        EXACT));
    }

    /**
     * Hose sizes.
     *
     * @param catalogue the rows
     * @param hoses     those to list
     * @param fluid     the fluid whose grade is to stand beside each, in the words of {@link Fluid#family}; null for none
     * @return the list
     */
    public static Listing<HoseSize> hoses(Catalogue catalogue, List<HoseSize> hoses, @Nullable String fluid) {
        List<String> notes = new ArrayList<>();
        notes.add("low and high: the smallest and the largest bore sold under that name. " + MARK);
        notes.add("Hose sized by inch stands with the dash of as many sixteenths.");
        if (fluid != null) {
            notes.add("Grade in " + fluid + ": of the worst liner sold. Ask the hose maker before buying; see: linedrop"
                    + " catalogue compatibility --fluid \"" + fluid + "\"");
        }
        notes.add(EXACT);
        return Listing.of("hoses", "Hose by family and size.", HoseColumns.columns(catalogue, fluid), hoses, notes);
    }

    /**
     * Nipples of hose ends.
     *
     * @param nipples those to list
     * @return the list
     */
    public static Listing<NippleSize> nipples(List<NippleSize> nipples) {
        return Listing.of(
                "nipples",
                "Nipples: the part of a hose end that stands inside the hose, its narrowest place.",
                FittingColumns.NIPPLES,
                nipples,
                List.of(MARK, EXACT));
    }

    /**
     * Hard line.
     *
     * @param tubes those to list
     * @return the list
     */
    public static Listing<TubeSize> tubes(List<TubeSize> tubes) {
        return Listing.of(
                "tubes",
                "Hard line by material, outside diameter and wall. Any other size may be written too.",
                FittingColumns.TUBES,
                tubes,
                List.of(
                        "least bent: the least bore left after bending and flaring, where published.",
                        "allowed: allowable pressure, where published; the fittings and the vehicle's rules may allow"
                                + " less.",
                        EXACT));
    }

    /**
     * Linings against fluids.
     *
     * @param rows those to list
     * @return the list
     */
    public static Listing<Compatibility> compatibility(List<Compatibility> rows) {
        return Listing.of(
                "compatibility",
                "How liners stand fluids.",
                FittingColumns.COMPATIBILITY,
                rows,
                List.of("Ask the hose maker before buying: a table knows liners, not compounds.", EXACT));
    }

    /**
     * Fluids at one temperature.
     *
     * @param fluids       those to list
     * @param temperatureK temperature, K, above zero; a fluid that has no state there is listed without figures
     * @param display      units of the heading
     * @return the list
     */
    public static Listing<?> fluids(List<Fluid> fluids, double temperatureK, Display display) {
        return Listing.of(
                "fluids",
                "Fluids at " + display.text(temperatureK, Dimension.TEMPERATURE) + ".",
                FluidColumns.FLUIDS,
                fluids.stream().map(fluid -> FluidLine.of(fluid, temperatureK)).toList(),
                List.of(
                        grades(),
                        "A dash: not known, or no state at this temperature. known as: the weakest of the three.",
                        "Glycol and ethanol take any concentration: ethylene glycol 45 %, ethanol 74 %.",
                        "See a fluid over temperature: linedrop catalogue fluids --fluid \"E85 summer\"",
                        EXACT));
    }

    private static String grades() {
        return "Grades: A within 3 % (viscosity 5 %) of published tables, B typical of its class, C from memory or"
                + " estimated.";
    }

    /**
     * One fluid over temperature.
     *
     * @param fluid        the fluid
     * @param temperatureK the one temperature wanted, K; NaN for a table over all it is meant for
     * @param display      whose round temperatures are taken
     * @return the list; empty where the fluid has no state
     */
    public static Listing<?> fluid(Fluid fluid, double temperatureK, Display display) {
        List<Double> temperatures = Double.isNaN(temperatureK) ? temperatures(fluid, display) : List.of(temperatureK);
        List<String> notes = new ArrayList<>();
        for (double each : temperatures) {
            if (fluid.refusal(each) != null) {
                notes.add(String.valueOf(fluid.refusal(each)));
            }
        }
        fluid.notices(temperatures.get(temperatures.size() / 2)).stream()
                .filter(notice -> notice.id().equals("fluid-remark"))
                .forEach(notice -> notes.add(notice.text()));
        notes.add("thin and thick: the two ends of what is sold under the name, and of what the method errs.");
        notes.add(grades());
        return Listing.of(
                        "fluid",
                        fluid.name() + ", meant for " + display.text(fluid.lowestK(), Dimension.TEMPERATURE) + " to "
                                + display.text(fluid.highestK(), Dimension.TEMPERATURE) + ".",
                        FluidColumns.STATES,
                        temperatures.stream()
                                .map(each -> FluidLine.of(fluid, each))
                                .toList(),
                        notes)
                .<PropertyInfo>below("properties", "Where it comes from.", FluidColumns.PROPERTIES, fluid.properties());
    }

    /** Round temperatures over what the fluid is meant for, its two ends included. */
    private static List<Double> temperatures(Fluid fluid, Display display) {
        double zero = display.us() ? ZERO_CELSIUS_K - 32 / 1.8 : ZERO_CELSIUS_K;
        double step = display.us() ? 2 * STEP_K / 1.8 : STEP_K;
        while ((fluid.highestK() - fluid.lowestK()) / step > MOST_LINES) {
            step *= 2;
        }
        List<Double> temperatures = new ArrayList<>();
        temperatures.add(fluid.lowestK());
        for (double n = Math.floor((fluid.lowestK() - zero) / step) + 1;
                zero + n * step < fluid.highestK() - 0.5;
                n++) {
            if (zero + n * step > fluid.lowestK() + 0.5) {
                temperatures.add(zero + n * step);
            }
        }
        if (fluid.highestK() > fluid.lowestK()) {
            temperatures.add(fluid.highestK());
        }
        return temperatures;
    }
}
