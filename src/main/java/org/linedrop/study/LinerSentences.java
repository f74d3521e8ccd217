package org.linedrop.study;

import java.util.Locale;
import java.util.Optional;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.Compatibility;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.fact.Figure;
import org.linedrop.network.Bores;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Unit;
import org.linedrop.units.Units;

/** Writes what a liner comparison says, and no more than its figures and their status carry. */
final class LinerSentences {
    /** Bores nearer than this are one and the same for the eye and the gauge. */
    private static final double SAME_BORE_M = 0.1e-3;

    /** Shares of a difference under this are noise. */
    private static final double WORTH_SAYING = 0.02;

    private final LinerComparison answer;
    private final Display display;
    private final StringBuilder text = new StringBuilder();

    private LinerSentences(LinerComparison answer, Display display) {
        this.answer = answer;
        this.display = display;
    }

    static String of(LinerComparison answer, Display display) {
        return new LinerSentences(answer, display).write();
    }

    private String write() {
        if (answer.rows().isEmpty()) {
            return "None of these families is made in these sizes.";
        }
        String first = answer.question().families().get(0);
        Optional<LinerComparison.Row> other = other(first);
        if (other.isEmpty()) {
            return "Nothing of another liner to compare with.";
        }
        LinerComparison.Row second = other.get();
        LinerComparison.Row base = answer.row(first, second.size().dash()).orElseThrow();
        compare(base, second);
        match(base, second.size().family());
        doubts(base, second);
        fluid();
        return text.toString();
    }

    /** The first row of another liner at a dash in which the first family is made too. */
    private Optional<LinerComparison.Row> other(String first) {
        return answer.rows().stream()
                .filter(row -> answer.row(first, row.size().dash())
                        .filter(base -> !base.size().liner().equals(row.size().liner()))
                        .filter(base -> row.size().liner().contains("PTFE")
                                != base.size().liner().contains("PTFE"))
                        .isPresent())
                .findFirst();
    }

    private void compare(LinerComparison.Row base, LinerComparison.Row row) {
        double ratio = row.ratioToFirst();
        text.append(row.size().sizeText()).append(' ').append(row.size().family());
        if (Math.abs(ratio - 1) < 0.05) {
            text.append(" loses about what ")
                    .append(base.size().name())
                    .append(" does here: ")
                    .append(kpa(row.madeUpPa().value()))
                    .append(" against ")
                    .append(kpa(base.madeUpPa().value()));
        } else {
            text.append(" loses ")
                    .append(String.format(Locale.ROOT, "%.1f", ratio))
                    .append(" times what ")
                    .append(base.size().sizeText())
                    .append(' ')
                    .append(base.size().family())
                    .append(" does here");
            shares(base, row);
        }
        text.append('.');
    }

    /** How much of the difference is the hose's bore and how much the ends', each changed before and after the other. */
    private void shares(LinerComparison.Row base, LinerComparison.Row row) {
        boolean bare = answer.question().ends().equals("none");
        double whole = row.madeUpPa().value() - base.madeUpPa().value();
        String bore = millimetres(base.size().boreM());
        double both = row.madeUpPa().value();
        double hoseChanged = LinerComparison.madeUpPa(answer.question(), row.size(), Bores.USUAL, "bore", bore);
        if (bare) {
            share(whole, "its bore", (both - hoseChanged) / whole, "", 0);
            return;
        }
        String end = nipple(base.size());
        double endsChanged = LinerComparison.madeUpPa(answer.question(), row.size(), Bores.USUAL, "end bore", end);
        double allChanged =
                LinerComparison.madeUpPa(answer.question(), row.size(), Bores.USUAL, "bore", bore, "end bore", end);
        double hose = ((both - hoseChanged) + (endsChanged - allChanged)) / 2 / whole;
        double ends = ((both - endsChanged) + (hoseChanged - allChanged)) / 2 / whole;
        share(whole, "its hose bore", hose, "its hose-end bores", ends);
    }

    /** What neither bore explains is the wall: a rougher one where it adds to the loss. */
    private void share(double wholePa, String one, double ofOne, String other, double ofOther) {
        text.append(": ")
                .append(percent(ofOne))
                .append(" of the difference is ")
                .append(one);
        if (ofOther != 0) {
            text.append(", ").append(percent(ofOther)).append(' ').append(other);
        }
        double wall = 1 - ofOne - ofOther;
        if (Math.abs(wall) > WORTH_SAYING) {
            String its = "its " + (wall * wholePa > 0 ? "rougher" : "smoother") + " wall";
            text.append(
                    wall > 0
                            ? ", " + percent(wall) + " " + its
                            : "; " + its + (wholePa > 0 ? " gives " : " takes ") + percent(-wall) + " of it back");
        }
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private static String millimetres(Figure bore) {
        return Units.write(bore.value(), Units.unit("mm", Dimension.LENGTH));
    }

    private String nipple(HoseSize hose) {
        return millimetres(Catalogue.standard().end(hose, "straight", 0).nippleBoreM());
    }

    /** The dash of the other family that loses no more than the first family does. */
    private void match(LinerComparison.Row base, String family) {
        for (HoseSize size : Catalogue.standard().hoses()) {
            if (size.family().equals(family) && size.dash() > 0) {
                double loss = LinerComparison.madeUpPa(answer.question(), size, Bores.USUAL);
                if (loss <= base.madeUpPa().value() * 1.02) {
                    text.append(" To match ")
                            .append(base.size().name())
                            .append(" you need ")
                            .append(size.name())
                            .append(" (")
                            .append(kpa(loss))
                            .append(" against ")
                            .append(kpa(base.madeUpPa().value()))
                            .append(").");
                    return;
                }
            }
        }
        text.append(" No size of ")
                .append(family)
                .append(" here loses as little as ")
                .append(base.size().name())
                .append('.');
    }

    private void doubts(LinerComparison.Row base, LinerComparison.Row row) {
        double apart = Math.abs(base.size().boreM().value() - row.size().boreM().value());
        if (apart <= SAME_BORE_M) {
            text.append(" Both hoses have the same bore within 0.1 mm at this dash: the liner alone decides little.");
        }
        boolean doubtful = base.size().boreM().status().doubtful()
                || row.size().boreM().status().doubtful();
        if (doubtful) {
            text.append(" Bores marked ? are from memory, and makers differ: measure the hose and one end before you"
                    + " decide by these figures.");
        }
    }

    private void fluid() {
        boolean any = false;
        for (LinerComparison.Row row : answer.rows()) {
            any |= row.compatibility().grade() == Compatibility.Grade.NOT_RECOMMENDED;
        }
        if (any) {
            text.append(" In ").append(answer.question().fluid()).append(" the liners marked \"no\" are out anyway.");
        }
    }

    private String kpa(double pressurePa) {
        Unit unit = display.unit(Dimension.PRESSURE_DIFFERENCE);
        return Units.fixed(pressurePa, unit, display.us() ? 3 : 2) + " " + unit.symbol();
    }
}
