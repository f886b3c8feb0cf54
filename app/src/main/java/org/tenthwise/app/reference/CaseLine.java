package org.tenthwise.app.reference;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.written.NotJson;
import org.tenthwise.app.sums.written.WrittenObject;

/**
 * One line of a file of cases, on its way to a case. Whatever is not as it should be is an IllegalArgumentException in
 * words.
 */
final class CaseLine {

    private static final Set<String> OF_A_CASE =
            Set.of("source", "standing", "case", "calc", "given", "published", "within", "why", "aside");
    private static final Set<String> OF_WHAT_IS_LEFT_OUT = Set.of("source", "case", "reason");

    private final Map<String, SumValue> keys;

    private CaseLine(String line, Set<String> allowed) {
        try {
            this.keys = WrittenObject.read(line);
        } catch (NotJson e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
        Set<String> unknown = new TreeSet<>(keys.keySet());
        unknown.removeAll(allowed);
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException("unknown key " + String.join(", ", unknown));
        }
    }

    static PublishedCase published(String line) {
        CaseLine read = new CaseLine(line, OF_A_CASE);
        String standing = read.text("standing");
        Map<String, BigDecimal> within = new LinkedHashMap<>();
        read.texts("within").forEach((key, text) -> within.put(key, new BigDecimal(text)));
        return new PublishedCase(
                read.text("source"),
                SourceKind.of(standing)
                        .orElseThrow(() -> new IllegalArgumentException("standing is \"%s\"".formatted(standing))),
                read.text("case"),
                read.text("calc"),
                read.table("given"),
                read.texts("published"),
                within,
                read.keys.containsKey("why") ? Optional.of(read.text("why")) : Optional.empty(),
                read.texts("aside"));
    }

    static LeftOut leftOut(String line) {
        CaseLine read = new CaseLine(line, OF_WHAT_IS_LEFT_OUT);
        return new LeftOut(read.text("source"), read.text("case"), read.text("reason"));
    }

    private String text(String key) {
        return plain(
                key,
                Optional.ofNullable(keys.get(key))
                        .orElseThrow(() -> new IllegalArgumentException(key + " is missing")));
    }

    private Map<String, SumValue> table(String key) {
        if (!keys.containsKey(key)) {
            return Map.of();
        }
        if (keys.get(key) instanceof SumValue.Fields table) {
            return table.values();
        }
        throw new IllegalArgumentException(key + " is no table");
    }

    private Map<String, String> texts(String key) {
        Map<String, String> texts = new LinkedHashMap<>();
        table(key).forEach((name, value) -> texts.put(name, plain(key + "." + name, value)));
        return texts;
    }

    private static String plain(String key, SumValue value) {
        if (value instanceof SumValue.Text written && !written.text().isBlank()) {
            return written.text();
        }
        throw new IllegalArgumentException(key + " is no text");
    }
}
