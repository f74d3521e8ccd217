package org.linedrop.fact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordsTest {
    private static final List<String> KNOWN = List.of("regulator", "filter", "pump", "length", "m");

    @Test
    void findsTheWordMeant() {
        assertThat(Words.nearest("regualtor", KNOWN)).contains("regulator");
        assertThat(Words.nearest("lenght", KNOWN)).contains("length");
        assertThat(Words.nearest("Pump", KNOWN)).contains("pump");
        assertThat(Words.nearest("fliter", KNOWN)).contains("filter");
        assertThat(Words.nearest("mm", KNOWN)).contains("m");
    }

    @Test
    void findsNothingWhereNothingIsNear() {
        assertThat(Words.nearest("carburettor", KNOWN)).isEmpty();
        assertThat(Words.nearest("k", KNOWN)).isEmpty();
        assertThat(Words.nearest("", KNOWN)).isEmpty();
        assertThat(Words.nearest("x".repeat(10000), KNOWN)).isEmpty();
    }
}
