package org.linedrop.units;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Objects;

/**
 * A unit with its exact conversion: SI value = (number + offset) x factor / divisor. The divisor is there because a
 * litre per hour or a psi is no finite decimal in SI; with it every conversion is exact up to the one rounding to a
 * double.
 *
 * @param symbol    the text that is written, for example {@code kPa abs}; empty for a bare number
 * @param dimension what it measures
 * @param factor    numerator of the conversion, not zero; negative for vacuum
 * @param divisor   denominator of the conversion, above zero
 * @param offset    added to the number first; zero but for temperatures
 */
public record Unit(String symbol, Dimension dimension, BigDecimal factor, BigDecimal divisor, BigDecimal offset)
        implements Serializable {

    /**
     * Checks that the conversion can be undone.
     *
     * @param symbol    the text that is written
     * @param dimension what it measures
     * @param factor    numerator, not zero
     * @param divisor   denominator, above zero
     * @param offset    added to the number first
     */
    public Unit {
        Objects.requireNonNull(symbol, "symbol");
        Objects.requireNonNull(dimension, "dimension");
        Objects.requireNonNull(offset, "offset");
        if (factor.signum() == 0 || divisor.signum() <= 0) {
            throw new IllegalArgumentException("unit " + symbol + " has a factor of zero");
        }
    }

    @Override
    public String toString() {
        return symbol;
    }
}
