package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The default friction factor against all 323 wall shear measurements of Stanton and Pannell 1914, and explicit forms
 * against the exact one.
 */
class SmoothTubesValidationTest {

    /** A regime with the bias and rms that the blend was chosen on; neither may get worse. */
    private record Regime(String name, double from, double to, int count, double bias, double rms) {}

    private static final List<Regime> REGIMES = List.of(
            new Regime("laminar, Re under 2000", 0, 2000, 30, 0.015, 0.032),
            new Regime("Re 2000 to 4000", 2000, 4000, 57, 0.02, 0.13),
            new Regime("Re 4000 to 10000", 4000, 1e4, 68, 0.029, 0.035),
            new Regime("Re 10000 to 500000", 1e4, 5.0001e5, 168, 0.012, 0.021));

    private static Cases.Scatter scatter(Regime regime) {
        Cases.Errors errors = new Cases.Errors();
        double[] out = new double[2];
        for (NamedCsvRecord row : Csv.read("friction/stanton-pannell-1914.csv")) {
            double reynolds = Csv.number(row, "reynolds");
            if (reynolds >= regime.from && reynolds < regime.to) {
                FrictionFactor.evaluate(reynolds, 0, Transition.DEFAULT, out);
                String where = row.getField("wall") + " " + row.getField("bore_m") + " m, Re " + reynolds;
                errors.add(out[0] / Csv.number(row, "friction_factor") - 1, where);
            }
        }
        return errors.scatter();
    }

    @Test
    void biasAndScatterAreWhatTheBlendWasChosenOn() {
        int all = 0;
        for (Regime regime : REGIMES) {
            Cases.Scatter found = scatter(regime);
            all += found.count();
            assertThat(found.count()).as(regime.name).isEqualTo(regime.count);
            assertThat(Math.abs(found.bias())).as(regime.name).isLessThan(regime.bias);
            assertThat(found.rms()).as(regime.name).isLessThan(regime.rms);
        }
        assertThat(all).isEqualTo(323);
    }

    static List<String[]> claims() {
        List<String[]> rows = new ArrayList<>();
        for (Regime regime : REGIMES) {
            Cases.Scatter found = scatter(regime);
            rows.add(Cases.claim(
                    "friction factor, smooth tubes, " + regime.name,
                    found.count(),
                    "Stanton and Pannell 1914, Phil. Trans. R. Soc. A 214 (open data set, CC-BY-4.0)",
                    "measured",
                    "bias " + regime.bias + ", rms " + regime.rms
                            + ": reached when the blend was chosen; single points scatter more",
                    found.worst(),
                    found.at()));
        }
        return rows;
    }

    @Test
    void claimsCoverAllRegimes() {
        assertThat(claims()).hasSize(4).allSatisfy(row -> assertThat(row).hasSize(7));
    }

    private interface Factor {
        double at(double reynolds, double roughness);
    }

    /** Published errors of explicit forms against Colebrook over Re 4e3 to 1e8, e/D 0 to 0.05: an independent route. */
    @Test
    void explicitFormsDifferByTheirPublishedErrors() {
        assertThat(worst(OtherLaws::serghides)).isBetween(2.5e-5, 3.2e-5);
        assertThat(worst(OtherLaws::haaland)).isBetween(0.013, 0.0143);
        assertThat(worst(OtherLaws::churchill)).isBetween(0.030, 0.032);
        assertThat(worst(OtherLaws::swameeJain)).isBetween(0.032, 0.034);
        assertThat(worst(OtherLaws::cheng)).isBetween(0.29, 0.315);
    }

    private static double worst(Factor factor) {
        double worst = 0;
        for (int i = 0; i <= 100; i++) {
            double reynolds = 4000 * Math.pow(1e8 / 4000, i / 100.0);
            for (int j = 0; j <= 40; j++) {
                double roughness = j == 0 ? 0 : 1e-6 * Math.pow(0.05 / 1e-6, j / 40.0);
                double exact = Colebrook.frictionFactor(reynolds, roughness);
                worst = Math.max(worst, Math.abs(factor.at(reynolds, roughness) / exact - 1));
            }
        }
        return worst;
    }

    /** McKeon, Zagarola and Smits 2005 fitted smooth pipe to Re 3.6e7 and 1 per cent. */
    @Test
    void smoothPipeAgreesWithTheLaterFit() {
        for (double reynolds = 1e4; reynolds < 3e7; reynolds *= 1.5) {
            assertThat(Colebrook.frictionFactor(reynolds, 0) / OtherLaws.mckeon(reynolds))
                    .as("Re %s", reynolds)
                    .isBetween(0.955, 1.045);
        }
    }

    /** Three laminar laws for curved bores within 4 per cent over De 100, 10 at 20; two turbulent ones within 5. */
    @Test
    void curvedBoreLawsAgree() {
        double[] out = new double[2];
        for (double dean = 20; dean <= 2000; dean *= 1.1) {
            CurvedBore.laminarRatio(dean, out);
            double allowed = dean < 100 ? 0.10 : 0.04;
            assertThat(OtherLaws.itoLaminarRatio(dean) / out[0]).isBetween(1 - allowed, 1 + allowed);
            assertThat(OtherLaws.mishraGuptaLaminarRatio(dean) / out[0]).isBetween(1 - allowed, 1 + allowed);
        }
        for (double reynolds : new double[] {2e4, 3e4, 6e4}) {
            for (double ratio : new double[] {20, 40, 100}) {
                CurvedBore.turbulentRatio(reynolds, ratio, out);
                double ito = out[0] * 0.3164 * Math.pow(reynolds, -0.25);
                assertThat(OtherLaws.mishraGuptaTurbulent(reynolds, ratio) / ito)
                        .isBetween(0.95, 1.05);
            }
        }
    }
}
