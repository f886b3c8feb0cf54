package org.tenthwise.checklists.format;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Pattern;

/**
 * How deep tables and lists lie in each other. No parser need be trusted with a text that goes deeper than a person
 * writes.
 */
final class Depth {

    static final int DEEPEST = 32;
    static final String TOO_DEEP =
            "lists or tables lie more than %d deep in each other; a plan needs five".formatted(DEEPEST);

    /** A key or a header as it begins a line, of names with points between them. */
    private static final Pattern DOTTED = Pattern.compile(
            "(?m)^[ \\t]*\\[{0,2}(?:[ \\t]*[A-Za-z0-9_\"'-]++[ \\t]*+\\.){%d,%d}+".formatted(DEEPEST, DEEPEST));

    private record Level(JsonNode node, int depth) {}

    private Depth() {}

    /** Whether a key or a header alone already goes too deep. */
    static boolean isTooDeepAsWritten(String text) {
        return DOTTED.matcher(text).find();
    }

    /** Without recursion, which is what deep nesting would bring down. */
    static boolean isTooDeep(JsonNode top) {
        Deque<Level> toDo = new ArrayDeque<>();
        toDo.push(new Level(top, 0));
        while (!toDo.isEmpty()) {
            Level level = toDo.pop();
            if (level.depth() > DEEPEST) {
                return true;
            }
            level.node().forEach(inner -> toDo.push(new Level(inner, level.depth() + 1)));
        }
        return false;
    }
}
