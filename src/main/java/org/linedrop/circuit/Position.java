package org.linedrop.circuit;

import java.io.Serializable;

/**
 * A place in the vehicle, from any one datum: x ahead, y left, z up (the sense of ISO 8855).
 *
 * @param aheadM  metres ahead of the datum
 * @param leftM   metres to the left of it
 * @param heightM metres above it
 */
public record Position(double aheadM, double leftM, double heightM) implements Serializable {

    /**
     * Straight distance to another place.
     *
     * @param other the other place
     * @return metres, not negative
     */
    public double distanceM(Position other) {
        double ahead = other.aheadM - aheadM;
        double left = other.leftM - leftM;
        double height = other.heightM - heightM;
        return Math.sqrt(ahead * ahead + left * left + height * height);
    }
}
