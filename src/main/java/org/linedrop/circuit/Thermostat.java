package org.linedrop.circuit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.circuit.form.Span;
import org.linedrop.fact.Figure;

/**
 * A thermostat with three ports: what comes in is shared between the cooler and the direct way. Each way is an opening whose
 * area is a share of the whole: the direct one closes as the cooler's opens.
 *
 * @param id           its name
 * @param position     where it is, or null
 * @param opens        temperatures at which it begins to open and is open
 * @param temperatureK temperature of the fluid that it feels
 * @param bleedCold    share of the area to the cooler that is always open
 * @param bleedHot     share of the area of the direct way that is always open
 * @param rated        drop at a flow through one way fully open, as a square law
 * @param bypassPa     drop at which it lets fluid pass the cooler by however hot it is; null where it has no such bypass
 */
public record Thermostat(
        String id,
        @Nullable Position position,
        Span opens,
        Figure temperatureK,
        Figure bleedCold,
        Figure bleedHot,
        RatedPoint rated,
        @Nullable Figure bypassPa)
        implements Device {

    /** Its word. */
    static final String KIND = "thermostat";
    /** Port it is fed at. */
    static final String INLET = "inlet";
    /** Port to the cooler or radiator. */
    public static final String COOLER = "cooler";
    /** Port past it. */
    public static final String DIRECT = "direct";

    /**
     * How far it is open.
     *
     * @return 0 under its first temperature, 1 over its second
     */
    public double opening() {
        double share = (temperatureK.value() - opens.low()) / (opens.high() - opens.low());
        return Math.max(0, Math.min(1, share));
    }

    /**
     * Share of the area of the way to the cooler.
     *
     * @return 0 to 1
     */
    public double coolerShare() {
        return bleedCold.value() + (1 - bleedCold.value()) * opening();
    }

    /**
     * Share of the area of the direct way.
     *
     * @return 0 to 1
     */
    public double directShare() {
        return 1 - (1 - bleedHot.value()) * opening();
    }

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public List<String> ports() {
        return Ports.ofDevice(KIND);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.thermostat(this);
    }
}
