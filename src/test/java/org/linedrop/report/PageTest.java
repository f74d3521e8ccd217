package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.Examples;
import org.linedrop.study.FeedCheck;
import org.linedrop.units.Display;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class PageTest {
    private static final FeedCheck FEED = Golden.example("fuel-feed-516.yaml");

    static List<String> examples() {
        return Examples.names();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleIsAWellFormedPageOfItsOwn(String example) {
        FeedCheck check = Golden.example(example);
        for (Display display : List.of(Display.METRIC, Display.US)) {
            String html = PageReport.html(check, display);
            Document page = Pages.read(html);
            assertThat(html).startsWith("<!DOCTYPE html>\n<html lang=\"en\">").doesNotContain("NaN", "Infinity");
            sentencesFirstSafetyLast(page, check, display);
            fetchesNothing(page, html);
            picturesAreDescribed(page);
        }
    }

    private static void sentencesFirstSafetyLast(Document page, FeedCheck check, Display display) {
        Element first = Pages.all(page, "section").get(0);
        List<String> said =
                Pages.in(first, "p").stream().map(Element::getTextContent).toList();
        assertThat(said)
                .containsExactlyElementsOf(new FeedCheck(Standing.leading(check.cases()))
                        .said(display).stream().map(FeedCheck.Said::sentence).toList());
        List<String> end = Pages.in(Pages.all(page, "footer").get(0), "p").stream()
                .map(Element::getTextContent)
                .toList();
        assertThat(end.subList(0, end.size() - 1)).endsWith(Safety.lines().toArray(new String[0]));
    }

    private static void fetchesNothing(Document page, String html) {
        for (String name :
                List.of("script", "link", "img", "iframe", "object", "embed", "image", "use", "base", "form")) {
            assertThat(Pages.all(page, name)).as(name).isEmpty();
        }
        for (Element each : Pages.all(page, "*")) {
            for (String name : List.of("src", "srcset", "action", "style", "onclick", "onload")) {
                assertThat(each.hasAttribute(name)).as(name).isFalse();
            }
            assertThat(each.getAttribute("href")).as("links stay in the page").matches("(#.+)?");
        }
        assertThat(html.replace("http://www.w3.org/2000/svg", "")).doesNotContain("://", "url(", "@import");
        assertThat(html).contains("default-src &#39;none&#39;; style-src &#39;unsafe-inline&#39;");
    }

    private static void picturesAreDescribed(Document page) {
        List<Element> pictures = Pages.all(page, "svg");
        assertThat(pictures).hasSizeGreaterThan(5);
        for (Element svg : pictures) {
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            assertThat(Pages.in(svg, "title").get(0).getTextContent()).isNotBlank();
            assertThat(Pages.in(svg, "desc").get(0).getTextContent()).hasSizeGreaterThan(40);
            assertThat(Pages.in(svg, "text")).isNotEmpty();
        }
    }

    @Test
    void linksLeadToSections() {
        Document page = Pages.read(PageReport.html(FEED, Display.METRIC));
        List<String> ids = Pages.all(page, "section").stream()
                .map(each -> each.getAttribute("id"))
                .toList();
        assertThat(ids).doesNotHaveDuplicates();
        assertThat(Pages.all(page, "a").stream()
                        .map(each -> each.getAttribute("href").substring(1)))
                .containsExactlyElementsOf(ids);
    }

    private static Picture picture(String name) {
        return Pictures.of(FEED, Display.METRIC).stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hostile.yaml",
                "long-names.yaml",
                "too-much.yaml",
                "brake.yaml",
                "returns.yaml",
                "../io/front-cooler.yaml"
            })
    void nothingAFileSaysBecomesMarkup(String file) {
        FeedCheck check = Golden.own(file);
        for (Display display : List.of(Display.METRIC, Display.US)) {
            String html = PageReport.html(check, display);
            Document page = Pages.read(html);
            fetchesNothing(page, html);
            assertThat(Pages.all(page, "h1").get(0).getTextContent())
                    .isEqualTo(
                            Plain.clean(check.cases().get(0).result().circuit().title()));
            for (Picture each : Pictures.of(check, display)) {
                Pages.read(each.svg());
            }
        }
    }

    @Test
    void brakesGetNoVerdict() {
        assertThat(PageReport.html(Golden.own("brake.yaml"), Display.METRIC))
                .contains("Volume, flow and swell only")
                .doesNotContain("verdict", ">holds", "ADEQUATE", "BROKEN", "UNSURE", "OVERSIZED");
    }

    @Test
    void whatWasNotSolvedHasNoFiguresAndTheRestHas() {
        Document page = Pages.read(PageReport.html(Golden.own("too-much.yaml"), Display.METRIC));
        List<String> headings =
                Pages.all(page, "h2").stream().map(Element::getTextContent).toList();
        assertThat(headings).contains("Case too much", "Case more", "Circuit");
        Element unsolved = Pages.all(page, "section").stream()
                .filter(each -> Pages.in(each, "h2").get(0).getTextContent().equals("Case too much"))
                .findFirst()
                .orElseThrow();
        assertThat(Pages.in(unsolved, "table")).isEmpty();
        assertThat(unsolved.getTextContent()).contains("Not solved, so there are no figures.");
    }

    @Test
    void furtherListsGetSectionsOfTheirOwn() {
        var catalogue = org.linedrop.catalogue.Catalogue.standard();
        var sizes = CatalogueReport.sizes(catalogue, List.of(catalogue.dashSize(6), catalogue.dashSize(8)));
        Document page = Pages.read(
                PageReport.html(FEED, Display.METRIC, List.of(new PageReport.Section("What to buy", sizes))));
        assertThat(Pages.all(page, "h2").stream().map(Element::getTextContent)).contains("What to buy");
        Element section = Pages.all(page, "section").stream()
                .filter(each -> Pages.in(each, "h2").get(0).getTextContent().equals("What to buy"))
                .findFirst()
                .orElseThrow();
        assertThat(Pages.in(Pages.in(section, "tbody").get(0), "tr")).hasSize(2);
    }

    @Test
    void picturesStandWhereTheFiguresSay() {
        // the staircase of the feed: each bar is as long as its row's drop on the picture's own scale
        Document svg = Pages.read(picture("pressure-2").svg());
        Map<Double, Double> marks = new java.util.TreeMap<>();
        Pattern number = Pattern.compile("\\d{3}(\\.\\d)?");
        for (Element text : Pages.all(svg, "text")) {
            Matcher mark = number.matcher(text.getTextContent());
            if (mark.matches() && text.getAttribute("text-anchor").equals("middle")) {
                marks.put(Double.parseDouble(text.getTextContent()), Double.parseDouble(text.getAttribute("x")));
            }
        }
        List<Double> kPa = new ArrayList<>(marks.keySet());
        double pxPerKPa = (marks.get(kPa.get(1)) - marks.get(kPa.get(0))) / (kPa.get(1) - kPa.get(0));
        double widest = Pages.all(svg, "rect").stream()
                .filter(rect -> rect.getAttribute("height").equals("9"))
                .mapToDouble(rect -> Double.parseDouble(rect.getAttribute("width")))
                .max()
                .orElseThrow();
        var line = FEED.cases().get(0).result().usual().rows("feed").stream()
                .filter(row -> row.row().equals("4.1"))
                .findFirst()
                .orElseThrow();
        assertThat(widest / pxPerKPa)
                .isCloseTo(line.frictionDropPa() / 1000, org.assertj.core.data.Offset.offset(0.02)); // 0.01 px
    }
}
