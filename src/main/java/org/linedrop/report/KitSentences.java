package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.catalogue.Bench;
import org.linedrop.fact.Figure;
import org.linedrop.study.kit.BendCheck;
import org.linedrop.study.kit.Kit;
import org.linedrop.study.kit.KitCircuit;
import org.linedrop.study.kit.KitHose;
import org.linedrop.study.kit.KitItem;
import org.linedrop.units.Display;

/** What stands above a kit in plain words: how much, what leaks, what it holds, weighs and costs, what is wrong. */
final class KitSentences {
    private final Kit kit;
    private final Display display;

    KitSentences(Kit kit, Display display) {
        this.kit = kit;
        this.display = display;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(bought());
        lines.addAll(trouble());
        lines.add(joints());
        lines.add(held());
        lines.add(mass() + " " + cost());
        return lines;
    }

    private String bought() {
        List<String> things = new ArrayList<>();
        int hoses = kit.pieces(KitItem.Group.HOSE);
        if (hoses > 0) {
            int ends = kit.pieces(KitItem.Group.HOSE_END);
            things.add(KitColumns.LENGTH.text(kit.lengthM(KitItem.Group.HOSE), display) + " of hose in "
                    + counted(hoses, "piece") + " with " + counted(ends, "end"));
        }
        int tubes = kit.pieces(KitItem.Group.TUBE);
        if (tubes > 0) {
            things.add(KitColumns.LENGTH.text(kit.lengthM(KitItem.Group.TUBE), display) + " of hard line in "
                    + counted(tubes, "piece"));
        }
        count(things, KitItem.Group.ADAPTER, "adapter, union or bulkhead", "adapters, unions and bulkheads");
        count(things, KitItem.Group.JUNCTION, "tee or Y block", "tees and Y blocks");
        count(things, KitItem.Group.VALVE, "valve or restrictor", "valves and restrictors");
        count(things, KitItem.Group.SEAL, "seal", "seals");
        count(things, KitItem.Group.CLAMP, "clamp", "clamps");
        String of = kit.circuits().size() == 1
                ? kit.circuits().get(0).title()
                : kit.circuits().size() + " circuits ("
                        + String.join(
                                "; ",
                                kit.circuits().stream().map(KitCircuit::title).toList())
                        + ")";
        return "To buy for " + of + ": " + (things.isEmpty() ? "nothing" : String.join(", ", things)) + ".";
    }

    private void count(List<String> things, KitItem.Group group, String one, String many) {
        int pieces = kit.pieces(group);
        if (pieces > 0) {
            things.add(pieces == 1 ? "1 " + one : pieces + " " + many);
        }
    }

    private static String counted(int count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }

    /** What would be bought or bent wrongly comes before the rest. */
    private List<String> trouble() {
        List<String> lines = new ArrayList<>();
        for (KitCircuit circuit : kit.circuits()) {
            for (KitHose hose : circuit.hoses()) {
                BendCheck.Verdict bend = hose.bend().verdict();
                if (bend == BendCheck.Verdict.TOO_TIGHT) {
                    lines.add("BENT TOO TIGHT: " + named(circuit, hose.part()) + ", " + hose.hose() + ": "
                            + KitColumns.bend(hose.bend(), display).replaceFirst("^TOO TIGHT: ", "") + ".");
                }
                if (hose.slackShare() < 0) {
                    lines.add((circuit.brake() ? "Length to look at: " : "TOO SHORT: ") + named(circuit, hose.part())
                            + " is "
                            + KitColumns.BENCH.text(hose.overallM(), display) + " overall, its path by its way-points "
                            + KitColumns.BENCH.text(hose.pathM(), display) + ".");
                }
            }
            lines.addAll(slack(circuit));
            for (KitCircuit.TooShort each : circuit.stretches()) {
                lines.add((circuit.brake() ? "Length to look at: " : "TOO SHORT? ")
                        + named(circuit, String.join(" and ", each.parts())) + ": "
                        + KitColumns.LENGTH.text(each.partsM(), display)
                        + " of hose and tube, but what they join is "
                        + KitColumns.LENGTH.text(each.distanceM(), display)
                        + " apart in a straight line: ends, fittings and devices would have to bridge "
                        + KitColumns.LENGTH.text(each.distanceM() - each.partsM(), display) + ".");
            }
        }
        return lines;
    }

