package org.tenthwise.app.text;

import java.util.List;
import java.util.stream.Stream;

/**
 * What to do, a line each, in the order of the hand.
 *
 * @param first what goes for all of it; the whole of it where nothing is done by sections
 * @param sections what is done at each, the one nearer the jaws first; empty where nothing is done by sections
 */
public record ToDo(List<String> first, List<OfSection> sections) {

    public static final ToDo NOTHING = new ToDo(List.of(), List.of());

    /**
     * What is done at one section.
     *
     * @param name said before its first line, where the lines do not stand with its ring; empty where there is one
     *     section
     */
    public record OfSection(String name, List<String> lines) {
        public OfSection {
            lines = List.copyOf(lines);
        }

        /** The lines, the name before the first. */
        public List<String> named() {
            return name.isEmpty() || lines.isEmpty()
                    ? lines
                    : Stream.concat(
                                    Stream.of(name + " " + lines.get(0)),
                                    lines.stream().skip(1))
                            .toList();
        }
    }

    public ToDo {
        first = List.copyOf(first);
        sections = List.copyOf(sections);
    }

    /** @param said one or two sentences; nothing to do where it is empty */
    static ToDo of(String said) {
        return said.isEmpty() ? NOTHING : new ToDo(List.of(said), List.of());
    }

    public boolean isEmpty() {
        return lines().isEmpty();
    }

    /** All of it, each section under its name. */
    public List<String> lines() {
        return Stream.concat(first.stream(), sections.stream().flatMap(section -> section.named().stream()))
                .toList();
    }

    /** The same in one. */
    public String inOne() {
        return String.join(" ", lines());
    }
}
