package org.linedrop.circuit.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;

class FormsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "10.2 mm|LENGTH|0.0102|0.0102|0.0102|GIVEN|false",
                "10.2 mm measured|LENGTH|0.0102|0.0102|0.0102|MEASURED|false",
                "10.2 mm +/- 0.1 mm measured|LENGTH|0.010100000000000001|0.0102|0.0103|MEASURED|false",
                "10.2 mm +/- 0.1 measured|LENGTH|0.010100000000000001|0.0102|0.0103|MEASURED|false",
                "10.2 mm \u00b1 0.1 measured|LENGTH|0.010100000000000001|0.0102|0.0103|MEASURED|false",
                "300 kPa +/- 2 % from sheet|GAUGE_PRESSURE|294000|300000|306000|FROM_SHEET|false",
                "20 x +/- 25 %|RATIO|15|20|25|GIVEN|false",
                "20 x +/- 5 x|RATIO|15|20|25|GIVEN|false",
                "90 % +/- 5 %|RATIO|0.85|0.9|0.9500000000000001|GIVEN|false",
                "40 C +/- 5 C guessed|TEMPERATURE|308.15|313.15|318.15|GUESSED|false",
                "40 C +/- 5|TEMPERATURE|308.15|313.15|318.15|GIVEN|false",
                "104 F +/- 9 F|TEMPERATURE|308.15|313.15|318.15|GIVEN|false",
                "110 kPa abs +/- 2|ABSOLUTE_PRESSURE|108000|110000|112000|GIVEN|false",
                "10 kPa vacuum +/- 1|GAUGE_PRESSURE|-11000|-10000|-9000|GIVEN|false",
                "450 m really|LENGTH|450|450|450|GIVEN|true",
                "450 m really measured|LENGTH|450|450|450|MEASURED|true",
                "450 m measured really|LENGTH|450|450|450|MEASURED|true",
                "10.2 mm between 10 and 10.3|LENGTH|0.01|0.0102|0.0103|GIVEN|false",
                "10.2 mm between 1 cm and 10.3 mm guessed|LENGTH|0.01|0.0102|0.0103|GUESSED|false",
            })
    // 0.0102 - 0.0001 in doubles is one step over 0.0101: the ends of a band are computed, not read.
    void readsWhatIsSaidAboutAValue(
            String text, Dimension dimension, double low, double value, double high, Status status, boolean really) {
        Given given = Forms.given(text, "line 3", dimension);
        assertThat(given.figure())
                .isEqualTo(new Figure(low, value, high, new Source("circuit file", "line 3", status)));
        assertThat(given.really()).isEqualTo(really);
        assertThat(given.dimension()).isEqualTo(dimension);
        assertThat(Forms.given(given.write(), "line 3", dimension)).isEqualTo(given);
        assertThat(Forms.figure(text, dimension).value()).isEqualTo(value);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "10.2 mm measured guessed|~\"10.2 mm measured guessed\" is both measured and guessed. Say one: measured, from sheet or guessed~",
                "10.2 measured|~\"10.2\" has no unit. Millimetres? Write 10.2 mm. (mm, m, in, ft are read)~",
                "measured|~\"\" is empty: a length is needed. Write for example 0.6 m~",
                "10.2 mm +/- -0.1 mm|~\"+/- -0.1 mm\" is negative. Write it without a minus~",
                "10.2 mm +/- 5 C|~\"5 C\" is a temperature, but a length or a ratio is needed. Write for example 0.6 m. (mm, m, in, ft, %, x are read)~",
                "10.2 mm between 11 and 12|~\"10.2 mm between 11 and 12\": the value lies outside its band. Write the lower end first~",
            })
    void refusesContradictions(String text, String line) {
        assertThatExceptionOfType(UnitException.class)
                .isThrownBy(() -> Forms.figure(text, Dimension.LENGTH))
                .withMessage(line);
    }

    @Test
    void listsShareUnitSpreadAndWords() {
        List<Figure> bores = Forms.figures("7.9 10.2 12.8 mm measured", "line 9", Dimension.LENGTH);
        assertThat(bores).extracting(Figure::value).containsExactly(0.0079, 0.0102, 0.0128);
        assertThat(bores).extracting(Figure::status).containsOnly(Status.MEASURED);
        assertThat(Forms.writeList(bores, Dimension.LENGTH)).isEqualTo("7.9 10.2 12.8 mm measured");
        assertThat(Forms.figures("100 200 kPa +/- 2 %", "", Dimension.PRESSURE_DIFFERENCE)
                        .get(1)
                        .high())
                .isEqualTo(204000.0);
    }

    @Test
    void writesShortText() {
        assertThat(Forms.write(Forms.figure("10.2 mm +/- 0.1 mm measured", Dimension.LENGTH), Dimension.LENGTH))
                .isEqualTo("10.2 mm +/- 0.1 mm measured");
        assertThat(Forms.write(Forms.figure("40 C +/- 5", Dimension.TEMPERATURE), Dimension.TEMPERATURE))
                .isEqualTo("40 C +/- 5 K");
        assertThat(Forms.write(Forms.figure("3/8 in", Dimension.LENGTH), Dimension.LENGTH))
                .isEqualTo("9.525 mm");
    }

    /** A figure from a catalogue may not gain by being written: the file has no word as strong as a standard. */
    @ParameterizedTest
    @EnumSource(Status.class)
    void aStatusIsNeverWrittenStrongerThanItIs(Status status) {
        Figure figure = Figure.exact(0.01, Source.of("somewhere", status));
        Status read = Forms.figure(Forms.write(figure, Dimension.LENGTH), Dimension.LENGTH)
                .status();
        assertThat(read).isGreaterThanOrEqualTo(status == Status.INVENTED ? Status.GUESSED : status);
        if (status == Status.MEASURED
                || status == Status.FROM_SHEET
                || status == Status.GUESSED
                || status == Status.GIVEN) {
            assertThat(read).isEqualTo(status);
        }
    }

    /** Bands of any width, even and lopsided, come back bit for bit. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void bandsComeBackBitForBit(Dimension dimension) {
        SplittableRandom random = new SplittableRandom(99 + dimension.ordinal());
        for (int i = 0; i < 40; i++) {
            double value = Math.pow(10, random.nextDouble(-6, 6));
            double half = value * Math.pow(10, random.nextDouble(-4, -0.1));
            double high = i % 2 == 0 ? value + half : value + half * random.nextDouble(0.1, 0.9);
            Figure figure = new Figure(value - half, value, high, Source.of("circuit file", Status.MEASURED));
            String text = Forms.write(figure, dimension);
            assertThat(Forms.figure(text, dimension)).as(text).isEqualTo(figure);
            assertThat(text).contains(i % 2 == 0 ? "+/-" : "between");
        }
    }
}
