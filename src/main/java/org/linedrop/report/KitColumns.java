package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Bench;
import org.linedrop.fact.Figure;
import org.linedrop.study.kit.Alternative;
import org.linedrop.study.kit.BendCheck;
import org.linedrop.study.kit.Kit;
import org.linedrop.study.kit.KitHose;
import org.linedrop.study.kit.KitItem;
import org.linedrop.study.kit.KitJoint;
import org.linedrop.study.kit.Wrench;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Units;

/** Columns of a kit: what is bought, what is made up, what is joined. */
final class KitColumns {
    static final Scale LENGTH = Cells.scale(Dimension.LENGTH, "m", 2, "ft", 2);
    /** On the bench a hose is measured in millimetres or inches. */
    static final Scale BENCH = Cells.scale(Dimension.LENGTH, "mm", 0, "in", 2);

    static final Scale MASS = Cells.scale(Dimension.MASS, "kg", 3, "lb", 3);
    static final Scale VOLUME = Cells.scale(Dimension.VOLUME, "L", 2, "US gal", 3);
    static final Scale ANGLE = Cells.scale(Dimension.ANGLE, "deg", 0, "deg", 0);
    private static final double FOOT_M = 0.3048;

    /** It stands in the text when any hose has two bent ends. */
    static final Column<KitHose> CLOCKING = Column.<KitHose>number(
                    "clockingRad", "clocking", ANGLE, row -> row.clocking().angleRad())
            .as("clocking", ANGLE, KitColumns::clocking);

    /** Hoses to make up. */
    static final List<Column<KitHose>> HOSES = List.of(
            Column.text("circuit", "circuit", KitHose::circuit),
            Cells.words("part", "part", "part", KitHose::part),
            Cells.words("hose", "hose", "hose", KitHose::hose),
            Column.text("fromEnd", "from end", KitHose::fromEnd),
            Column.text("toEnd", "to end", KitHose::toEnd),
            Column.seen("ends", false, row -> row.fromEnd() + " to " + row.toEnd()),
            Column.<KitHose>number("overallM", "overall", BENCH, KitHose::overallM)
                    .as("overall", BENCH),
            Column.<KitHose>number(
                            "toleranceM",
                            "tolerance",
                            BENCH,
                            row -> row.tolerance().value())
                    .as("+-", BENCH),
            Column.text(
                    "toleranceStatus",
                    "tolerance status",
                    row -> row.tolerance().status().word()),
            Column.<KitHose>number("pathM", "path", BENCH, KitHose::pathM).as("path", BENCH),
            Column.<KitHose>number("slackShare", "slack", Scale.SHARE, KitHose::slackShare)
                    .as("slack", Scale.SHARE),
            Column.<KitHose>number("cutM", "cut", BENCH, KitHose::cutM)
                    .as("cut", BENCH, (row, look) -> cut(row, look.display())),
            Column.<KitHose>number(
                    "cutToleranceM",
                    "cut tolerance",
                    BENCH,
                    row -> row.cutTolerance() == null
                            ? Double.NaN
                            : row.cutTolerance().value()),
            Column.text("cutFrom", "cut from", row -> Cells.known(row.cutFrom())),
            CLOCKING,
            Column.<KitHose>number(
                    "clockingToleranceRad",
                    "clocking tolerance",
                    ANGLE,
                    row -> tolerance(row.clocking().tolerance())),
            Column.text(
                    "clockingMissing",
                    "clocking missing",
                    row -> Cells.known(row.clocking().missing())),
            Column.text(
                    "clockingRemark",
                    "clocking remark",
                    row -> Cells.known(row.clocking().remark().strip())),
            Column.<KitHose>text(
                            "bends",
                            "bends",
                            row -> Cells.known(row.bend().verdict().word()))
                    .leftAs("bends", (row, look) -> bend(row.bend(), look.display())),
            Column.number("bendRadiusM", "bend radius", BENCH, row -> row.bend().radiusM()),
            Column.number(
                    "leastRadiusM",
                    "minimum radius",
                    BENCH,
                    row -> row.bend().leastM() == null
                            ? Double.NaN
                            : row.bend().leastM().value()),
            Column.text(
                    "leastRadiusFrom",
                    "minimum radius from",
                    row -> row.bend().leastM() == null
                            ? null
                            : Columns.source(row.bend().leastM().source())));

