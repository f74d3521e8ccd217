package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Four measured sets in small bores: a smooth tube, a mitre, an orifice and a flat-channel cooler. */
class MeasuredSmallBoreValidationTest {
    private static final double GRAVITY = 9.80665;

    private static List<NamedCsvRecord> set(String name) {
        return Csv.read("losses/measured-small-bore.csv").stream()
                .filter(row -> row.getField("set").equals(name))
                .toList();
    }

    /** Water properties of IAPWS-IF97, an independent implementation; pressure hardly matters. */
    private static double[] water(double kelvin) {
        try {
            IF97 water = new IF97(IF97.UnitSystem.SI);
            return new double[] {water.densityPT(2e5, kelvin), water.dynamicViscosityPT(2e5, kelvin)};
        } catch (OutOfRangeException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A1: the points over Re 30000; those below 8 L/min are doubtful by the source's own turbine meter. */
    private static Cases.Scatter smoothTube() {
        Cases.Errors errors = new Cases.Errors();
        double[] out = new double[2];
        for (NamedCsvRecord row : set("A1")) {
            double[] water = water(Csv.number(row, "temperature_k"));
            double flow = Csv.number(row, "condition_value");
            if (Reynolds.of(flow, 0.00815, water[0], water[1]) > 3e4) {
                BoreFriction.pressureDrop(flow, 0.00815, 0.781, 0, Transition.DEFAULT, water[0], water[1], out);
                errors.add(out[0] / Csv.number(row, "measured") - 1, row.getField("id"));
            }
        }
        return errors.scatter();
    }

    /**
     * G-mitre: the flow at a valve head follows from the straight section of the same bench (a straight line through its
     * six points, inverted through the friction law); the elbow is what its leg loses more than the straight section.
     * The point at 0.40 m lies outside the straight section's heads and at Re 3600, in the transition: left out.
     */
    private static Cases.Scatter mitre() {
        double[] line = straightLine(set("G-straight"));
        double[] water = water(293.15);
        Cases.Errors errors = new Cases.Errors();
        double[] out = new double[2];
        for (NamedCsvRecord row : set("G-mitre")) {
            double valveHead = Csv.number(row, "condition_value");
            if (valveHead < 0.36) {
                double straight = line[0] + line[1] * valveHead;
                double flow = flowOfStraight(straight, water);
                double measured = Csv.number(row, "measured") - straight;
                LocalLoss.pressureDrop(
                        flow,
                        0.0136,
                        MitreElbow.turbulentK(Math.PI / 2),
                        MitreElbow.k1(Math.PI / 2),
                        water[0],
                        water[1],
                        out);
                errors.add(out[0] / (water[0] * GRAVITY) / measured - 1, row.getField("id"));
            }
        }
        return errors.scatter();
    }

    private static double[] straightLine(List<NamedCsvRecord> rows) {
        double n = rows.size();
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        for (NamedCsvRecord row : rows) {
            double x = Csv.number(row, "condition_value");
            double y = Csv.number(row, "measured");
            sx += x;
            sy += y;
            sxx += x * x;
            sxy += x * y;
        }
        double slope = (n * sxy - sx * sy) / (n * sxx - sx * sx);
        return new double[] {(sy - slope * sx) / n, slope};
    }

    private static double flowOfStraight(double headM, double[] water) {
        double[] out = new double[2];
        double flow = 1e-4;
        for (int i = 0; i < 60; i++) {
            BoreFriction.pressureDrop(flow, 0.0136, 0.914, 0, Transition.DEFAULT, water[0], water[1], out);
            flow -= (out[0] - headM * water[0] * GRAVITY) / out[1];
        }
        return flow;
    }

    /**
     * H: permanent loss at 4 bores over the difference at half a bore. At 10 per cent of the rotameter the pipe Reynolds
     * number is 2600, under the 5000 of ISO 5167: left out.
     */
    private static Cases.Scatter orifice() {
        Map<String, double[]> runs = new LinkedHashMap<>();
        for (NamedCsvRecord row : set("H")) {
            double tap = Csv.number(row, "condition_value");
            double[] pair = runs.computeIfAbsent(row.getField("run"), run -> new double[2]);
            if (tap == 0.5) {
                pair[0] = Csv.number(row, "measured");
            } else if (tap == 4) {
                pair[1] = Csv.number(row, "measured");
            }
        }
        double beta = 0.488;
        double hole = beta * 0.05204;
        Orifice plate = Orifice.of(0.05204, hole);
        Cases.Errors errors = new Cases.Errors();
        double[] out = new double[2];
        runs.forEach((run, pair) -> {
            if (!run.equals("rotameter 10 %")) {
                // air at 293 K and 1013 hPa; C is flat enough that one estimate of the Reynolds number will do
                double velocity = 0.61 * Math.sqrt(2 * pair[0] / (1.204 * (1 - Math.pow(beta, 4))));
                plate.dischargeCoefficient(velocity * hole / 1.51e-5, out);
                errors.add(Orifice.lossRatio(beta, out[0]) / (pair[1] / pair[0]) - 1, run);
            }
        });
        return errors.scatter();
    }

    /** E-stack over 41 L/min; form 0 fitted to all, 1 from the outer two points, 2 and 3 from one point. */
    private static Cases.Scatter cooler(int form) {
        double density = 1030; // kind of coolant not stated: cancels, since the points are of one state
        double viscosity = 1e-3;
        List<double[]> points = new ArrayList<>();
        for (NamedCsvRecord row : set("E-stack")) {
            if (Csv.number(row, "condition_value") > 41 / 60e3) {
                points.add(new double[] {Csv.number(row, "condition_value"), Csv.number(row, "measured")});
            }
        }
        points.sort((a, b) -> a[0] != b[0] ? Double.compare(a[0], b[0]) : Double.compare(a[1], b[1]));
        double[] low = points.get(0);
        double[] high = points.get(points.size() - 1);
        double[] ab = new double[2];
        if (form == 0) {
            leastSquares(points, ab);
            ab[0] /= viscosity;
            ab[1] /= density;
        } else if (form == 1) {
            RatedLoss.fit(low[0], low[1], high[0], high[1], density, viscosity, ab);
        }
        Cases.Errors errors = new Cases.Errors();
        double[] out = new double[2];
        for (double[] point : points) {
            if (form < 2) {
                RatedLoss.pressureDrop(point[0], ab[0], ab[1], density, viscosity, out);
            } else {
                double exponent = form == 2 ? RatedLoss.PLATE_EXPONENT : RatedLoss.TUBE_EXPONENT;
                RatedLoss.powerDrop(point[0], high[0], high[1], exponent, 1, 1, out);
            }
            errors.add(out[0] / point[1] - 1, point[0] + " m3/s");
        }
        return errors.scatter();
    }

    private static void leastSquares(List<double[]> points, double[] ab) {
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double x1 = 0;
        double y1 = 0;
        for (double[] point : points) {
            double x = point[0] / point[1];
            double y = point[0] * point[0] / point[1];
            xx += x * x;
            xy += x * y;
            yy += y * y;
            x1 += x;
            y1 += y;
        }
        double determinant = xx * yy - xy * xy;
        ab[0] = (x1 * yy - y1 * xy) / determinant;
        ab[1] = (xx * y1 - xy * x1) / determinant;
    }

    private static void holds(Cases.Scatter found, int count, double bias, double rms, double tolerance) {
        assertThat(found.count()).isEqualTo(count);
        assertThat(found.worst()).as(found.toString()).isLessThan(tolerance);
        assertThat(Math.abs(found.bias())).as(found.toString()).isLessThan(bias);
        assertThat(found.rms()).as(found.toString()).isLessThan(rms);
    }

    @Test
    void smoothTubeOfEightMillimetres() {
        holds(smoothTube(), 7, 0.01, 0.025, 0.06);
    }

    @Test
    void mitreOfFourteenMillimetres() {
        holds(mitre(), 6, 0.05, 0.081, 0.12);
    }

    @Test
    void orificeInAFiftyTwoMillimetreTube() {
        holds(orifice(), 9, 0.04, 0.041, 0.07);
    }

    @Test
    void coolerAsAFormAndFromTwoPoints() {
        holds(cooler(0), 56, 0.001, 0.021, 0.06);
        holds(cooler(1), 56, 0.035, 0.05, 0.10);
    }

    @Test
    void coolerFromOnePointIsInsideItsBand() {
        holds(cooler(2), 56, 0.03, 0.04, 0.10);
        // the exponent of round tubes is the wrong choice for flat channels: this is why the form asks which they are
        assertThat(cooler(3).bias()).isBetween(-0.26, -0.20);
    }

    static List<String[]> claims() {
        String file = "validation/losses/measured-small-bore.csv";
        List<String[]> rows = new ArrayList<>();
        add(rows, "smooth tube 8.15 mm, water, Re over 30000", smoothTube(), file, "6 % single points");
        add(rows, "90-degree mitre 13.6 mm, Re 9000 to 24000", mitre(), file, "12 %: bench read to 0.5 cm of water");
        add(
                rows,
                "orifice d/D 0.488, permanent loss at 4 bores, a law that Linedrop does not use",
                orifice(),
                file,
                "7 % single runs");
        add(rows, "flat-channel cooler, a mu Q + b rho Q^2", cooler(0), file, "6 %: gauges resolve 1 kPa");
        add(rows, "the same from two points", cooler(1), file, "10 %: gauges resolve 1 kPa");
        add(rows, "the same from one point, n 1.3", cooler(2), file, "10 %: gauges resolve 1 kPa");
        return rows;
    }

    private static void add(List<String[]> rows, String what, Cases.Scatter found, String file, String tolerance) {
        rows.add(Cases.claim(what, found.count(), file, "measured", tolerance, found.worst(), found.at()));
    }

    @Test
    void claimsCoverAllSets() {
        assertThat(claims()).hasSize(6);
    }
}
