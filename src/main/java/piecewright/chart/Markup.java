package piecewright.chart;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Text of HTML or SVG, element by element. The JDK's writer escapes every text and attribute, so that nobody's words can
 * become markup; what XML cannot hold becomes U+FFFD. Well-formed as XML and readable as HTML: only {@link #single}
 * elements close themselves.
 */
public final class Markup {
    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter xml;

    public Markup() {
        try {
            this.xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
        } catch (XMLStreamException never) {
            throw unwritten(never);
        }
    }

    /** Begins an element; attributes are names and values in turn. */
    public Markup open(String name, String... attributes) {
        try {
            xml.writeStartElement(name);
            attributes(attributes);
        } catch (XMLStreamException never) {
            throw unwritten(never);
        }
        return this;
    }

    /** Ends the element begun last. */
    public Markup close() {
        try {
            xml.writeCharacters("");
            xml.writeEndElement();
        } catch (XMLStreamException never) {
            throw unwritten(never);
        }
        return this;
    }

    /** An element that holds a text and nothing else. */
    public Markup leaf(String name, String words, String... attributes) {
        return open(name, attributes).text(words).close();
    }

    /** An element that holds nothing and closes itself, as br, meta and input do. */
    public Markup single(String name, String... attributes) {
        try {
            xml.writeEmptyElement(name);
            attributes(attributes);
        } catch (XMLStreamException never) {
            throw unwritten(never);
        }
        return this;
    }

    public Markup text(String words) {
        try {
            xml.writeCharacters(clean(words));
        } catch (XMLStreamException never) {
            throw unwritten(never);
        }
        return this;
    }

    /** Ends the line, so that a person can read the file too. */
    public Markup line() {
        return text("\n");
    }

    /** All that was written. */
    public String written() {
        try {
            xml.flush();
        } catch (XMLStreamException never) {
            throw unwritten(never);
        }
        return text.toString();
    }

    private void attributes(String... attributes) throws XMLStreamException {
        if (attributes.length % 2 != 0) throw new IllegalArgumentException("an attribute lacks its value");
        for (int i = 0; i < attributes.length; i += 2) xml.writeAttribute(attributes[i], clean(attributes[i + 1]));
    }

    private static String clean(String words) {
        StringBuilder kept = new StringBuilder(words.length());
        words.codePoints().map(point -> mayStand(point) ? point : 0xFFFD).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    /** Source: W3C, Extensible Markup Language 1.0, fifth edition, production 2, Char. */
    private static boolean mayStand(int point) {
        return point == '\t'
                || point == '\n'
                || point >= 0x20 && point <= 0xD7FF
                || point >= 0xE000 && point <= 0xFFFD
                || point >= 0x10000 && point <= 0x10FFFF;
    }

    private static IllegalStateException unwritten(XMLStreamException never) {
        return new IllegalStateException("a text in memory could not be written", never);
    }
}
