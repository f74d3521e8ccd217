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

    /** Between the rows of the file: the equation itself, on the side where it loses no digits. */
    @Test
    void factorSolvesTheEquationEverywhere() {
        java.util.Random random = new java.util.Random(5);
        for (int i = 0; i < 200_000; i++) {
            double reynolds = Math.pow(10, -3 + 15 * random.nextDouble());
            double roughness = i % 5 == 0 ? 0 : Math.pow(10, -7 + 7 * random.nextDouble());
            double y = 1 / Math.sqrt(Colebrook.frictionFactor(reynolds, roughness));
            double argument = roughness / 3.7 + 2.51 * y / reynolds;
            double residual = y + 2 * Math.log10(argument);
            double slope = 1 + 2 / Math.log(10) * 2.51 / reynolds / argument;
            // correction of y that the residual asks for; its own rounding is a few ulps of y and of the logarithm
            double allowed = 1e-13 * y;
            assertThat(Math.abs(residual / slope))
                    .as("Re %s, e/D %s", reynolds, roughness)
                    .isLessThan(allowed);
        }
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
