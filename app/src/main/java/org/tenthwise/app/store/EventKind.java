package org.tenthwise.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.BiConsumer;
import java.util.function.ToIntFunction;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Explained;

/**
 * One kind of event: the word it is stored under, and how its own fields are written and read. A word once used stays,
 * for there are stores with it.
 *
 * @param format what it takes to read an entry of this kind at the least. It rises by one with each kind that is new,
 *     and with each word or field that a kind can say more; entries say it from 4 on, so that an older release knows
 *     that it does not understand them
 * @param words what it takes to read the words of one entry
 */
record EventKind<E extends Event>(
        String name,
        int format,
        ToIntFunction<E> words,
        Class<E> type,
        BiConsumer<E, ObjectNode> writer,
        Reader<E> reader) {

    /** One whose words were all there when the kind was new. */
    EventKind(String name, int format, Class<E> type, BiConsumer<E, ObjectNode> writer, Reader<E> reader) {
        this(name, format, event -> format, type, writer, reader);
    }

    /** Takes the fields of an event. */
    interface Reader<E> {
        E from(JsonFields fields) throws UnreadableEntry;
    }

    /**
     * What it takes to read that entry.
     *
     * @param event of this kind
     */
    int format(Event event) {
        return Math.max(format, words.applyAsInt(type.cast(event)));
    }

    /** @param event of this kind */
    void write(Event event, ObjectNode to) {
        writer.accept(type.cast(event), to);
    }

    E read(JsonFields from) throws UnreadableEntry {
        try {
            E event = reader.from(from);
            from.end();
            return event;
        } catch (IllegalArgumentException e) {
            throw new UnreadableEntry(Explained.why(e), e);
        }
    }
}
