package org.linedrop.result;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Junction;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tank;
import org.linedrop.circuit.Tube;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.hydraulics.Colebrook;
import org.linedrop.hydraulics.ConvolutedBore;
import org.linedrop.hydraulics.Tee;

/** Finds what a reader of a result should know. */
final class Warnings {
    private static final Source MIX =
            Source.of("scatter of published friction data between laminar and turbulent flow", Status.PUBLISHED);
    private static final Source ROUGH = Source.of("range of Colebrook's equation", Status.PUBLISHED);

    /** A share of the flow scale under which a flow has no sense. */
    private static final double BACKWARDS = 1e-6;

    /** Bend radius in bores under which a hose without a row is warned of; the tightest rows known are 5 to 6. */
    private static final double TIGHT_BORES = 2.5;

    private static final Source KINK = Source.of("Rows of hose: none bends tighter than five bores", Status.GUESSED);

    private final Result result;
    private final Circuit circuit;
    private final List<Notice> found = new ArrayList<>();

    private Warnings(Result result) {
        this.result = result;
        this.circuit = result.circuit();
    }

    static List<Notice> of(Result result) {
        Warnings warnings = new Warnings(result);
        warnings.fluid();
        warnings.blend();
        warnings.found.addAll(Vapour.notices(result));
        warnings.parts();
        warnings.devices();
        warnings.junctions();
        warnings.backwards();
        warnings.pots();
        TrappedAir.notices(result.circuit()).forEach(warnings.found::add);
        CloseCoupled.notice(result.circuit()).ifPresent(warnings.found::add);
        return List.copyOf(warnings.found);
    }

    private void fluid() {
        Set<Double> temperatures = new LinkedHashSet<>();
        temperatures.add(circuit.surroundings().temperatureK().value());
        for (Run run : circuit.runs()) {
            add(temperatures, run.temperatureK());
            for (Part part : run.parts()) {
                add(temperatures, part.temperatureK());
            }
        }
        for (double temperature : temperatures) {
            found.addAll(circuit.surroundings().fluid().flowNotices(temperature));
        }
    }

    private static void add(Set<Double> temperatures, @Nullable Figure temperature) {
        if (temperature != null) {
            temperatures.add(temperature.value());
        }
    }

    private void blend() {
        for (PartRow row : result.rows()) {
            if (row.regime() == PartRow.Regime.MIXED && !row.kind().equals("end")) {
                found.add(new Notice(
                        "re-in-blend",
                        row.run() + " " + row.row(),
                        String.format(
                                Locale.ROOT,
                                "Re %.0f lies between laminar and turbulent flow, where measurements scatter by 10 to 15 %%",
                                row.reynolds()),
                        row.reynolds(),
                        circuit.surroundings().turbulentFromReynolds(),
                        "",
                        MIX));
            }
        }
    }

    /** Where no least bend radius is known, a bend that any hose would kink in. */
    private void tight(Hose hose, double radiusM, double boreM) {
        double least = TIGHT_BORES * boreM;
        if (radiusM < least) {
            found.add(new Notice(
                    "bend-tight",
                    hose.id(),
                    String.format(
                            Locale.ROOT,
                            "bent to %.0f mm, under %.1f bores (%.0f mm): no minimum bend radius of %s is known here, but so"
                                    + " tight it would kink. Ask its maker",
                            radiusM * 1000,
                            TIGHT_BORES,
                            least * 1000,
                            hose.size().name()),
                    radiusM,
                    least,
                    "m",
                    KINK));
        }
    }