    /** Joints, one by one. */
    static final List<Column<KitJoint>> JOINTS = List.of(
            Column.text("circuit", "circuit", KitJoint::circuit),
            Column.text("run", "run", KitJoint::run),
            Column.text("before", "before", KitJoint::before),
            Column.text("after", "after", KitJoint::after),
            Column.text("seat", "seat", row -> row.seat().word()),
            Column.text("size", "size", row -> Cells.known(row.size())),
            Column.number("leaks", "places that can leak", Scale.PURE, KitJoint::leaks),
            Column.number("faces", "sealing faces", Scale.PURE, KitJoint::faces),
            Column.text("portStated", "port stated", row -> row.stated() ? "yes" : "no"));

    /** Joints of a kind. */
    record JointKind(
            String seat,
            String size,
            int joints,
            int leaks,
            int open,
            @Nullable Figure hex) {}

    static final List<Column<JointKind>> JOINT_KINDS = List.of(
            Cells.words("seat", "seat", "seals by", JointKind::seat),
            Cells.words("size", "size", "size", JointKind::size),
            count("joints", "joints", JointKind::joints),
            count("leaks", "can leak at", JointKind::leaks),
            count("open", "port not stated", JointKind::open),
            Column.<JointKind>number(
                            "nutHexM",
                            "across flats",
                            BENCH,
                            row -> row.hex() == null ? Double.NaN : row.hex().value())
                    .as("spanner", Scale.BORE));

    /** What other ways save. */
    static final List<Column<Alternative>> ALTERNATIVES = List.of(
            Column.text("circuit", "circuit", Alternative::circuit),
            Cells.words("alternative", "alternative", "alternative", Alternative::name),
            Column.<Alternative>text("changes", "changes", row -> changes(row, Display.METRIC))
                    .leftAs("list changes", (row, look) -> changes(row, look.display())),
            count("leaksSaved", "leak places saved", Alternative::leaksSaved),
            count("facesSaved", "sealing faces saved", Alternative::facesSaved));

    /** Spanners. */
    static final List<Column<Wrench>> WRENCHES = List.of(
            Column.text("size", "size", Wrench::size),
            Column.number(
                    "nutHexM",
                    "across flats",
                    Scale.BORE,
                    row -> row.nutHex() == null ? Double.NaN : row.nutHex().value()),
            Column.text(
                    "nutHexFrom",
                    "from",
                    row -> row.nutHex() == null
                            ? null
                            : Columns.source(row.nutHex().source())));

    /** Tools and reminders. */
    static final List<Column<Bench.Note>> NOTES = List.of(
            Column.text("what", "what", Bench.Note::what),
            Column.text("kind", "kind", Bench.Note::kind),
            Column.text("family", "family", row -> Cells.known(row.family())),
            Column.text("text", "text", Bench.Note::text),
            Column.text("source", "source", row -> Columns.source(row.source())));

    private KitColumns() {}

    /** The shopping list; prices are shown where there are any. */
    static List<Column<KitItem>> items(Kit kit) {
        Figure slack = Bench.standard().slackShare();
        List<Column<KitItem>> columns = new ArrayList<>(List.of(
                Column.text("group", "group", row -> row.group().word()),
                Cells.words("item", "item", "to buy", KitItem::item),
                count("pieces", "pieces", KitItem::count),
                Column.<KitItem>number("lengthM", "length", LENGTH, KitItem::lengthM)
                        .as("length", LENGTH),
                slack("lengthWithLeastSlackM", slack.low()),
                slack("lengthWithMostSlackM", slack.high()),
                Column.<KitItem>number("massKg", "mass", MASS, KitItem::massKg)
                        .as("mass", MASS, (row, look) -> mass(row, look.display())),
                Column.text(
                        "massFrom",
                        "mass from",
                        row -> row.massEach() == null
                                ? null
                                : Columns.source(row.massEach().source())),
                Column.number("volumeM3", "volume held", VOLUME, row -> Double.NaN)));
        Column<KitItem> price = Column.number("price", "price of a piece or metre", Scale.PURE, KitItem::price);
        Column<KitItem> cost = Column.number("cost", "cost", Scale.PURE, KitItem::cost);
        boolean priced = kit.withoutPrice() < kit.items().size();
        columns.add(priced ? price.as("price", null, (row, look) -> price(row, look.display())) : price);
        columns.add(priced ? cost.as("cost", null, (row, look) -> money(row.cost())) : cost);
        return List.copyOf(columns);
    }

