package org.linedrop.hydraulics;

/**
 * Published laws that the library does not use, kept to check published values and to compare the chosen laws with.
 * Sources stand beside the rows of {@code validation/losses/published.csv} and, for the rest, in the comments here; all
 * from memory unless a row says otherwise.
 */
final class OtherLaws {
    private OtherLaws() {}

    // ---- friction factor of straight bores

    /** Haaland 1983. */
    static double haaland(double reynolds, double roughness) {
        double y = -1.8 * Math.log10(Math.pow(roughness / 3.7, 1.11) + 6.9 / reynolds);
        return 1 / (y * y);
    }

    /** Swamee and Jain 1976. */
    static double swameeJain(double reynolds, double roughness) {
        double y = Math.log10(roughness / 3.7 + 5.74 / Math.pow(reynolds, 0.9));
        return 0.25 / (y * y);
    }

    /** Serghides 1984. */
    static double serghides(double reynolds, double roughness) {
        double a = -2 * Math.log10(roughness / 3.7 + 12 / reynolds);
        double b = -2 * Math.log10(roughness / 3.7 + 2.51 * a / reynolds);
        double c = -2 * Math.log10(roughness / 3.7 + 2.51 * b / reynolds);
        double y = a - (b - a) * (b - a) / (c - 2 * b + a);
        return 1 / (y * y);
    }

    /** Churchill 1977, published form. */
    static double churchill(double reynolds, double roughness) {
        double a = Math.pow(-2.457 * Math.log(Math.pow(7 / reynolds, 0.9) + 0.27 * roughness), 16);
        double b = Math.pow(37530 / reynolds, 16);
        return 8 * Math.pow(Math.pow(8 / reynolds, 12) + Math.pow(a + b, -1.5), 1.0 / 12);
    }

    /** McKeon, Zagarola and Smits 2005, smooth. */
    static double mckeon(double reynolds) {
        double f = 0.02;
        for (int i = 0; i < 100; i++) {
            double s = reynolds * Math.sqrt(f);
            double y = 1.920 * Math.log10(s) - 0.475 - 7.04 / Math.pow(s, 0.55);
            f = 1 / (y * y);
        }
        return f;
    }

    /** Cheng 2008; follows sand grain, not Colebrook. */
    static double cheng(double reynolds, double roughness) {
        double rough = Math.max(roughness, 1e-9);
        double a = 1 / (1 + Math.pow(reynolds / 2720, 9));
        double b = 1 / (1 + Math.pow(reynolds * rough / 160, 2));
        return 1
                / (Math.pow(reynolds / 64, a)
                        * Math.pow(1.8 * Math.log10(reynolds / 6.8), 2 * (1 - a) * b)
                        * Math.pow(2 * Math.log10(3.7 / rough), 2 * (1 - a) * (1 - b)));
    }

    // ---- curved bores

    /** Ito 1959, laminar, 13.5 < De < 2000. */
    static double itoLaminarRatio(double dean) {
        return 21.5 * dean / Math.pow(1.56 + Math.log10(dean), 5.73);
    }

    /** Mishra and Gupta 1979, laminar. */
    static double mishraGuptaLaminarRatio(double dean) {
        return 1 + 0.033 * Math.pow(Math.log10(dean), 4);
    }

    /** Mishra and Gupta 1979, turbulent; their 0.0075 stands on the Fanning factor. */
    static double mishraGuptaTurbulent(double reynolds, double radiusRatio) {
        return 0.3164 * Math.pow(reynolds, -0.25) + 4 * 0.0075 * Math.sqrt(1 / radiusRatio);
    }

    // ---- bends and elbows

    static double weisbachElbow(double degrees) {
        double square = Math.pow(Math.sin(Math.toRadians(degrees) / 2), 2);
        return 0.9457 * square + 2.047 * square * square;
    }

    static double idelchikElbow(double degrees) {
        double[] angles = {0, 20, 30, 45, 60, 75, 90, 180};
        double[] a = {3.0, 2.5, 2.22, 1.87, 1.50, 1.28, 1.20, 1.20};
        double square = Math.pow(Math.sin(Math.toRadians(degrees) / 2), 2);
        return Joins.interpolate(angles, a, degrees) * (0.95 * square + 2.05 * square * square);
    }

    static double idelchikBendExcess(double degrees, double radiusOverBore) {
        double[] angles = {0, 20, 30, 45, 60, 75, 90, 110, 130, 150, 180};
        double[] a = {0, 0.31, 0.45, 0.60, 0.78, 0.90, 1.0, 1.13, 1.20, 1.28, 1.40};
        double b = 0.21 * Math.pow(radiusOverBore, radiusOverBore < 1 ? -2.5 : -0.5);
        return Joins.interpolate(angles, a, degrees) * b;
    }

    /** Handbook bend of commercial pipe, K on fT. */
    static double pipeBend(double radiusOverBore, double turbulentFactor) {
        double[] radius = {1, 1.5, 2, 3, 4, 6, 8, 10, 12, 14, 16, 20};
        double[] ratio = {20, 14, 12, 12, 14, 17, 24, 30, 34, 38, 42, 50};
        return Joins.interpolate(radius, ratio, radiusOverBore) * turbulentFactor;
    }

