package consumer;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.form.Tree;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.FeedCheck;
import org.linedrop.study.LinerComparison;
import org.linedrop.study.LinerQuestion;
import org.linedrop.study.Progress;
import org.linedrop.study.Vary;
import org.linedrop.study.VaryQuestion;
import org.linedrop.units.Display;

/** What a build-planning tool would do: say a circuit in code, solve it, ask a question. */
public final class Planner {
    private Planner() {}

    /** Prints rows and the answer; fails when the library does not answer as it should. */
    public static void main(String[] arguments) {
        Circuit feed = Circuit.of(
                Tree.of("linedrop", "1", "service", "injected fuel", "fluid", "E10", "temperature", "40 C")
                        .with("points", Tree.of()
                                .with("regulator", Tree.of("kind", "held", "pressure", "400 kPa"))
                                .with("rail", Tree.of("kind", "draw", "takes", "180 L/h")))
                        .with("runs", Tree.of()
                                .with("feed", Tree.of("from", "regulator", "to", "rail")
                                        .with("parts", Tree.items(Tree.of(
                                                "hose", "race PTFE -6", "length", "4.2 m", "ends", "straight to 90")))))
                        .with("limits", Tree.of().with("rail", Tree.of("pressure", "at least 396 kPa"))),
                "");
        Result result = Result.of(feed).orThrow();
        for (PartRow row : result.rows()) {
            System.out.printf("%s %s %s: %.0f Pa%n", row.run(), row.row(), row.name(), row.dropPa());
        }
        CaseCheck verdict = FeedCheck.of(feed).cases().get(0);
        String small = verdict.sentence(Display.METRIC);
        if (verdict.mend() == null) {
            throw new IllegalStateException("a feed that is short must come with a change that holds");
        }
        Circuit changed = feed.with(List.of(Change.of("feed 1", "hose", "race PTFE -8")));
        String large = FeedCheck.of(changed).cases().get(0).sentence(Display.METRIC);
        System.out.println(small);
        System.out.println(large);
        compareLiners();
        stopVary(feed);
        double before = result.point("rail").orElseThrow().staticPressurePa();
        double after = Result.of(changed).orThrow().point("rail").orElseThrow().staticPressurePa();
        if (!(after > before && after < 400_000)) {
            throw new IllegalStateException("a larger hose must lose less, but " + before + " Pa became " + after);
        }
    }

    /** Rubber or PTFE at -6 and -8. */
    private static void compareLiners() {
        LinerComparison liners = LinerComparison.of(new LinerQuestion(
                "E85 summer",
                "40 C",
                "216 L/h",
                "1 m",
                "straight to 90",
                List.of(6, 8),
                List.of("race rubber", "race PTFE")));
        for (LinerComparison.Row row : liners.rows()) {
            System.out.printf(
                    "%s -%d: %.0f Pa made up%n",
                    row.size().family(), row.size().dash(), row.madeUpPa().value());
        }
        if (liners.rows().size() != 4 || !(liners.rows().get(1).ratioToFirst() > 1)) {
            throw new IllegalStateException("race PTFE is narrower than race rubber, but loses no more");
        }
    }

    /** A thousand lengths of the feed, stopped by the tool's user after a few. */
    private static void stopVary(Circuit feed) {
        VaryQuestion lengths = new VaryQuestion(
                List.of(VaryQuestion.Axis.of(feed, "feed 1.length", 0.5, 5, 1000)), List.of(feed.caseName()));
        Progress impatient = new Progress() {
            private long done;

            @Override
            public void at(long nowDone, long all) {
                done = nowDone;
            }

            @Override
            public boolean cancelled() {
                return done >= 3;
            }
        };
        try {
            Vary.of(feed, lengths, 2, impatient);
        } catch (CancellationException stopped) {
            System.out.println("stopped after a few of " + lengths.count() + " lengths");
            return;
        }
        throw new IllegalStateException("a vary that is told to stop must stop");
    }
}
