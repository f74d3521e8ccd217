package org.linedrop.report;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Pages read back by a strict XML reader. */
final class Pages {
    private Pages() {}

    static Document read(String page) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder.parse(new InputSource(new StringReader(page)));
        } catch (ParserConfigurationException | IOException e) {
            throw new UncheckedIOException(new IOException(e));
        } catch (SAXException e) {
            throw new AssertionError("not well formed: " + e.getMessage(), e);
        }
    }

    static List<Element> all(Document page, String name) {
        return list(page.getElementsByTagNameNS("*", name));
    }

    static List<Element> in(Element element, String name) {
        return list(element.getElementsByTagNameNS("*", name));
    }

    private static List<Element> list(NodeList nodes) {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    /** The table of a caption within a section. */
    static Element table(Document page, String section, String caption) {
        return all(page, "section").stream()
                .filter(each -> in(each, "h2").get(0).getTextContent().equals(section))
                .flatMap(each -> in(each, "table").stream())
                .filter(table -> in(table, "caption").get(0).getTextContent().equals(caption))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no table \"" + caption + "\" in " + section));
    }

    /** The cell of a row under a heading. */
    static String cell(Element row, String heading) {
        List<Element> cells = new ArrayList<>(in(row, "th"));
        cells.addAll(in(row, "td"));
        return cells.stream()
                .filter(cell -> cell.getAttribute("data-head").equals(heading))
                .findFirst()
                .map(Element::getTextContent)
                .orElseThrow(() -> new AssertionError("no cell under " + heading));
    }
}
