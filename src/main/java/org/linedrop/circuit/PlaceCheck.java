package org.linedrop.circuit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Tree;
import org.linedrop.units.Units;

/** Checks what a file says of places within a run: way-points and heights at the ends of parts. */
final class PlaceCheck {
    private final Problems problems;
    private final Tree.Branch file;

    PlaceCheck(Problems problems, Tree.Branch file) {
        this.problems = problems;
        this.file = file;
    }

    void check(List<Point> points, List<Device> devices, List<Run> runs) {
        boolean heights = points.stream().anyMatch(point -> point.position() != null);
        for (Run run : runs) {
            if (!run.via().isEmpty() && !heights) {
                problem(
                        run,
                        RunKeys.VIA_MARK,
                        "via has heights, and the points have none",
                        "Give all points their height, from the same datum");
            }
            if (!run.via().isEmpty() && !run.endHeights().isEmpty()) {
                problem(
                        run,
                        RunKeys.VIA_MARK,
                        "both via and ends at height say how this run climbs, and not how the two fit together",
                        "Keep one: via for places the run passes, ends at height for the ends of parts");
                continue;
            }
            run.endHeights().forEach(end -> endHeight(run, end, heights, devices));
        }
    }

    private void endHeight(Run run, Run.EndHeight end, boolean heights, List<Device> devices) {
        if (!heights) {
            partProblem(
                    run,
                    end,
                    "ends at height is given, and the points have no height",
                    "Give all points their height, from the same datum");
        } else if (end.part() == run.parts().size()) {
            partProblem(
                    run,
                    end,
                    "the last part ends where the run does: the height of "
                            + run.to().element() + " is its height",
                    "Leave out ends at height");
        } else if (run.parts().get(end.part()) instanceof Through next) {
            Position place = devices.stream()
                    .filter(device -> device.id().equals(next.device()))
                    .findFirst()
                    .map(Device::position)
                    .orElse(null);
            if (place != null && place.heightM() != end.heightM().value()) {
                partProblem(
                        run,
                        end,
                        "it ends at " + metres(end.heightM().value()) + ", where " + next.device() + " sits at "
                                + metres(place.heightM()),
                        "Leave out one of the two heights");
            }
        }
    }

    private static String metres(double heightM) {
        return Units.write(heightM, Units.unit("m"));
    }

    private void problem(Run run, Key<?> key, String message, String hint) {
        Tree.Branch tree = tree(run);
        Tree at = tree == null ? null : tree.get(key.name());
        int line = at != null ? at.line() : tree == null ? 0 : tree.line();
        problems.add(problems.place(line, 0, run.id()), key.name(), "", message, hint);
    }

    private Tree.@Nullable Branch tree(Run run) {
        return file.get("runs") instanceof Tree.Branch runs && runs.get(run.id()) instanceof Tree.Branch branch
                ? branch
                : null;
    }

    private void partProblem(Run run, Run.EndHeight end, String message, String hint) {
        String key = RunKeys.ENDS_AT_HEIGHT.name();
        Part part = run.parts().get(end.part() - 1);
        int line = 0;
        Tree.Branch tree = tree(run);
        if (tree != null && tree.get(RunKeys.PARTS_MARK.name()) instanceof Tree.Items items) {
            int number = 0;
            for (Tree item : items.items()) {
                number += item instanceof Tree.Branch ? 1 : 0;
                Tree said = item instanceof Tree.Branch keys ? keys.get(key) : null;
                line = number == end.part() && said != null ? said.line() : line;
            }
        }
        problems.add(problems.place(line, 0, part.id()), key, "", message, hint);
    }
}