    private void parts() {
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                if (part instanceof Hose hose) {
                    hose(hose);
                } else if (part instanceof Tube tube) {
                    rough(tube.id(), tube.size().roughnessM(), tube.size().boreM());
                }
            }
        }
    }

    private void hose(Hose hose) {
        rough(hose.id(), hose.size().roughnessM(), hose.size().boreM());
        Figure least = hose.size().minBendRadiusM();
        if (hose.bends() != null && least != null && hose.bends().radiusM() < least.value()) {
            found.add(new Notice(
                    "bend-under-minimum",
                    hose.id(),
                    String.format(
                            Locale.ROOT,
                            "bent to %.0f mm, under the minimum bend radius of %.0f mm",
                            hose.bends().radiusM() * 1000,
                            least.value() * 1000),
                    hose.bends().radiusM(),
                    least.value(),
                    "m",
                    least.source()));
        }
        if (hose.bends() != null && least == null) {
            tight(hose, hose.bends().radiusM(), hose.size().boreM().value());
        }
        if (hose.size().convoluted() && hose.lossFactor() == null) {
            found.add(Notice.of(
                    "convoluted-bore",
                    hose.id(),
                    String.format(
                            Locale.ROOT,
                            "%s is convoluted or wound inside: its length may lose %.2g to %.2g times what is shown."
                                    + " Measure it and write loss factor: 4.5 x measured",
                            hose.size().name(),
                            ConvolutedBore.BAND.lowRatio(),
                            ConvolutedBore.BAND.highRatio()),
                    ConvolutedBore.FORMULA.source()));
        }
        Fits.fluid(circuit, hose).ifPresent(found::add);
        found.addAll(Fits.ratings(result, hose));
    }

    private void rough(String part, Figure roughness, Figure bore) {
        double ratio = roughness.value() / bore.value();
        if (ratio > Colebrook.ROUGHNESS_LIMIT) {
            found.add(new Notice(
                    "rough-bore",
                    part,
                    String.format(
                            Locale.ROOT,
                            "roughness is %.3f of the bore, over the 0.05 to which Colebrook's equation holds",
                            ratio),
                    ratio,
                    Colebrook.ROUGHNESS_LIMIT,
                    "",
                    ROUGH));
        }
    }

    /** How long a pot lasts, or what it sends over its overflow. */
    private void pots() {
        for (Point point : circuit.points()) {
            if (!(point instanceof Tank tank) || tank.volumeM3() == null) {
                continue;
            }
            double density = circuit.surroundings().fluidState().densityKgPerM3();
            double gain = result.point(tank.id()).map(PointRow::netInflowKgPerS).orElse(0.0) / density;
            boolean empties = gain < 0;
            double lasts = empties ? tank.volumeM3().value() / -gain : Double.NaN;
            found.add(new Notice(
                    empties ? "pot-empties" : "pot-overflows",
                    tank.id(),
                    empties
                            ? String.format(
                                    Locale.ROOT,
                                    "more leaves it than comes: full, it lasts %.1f s (5 to 10 s are wanted, common practice)",
                                    lasts)
                            : String.format(
                                    Locale.ROOT,
                                    "stays full: %.0f L/h run over its overflow, whose line is not in this circuit",
                                    gain * 3.6e6),
                    empties ? lasts : gain,
                    Double.NaN,
                    empties ? "s" : "m3/s",
                    Source.of("volume over flow", Status.DERIVED)));
        }
    }

    /** A vent that feeds, a return that draws: the flow is against the sense in which the run is written. */
    private void backwards() {
        double trace = BACKWARDS * result.solution().flowScaleKgPerS();
        for (Run run : circuit.runs()) {
            List<PartRow> rows = result.rows(run.id());
            if (!rows.isEmpty() && rows.get(0).massFlowKgPerS() < -trace) {
                found.add(new Notice(
                        "runs-backwards",
                        run.id(),
                        "flows backwards, from " + run.to().text() + " to "
                                + run.from().text(),
                        rows.get(0).flowM3PerS(),
                        0,
                        "m3/s",
                        Source.of("the circuit as it is written", Status.GIVEN)));
            }
        }
    }

    private void junctions() {
        for (Point point : circuit.points()) {
            if (point instanceof Junction junction) {
                found.add(Notice.of(
                        "junction-band",
                        junction.id(),
                        "what the legs of a " + junction.size().kind()
                                + " lose is known to 0.3 velocity heads of its whole flow; and no proof says that a"
                                + " circuit with one has a single solution",
                        Tee.BAND.source()));
            }
        }
    }

    private void devices() {
        for (DeviceRow device : result.devices()) {
            if (device.state().startsWith("outside")) {
                found.add(Notice.of(
                        "outside-pump-table",
                        device.id(),
                        device.state() + "; its table is not extended, so nothing is judged by it",
                        Source.of("the pump's table", Status.GIVEN)));
            }
        }
    }
}
