package org.linedrop.study;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.units.Display;

/**
 * Where the loss of one case sits, by the thing one would change: a hose with its ends, a tube, the adapters that go
 * with it; what the next size of each gives, solved; and which figure that nobody measured decides most.
 *
 * @param check       the case, checked
 * @param subject     what the loss is on the way to: subject of the deciding limit, or the draw that gets least where no
 *                    limit can be judged; empty where there is neither
 * @param output      what is read there, null where there is no subject
 * @param lostPa      what everything on the way takes, height included, pumps left out
 * @param plumbingPa  of it friction and local losses of hoses, tubes, ends and fittings
 * @param devicesPa   of it what filters and other devices take
 * @param liftPa      of it height and acceleration
 * @param things      what one would change, the largest loss first
 * @param measures    figures that are not measured, the one that decides most first
 */
public record Bottleneck(
        CaseCheck check,
        String subject,
        @Nullable Output output,
        double lostPa,
        double plumbingPa,
        double devicesPa,
        double liftPa,
        List<Thing> things,
        List<Measure> measures) {

    /** Copies the lists. */
    public Bottleneck {
        things = List.copyOf(things);
        measures = List.copyOf(measures);
    }

    /**
     * One thing to change.
     *
     * @param rank      from 1, the largest loss first
     * @param place     run and number of the line in the file, {@code feed 4} or {@code feed 3+5}
     * @param words     what it is
     * @param lossPa    friction and local losses of it all
     * @param share     of what plumbing and devices lose on the way, 0 to 1
     * @param larger    one size up in words; empty where there is none, or it goes with another thing
     * @param with      the thing it goes with, empty when it stands alone
     * @param gives     what that does to the output in SI, towards the limit being held; NaN where it was not solved
     * @param then      what the output is then, in SI; NaN likewise
     * @param holds     whether every limit of the case holds then at usual bores
     * @param boreM     its bore, NaN where it has none
     * @param boreFrom  how that is known, null where it has none
     */
    public record Thing(
            int rank,
            String place,
            String words,
            double lossPa,
            double share,
            String larger,
            String with,
            double gives,
            double then,
            boolean holds,
            double boreM,
            @Nullable Source boreFrom)
            implements Serializable {}

    /**
     * A figure, or figures of one kind together, that somebody could measure.
     *
     * @param words    what to measure
     * @param count    how many parts have it
     * @param status   how it is known
     * @param stepSi   the change that {@code gives} is for: 0.1 mm of a bore, one in a hundred of other figures
     * @param gives    what that change in all of them does to the output, to first order, in SI
     * @param bandSi   from the lowest to the highest value it may have
     * @param decides  what that band makes of the output, to first order, in SI and without sign
     */
    public record Measure(
            String words, int count, Status status, double stepSi, double gives, double bandSi, double decides)
            implements Serializable {}

    /**
     * Looks for it.
     *
     * @param circuit a circuit, in the case that is meant
     * @return the answer; without things where the case was not solved
     */
    public static Bottleneck of(Circuit circuit) {
        return of(CaseJudge.check(circuit));
    }

    /**
     * Looks for it in a case that was checked.
     *
     * @param check the case
     * @return the answer; without things where the case was not solved
     */
    public static Bottleneck of(CaseCheck check) {
        return new BottleneckFinder(check).find();
    }

    /** Whether what lies behind the subject counts too: for a pressure it does not, for a flow it does. */
    static boolean beyond(@Nullable Output output) {
        return output != null
                && !output.quantity().startsWith("pressure")
                && !output.quantity().startsWith("inlet");
    }

    /**
     * The answer in words.
     *
     * @param display the units to write
     * @return where the loss sits, what mends it, what to measure
     */
    public String sentence(Display display) {
        return BottleneckSentences.of(this, display);
    }
}
