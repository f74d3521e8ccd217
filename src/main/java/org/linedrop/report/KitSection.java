package org.linedrop.report;

import java.util.List;
import org.linedrop.study.kit.Kit;
import org.linedrop.units.Display;

/** What to buy, as a section of the page; the whole kit with its hoses and joints is {@link KitReport}. */
public final class KitSection {
    private KitSection() {}

    /**
     * Makes the section.
     *
     * @param kit     the kit
     * @param display units of the sentences
     * @return one section; none where there is nothing to buy
     */
    public static List<PageReport.Section> of(Kit kit, Display display) {
        if (kit.items().isEmpty()) {
            return List.of();
        }
        List<String> sentences = new KitSentences(kit, display).lines();
        Listing<?> list = Listing.of(
                "kit", sentences.get(0), KitColumns.items(kit), kit.items(), sentences.subList(1, sentences.size()));
        return List.of(new PageReport.Section("What to buy", list));
    }
}