    private List<String> slack(KitCircuit circuit) {
        Figure usual = Bench.standard().slackShare();
        List<String> lines = new ArrayList<>();
        for (KitHose hose : circuit.hoses()) {
            // half of a thousandth: lengths are not known better
            if (!circuit.brake() && hose.slackShare() >= 0 && hose.slackShare() < usual.low() - 5e-4) {
                lines.add("LITTLE SLACK: " + named(circuit, hose.part()) + " has "
                        + Scale.SHARE.text(hose.slackShare(), display) + " over its path; "
                        + Scale.SHARE.number(usual.low(), display) + " to "
                        + Scale.SHARE.text(usual.high(), display) + " is usual ("
                        + usual.source().title() + ").");
            }
        }
        return lines;
    }

    private String named(KitCircuit circuit, String parts) {
        return kit.circuits().size() == 1 ? parts : parts + " of " + circuit.title();
    }

    private String joints() {
        int adapters = kit.pieces(KitItem.Group.ADAPTER);
        int most = kit.alternatives().stream()
                .mapToInt(org.linedrop.study.kit.Alternative::leaksSaved)
                .max()
                .orElse(0);
        String saved = kit.alternatives().stream()
                .filter(alternative -> most > 0 && alternative.leaksSaved() == most)
                .findFirst()
                .map(alternative -> " Saves most: " + alternative.name() + ", " + counted(most, "place") + " less.")
                .orElse("");
        String places = kit.leaks() == kit.joints() ? "" : ", at " + counted(kit.leaks(), "place");
        return counted(kit.joints(), "joint") + " can leak" + places + " (" + kit.faces() + " sealing faces)"
                + (adapters == 0
                        ? "."
                        : adapters == 1
                                ? "; the adapter, union or bulkhead brings two of the faces."
                                : "; each of the " + adapters
                                        + " adapters, unions and bulkheads brings two of the faces.")
                + saved;
    }

    private String held() {
        List<String> fluids = new ArrayList<>();
        for (KitCircuit circuit : kit.circuits()) {
            String low = KitColumns.VOLUME.number(circuit.volumeLowM3(), display);
            String high = KitColumns.VOLUME.number(circuit.volumeHighM3(), display);
            fluids.add(KitColumns.VOLUME.text(circuit.volumeM3(), display) + " of " + circuit.fluid()
                    + (low.equals(high) ? "" : " (" + low + " to " + high + " by the bores sold)"));
        }
        String all = kit.circuits().size() == 1 ? "" : ", together " + KitColumns.VOLUME.text(kit.volumeM3(), display);
        String mass =
                Double.isNaN(kit.fluidKg()) ? "" : ", which weighs " + KitColumns.MASS.text(kit.fluidKg(), display);
        return "Hose and hard line hold " + String.join(", ", fluids) + all + mass + ".";
    }

    private String mass() {
        int without = kit.withoutMass();
        int all = kit.items().size();
        if (without == all) {
            return "No mass is known of any of it.";
        }
        return "Known masses add up to " + KitColumns.MASS.text(kit.massKg(), display)
                + (without == 0 ? "." : "; " + without + " of " + all + " lines of the list have none.");
    }

    private String cost() {
        int without = kit.withoutPrice();
        int all = kit.items().size();
        if (without == all) {
            return "No prices given: --price-form writes the list to fill in, --prices reads it.";
        }
        String currency = kit.currency().isEmpty() ? "" : " " + kit.currency();
        return "Prices add up to " + KitColumns.money(kit.cost()) + currency
                + (without == 0 ? "." : "; " + without + " of " + all + " lines have none.");
    }
}
