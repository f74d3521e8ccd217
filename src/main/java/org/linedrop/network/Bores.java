package org.linedrop.network;

import org.linedrop.fact.Figure;

/** Which end of the known bands of the bores a network is made with. */
public enum Bores {
    /** The usual bores. */
    USUAL,
    /** The smallest that are sold, of everything that was not measured. */
    SMALLEST,
    /** The largest that are sold, of everything that was not measured. */
    LARGEST;

    double of(Figure bore) {
        return switch (this) {
            case USUAL -> bore.value();
            case SMALLEST -> bore.low();
            case LARGEST -> bore.high();
        };
    }
}
