package org.linedrop.fact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class FigureTest {
    private static final Source MEMORY = Source.of("trade", Status.FROM_MEMORY);

    @Test
    void bandHoldsTheValue() {
        Figure figure = Figure.within(8e-3, 0.03, MEMORY);
        assertThat(figure.low()).isEqualTo(7.76e-3);
        assertThat(figure.high()).isEqualTo(8.24e-3);
        assertThat(figure.hasBand()).isTrue();
        assertThat(Figure.exact(1, MEMORY).hasBand()).isFalse();
    }

    @Test
    void nanAndReversedBandsAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Figure.exact(Double.NaN, MEMORY));
        assertThatIllegalArgumentException().isThrownBy(() -> new Figure(2, 1, 3, MEMORY));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Figure.exact(1, MEMORY).times(0));
    }

    @Test
    void aMixtureTakesTheWeakerWord() {
        assertThat(Status.weaker(Status.STANDARD, Status.FROM_MEMORY)).isEqualTo(Status.FROM_MEMORY);
        assertThat(Status.weaker(Status.GUESSED, Status.MEASURED)).isEqualTo(Status.GUESSED);
        assertThat(Status.FROM_MEMORY.doubtful()).isTrue();
        assertThat(Status.PUBLISHED.doubtful()).isFalse();
    }
}
