package piecewright.chart;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Markup read back by the JDK's parser, which refuses what is not well-formed. */
public record Parsed(Document document) {
    public static Parsed of(String markup) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            return new Parsed(factory.newDocumentBuilder()
                    .parse(new ByteArrayInputStream(markup.getBytes(StandardCharsets.UTF_8))));
        } catch (Exception refused) {
            throw new AssertionError("not well-formed: " + refused, refused);
        }
    }

    /** Every element of that name; "*" is any. */
    public List<Element> all(String name) {
        NodeList found = document.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) elements.add((Element) found.item(i));
        return elements;
    }
}
