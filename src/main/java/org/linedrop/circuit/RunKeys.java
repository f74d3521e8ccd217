package org.linedrop.circuit;

import static org.linedrop.circuit.Key.optional;
import static org.linedrop.circuit.Key.required;
import static org.linedrop.circuit.KeyForms.number;

import java.util.List;
import org.linedrop.circuit.form.AdapterChoice;
import org.linedrop.circuit.form.Bends;
import org.linedrop.circuit.form.Ends;
import org.linedrop.circuit.form.Factor;
import org.linedrop.circuit.form.SizeChoice;
import org.linedrop.circuit.form.TubeChoice;
import org.linedrop.fact.Figure;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;

/** Keys of runs and of their parts. */
final class RunKeys {
    static final Key<String> NAME =
            optional("name", KeyForms.words("old hard line"), "a name for the part that survives editing");
    static final Key<Figure> TEMPERATURE_OF_PART = optional(
            "temperature",
            number(Dimension.TEMPERATURE, "C", 173.15, 573.15, "Is that C or F?"),
            "its own temperature; the nearest of part, run and circuit wins");
    static final Key<Figure> ENDS_AT_HEIGHT = optional(
            "ends at height",
            number(Dimension.LENGTH, "m", Double.NEGATIVE_INFINITY, 10, "Heights are from one datum in the vehicle"),
            "height of its end over the datum; shared by length between known heights when not given");
    static final Key<String> VIA_MARK = optional(
            "via",
            KeyForms.words("a list of {ahead: 0.5 m, height: 0.9 m}"),
            "way-points in flow order, which lift is shared over");
    static final Key<String> FROM =
            required("from", KeyForms.words("tank"), "where the run starts", "Write for example: from: tank");
    static final Key<String> TO =
            required("to", KeyForms.words("rail"), "where the run ends", "Write for example: to: rail");
    static final Key<String> PARTS_MARK =
            optional("parts", KeyForms.words("a list, or none"), "its parts in flow order");
    static final Key<SizeChoice> HOSES = optional(
            "hoses",
            KeyForms.form("-10", SizeChoice::read, SizeChoice::write),
            "in a case: changes all hoses of the run with their ends");
    static final Key<SizeChoice> HOSE = required(
            "hose",
            KeyForms.form("race PTFE -6", SizeChoice::read, SizeChoice::write),
            "family and size of the hose",
            "Write for example: hose: race PTFE -6");
    static final Key<Figure> LENGTH = required(
            "length",
            number(Dimension.LENGTH, "m", 1e-3, 30, "Hose or tube in a vehicle? If you mean mm, write mm"),
            "overall length, seat to seat",
            "Write for example: length: 0.60 m");
    static final Key<Ends> ENDS = required(
            "ends",
            KeyForms.form("straight to 90", Ends::read, Ends::write),
            "its two ends in flow order",
            "A hose needs its ends: write \"ends: straight to 90\", or \"none\" for a bare measured piece");
    static final Key<String> ENDS_KIND = optional(
            "ends kind",
            KeyForms.choice(List.of("reusable", "crimped", "push-on"), word -> word),
            "how the ends are held; reusable when not given");
    static final Key<Bends> BENDS = optional(
            "bends",
            KeyForms.form("2 x 90 at 150 mm", Bends::read, Bends::write),
            "its bends; straight when not given");
    static final Key<Figure> BORE = optional(
            "bore",
            number(Dimension.LENGTH, "mm", 5e-4, 0.1, "Is that mm?"),
            "measured bore of the hose, in place of the catalogue's");
    static final Key<Figure> END_BORE = optional(
            "end bore",
            number(Dimension.LENGTH, "mm", 5e-4, 0.1, "Is that mm?"),
            "measured bore of its ends' nipples, in place of the catalogue's");
    static final Key<Factor> LOSS_FACTOR = optional(
            "loss factor",
            KeyForms.form("4.5 x measured", Factor::read, Factor::write),
            "loss of its length over that of a smooth straight bore, where somebody measured it");
    static final Key<TubeChoice> TUBE = required(
            "tube",
            KeyForms.form("aluminium 1/2 in x 0.035 in", TubeChoice::read, TubeChoice::write),
            "material, outside diameter and wall",
            "Write for example: tube: aluminium 1/2 in x 0.035 in");
    static final Key<AdapterChoice> ADAPTER = required(
            "adapter",
            KeyForms.form("-6 to -5", AdapterChoice::read, AdapterChoice::write),
            "its two connections in flow order",
            "Write for example: adapter: -6 to -5");
    static final Key<SizeChoice> BULKHEAD = required(
            "bulkhead",
            KeyForms.form("-6", SizeChoice::read, SizeChoice::write),
            "its size",
            "Write for example: bulkhead: -6");
    static final Key<SizeChoice> UNION = required(
            "union",
            KeyForms.form("-6", SizeChoice::read, SizeChoice::write),
            "its size",
            "Write for example: union: -6");
    static final Key<Figure> RESTRICTOR = required(
            "restrictor",
            number(Dimension.LENGTH, "mm", 1e-4, 0.05, "Is that mm?"),
            "diameter of its hole",
            "Write for example restrictor: 1.0 mm");
    static final Key<Figure> RESTRICTOR_LENGTH = required(
            "length",
            number(Dimension.LENGTH, "mm", 0, 0.5, "Is that mm?"),
            "length of its hole, 0 mm for a thin edge",
            "Write for example length: 2 mm");
    static final Key<SizeChoice> VALVE = required(
            "valve",
            KeyForms.of("ball -8", text -> SizeChoice.read(text).write(), (text, scope) -> SizeChoice.read(text)),
            "its build and size, open; the size alone where kv or cv says what it loses",
            "Write for example valve: ball -8");
    static final Key<Figure> KV = optional(
            "kv",
            number(Dimension.RATIO, "x", 1e-3, 1000, "kv is m3/h of water at 1 bar"),
            "its flow of water in m3/h at 1 bar, in place of what its build loses");
    static final Key<Figure> CV = optional(
            "cv",
            number(Dimension.RATIO, "x", 1e-3, 1000, "cv is US gallons of water a minute at 1 psi"),
            "its flow of water in US gallons a minute at 1 psi, in place of kv");
    static final Key<String> THROUGH = required(
            "through",
            KeyForms.words("filter"),
            "the in-line device that sits here",
            "Write for example: through: filter");
    static final Key<StatedLaw.Law> LAW = required(
            "law",
            KeyForms.choice(List.of(StatedLaw.Law.values()), StatedLaw.Law::word),
            "a law stated outright, for textbook problems",
            "Write for example: law: constant f");
    static final Key<Figure> LAW_BORE =
            optional("bore", number(Dimension.LENGTH, "mm", 1e-4, 20, "Is that mm?"), "bore of its velocity");
    static final Key<Figure> LAW_LENGTH =
            optional("length", number(Dimension.LENGTH, "m", 0, 1e6, "Is that m?"), "its length");
    static final Key<Figure> LAW_F = optional(
            "f",
            number(Dimension.RATIO, "x", 1e-4, 10, "This is Darcy's factor, 4 times Fanning's"),
            "Darcy friction factor");
    static final Key<Figure> LAW_K =
            optional("K", number(Dimension.RATIO, "x", 0, 1e9, "K is over the velocity head"), "loss coefficient");
    static final Key<Figure> LAW_R = optional(
            "r", number(Dimension.RATIO, "x", 0, 1e15, "r is in m/(m3/s)^n"), "r of head = r Q^n, in m/(m3/s)^n");
    static final Key<Figure> LAW_N =
            optional("n", number(Dimension.RATIO, "x", 1, 3, "Turbulent flow has 1.75 to 2"), "n of head = r Q^n");
    static final Key<List<Quantity>> LAW_HEADS = optional(
            "heads",
            KeyForms.list("40 -500 -3e5 x", Dimension.RATIO),
            "c0 c1 c2 ... of a pump's head c0 + c1 Q + c2 Q^2 ... in m and m3/s, with x behind the last");
    static final Key<Figure> LAW_POWER =
            optional("power", number(Dimension.POWER, "kW", 0, 1e9, "Is that kW or W?"), "hydraulic power of a pump");
    static final Kind RUN = new Kind(
            "run", "a line from point to point", List.of(FROM, TO, TEMPERATURE_OF_PART, HOSES, VIA_MARK, PARTS_MARK));

