package org.linedrop.circuit;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A device that a circuit file can describe and that no law is written for yet: it is read, checked and written, and
 * {@link NotSolvableException} says so when the circuit is to be solved.
 *
 * @param id       its name
 * @param kind     the word of its kind
 * @param what     the kind in a sentence, for example {@code a bypass regulator}
 * @param position where it is, or null
 * @param ports    names of its ports; empty for an in-line device
 * @param values   its keys and values, as Linedrop writes them
 */
public record OtherDevice(
        String id, String kind, String what, @Nullable Position position, List<String> ports, List<Value> values)
        implements Device {

    /** Copies the lists. */
    public OtherDevice {
        ports = List.copyOf(ports);
        values = List.copyOf(values);
    }

    /**
     * One key of it.
     *
     * @param key  its name
     * @param text its value as Linedrop writes it
     */
    public record Value(String key, String text) implements Serializable {}

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.other(this);
    }
}
