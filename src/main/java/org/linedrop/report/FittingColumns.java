package org.linedrop.report;

import java.util.List;
import org.linedrop.catalogue.Compatibility;
import org.linedrop.catalogue.NippleSize;
import org.linedrop.catalogue.TubeSize;
import org.linedrop.fact.Figure;

/** The columns of tubes, nipples and compatibility. */
final class FittingColumns {
    static final List<Column<TubeSize>> TUBES = Cells.all(
            List.of(
                    Cells.words("material", "material", "material", TubeSize::material),
                    Cells.words("size", "size", "size", row -> row.dash() == 0 ? null : "-" + row.dash()),
                    Column.<TubeSize>number(
                                    "outsideDiameterM", "outside diameter", Cells.BORE, TubeSize::outsideDiameterM)
                            .as("outside", Cells.BORE),
                    Column.<TubeSize>number("wallM", "wall", Cells.BORE, TubeSize::wallM)
                            .as("wall", Cells.BORE),
                    Cells.seen("bore", Cells.BORE, false, TubeSize::boreM),
                    Cells.seen("least bent", Cells.BORE, false, TubeSize::leastBoreBentM),
                    Cells.seen("allowed", Cells.RATING, false, TubeSize::allowablePressurePa),
                    Column.seen("known as", false, row -> row.boreM().status().word()),
                    Column.seen("from", false, row -> row.boreM().source().title())),
            Cells.figure("boreM", "bore", Cells.BORE, TubeSize::boreM),
            Cells.figure("roughnessM", "roughness", Cells.ROUGHNESS, TubeSize::roughnessM),
            Cells.figure("leastBoreBentM", "least bore bent", Cells.BORE, TubeSize::leastBoreBentM),
            Cells.figure("allowablePressurePa", "allowable pressure", Cells.RATING, TubeSize::allowablePressurePa));

    static final List<Column<NippleSize>> NIPPLES = Cells.all(
            List.of(
                    Cells.words("family", "family", "family", NippleSize::family),
                    Cells.words("size", "size", "size", NippleSize::size),
                    Cells.words("build", "build", "build", NippleSize::build),
                    Cells.one("bore low", Cells.BORE, false, NippleSize::boreM, Figure::low),
                    Cells.one("usual", Cells.BORE, false, NippleSize::boreM, Figure::value),
                    Cells.one("high", Cells.BORE, false, NippleSize::boreM, Figure::high),
                    Cells.seen("length", Cells.LENGTH, true, NippleSize::lengthM),
                    Column.seen("bore known", false, row -> row.boreM().status().word()),
                    Column.seen("bore from", false, row -> row.boreM().source().title())),
            Cells.figure("boreM", "bore", Cells.BORE, NippleSize::boreM),
            Cells.figure("lengthM", "length", Cells.LENGTH, NippleSize::lengthM));

    static final List<Column<Compatibility>> COMPATIBILITY = List.of(
            Cells.words("liner", "liner", "liner", Compatibility::liner),
            Cells.words("fluid", "fluid", "fluid", Compatibility::fluid),
            Cells.words("grade", "grade", "grade", row -> row.grade().word()),
            Cells.words("askFor", "ask for", "ask for", row -> Cells.known(row.askFor())),
            Cells.words("note", "note", "note", row -> Cells.known(row.note())),
            Cells.words(
                    "status", "status", "known as", row -> row.source().status().word()),
            Cells.titled("source", "source", "from", Compatibility::source));

    private FittingColumns() {}
}
