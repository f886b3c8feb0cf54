package org.tenthwise.app.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Word;

/** Takes the fields out of a JSON object one by one and notices what is missing and what is left over. */
final class JsonFields {

    private final ObjectNode object;

    JsonFields(ObjectNode object) {
        this.object = object;
    }

    String text(String key) throws UnreadableEntry {
        JsonNode value = value(key);
        if (!value.isTextual()) {
            throw new UnreadableEntry(Message.of("entry.no-text", key));
        }
        return value.textValue();
    }

    Optional<String> textIfAny(String key) throws UnreadableEntry {
        return object.has(key) ? Optional.of(text(key)) : Optional.empty();
    }

    /** Whether {@code key} is there and true; false is not written. */
    boolean isSo(String key) throws UnreadableEntry {
        if (!object.has(key)) {
            return false;
        }
        JsonNode value = value(key);
        if (!value.isBoolean() || !value.booleanValue()) {
            throw new UnreadableEntry(Message.of("entry.not-true", key));
        }
        return true;
    }

    long whole(String key) throws UnreadableEntry {
        JsonNode value = value(key);
        if (!value.isIntegralNumber() || !value.canConvertToLong()) {
            throw new UnreadableEntry(Message.of("entry.no-whole", key));
        }
        return value.longValue();
    }

    Optional<Long> wholeIfAny(String key) throws UnreadableEntry {
        return object.has(key) ? Optional.of(whole(key)) : Optional.empty();
    }

    int step(String key) throws UnreadableEntry {
        try {
            return Math.toIntExact(whole(key));
        } catch (ArithmeticException e) {
            throw new UnreadableEntry(Message.of("entry.no-step", key), e);
        }
    }

    JsonFields object(String key) throws UnreadableEntry {
        if (value(key) instanceof ObjectNode inner) {
            return new JsonFields(inner);
        }
        throw new UnreadableEntry(Message.of("entry.not-an-object", key));
    }

    Optional<JsonFields> objectIfAny(String key) throws UnreadableEntry {
        return object.has(key) ? Optional.of(object(key)) : Optional.empty();
    }

    /** The objects of a list, in their order; none where there is no such list. */
    List<JsonFields> objectsIfAny(String key) throws UnreadableEntry {
        if (!object.has(key)) {
            return List.of();
        }
        List<JsonFields> objects = new ArrayList<>();
        for (JsonNode item : value(key)) {
            if (!(item instanceof ObjectNode inner)) {
                throw new UnreadableEntry(Message.of("entry.not-an-object", key));
            }
            objects.add(new JsonFields(inner));
        }
        return objects;
    }

    /** The texts of a list, in their order; none where there is no such list. */
    List<String> textsIfAny(String key) throws UnreadableEntry {
        List<String> texts = new ArrayList<>();
        for (JsonNode item : itemsIfAny(key)) {
            if (!item.isTextual()) {
                throw new UnreadableEntry(Message.of("entry.no-text", key));
            }
            texts.add(item.textValue());
        }
        return texts;
    }

    /** The whole numbers of a list, in their order; none where there is no such list. */
    List<Long> wholesIfAny(String key) throws UnreadableEntry {
        List<Long> numbers = new ArrayList<>();
        for (JsonNode item : itemsIfAny(key)) {
            if (!item.isIntegralNumber() || !item.canConvertToLong()) {
                throw new UnreadableEntry(Message.of("entry.no-whole", key));
            }
            numbers.add(item.longValue());
        }
        return numbers;
    }

    private Iterable<JsonNode> itemsIfAny(String key) throws UnreadableEntry {
        return object.has(key) ? value(key) : List.of();
    }

    <E extends Enum<E>> E word(String key, Class<E> type) throws UnreadableEntry {
        String word = text(key);
        return Word.find(type, word)
                .orElseThrow(() -> new UnreadableEntry(Message.of("entry.word-unknown", word, key)));
    }

    <E extends Enum<E>> Optional<E> wordIfAny(String key, Class<E> type) throws UnreadableEntry {
        return object.has(key) ? Optional.of(word(key, type)) : Optional.empty();
    }

    /** All of them, none understood. */
    String asText() {
        return object.toString();
    }

    /** Says that nothing more is expected. */
    void end() throws UnreadableEntry {
        if (!object.isEmpty()) {
            throw new UnreadableEntry(
                    Message.of("entry.key-unknown", object.fieldNames().next()));
        }
    }

    private JsonNode value(String key) throws UnreadableEntry {
        JsonNode value = object.remove(key);
        if (value == null) {
            throw new UnreadableEntry(Message.of("entry.key-missing", key));
        }
        return value;
    }
}
