package org.tenthwise.app.drafting;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.tenthwise.model.words.Refused;

/**
 * Reads an XML document that somebody sent: nothing but what stands in the file itself, no document type, no entity of
 * its own, and within bounds of size and depth.
 *
 * <p>Source: CWE-611 and CWE-776, what may come in through entities of a document.
 */
final class SafeXml {

    private static final long MOST_BYTES = 64_000_000;
    private static final int MOST_DEPTH = 64;
    private static final int MOST_ELEMENTS = 2_000_000;

    private final Path file;
    private final Set<String> passedOver;
    private int elements;

    /** @param passedOver elements that are not wanted, with all that is in them */
    SafeXml(Path file, Set<String> passedOver) {
        this.file = file;
        this.passedOver = passedOver;
    }

    /**
     * The root.
     *
     * @param space name space that it has to be in
     * @throws Refused if it is no such document, or none that is taken
     */
    XmlTree root(String space) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new Refused("list.too-long", file);
        }
        try (InputStream in = Files.newInputStream(file)) {
            XMLStreamReader reader = factory().createXMLStreamReader(in);
            try {
                return read(reader, space);
            } finally {
                reader.close();
            }
        } catch (XMLStreamException e) {
            throw new Refused("list.xml.malformed", file, line(e));
        }
    }

    private static int line(XMLStreamException e) {
        return e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNumber());
    }

    /** That of the JDK, whatever else is there: its settings are known. */
    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        return factory;
    }

    private XmlTree read(XMLStreamReader reader, String space) throws XMLStreamException {
        Deque<XmlTree.Growing> open = new ArrayDeque<>();
        while (true) {
            switch (reader.next()) {
                case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
                    throw new Refused("list.xml.document-type", file);
                case XMLStreamConstants.START_ELEMENT -> begin(reader, space, open);
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> say(reader.getText(), open);
                case XMLStreamConstants.END_ELEMENT -> {
                    XmlTree done = open.pop().grown();
                    if (open.isEmpty()) {
                        toTheEnd(reader);
                        return done;
                    }
                    open.element().add(done);
                }
                default -> {
                    // remarks, blanks around the root, and what is meant for other programs
                }
            }
        }
    }

    private static void say(String text, Deque<XmlTree.Growing> open) {
        if (!open.isEmpty()) {
            open.element().say(text);
        }
    }

    private void begin(XMLStreamReader reader, String space, Deque<XmlTree.Growing> open) throws XMLStreamException {
        if (open.isEmpty() && !space.equals(reader.getNamespaceURI())) {
            throw new Refused("list.qif.no-qif", file);
        }
        elements++;
        if (open.size() >= MOST_DEPTH || elements > MOST_ELEMENTS) {
            throw new Refused("list.xml.too-deep", file);
        }
        if (passedOver.contains(reader.getLocalName())) {
            passOver(reader);
        } else {
            open.push(new XmlTree.Growing(reader.getLocalName(), attributes(reader)));
        }
    }

    private static Map<String, String> attributes(XMLStreamReader reader) {
        Map<String, String> attributes = new LinkedHashMap<>();
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            attributes.put(reader.getAttributeLocalName(i), reader.getAttributeValue(i));
        }
        return attributes;
    }

    private static void passOver(XMLStreamReader reader) throws XMLStreamException {
        int depth = 1;
        while (depth > 0) {
            int event = reader.next();
            depth += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
        }
    }

    /** What stands behind the root is looked at, too: a file that was cut or joined is none. */
    private static void toTheEnd(XMLStreamReader reader) throws XMLStreamException {
        while (reader.hasNext()) {
            reader.next();
        }
    }
}
