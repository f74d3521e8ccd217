package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Colebrook's equation against 30-digit values. */
class ColebrookValidationTest {
    private static final double TOLERANCE = 1e-13; // the stated contract; rounding alone explains a few 1e-15

    /** One row: the file, what was compared, the worst relative deviation and where. */
    private record Worst(int count, double deviation, String at) {}

    private static Worst worst(int slot, String column) {
        double[] out = new double[2];
        double worst = 0;
        String at = "";
        List<NamedCsvRecord> rows = Csv.read("friction/colebrook-truth.csv");
        for (NamedCsvRecord row : rows) {
            double reynolds = Csv.number(row, "reynolds");
            double roughness = Csv.number(row, "relative_roughness");
            Colebrook.evaluate(reynolds, roughness, out);
            double deviation = Math.abs(out[slot] / Csv.number(row, column) - 1);
            if (!(deviation <= worst)) {
                worst = deviation;
                at = "Re " + reynolds + ", e/D " + roughness;
            }
        }
        return new Worst(rows.size(), worst, at);
    }

    static List<String[]> claims() {
        List<String[]> rows = new ArrayList<>();
        for (int slot = 0; slot < 2; slot++) {
            Worst worst = worst(slot, slot == 0 ? "friction_factor" : "slope_in_reynolds");
            rows.add(new String[] {
                slot == 0 ? "Colebrook friction factor, exact" : "its slope in Re",
                Integer.toString(worst.count),
                "30-digit values of validation/friction/colebrook_truth.py",
                "high-precision",
                "1e-13 relative: the stated contract",
                String.format(Locale.ROOT, "%.1e", worst.deviation),
                worst.at
            });
        }
        return rows;
    }

    @Test
    void factorMatchesThirtyDigits() {
        Worst worst = worst(0, "friction_factor");
        assertThat(worst.count).isGreaterThan(900);
        assertThat(worst.deviation).as(worst.at).isLessThan(TOLERANCE);
    }

    @Test
    void slopeMatchesThirtyDigits() {
        Worst worst = worst(1, "slope_in_reynolds");
        assertThat(worst.deviation).as(worst.at).isLessThan(TOLERANCE);
    }

    @Test
    void claimsNameTheWorstCase() {
        assertThat(claims())
                .hasSize(2)
                .allSatisfy(row -> assertThat(row)
                        .hasSize(7)
                        .doesNotContain("")
                        .allSatisfy(cell -> assertThat(cell).isNotBlank()));
    }
}
