package org.tenthwise.app.export.qif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** An element of the document in the making. A list says by itself how many there are in it. */
final class XmlElement {

    /** How the standard calls the count of a list. */
    private static final String COUNT = "n";

    private final String name;
    private final boolean list;
    private final Map<String, String> attributes = new LinkedHashMap<>();
    private final List<XmlElement> children = new ArrayList<>();
    private String text = "";

    private XmlElement(String name, boolean list) {
        this.name = name;
        this.list = list;
    }

    XmlElement(String name) {
        this(name, false);
    }

    /** One with nothing but a text in it. */
    static XmlElement text(String name, String text) {
        XmlElement element = new XmlElement(name);
        element.text = XmlText.safe(text);
        return element;
    }

    /** A list of elements, with their number. */
    static XmlElement list(String name, List<XmlElement> of) {
        XmlElement list = new XmlElement(name, true);
        list.children.addAll(of);
        return list;
    }

    /** References to the elements with these ids. */
    static XmlElement references(String name, List<String> ids) {
        return list(name, ids.stream().map(id -> text("Id", id)).toList());
    }

    XmlElement with(String attribute, String value) {
        attributes.put(attribute, XmlText.safe(value));
        return this;
    }

    XmlElement add(XmlElement child) {
        children.add(child);
        return this;
    }

    XmlElement add(Optional<XmlElement> child) {
        child.ifPresent(children::add);
        return this;
    }

    XmlElement add(String child, String text) {
        return add(text(child, text));
    }

    /** Nothing where there is no text. */
    XmlElement addSaid(String child, String text) {
        return text.isBlank() ? this : add(child, text);
    }

    /** Nothing where the list is empty: the standard has no lists with nothing in them. */
    XmlElement addList(String child, List<XmlElement> of) {
        return of.isEmpty() ? this : add(list(child, of));
    }

    /** Nothing where there is nothing to refer to. */
    XmlElement addReferences(String child, List<String> ids) {
        return ids.isEmpty() ? this : add(references(child, ids));
    }

    String id() {
        return attributes.get(XmlIds.ATTRIBUTE);
    }

    /** @param depth how many elements stand around it */
    void write(XMLStreamWriter to, int depth) throws XMLStreamException {
        to.writeCharacters("\n" + "  ".repeat(depth));
        to.writeStartElement(name);
        for (Map.Entry<String, String> attribute : attributes.entrySet()) {
            to.writeAttribute(attribute.getKey(), attribute.getValue());
        }
        if (list) {
            to.writeAttribute(COUNT, String.valueOf(children.size()));
        }
        to.writeCharacters(text);
        for (XmlElement child : children) {
            child.write(to, depth + 1);
        }
        if (!children.isEmpty()) {
            to.writeCharacters("\n" + "  ".repeat(depth));
        }
        to.writeEndElement();
    }
}
