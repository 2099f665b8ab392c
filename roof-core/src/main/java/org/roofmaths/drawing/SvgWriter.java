package org.roofmaths.drawing;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.jspecify.annotations.Nullable;

/** Writes a sheet as SVG, in millimetres of paper, y down. */
final class SvgWriter {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final double HEAD = 2.4;
    private static final double TICK = 0.9;

    private final DrawingSheet sheet;
    private final StringWriter out = new StringWriter();
    private final XMLStreamWriter xml;
    private @Nullable String open;

    SvgWriter(DrawingSheet sheet) {
        this.sheet = sheet;
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
        } catch (XMLStreamException e) {
            throw new IllegalStateException("a writer to memory cannot fail", e);
        }
    }

    String write() {
        try {
            document();
            xml.flush();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("a writer to memory cannot fail", e);
        }
        return out.toString();
    }

    private void document() throws XMLStreamException {
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(SVG);
        xml.writeAttribute("width", number(sheet.width) + "mm");
        xml.writeAttribute("height", number(sheet.height) + "mm");
        xml.writeAttribute("viewBox", "0 0 " + number(sheet.width) + " " + number(sheet.height));
        xml.writeAttribute("role", "img");
        xml.writeAttribute("font-family", "sans-serif");
        xml.writeAttribute("data-scale", String.valueOf(sheet.drawing.scale().times()));
        element("title", sheet.drawing.title());
        element("desc", sheet.drawing.description());
        patterns();
        xml.writeEmptyElement("rect");
        xml.writeAttribute("width", "100%");
        xml.writeAttribute("height", "100%");
        xml.writeAttribute("fill", "white");
        for (Placed.Group group : sheet.groups) {
            startGroup(group.name());
            for (Placed.Item shape : group.shapes()) {
                shape(shape);
            }
            closeStyle();
            xml.writeEndElement();
        }
        startGroup("legend");
        for (Placed.Item sample : sheet.samples) {
            shape(sample);
        }
        closeStyle();
        xml.writeEndElement();
        dimensions();
        texts();
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private void element(String name, String text) throws XMLStreamException {
        xml.writeStartElement(name);
        xml.writeCharacters(clean(text));
        xml.writeEndElement();
    }

    private void startGroup(String name) throws XMLStreamException {
        xml.writeStartElement("g");
        xml.writeAttribute("data-layer", clean(name));
    }

    private void patterns() throws XMLStreamException {
        if (sheet.hatches.isEmpty()) {
            return;
        }
        xml.writeStartElement("defs");
        for (Fill fill : sheet.hatches) {
            xml.writeStartElement("pattern");
            xml.writeAttribute("id", fill.id());
            xml.writeAttribute("width", "3");
            xml.writeAttribute("height", "3");
            xml.writeAttribute("patternUnits", "userSpaceOnUse");
            xml.writeEmptyElement("rect");
            xml.writeAttribute("width", "3");
            xml.writeAttribute("height", "3");
            xml.writeAttribute("fill", "white");
            xml.writeEmptyElement("path");
            xml.writeAttribute("d", fill.hatch());
            xml.writeAttribute("stroke", "black");
            xml.writeAttribute("stroke-width", fill == Fill.DOTTED ? "0.35" : "0.18");
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    // Shapes; those of one style that follow each other share a group

    private void shape(Placed.Item shape) throws XMLStreamException {
        if (shape instanceof Placed.Stroke stroke) {
            style(stroke.kind(), null);
            line(stroke);
            if (stroke.headed()) {
                head(stroke);
            }
        } else if (shape instanceof Placed.Area area) {
            style(area.kind(), area.fill());
            StringBuilder points = new StringBuilder();
            for (int i = 0; i < area.corners().length; i += 2) {
                points.append(i == 0 ? "" : " ")
                        .append(x(area.corners()[i]))
                        .append(',')
                        .append(y(area.corners()[i + 1]));
            }
            xml.writeEmptyElement("polygon");
            xml.writeAttribute("class", clean(area.meaning()).replace(' ', '-'));
            xml.writeAttribute("points", points.toString());
        } else if (shape instanceof Placed.Curve curve) {
            style(curve.kind(), null);
            xml.writeEmptyElement("path");
            String radius = number(curve.radius());
            // against the clock with y up is flag 0 with y down
            xml.writeAttribute(
                    "d",
                    "M" + x(curve.x1()) + " " + y(curve.y1()) + "A" + radius + " " + radius + " 0 "
                            + (curve.large() ? 1 : 0) + " 0 " + x(curve.x2()) + " " + y(curve.y2()));
        }
    }

    private void style(LineKind kind, @Nullable Fill fill) throws XMLStreamException {
        String wanted = kind.name() + (fill == null ? "" : fill.name());
        if (wanted.equals(open)) {
            return;
        }
        closeStyle();
        xml.writeStartElement("g");
        xml.writeAttribute("stroke", "black");
        xml.writeAttribute("stroke-width", number(kind.width()));
        if (!kind.dashes().isEmpty()) {
            xml.writeAttribute("stroke-dasharray", kind.dashes());
        }
        xml.writeAttribute("stroke-linejoin", "round");
        xml.writeAttribute(
                "fill",
                fill == null || fill == Fill.NONE ? "none" : fill == Fill.WHITE ? "white" : "url(#" + fill.id() + ")");
        open = wanted;
    }

    private void closeStyle() throws XMLStreamException {
        if (open != null) {
            xml.writeEndElement();
            open = null;
        }
    }

    private void line(Placed.Stroke stroke) throws XMLStreamException {
        xml.writeEmptyElement("line");
        xml.writeAttribute("x1", x(stroke.x1()));
        xml.writeAttribute("y1", y(stroke.y1()));
        xml.writeAttribute("x2", x(stroke.x2()));
        xml.writeAttribute("y2", y(stroke.y2()));
    }

    private void head(Placed.Stroke stroke) throws XMLStreamException {
        double length = StrictMath.hypot(stroke.x2() - stroke.x1(), stroke.y2() - stroke.y1());
        if (length == 0) {
            return;
        }
        double ux = (stroke.x2() - stroke.x1()) / length * HEAD;
        double uy = (stroke.y2() - stroke.y1()) / length * HEAD;
        xml.writeEmptyElement("path");
        xml.writeAttribute("fill", "black");
        xml.writeAttribute("stroke-dasharray", "none");
        xml.writeAttribute(
                "d",
                "M" + x(stroke.x2()) + " " + y(stroke.y2())
                        + "L" + x(stroke.x2() - ux - uy / 3) + " " + y(stroke.y2() - uy + ux / 3)
                        + "L" + x(stroke.x2() - ux + uy / 3) + " " + y(stroke.y2() - uy - ux / 3) + "Z");
    }

    private void dimensions() throws XMLStreamException {
        startGroup("dimensions");
        xml.writeAttribute("stroke", "black");
        xml.writeAttribute("stroke-width", number(LineKind.DIMENSION.width()));
        for (Placed.Stroke leader : sheet.leaders) {
            line(leader);
        }
        for (Placed.Measured measured : sheet.dimensions) {
            xml.writeStartElement("g");
            xml.writeAttribute("class", "dimension");
            xml.writeAttribute("data-name", clean(measured.name()));
            line(measured.line());
            line(measured.first());
            line(measured.second());
            tick(measured.line().x1(), measured.line().y1());
            tick(measured.line().x2(), measured.line().y2());
            text(measured.text());
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private void tick(double x, double y) throws XMLStreamException {
        xml.writeEmptyElement("path");
        xml.writeAttribute("stroke-width", "0.35");
        xml.writeAttribute("d", "M" + x(x - TICK) + " " + y(y - TICK) + "L" + x(x + TICK) + " " + y(y + TICK));
    }

    private void texts() throws XMLStreamException {
        startGroup("texts");
        for (PlacedText label : sheet.labels) {
            text(label);
        }
        for (PlacedText words : sheet.frame) {
            text(words);
        }
        xml.writeEndElement();
    }

    private void text(PlacedText text) throws XMLStreamException {
        xml.writeStartElement("text");
        xml.writeAttribute("class", text.role());
        xml.writeAttribute("x", x(text.x()));
        xml.writeAttribute("y", y(text.y()));
        xml.writeAttribute("font-size", number(text.size()));
        xml.writeAttribute("text-anchor", text.anchor().toString());
        double degrees = -text.turn() * 180 / StrictMath.PI; // y is turned over, so is the way round
        if (StrictMath.abs(degrees) > 1e-6) {
            xml.writeAttribute("transform", "rotate(" + number(degrees) + " " + x(text.x()) + " " + y(text.y()) + ")");
        }
        xml.writeAttribute("fill", "black");
        // a white rim, so that the letters read over lines
        xml.writeAttribute("stroke", "white");
        xml.writeAttribute("stroke-width", "0.7");
        xml.writeAttribute("paint-order", "stroke");
        xml.writeCharacters(clean(text.text()));
        xml.writeEndElement();
    }

    private String x(double x) {
        return number(x - sheet.left);
    }

    private String y(double y) {
        return number(sheet.top - y);
    }

    /** A hundredth of a millimetre of paper is finer than any printer. */
    private static String number(double value) {
        long hundredths = StrictMath.round(value * 100);
        long whole = Math.abs(hundredths) / 100;
        long rest = Math.abs(hundredths) % 100;
        String sign = hundredths < 0 ? "-" : "";
        if (rest == 0) {
            return sign + whole;
        }
        return sign + whole + "."
                + (rest % 10 == 0 ? String.valueOf(rest / 10) : rest < 10 ? "0" + rest : String.valueOf(rest));
    }

    /** Replaces what XML does not allow, such as control characters and halves of characters. */
    private static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints()
                .map(c -> c == '\t' || c == '\n' || c == '\r' ? ' ' : c)
                .map(c -> c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000 ? c : 0xFFFD)
                .forEach(clean::appendCodePoint);
        return clean.toString();
    }
}
