package org.linedrop.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Service;
import org.linedrop.circuit.TradeUnits;
import org.linedrop.report.draw.Element;
import org.linedrop.result.RatingRow;
import org.linedrop.result.Result;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.CaseVerdict;
import org.linedrop.study.FeedCheck;
import org.linedrop.study.HoseSwell;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;

/**
 * A checked circuit as one page of its own for a screen of any width and for paper: the answer first, then pictures,
 * tables, and where all of it comes from. No script, nothing fetched: the page says so to the browser itself. The figures
 * are the text report's, cell by cell.
 */
public final class PageReport {
    private static final String NOTHING_ELSE = "default-src 'none'; style-src 'unsafe-inline'";

    private final List<CaseCheck> cases;
    private final Circuit circuit;
    private final Display display;
    private final List<Picture> pictures;
    private final @Nullable CaseCheck shown;
    private final Element body = Element.of("main");
    private final Element contents = Element.of("ul");

    private PageReport(FeedCheck check, Display display) {
        this.cases = check.cases();
        this.circuit = Pictures.circuit(cases);
        this.display = TradeUnits.of(circuit, display);
        this.pictures = Pictures.of(check, display);
        this.shown = Pictures.shown(cases).orElse(null);
    }

    /**
     * Makes the page.
     *
     * @param check   the cases, at least one
     * @param display units
     * @return HTML that is well-formed XML too, ending with a line end
     */
    public static String html(FeedCheck check, Display display) {
        return html(check, display, List.of());
    }

    /**
     * Makes the page with further lists, for example what to buy, in sections of their own.
     *
     * @param check   the cases, at least one
     * @param display units
     * @param more    sections to put behind the tables
     * @return HTML that is well-formed XML too, ending with a line end
     */
    public static String html(FeedCheck check, Display display, List<Section> more) {
        return new PageReport(check, display).page(more);
    }

    /**
     * A list with its heading on the page.
     *
     * @param heading the heading
     * @param list    the list
     */
    public record Section(String heading, Listing<?> list) {}

    private String page(List<Section> more) {
        answer();
        judgement();
        pictures();
        tables();
        for (Section each : more) {
            section(each.heading()).addAll(each.list().elements(display));
        }
        notices();
        provenance();
        Element head = Element.of("head")
                .add(Element.of("meta").set("charset", "utf-8"))
                .add(Element.of("meta")
                        .set("http-equiv", "Content-Security-Policy")
                        .set("content", NOTHING_ELSE))
                .add(Element.of("meta").set("name", "viewport").set("content", "width=device-width, initial-scale=1"))
                .add(Element.of("meta").set("name", "generator").set("content", "Linedrop " + Library.version()))
                .add(Element.of("title", circuit.title() + " - Linedrop"))
                .add(Element.of("style", style()));
        Element page = Element.of("html")
                .set("lang", "en")
                .add(head)
                .add(Element.of("body").add(header()).add(body).add(footer()));
        return "<!DOCTYPE html>\n" + page.write();
    }

