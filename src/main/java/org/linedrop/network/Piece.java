package org.linedrop.network;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** One row in the making: what it is, the bores on either side, and the terms collected so far. */
final class Piece {
    static final Figure NO_BORE = Figure.exact(0, Source.of("no bore known", Status.GIVEN));

    final String kind;
    final String name;
    final String part;
    final String size;
    final Stream stream;
    Figure boreM = NO_BORE;
    double usedBoreM = Double.NaN;
    double inBoreM = Double.NaN;
    double outBoreM = Double.NaN;
    double lengthM;
    boolean fitting;
    String row = "";
    String device = "";
    final List<Term> friction = new ArrayList<>();
    final List<Term> local = new ArrayList<>();
    /** Changes of bore to its neighbours. */
    final List<Term> joined = new ArrayList<>();

    Story story = Story.NONE;
    double liftPa;
    Trace.@Nullable Leg leg;
    /** Set where the piece is a device that switches. */
    @Nullable Gate gate;
    /** Mass flow taken at the end of the piece, NaN where none is. */
    double takenKgPerS = Double.NaN;
    /** The most that a pump in it can pass. */
    double mostKgPerS = Double.POSITIVE_INFINITY;
    /** Makes the terms of a piece that sits in the bores of its neighbours, once these are known. */
    @Nullable BiFunction<Double, Double, Term> between;

    /**
     * A device that switches, in a branch of its own.
     *
     * @param law         its law
     * @param open        what it loses wide open
     * @param overOutlet  whether its set point counts from its outlet
     */
    record Gate(DeviceLaw law, Law open, boolean overOutlet) {}

    Piece(String kind, String name, String part, String size, Stream stream) {
        this.kind = kind;
        this.name = name;
        this.part = part;
        this.size = size;
        this.stream = stream;
    }

    Piece bore(Figure figure, double usedM) {
        boreM = figure;
        usedBoreM = usedM;
        inBoreM = usedM;
        outBoreM = usedM;
        return this;
    }

    /** Whether a change of bore beside this piece belongs to it rather than to its neighbour. */
    boolean fitting() {
        return fitting;
    }

    /** Whether the piece is taken exactly as stated, so that no loss is added at its ends. */
    boolean stated() {
        return kind.equals("law");
    }

    /** Whether the piece has a bore of its own. */
    boolean open() {
        return !Double.isNaN(usedBoreM) && between == null;
    }

    /** Whether fluid leaves the run at its end. */
    boolean takes() {
        return !Double.isNaN(takenKgPerS);
    }

    Trace.Row freeze() {
        List<Term> others = new ArrayList<>(local);
        others.addAll(joined);
        return new Trace.Row(
                row, name, kind, part, device, size, boreM, usedBoreM, inBoreM, outBoreM, stream, friction, others,
                lengthM, liftPa, joined, story, leg);
    }
}
