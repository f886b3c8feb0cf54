package org.tenthwise.app.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An element of an XML document with what is in it.
 *
 * @param name without its name space
 * @param text between its children, joined and without blanks around it
 */
record XmlTree(String name, Map<String, String> attributes, List<XmlTree> children, String text) {

    XmlTree {
        attributes = Map.copyOf(attributes);
        children = List.copyOf(children);
    }

    /** The first at a path of names from here. */
    Optional<XmlTree> at(String... path) {
        Optional<XmlTree> here = Optional.of(this);
        for (String step : path) {
            here = here.flatMap(tree -> tree.children().stream()
                    .filter(child -> child.name().equals(step))
                    .findFirst());
        }
        return here;
    }

    /** Its text; absent where there is none. */
    Optional<String> said(String... path) {
        return at(path).map(XmlTree::text).filter(text -> !text.isEmpty());
    }

    Optional<String> attribute(String of) {
        return Optional.ofNullable(attributes.get(of));
    }

    /** All that have an id, however deep they lie. */
    Stream<XmlTree> all() {
        return Stream.concat(Stream.of(this), children.stream().flatMap(XmlTree::all));
    }

    /** One that is still being read. */
    static final class Growing {

        private final String name;
        private final Map<String, String> attributes;
        private final List<XmlTree> children = new ArrayList<>();
        private final StringBuilder text = new StringBuilder();

        Growing(String name, Map<String, String> attributes) {
            this.name = name;
            this.attributes = attributes;
        }

        void add(XmlTree child) {
            children.add(child);
        }

        void say(String more) {
            text.append(more);
        }

        XmlTree grown() {
            return new XmlTree(name, attributes, children, text.toString().strip());
        }
    }
}
