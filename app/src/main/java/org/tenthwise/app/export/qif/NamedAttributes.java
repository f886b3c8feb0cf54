package org.tenthwise.app.export.qif;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the standard has no element for: texts with a name, first in the element they belong to. */
final class NamedAttributes {

    private final List<XmlElement> attributes = new ArrayList<>();

    /** Nothing where there is nothing to say. */
    NamedAttributes and(String name, String value) {
        if (!value.isBlank()) {
            attributes.add(new XmlElement("AttributeStr").with("name", name).with("value", value));
        }
        return this;
    }

    NamedAttributes and(String name, Optional<String> value) {
        return and(name, value.orElse(""));
    }

    /** Absent where none is said. */
    Optional<XmlElement> element() {
        return attributes.isEmpty() ? Optional.empty() : Optional.of(XmlElement.list("Attributes", attributes));
    }
}
