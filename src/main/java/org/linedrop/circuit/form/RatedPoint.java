package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;

/**
 * What a sheet says of a part: {@code 55 kPa at 45 L/min with 14 cSt}; of a draw or a pump the flow comes first,
 * {@code 40 L/min at 350 kPa with 14 cSt}.
 *
 * @param drop      pressure difference in Pa
 * @param flow      volume flow in m3/s, above 0
 * @param viscosity kinematic viscosity in m2/s of the liquid it was measured with, above 0; null when not said
 */
public record RatedPoint(Figure drop, Figure flow, @Nullable Figure viscosity) implements Serializable {
    private static final Pattern WITH = Pattern.compile("(.+?) with (.+)");
    private static final Pattern AT = Pattern.compile("(.+?) at (.+)");
    private static final String EXAMPLE = "Write for example 55 kPa at 45 L/min with 14 cSt";

    /**
     * Reads a rated point, pressure or flow first.
     *
     * @param text    for example {@code 55 kPa at 45 L/min with 14 cSt from sheet}
     * @param locator where in the file; may be empty
     * @return the point
     * @throws UnitException when pressure or flow is missing
     */
    public static RatedPoint read(String text, String locator) {
        Said said = Said.of(text);
        String whole = said.spread().isEmpty() ? said.value() : said.value() + " +/- " + said.spread();
        Matcher with = WITH.matcher(whole);
        String point = with.matches() ? with.group(1) : whole;
        Matcher at = AT.matcher(point);
        if (!at.matches()) {
            throw Wording.wrong(text, ": at what? A pressure and a flow belong together", EXAMPLE);
        }
        Given first = Forms.given(at.group(1), locator, Dimension.PRESSURE_DIFFERENCE, Dimension.VOLUME_FLOW);
        boolean flowFirst = first.dimension() == Dimension.VOLUME_FLOW;
        Given second =
                Forms.given(at.group(2), locator, flowFirst ? Dimension.PRESSURE_DIFFERENCE : Dimension.VOLUME_FLOW);
        Given flow = flowFirst ? first : second;
        Given pressure = flowFirst ? second : first;
        if (!(pressure.si() >= 0)) {
            throw Wording.wrong(text, ": the pressure difference may not be negative", EXAMPLE);
        }
        if (!(flow.si() > 0)) {
            throw Wording.wrong(text, ": the flow must be above 0", EXAMPLE);
        }
        Figure viscosity = null;
        if (with.matches()) {
            viscosity = Forms.as(
                    Forms.given(with.group(2), locator, Dimension.KINEMATIC_VISCOSITY)
                            .figure(),
                    said.status());
            if (!(viscosity.value() > 0)) {
                throw Wording.wrong(text, ": the viscosity must be above 0", EXAMPLE);
            }
        }
        return new RatedPoint(
                Forms.as(pressure.figure(), said.status()), Forms.as(flow.figure(), said.status()), viscosity);
    }

    /**
     * Reads a rated point whose pressure difference cannot be 0: of something that loses or needs pressure.
     *
     * @param text for example {@code 6 kPa at 300 L/h}
     * @return the point; its drop is above 0
     * @throws UnitException when pressure or flow is missing or 0
     */
    public static RatedPoint loss(String text) {
        RatedPoint point = read(text);
        if (!(point.drop.value() > 0)) {
            throw Wording.wrong(text, ": the pressure difference must be above 0", EXAMPLE);
        }
        return point;
    }

    /**
     * Reads a rated point without saying where it stands.
     *
     * @param text for example {@code 55 kPa at 45 L/min with 14 cSt from sheet}
     * @return the point
     * @throws UnitException when pressure or flow is missing
     */
    public static RatedPoint read(String text) {
        return read(text, "");
    }

    /**
     * Writes the point, the pressure first.
     *
     * @return text that reads back to the same numbers
     */
    public String write() {
        return Forms.band(drop, Dimension.PRESSURE_DIFFERENCE) + " at " + Forms.band(flow, Dimension.VOLUME_FLOW)
                + rest();
    }

    /**
     * Writes the point, the flow first.
     *
     * @return text that reads back to the same numbers
     */
    public String writeFlowFirst() {
        return Forms.band(flow, Dimension.VOLUME_FLOW) + " at " + Forms.band(drop, Dimension.PRESSURE_DIFFERENCE)
                + rest();
    }

    private String rest() {
        Status weakest = Status.weaker(drop.status(), flow.status());
        if (viscosity == null) {
            return Said.suffix(weakest);
        }
        return " with " + Forms.band(viscosity, Dimension.KINEMATIC_VISCOSITY)
                + Said.suffix(Status.weaker(weakest, viscosity.status()));
    }
}
