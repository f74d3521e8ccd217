package org.linedrop.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayTest {

    /** Factors are those of the definitions: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 US gal = 231 in3, 0 C = 273.15 K. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "GAUGE_PRESSURE|375000|375.0 kPa|54.39 psi",
                "PRESSURE_DIFFERENCE|6894.757293168362|6.9 kPa|1.00 psi",
                "ABSOLUTE_PRESSURE|101325|101.3 kPa abs|14.70 psi abs",
                "VOLUME_FLOW|0.0001|360 L/h|95.1 US gal/h",
                "MASS_FLOW|0.01|36 kg/h|79 lb/h",
                "LENGTH|0.9144|0.91 m|3.00 ft",
                "SPEED|3.048|3.05 m/s|10.00 ft/s",
                "TEMPERATURE|313.15|40 C|104 F",
                "TEMPERATURE_DIFFERENCE|10|10.0 K|18.0 F",
                "DENSITY|1000|1000 kg/m3|62.4 lb/ft3",
                "KINEMATIC_VISCOSITY|0.0000125|12.50 mm2/s|12.50 cSt",
                "RATIO|0.15|15 %|15 %",
                "POWER|387764|388 kW|520 hp",
                "VOLTAGE|13.5|13.5 V|13.5 V",
            })
    void figuresHaveTheirUnitAndUsualDecimals(Dimension dimension, double si, String metric, String us) {
        assertThat(Display.METRIC.text(si, dimension)).isEqualTo(metric);
        assertThat(Display.US.text(si, dimension)).isEqualTo(us);
        assertThat(Display.US.number(si, dimension) + " "
                        + Display.US.unit(dimension).symbol())
                .isEqualTo(us);
    }

    /** 40 L/min is 10.57 US gal/min: 40 / 3.785411784. */
    @Test
    void oilAndCoolantFlowByTheMinute() {
        double flow = 40e-3 / 60;
        assertThat(Display.METRIC.perMinute(true).text(flow, Dimension.VOLUME_FLOW))
                .isEqualTo("40.0 L/min");
        assertThat(Display.US.perMinute(true).text(flow, Dimension.VOLUME_FLOW)).isEqualTo("10.57 US gal/min");
        assertThat(Display.METRIC_PER_MINUTE.text(flow / 100, Dimension.VOLUME_FLOW))
                .as("the jet of a turbo shows a digit more")
                .isEqualTo("0.40 L/min");
        assertThat(Display.US_PER_MINUTE.perMinute(false)).isEqualTo(Display.US);
        assertThat(Display.US_PER_MINUTE.us()).isTrue();
        assertThat(Display.METRIC_PER_MINUTE.us()).isFalse();
        assertThat(Display.METRIC_PER_MINUTE.text(375000, Dimension.GAUGE_PRESSURE))
                .isEqualTo("375.0 kPa");
    }

    @Test
    void noFigureIsADash() {
        assertThat(Display.METRIC.text(Double.NaN, Dimension.LENGTH)).isEqualTo("- m");
        assertThat(Display.US.number(Double.POSITIVE_INFINITY, Dimension.LENGTH))
                .isEqualTo("-");
    }

    @Test
    void wordsOfTheCommandLine() {
        assertThat(Display.METRIC.word()).isEqualTo("metric");
        assertThat(Display.US.word()).isEqualTo("us");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Display.US.unit(Dimension.MODULUS))
                .withMessage("reports do not print a modulus");
    }
}