    static double pipeBendTurns(double turns, double radiusOverBore, double turbulentFactor) {
        double one = pipeBend(radiusOverBore, turbulentFactor);
        return (turns - 1) * (0.25 * Math.PI * turbulentFactor * radiusOverBore + 0.5 * one) + one;
    }

    static double pipeBendAngleFactor(double degrees) {
        return ((1.838e-7 * degrees - 8.756e-5) * degrees + 1.748e-2) * degrees;
    }

    /** Mitre with a smooth wall, the lower column of the table of {@link MitreElbow}. */
    static double mitreSmoothWall(double angleRad) {
        double[] angles = {0, 5, 10, 15, 22.5, 30, 45, 60, 90};
        double[] k = {0, 0.016, 0.034, 0.042, 0.066, 0.130, 0.236, 0.471, 1.129};
        return Joins.interpolate(angles, k, Math.toDegrees(angleRad));
    }

    /** Hooper 1981, threaded 90-degree elbow. */
    static double hooperElbow(double reynolds, double boreM) {
        return 800 / reynolds + 0.40 * (1 + 0.0254 / boreM);
    }

    // ---- changes of bore

    static double contractionByArea(double beta) {
        return 0.5 * (1 - beta * beta);
    }

    /**
     * Widening cone on the small bore: Gibson's multiplier {@code 3.5 tan(t/2)^1.22} on Borda's loss (Hydraulic Institute
     * Engineering Data Book, 2nd ed. 1990, eq. 3.B.4) from 7.5 to 35 degrees, held below, straight to Borda's loss at 50.
     */
    static double coneUp(double beta, double coneAngleRad) {
        double from = Math.toRadians(7.5);
        double to = Math.toRadians(35);
        double full = Math.toRadians(50);
        double multiplier = 1;
        if (coneAngleRad <= to) {
            multiplier = gibson(Math.max(coneAngleRad, from));
        } else if (coneAngleRad < full) {
            double end = gibson(to);
            multiplier = end + (1 - end) * (coneAngleRad - to) / (full - to);
        }
        return multiplier * AreaChange.expansionK(beta);
    }

    private static double gibson(double coneAngleRad) {
        return 3.5 * Math.pow(Math.tan(coneAngleRad / 2), 1.22);
    }

    /** Narrowing cone on the small bore, textbook form. */
    static double coneDown(double beta, double coneAngleRad) {
        double sine = Math.sin(coneAngleRad / 2);
        return Math.min(0.8 * sine, 0.5 * Math.sqrt(sine)) * (1 - beta * beta);
    }

    /** Sudden expansion between two parabolic profiles; total pressure with profile factor 2. */
    static double laminarExpansion(double beta) {
        double square = beta * beta;
        return 2 - 8.0 / 3 * square + 2.0 / 3 * square * square;
    }

    /** Rounded entrance, straight lines between the values of a textbook table. */
    static double roundedEntrance(double radiusOverBore) {
        double[] radius = {0, 0.02, 0.04, 0.06, 0.10, 0.15};
        double[] k = {0.50, 0.28, 0.24, 0.15, 0.09, 0.04};
        return Joins.interpolate(radius, k, radiusOverBore);
    }

    /** Jet areas of Streeter and Wylie. */
    static double contractionByJet(double areaRatio) {
        double[] areas = {0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1};
        double[] jet = {0.617, 0.624, 0.632, 0.643, 0.659, 0.681, 0.712, 0.755, 0.813, 0.892, 1};
        return jetLoss(Joins.interpolate(areas, jet, areaRatio));
    }

    static double jetLoss(double jetArea) {
        return Math.pow(1 / jetArea - 1, 2);
    }

    // ---- tees, q the branch share

    /** Bassett 2001, dividing, equal bores. */
    static double bassettBranch(double q, double degrees) {
        return 1 + q * q - 2 * q * Math.cos(Math.toRadians(0.75 * degrees));
    }

    static double bassettRun(double q) {
        double s = 1 - q;
        return s * s - 1.5 * s + 0.5;
    }

    /** Munich tests (Vogel 1926) of an equal sharp 90-degree tee, straight lines between the shares measured. */
    static double munich(String mode, String leg, double q) {
        double[] shares = {0, 0.2, 0.4, 0.6, 0.8, 1};
        double[] k = switch (mode + " " + leg) {
            case "divide branch" -> new double[] {0.95, 0.88, 0.89, 0.95, 1.10, 1.30};
            case "divide run" -> new double[] {0.04, -0.08, -0.05, 0.07, 0.20, 0.35};
            case "combine branch" -> new double[] {-1.20, -0.40, 0.08, 0.47, 0.73, 0.92};
            case "combine run" -> new double[] {0.04, 0.17, 0.30, 0.40, 0.50, 0.60};
            default -> throw new IllegalArgumentException(mode + " " + leg);
        };
        return Joins.interpolate(shares, k, q);
    }

    // ---- pressure waves

    static double waveSpeed(double bulkModulusPa, double density, double boreM, double wallM, double wallModulusPa) {
        return Math.sqrt(bulkModulusPa / density / (1 + bulkModulusPa * boreM / (wallModulusPa * wallM)));
    }
}
