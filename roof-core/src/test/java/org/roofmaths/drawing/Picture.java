package org.roofmaths.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A picture read back from its text, for tests: it knows nothing of how it was written. */
final class Picture {
    private final Document document;

    private Picture(Document document) {
        this.document = document;
    }

    static Picture read(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            return new Picture(factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg))));
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + svg.substring(0, Math.min(200, svg.length())), e);
        }
    }

    Element root() {
        return document.getDocumentElement();
    }

    List<Element> all(String tag) {
        return elements(document.getElementsByTagNameNS("http://www.w3.org/2000/svg", tag));
    }

    static List<Element> within(Element parent, String tag) {
        return elements(parent.getElementsByTagNameNS("http://www.w3.org/2000/svg", tag));
    }

    private static List<Element> elements(NodeList nodes) {
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            Node node = nodes.item(i);
            if (node instanceof Element element) {
                found.add(element);
            }
        }
        return found;
    }

    long polygons(String kind) {
        return all("polygon").stream()
                .filter(p -> p.getAttribute("class").equals(kind))
                .count();
    }

    List<Element> dimensions() {
        return all("g").stream()
                .filter(g -> g.getAttribute("class").equals("dimension"))
                .toList();
    }

    double scale() {
        return Double.parseDouble(root().getAttribute("data-scale"));
    }

    /** The real length of a dimension's line, in millimetres. */
    double drawn(Element dimension) {
        Element line = within(dimension, "line").get(0);
        return Math.hypot(number(line, "x2") - number(line, "x1"), number(line, "y2") - number(line, "y1")) * scale();
    }

    static double printed(Element dimension) {
        String text = within(dimension, "text").get(0).getTextContent();
        return Double.parseDouble(text.substring(text.lastIndexOf(' ') + 1));
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** The box of a text: 0.6 of its height for each letter, 0.85 over and 0.25 under its line, turned as the text is. */
    static double[] box(Element text) {
        double size = number(text, "font-size");
        double width = text.getTextContent()
                .codePoints()
                .mapToDouble(c -> c < 0x1100 ? 0.6 * size : 1.1 * size)
                .sum();
        double x = number(text, "x");
        double y = number(text, "y");
        double from = switch (text.getAttribute("text-anchor")) {
            case "middle" -> -width / 2;
            case "end" -> -width;
            default -> 0;
        };
        double turn = 0;
        String transform = text.getAttribute("transform");
        if (transform.startsWith("rotate(")) {
            turn = Math.toRadians(Double.parseDouble(transform.substring(7, transform.indexOf(' '))));
        }
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (double dx : new double[] {from, from + width}) {
            for (double dy : new double[] {-0.85 * size, 0.25 * size}) {
                double px = x + dx * Math.cos(turn) - dy * Math.sin(turn);
                double py = y + dx * Math.sin(turn) + dy * Math.cos(turn);
                box[0] = Math.min(box[0], px);
                box[1] = Math.min(box[1], py);
                box[2] = Math.max(box[2], px);
                box[3] = Math.max(box[3], py);
            }
        }
        return box;
    }
}
