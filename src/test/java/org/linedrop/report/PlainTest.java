package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;

class PlainTest {
    @Test
    void breaksAtSpacesAndCutsWhatHasNone() {
        assertThat(Plain.wrap("one two three", 7, 2)).containsExactly("one two", "  three");
        assertThat(Plain.wrap("abcdefghij", 4, 1)).containsExactly("abcd", " efg", " hij");
    }

    @Test
    void namesBringNoControlCharactersIntoATable() {
        assertThat(Plain.clean("a\u001b[31m\nb\u202ec")).isEqualTo("a [31m bc");
    }

    @Test
    void narrowTableTakesFromItsWords() {
        Table table = new Table().words("part", 2).numbers("drop", "kPa");
        table.row(List.of("word ".repeat(30).strip(), "1.00"));
        assertThat(table.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(Plain.WIDTH));
        assertThat(table.lines().get(2)).endsWith("1.00");
        assertThat(table.lines()).hasSize(4);
    }

    @Test
    void marginThatIsNotZeroDoesNotReadZero() {
        assertThat(Scale.usual(Dimension.GAUGE_PRESSURE).signed(-40, Display.METRIC))
                .isEqualTo("-0.04");
        assertThat(Scale.usual(Dimension.GAUGE_PRESSURE).signed(4_800, Display.METRIC))
                .isEqualTo("+4.8");
        assertThat(Scale.usual(Dimension.RATIO).signed(-0.004, Display.METRIC)).isEqualTo("-0.4");
    }

    @Test
    void versionIsThatOfTheBuild() throws java.io.IOException {
        String pom = java.nio.file.Files.readString(java.nio.file.Path.of("pom.xml"));
        String version = pom.substring(pom.indexOf("<version>") + 9, pom.indexOf("</version>"));
        assertThat(Library.version()).isEqualTo(version.replace("-SNAPSHOT", ""));
    }
}
