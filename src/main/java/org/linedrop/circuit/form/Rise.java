package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * What a regulator's pressure gains between two flows, from two gauge readings: {@code 23 kPa from 20 to 400 L/h}.
 *
 * @param risePa      gain in Pa, not negative
 * @param fromM3PerS  lower flow in m3/s, not negative
 * @param toM3PerS    upper flow in m3/s, above the lower
 * @param status      what was said about it
 */
public record Rise(double risePa, double fromM3PerS, double toM3PerS, Status status) implements Serializable {
    private static final Pattern RISE = Pattern.compile("(.+?) from (.+?) to (.+)");
    private static final String EXAMPLE = "Write for example 23 kPa from 20 to 400 L/h";

    /**
     * Reads a rise.
     *
     * @param text for example {@code 23 kPa from 20 to 400 L/h measured}
     * @return the rise
     * @throws UnitException when a part is missing or the flows do not rise
     */
    public static Rise read(String text) {
        Said said = Said.of(text);
        Matcher rise = RISE.matcher(said.value());
        if (!rise.matches() || !said.spread().isEmpty()) {
            throw Wording.wrong(text, ": between which flows?", EXAMPLE);
        }
        double gain = Units.read(rise.group(1), Dimension.PRESSURE_DIFFERENCE).si();
        Quantity to = Units.read(rise.group(3), Dimension.VOLUME_FLOW);
        double from = Wording.first(rise.group(2), to, Dimension.VOLUME_FLOW).si();
        if (!(gain >= 0 && from >= 0 && from < to.si())) {
            throw Wording.wrong(
                    text, ": the pressure rises from the smaller to the larger flow, none of them negative", EXAMPLE);
        }
        return new Rise(gain, from, to.si(), said.status());
    }

    /**
     * The slope.
     *
     * @return gain over flow difference in Pa per m3/s
     */
    public double slopePaPerM3PerS() {
        return risePa / (toM3PerS - fromM3PerS);
    }

    /**
     * Writes the rise.
     *
     * @return text that reads back to the same numbers
     */
    public String write() {
        return Wording.metric(risePa, Dimension.PRESSURE_DIFFERENCE) + " from "
                + Wording.metric(fromM3PerS, Dimension.VOLUME_FLOW) + " to "
                + Wording.metric(toM3PerS, Dimension.VOLUME_FLOW) + Said.suffix(status);
    }
}
