package piecewright.publish;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** The answer to PROPFIND (RFC 4918, 14.16), read by namespace; document types are refused. */
final class Multistatus {
    static final String DAV = "DAV:";
    static final String CALDAV = "urn:ietf:params:xml:ns:caldav";

    private Multistatus() {}

    /**
     * One member of the answer.
     *
     * @param href as the server writes it, a path or a whole address
     * @param takesEvents false only if the server lists components and VEVENT is not among them
     */
    record Item(String href, Optional<String> etag, boolean calendar, boolean takesEvents) {}

    static List<Item> items(byte[] xml) throws ServerException {
        try {
            DocumentBuilder builder = factory().newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            Element root = builder.parse(new ByteArrayInputStream(xml)).getDocumentElement();
            List<Item> items = new ArrayList<>();
            for (Element response : all(root, DAV, "response")) items.add(item(response));
            return items;
        } catch (ParserConfigurationException | SAXException | IOException unreadable) {
            throw new ServerException("an answer that is not WebDAV");
        }
    }

    private static Item item(Element response) {
        String href = text(response, "href").orElse("");
        boolean calendar = !all(response, CALDAV, "calendar").isEmpty();
        List<Element> components = all(response, CALDAV, "comp");
        boolean takesEvents = components.isEmpty()
                || components.stream()
                        .anyMatch(component -> component.getAttribute("name").equalsIgnoreCase("VEVENT"));
        return new Item(href, text(response, "getetag"), calendar, takesEvents);
    }

    private static Optional<String> text(Element inside, String name) {
        return all(inside, DAV, name).stream()
                .map(element -> element.getTextContent().strip())
                .filter(text -> !text.isEmpty())
                .findFirst();
    }

    private static List<Element> all(Element inside, String namespace, String name) {
        NodeList nodes = inside.getElementsByTagNameNS(namespace, name);
        List<Element> elements = new ArrayList<>();
        for (int at = 0; at < nodes.getLength(); at++) {
            Node node = nodes.item(at);
            if (node instanceof Element element) elements.add(element);
        }
        return elements;
    }

    private static DocumentBuilderFactory factory() throws ParserConfigurationException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        factory.setXIncludeAware(false);
        factory.setExpandEntityReferences(false);
        return factory;
    }
}