    /** Kinds of part, by the key that names what it is. */
    static final List<Kind> PARTS = List.of(
            new Kind(
                    "hose",
                    "a made-up hose",
                    List.of(
                            HOSE,
                            LENGTH,
                            ENDS,
                            ENDS_KIND,
                            BENDS,
                            BORE,
                            END_BORE,
                            LOSS_FACTOR,
                            ENDS_AT_HEIGHT,
                            TEMPERATURE_OF_PART,
                            NAME)),
            new Kind("tube", "a hard line", List.of(TUBE, LENGTH, BENDS, ENDS_AT_HEIGHT, TEMPERATURE_OF_PART, NAME)),
            new Kind("adapter", "an adapter", List.of(ADAPTER, ENDS_AT_HEIGHT, TEMPERATURE_OF_PART, NAME)),
            new Kind("bulkhead", "a bulkhead fitting", List.of(BULKHEAD, ENDS_AT_HEIGHT, TEMPERATURE_OF_PART, NAME)),
            new Kind(
                    "union",
                    "a union between two swivel nuts",
                    List.of(UNION, ENDS_AT_HEIGHT, TEMPERATURE_OF_PART, NAME)),
            new Kind("through", "an in-line device", List.of(THROUGH, ENDS_AT_HEIGHT, TEMPERATURE_OF_PART)),
            new Kind(
                    "restrictor",
                    "a drilled hole",
                    List.of(RESTRICTOR, RESTRICTOR_LENGTH, ENDS_AT_HEIGHT, TEMPERATURE_OF_PART, NAME)),
            new Kind("valve", "an open valve", List.of(VALVE, KV, CV, ENDS_AT_HEIGHT, TEMPERATURE_OF_PART, NAME)),
            new Kind(
                    "law",
                    "a law stated outright",
                    List.of(
                            LAW,
                            LAW_BORE,
                            LAW_LENGTH,
                            LAW_F,
                            LAW_K,
                            LAW_R,
                            LAW_N,
                            LAW_HEADS,
                            LAW_POWER,
                            ENDS_AT_HEIGHT,
                            TEMPERATURE_OF_PART,
                            NAME)));

    private RunKeys() {}
}
