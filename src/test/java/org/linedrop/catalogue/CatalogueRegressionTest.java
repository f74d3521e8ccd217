package org.linedrop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.linedrop.fact.Figure;

/** Every family's -6 bore with band and source, as last looked through: a change of a row must be meant. */
class CatalogueRegressionTest {

    @Test
    void minus6BoresOfAllFamilies() throws IOException {
        Catalogue all = Catalogue.standard();
        List<String> now = HoseLookup.ofSize(all, "-6").stream()
                .map(CatalogueRegressionTest::line)
                .toList();
        assertThat(now).isEqualTo(expected());
        assertThat(all.families().stream().filter(HoseFamily::sizedByDash)).hasSize(now.size());
    }

    private static String line(HoseSize hose) {
        Figure bore = hose.boreM();
        return String.format(
                Locale.ROOT,
                "%s; %.3f; %.3f; %.3f; %s; %s; %s",
                hose.family(),
                bore.low() * 1e3,
                bore.value() * 1e3,
                bore.high() * 1e3,
                bore.status().word(),
                bore.source().title(),
                bore.source().locator());
    }

    private static List<String> expected() throws IOException {
        try (InputStream in = Objects.requireNonNull(
                CatalogueRegressionTest.class.getResourceAsStream("/validation/catalogue/minus_6_bores.txt"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> !l.startsWith("#"))
                    .toList();
        }
    }
}