    private static String style() {
        try (InputStream in = Objects.requireNonNull(PageReport.class.getResourceAsStream("page.css"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Element header() {
        List<String> facts = new ArrayList<>();
        Service service = circuit.service();
        if (service != null) {
            facts.add(service.word());
        }
        facts.add(circuit.surroundings().fluid().name() + " at "
                + display.text(circuit.surroundings().temperatureK().value(), Dimension.TEMPERATURE));
        facts.add(cases.size() == 1 ? "case " + cases.get(0).caseName() : cases.size() + " cases");
        return Element.of("header")
                .add(Element.of("h1", circuit.title()))
                .add(Element.of("p", String.join(" \u00b7 ", facts)).set("class", "facts"))
                .add(Element.of("nav").set("aria-label", "Contents").add(contents));
    }

    private Element section(String heading) {
        String id = "s-" + heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        contents.add(Element.of("li").add(Element.of("a", heading).set("href", "#" + id)));
        Element section = Element.of("section").set("id", id).add(Element.of("h2", heading));
        body.add(section);
        return section;
    }

    /** The worst case leads. */
    private void answer() {
        Element section = section("Answer");
        for (FeedCheck.Said each : new FeedCheck(Standing.leading(cases)).said(display)) {
            section.add(sentence(each.sentence())
                    .set("class", "answer " + tone(each.cases().get(0))));
        }
    }

    /** The verdict it starts with in heavy letters. */
    private static Element sentence(String text) {
        int colon = text.indexOf(':');
        boolean verdict = colon > 0 && text.substring(0, colon).matches("[A-Z][A-Z -]+");
        return verdict
                ? Element.of("p")
                        .add(Element.of("strong", text.substring(0, colon)))
                        .text(text.substring(colon))
                : Element.of("p", text);
    }

    private static String tone(CaseCheck check) {
        CaseVerdict verdict = check.verdict();
        if (!Standing.solved(check)) {
            return "bad";
        }
        if (verdict == null) {
            return "none";
        }
        return switch (verdict) {
            case ADEQUATE, OVERSIZED -> "good";
            case UNSURE -> "unsure";
            default -> "bad";
        };
    }

    private void judgement() {
        if (!Standing.judged(circuit)) {
            return;
        }
        List<RatingRow> ratings = Standing.ratings(cases);
        boolean limits = cases.stream().anyMatch(each -> !each.result().limits().isEmpty());
        if (!limits && ratings.isEmpty()) {
            return;
        }
        Element section = section("Cases and limits");
        if (limits) {
            CaseTables tables = new CaseTables(cases, display);
            if (cases.size() > 1) {
                section.addAll(PageTable.of(tables.caseTable(), "Cases: margin to each limit"));
            }
            section.addAll(PageTable.of(tables.limitTable(), "Limits in their worst case"));
            tables.notes().forEach(note -> section.add(Element.of("p", note).set("class", "note")));
        }
        CaseTables.rules(cases, display)
                .forEach(rule -> section.add(Element.of("p", rule).set("class", "note")));
        picture(section, "bands");
        if (!ratings.isEmpty()) {
            section.addAll(PageTable.of(RatingTable.table(ratings, display), "Hose ratings"));
        }
    }

    private void pictures() {
        if (shown != null) {
            String worst = Standing.judged(circuit) ? ", the worst of those solved." : ".";
            String of = cases.size() == 1 ? "" : "Case " + shown.caseName() + worst;
            Element diagram = section("Circuit");
            remark(diagram, of);
            picture(diagram, "circuit");
            Element pressure = section("Where pressure goes");
            remark(pressure, of);
            picture(pressure, "pressure-");
            picture(pressure, "losses");
        }
        if (pictures.stream().anyMatch(each -> each.name().startsWith("pump-"))) {
            picture(section("Pump and line"), "pump-");
        }
        if (pictures.stream().anyMatch(each -> each.name().equals("liners"))) {
            picture(section("Hose sizes"), "liners");
        }
    }

    private static void remark(Element section, String text) {
        if (!text.isEmpty()) {
            section.add(Element.of("p", text).set("class", "note"));
        }
    }

    /** Those whose name starts so. */
    private void picture(Element section, String name) {
        for (Picture each : pictures) {
            if (each.name().startsWith(name)) {
                section.add(Element.of("figure")
                        .set("class", "picture")
                        .add(Element.of("figcaption", each.title()))
                        .add(Element.of("div").set("class", "desk").add(each.wide()))
                        .add(Element.of("div").set("class", "hand").add(each.narrow())));
            }
        }
    }

    private void tables() {
        for (CaseCheck each : Standing.leading(cases)) {
            Element section = section(cases.size() == 1 ? "Tables" : "Case " + each.caseName());
            if (!Standing.solved(each)) {
                section.add(Element.of("p", "Not solved, so there are no figures."));
                continue;
            }
            Result result = each.result().usual();
            for (Run run : result.circuit().runs()) {
                run(section, new RunTable(result, run, display));
            }
            if (!result.devices().isEmpty()) {
                section.add(Element.of("h3", "Devices"));
                section.addAll(PageTable.of(DeviceTable.table(result.devices(), display), "Devices"));
            }
            List<HoseSwell> swells = HoseSwell.of(result);
            if (!swells.isEmpty()) {
                section.add(Element.of("h3", "Hose swell"));
                section.addAll(
                        PageTable.of(SwellTable.table(swells, display), "Hose swell: the most that new hose may have"));
                SwellTable.notes(swells, display)
                        .forEach(note -> section.add(Element.of("p", note).set("class", "note")));
            }
            section.add(Element.of("h3", "Points"));
            section.addAll(PageTable.of(PointTable.of(each.result(), display), "Points"));
        }
        if (shown != null) {
            Element section = section("Reading the tables");
            Footnotes.of(shown.result().usual())
                    .forEach(note -> section.add(Element.of("p", note).set("class", "note")));
        }
    }

    private static void run(Element section, RunTable table) {
        List<String> heading = table.heading();
        section.add(Element.of("h3", heading.get(0)));
        String rest = String.join(" \u00b7 ", heading.subList(1, heading.size()));
        section.add(Element.of("p", rest).set("class", "note"));
        if (table.isEmpty()) {
            section.add(Element.of("p", "no parts"));
            return;
        }
        section.addAll(PageTable.of(table.table(), heading.get(0)));
        table.gauge().ifPresent(text -> section.add(Element.of("p", text).set("class", "note")));
    }

    private void notices() {
        List<CaseCheck> solved = cases.stream().filter(Standing::solved).toList();
        list("Warnings", Notices.said(solved, Notices::warnings));
        list("Assumptions", Notices.said(cases, Standing::assumptions));
    }

    private void list(String heading, List<String> items) {
        if (!items.isEmpty()) {
            Element list = Element.of("ul");
            items.forEach(item -> list.add(Element.of("li", item)));
            section(heading).add(list);
        }
    }

    private void provenance() {
        Element section = section("Where the figures come from");
        Result result = cases.get(0).result().usual();
        Table bores = Provenance.table(shown == null ? result : shown.result().usual(), display);
        if (!bores.rows().isEmpty()) {
            section.add(Element.of("h3", "Bores"));
            section.addAll(PageTable.of(bores, "Bores and their sources"));
        }
        section.add(Element.of("h3", circuit.surroundings().fluid().name()));
        section.addAll(PageTable.of(
                Listing.table(
                        FluidColumns.PROPERTIES, circuit.surroundings().fluid().properties(), display),
                "Fluid properties and their sources"));
        section.add(Element.of(
                        "p",
                        "How any row came about, with its laws and their sources: linedrop explain FILE --row \"RUN ROW\".")
                .set("class", "note"));
    }

    private Element footer() {
        Element footer = Element.of("footer");
        Safety.cautions(circuit.service()).forEach(line -> footer.add(Element.of("p", line)));
        Safety.lines().forEach(line -> footer.add(Element.of("p", line)));
        return footer.add(Element.of("p", "Linedrop " + Library.version()).set("class", "note"));
    }
}