    private static Column<KitItem> slack(String key, double share) {
        String name = String.format(Locale.ROOT, "+%.0f %%", share * 100);
        return Column.<KitItem>number(
                        key,
                        "length " + name,
                        LENGTH,
                        row -> row.group() == KitItem.Group.HOSE ? row.lengthM() * (1 + share) : Double.NaN)
                .as(name, LENGTH);
    }

    private static <R> Column<R> count(String key, String name, java.util.function.ToIntFunction<R> count) {
        return Column.<R>number(key, name, Scale.PURE, count::applyAsInt)
                .as(name, null, (row, look) -> Integer.toString(count.applyAsInt(row)));
    }

    private static String mass(KitItem row, Display display) {
        String mark = row.massEach() != null && row.massEach().status().doubtful() ? "?" : " ";
        return MASS.number(row.massKg(), display) + mark;
    }

    static String money(double amount) {
        return Double.isNaN(amount) ? "-" : String.format(Locale.ROOT, "%.2f", amount);
    }

    private static String price(KitItem row, Display display) {
        boolean feet = row.byLength() && display.us();
        String per = !row.byLength() ? "" : feet ? "/ft" : "/m";
        return Double.isNaN(row.price()) ? "-" : money(feet ? row.price() * FOOT_M : row.price()) + per;
    }

    private static double tolerance(@Nullable Figure figure) {
        return figure == null ? Double.NaN : figure.value();
    }

    private static String clocking(KitHose row, Column.Look look) {
        if (!row.clocking().wanted()) {
            return "-";
        }
        return Double.isNaN(row.clocking().angleRad())
                ? "open"
                : ANGLE.number(row.clocking().angleRad(), look.display()) + " +-"
                        + ANGLE.number(tolerance(row.clocking().tolerance()), look.display());
    }

    private static String cut(KitHose row, Display display) {
        return row.cutTolerance() == null
                ? "-"
                : BENCH.number(row.cutM(), display) + " +-"
                        + BENCH.number(row.cutTolerance().value(), display);
    }

    static String bend(BendCheck bend, Display display) {
        String word = bend.verdict().word();
        if (Double.isNaN(bend.radiusM())) {
            return word.isEmpty() ? "-" : word;
        }
        Figure least = bend.leastM();
        String figures = BENCH.text(bend.radiusM(), display)
                + (least == null
                        ? ""
                        : ", minimum " + BENCH.number(least.value(), display)
                                + (least.status().doubtful() ? "?" : ""))
                + (bend.ofRoute() ? ", by its way-points" : "");
        return switch (bend.verdict()) {
            case NOT_UNDER -> figures;
            case NO_LEAST -> figures + ", " + word;
            default -> word + ": " + figures;
        };
    }

    private static String changes(Alternative alternative, Display display) {
        List<String> changes = new ArrayList<>();
        for (Alternative.Change change : alternative.changes()) {
            String amount = change.byLength()
                    ? LENGTH.signed(change.more(), display) + " "
                            + LENGTH.unit(display).symbol()
                    : String.format(Locale.ROOT, "%+d", Math.round(change.more()));
            changes.add(amount + " " + change.item());
        }
        return String.join("; ", changes);
    }

    /** Of what a length is written in on a price form. */
    static double perLength(Display display) {
        return Units.from(1, LENGTH.unit(display));
    }
}
