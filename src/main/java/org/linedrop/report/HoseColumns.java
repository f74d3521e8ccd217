package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.fact.Figure;

/** The columns of hose sizes. */
final class HoseColumns {
    private HoseColumns() {}

    static List<Column<HoseSize>> columns(Catalogue catalogue, @Nullable String fluid) {
        List<Column<HoseSize>> grade = new ArrayList<>();
        if (fluid != null) {
            grade.add(Cells.words(
                    "grade",
                    "grade in " + fluid,
                    "grade",
                    row -> catalogue.compatibility(row.liner(), fluid).grade().brief()));
            grade.add(Column.text(
                    "gradeSource",
                    "grade source",
                    row -> Cells.said(
                            catalogue.compatibility(row.liner(), fluid).source())));
            grade.add(Column.text(
                    "gradeStatus",
                    "grade status",
                    row -> catalogue
                            .compatibility(row.liner(), fluid)
                            .source()
                            .status()
                            .word()));
        }
        return Cells.all(
                List.of(
                        Cells.words("family", "family", "family", HoseSize::family),
                        Cells.words("size", "size", "size", HoseSize::sizeText),
                        Cells.words("liner", "liner", "liner", HoseSize::liner)),
                grade,
                List.of(
                        Cells.one("bore low", Cells.BORE, false, HoseSize::boreM, Figure::low),
                        Cells.one("usual", Cells.BORE, false, HoseSize::boreM, Figure::value),
                        Cells.one("high", Cells.BORE, false, HoseSize::boreM, Figure::high),
                        Cells.seen("min bend radius", Cells.LENGTH, true, HoseSize::minBendRadiusM),
                        Column.seen(
                                "bore known", false, row -> row.boreM().status().word()),
                        Column.seen(
                                "bore from", false, row -> row.boreM().source().title())),
                Cells.figure("boreM", "bore", Cells.BORE, HoseSize::boreM),
                Cells.figure("roughnessM", "roughness", Cells.ROUGHNESS, HoseSize::roughnessM),
                Cells.figure("outsideDiameterM", "outside diameter", Cells.LENGTH, HoseSize::outsideDiameterM),
                Cells.figure("minBendRadiusM", "minimum bend radius", Cells.LENGTH, HoseSize::minBendRadiusM),
                Cells.figure("workingPressurePa", "working pressure", Cells.RATING, HoseSize::workingPressurePa),
                Cells.figure("proofPressurePa", "proof pressure", Cells.RATING, HoseSize::proofPressurePa),
                Cells.figure("burstPressurePa", "burst pressure", Cells.RATING, HoseSize::burstPressurePa),
                Cells.figure("vacuumPa", "vacuum", Cells.VACUUM, HoseSize::vacuumPa),
                Cells.figure("minTemperatureK", "lowest temperature", Cells.TEMPERATURE, HoseSize::minTemperatureK),
                Cells.figure("maxTemperatureK", "highest temperature", Cells.TEMPERATURE, HoseSize::maxTemperatureK),
                Cells.figure("massKgPerM", "mass kg/m", Scale.PURE, HoseSize::massKgPerM));
    }
}
