package org.tenthwise.app.export;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.words.Message;

/** Where a record first says something else than its entries do. */
final class Difference {

    private static final String CHARACTERISTICS = "/result/characteristics";

    private Difference() {}

    /**
     * A sentence; absent where both are the same, key for key and kind for kind. The order of keys means nothing.
     *
     * @param due what the entries come to
     */
    static Optional<Message> between(JsonNode written, JsonNode due) {
        if (written.equals(due)) {
            return Optional.empty();
        }
        JsonNode characteristics = due.at(CHARACTERISTICS);
        for (int i = 0; i < characteristics.size(); i++) {
            if (!characteristics.path(i).equals(written.at(CHARACTERISTICS).path(i))) {
                return Optional.of(Message.of(
                        "recorded.characteristic",
                        characteristics.path(i).path("number").asInt()));
            }
        }
        return Optional.of(Message.of("recorded.under", String.join("/", place(written, due))));
    }

    /** The keys down to the first node that differs. */
    private static List<String> place(JsonNode written, JsonNode due) {
        List<String> place = new ArrayList<>();
        JsonNode one = written;
        JsonNode other = due;
        while (true) {
            Optional<String> next = key(one, other);
            if (next.isEmpty()) {
                return place;
            }
            place.add(next.get());
            one = child(one, next.get());
            other = child(other, next.get());
        }
    }

    private static Optional<String> key(JsonNode one, JsonNode other) {
        if (one.isObject() && other.isObject()) {
            return differing(one.fieldNames(), one, other).or(() -> differing(other.fieldNames(), one, other));
        }
        if (one.isArray() && other.isArray()) {
            for (int i = 0; i < Math.max(one.size(), other.size()); i++) {
                if (!one.path(i).equals(other.path(i))) {
                    return Optional.of(String.valueOf(i));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<String> differing(Iterator<String> names, JsonNode one, JsonNode other) {
        while (names.hasNext()) {
            String name = names.next();
            if (!one.path(name).equals(other.path(name))) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }

    private static JsonNode child(JsonNode node, String key) {
        return node.isArray() ? node.path(Integer.parseInt(key)) : node.path(key);
    }
}
