package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.linedrop.study.FeedCheck;
import org.linedrop.units.Display;

class PageOutputTest {
    private static final FeedCheck FEED = Golden.example("fuel-feed-516.yaml");

    @Test
    void theLanguageOfTheMachineChangesNoByte() {
        Locale before = Locale.getDefault();
        List<String> pages = new ArrayList<>();
        try {
            for (Locale locale : List.of(Locale.ROOT, new Locale("tr", "TR"), new Locale("ar", "EG"), Locale.GERMANY)) {
                Locale.setDefault(locale);
                pages.add(PageReport.html(FEED, Display.METRIC));
            }
        } finally {
            Locale.setDefault(before);
        }
        assertThat(pages).containsOnly(pages.get(0));
        Picture losses = Pictures.of(FEED, Display.METRIC).stream()
                .filter(each -> each.name().equals("losses"))
                .findFirst()
                .orElseThrow();
        Golden.same("fuel-feed-516.losses.svg", losses.svg());
    }
}
