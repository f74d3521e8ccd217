package org.linedrop.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class UnitsPropertyTest {

    /** What is written reads back bit for bit, in every unit, for everyday and for odd doubles. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void writtenTextReadsBackToTheSameDouble(Dimension dimension) {
        SplittableRandom random = new SplittableRandom(20260101 + dimension.ordinal());
        boolean absolute = dimension == Dimension.TEMPERATURE || dimension == Dimension.ABSOLUTE_PRESSURE;
        for (Unit unit : Units.units(dimension)) {
            for (int i = 0; i < 60; i++) {
                double si = Math.pow(10, random.nextDouble(-9, 9)) * (random.nextBoolean() ? 1 : -1);
                if (absolute || unit.symbol().endsWith("vacuum")) {
                    si = Math.abs(si) * unit.factor().signum();
                }
                String text = Units.write(si, unit);
                assertThat(Units.read(text, dimension).si()).as(text).isEqualTo(si);
            }
        }
    }

    @Test
    void extremeDoublesToo() {
        Unit metre = Units.unit("m");
        for (double si : new double[] {
            Double.MIN_VALUE, Double.MIN_NORMAL, Double.MAX_VALUE, Math.nextUp(1.0), Math.nextDown(1.0), 0x1p52, 0x1p-60
        }) {
            for (Unit unit : new Unit[] {metre, Units.unit("mm"), Units.unit("in"), Units.unit("km")}) {
                assertThat(Units.read(Units.write(si, unit), Dimension.LENGTH).si())
                        .as(unit.symbol())
                        .isEqualTo(si);
            }
        }
    }

    /** A number of few digits comes back as it was typed, so that a file survives reading and writing. */
    @Test
    void shortNumbersComeBackAsTyped() {
        SplittableRandom random = new SplittableRandom(7);
        for (String symbol : new String[] {"mm", "in", "L/h", "psi", "C", "F", "rpm", "lb/hp/h", "deg", "UK gal/h"}) {
            Unit unit = Units.unit(symbol);
            for (int i = 0; i < 200; i++) {
                String number =
                        String.valueOf(random.nextInt(1, 100000) / 100.0).replaceAll("\\.0$", "");
                String text = number + " " + symbol;
                assertThat(Units.write(Units.read(text, unit.dimension()).si(), unit))
                        .isEqualTo(text);
            }
        }
    }

    /** Whatever is typed gives a quantity or a message. */
    @Test
    void anyTextGivesAQuantityOrAMessage() {
        SplittableRandom random = new SplittableRandom(11);
        String letters = "0123456789.,-+/eE '\"mkPaLhinft%xgCF\u00b0\u00bd\u0000\u0663(";
        for (int i = 0; i < 20000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(0, 12); n > 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            try {
                assertThat(Units.read(text.toString(), Dimension.values()).si()).isFinite();
            } catch (UnitException e) {
                assertThat(e.message()).startsWith("\"");
            }
            try {
                assertThat(Units.readList(text.toString(), Dimension.values())).isNotEmpty();
            } catch (UnitException e) {
                assertThat(e.message()).startsWith("\"");
            }
        }
    }
}
