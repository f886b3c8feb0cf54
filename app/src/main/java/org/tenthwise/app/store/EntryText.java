package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Message;

/**
 * An entry as JSON text, all of it but its place in the ledger.
 *
 * <p>Keys come in one fixed order, sizes as text with their unit beside ({@code "35.010"} keeps its zero), whatever may
 * be absent is left out. Reading takes exactly what writing makes: a key missing or one too many is an error, for a
 * record must not be read by half. A kind this release does not know is read as {@link Event.Unknown}, its own fields
 * unread; so is an entry that says it takes a newer format to read it, whatever its kind.
 */
public final class EntryText {

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /** What bytes that are not UTF-8 are read as; it may have been typed, too. */
    private static final char STANDS_FOR_NO_SIGN = '\uFFFD';

    private EntryText() {}

    /** @throws IllegalArgumentException for an event of an unknown kind, which is kept and never written */
    public static String write(NewEntry added, Before before) {
        return write(added, before, EventKinds.of(added.event()));
    }

    static String write(NewEntry added, Before before, EventKind<?> kind) {
        ObjectNode entry = JsonNodeFactory.instance.objectNode();
        if (kind.format(added.event()) > EventKinds.FORMAT_UNSAID) {
            entry.put("format", kind.format(added.event()));
        }
        entry.put("run", added.run());
        before.write(entry.putObject("before"));
        entry.put("kind", kind.name());
        entry.put("at", added.at().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
        entry.put("by", added.by());
        kind.write(added.event(), entry.putObject("event"));
        try {
            return JSON.writeValueAsString(entry);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A tree of text and whole numbers can be written", e);
        }
    }

    /** The word an event's kind is stored under. */
    public static String kind(Event event) {
        return event.as(Event.Unknown.class).map(Event.Unknown::kind).orElseGet(() -> EventKinds.of(event)
                .name());
    }

    /** What a text says: the entry, and what came before it in its run. */
    record Said(Entry entry, Optional<Before> before) {}

    /** @param body UTF-8, as stored */
    public static Entry read(long seq, byte[] body) throws UnreadableEntry {
        return said(seq, body).entry();
    }

    /** @param body UTF-8, as stored */
    static Said said(long seq, byte[] body) throws UnreadableEntry {
        JsonFields fields = new JsonFields(tree(decoded(body)));
        int format = fields.wholeIfAny("format").map(Long::intValue).orElse(EventKinds.FORMAT_UNSAID);
        String run = fields.text("run");
        Optional<JsonFields> told = fields.objectIfAny("before");
        Optional<Before> before = told.isPresent() ? Optional.of(Before.read(told.get())) : Optional.empty();
        String kind = fields.text("kind");
        OffsetDateTime at = time(fields.text("at"));
        String by = fields.text("by");
        Optional<EventKind<?>> known = format > EventKinds.NEWEST_FORMAT ? Optional.empty() : EventKinds.named(kind);
        JsonFields own = fields.object("event");
        Event event = known.isPresent() ? known.get().read(own) : new Event.Unknown(kind, own.asText());
        if (format <= EventKinds.NEWEST_FORMAT) {
            fields.end();
        }
        return new Said(new Entry(seq, run, at, by, event), before);
    }

    private static String decoded(byte[] body) throws UnreadableEntry {
        String text = new String(body, UTF_8);
        if (text.indexOf(STANDS_FOR_NO_SIGN) < 0) {
            return text;
        }
        try {
            return UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString();
        } catch (CharacterCodingException e) {
            throw new UnreadableEntry(Message.of("entry.not-utf8"), e);
        }
    }

    private static ObjectNode tree(String text) throws UnreadableEntry {
        try {
            JsonNode tree = JSON.readTree(text);
            if (tree instanceof ObjectNode object) {
                return object;
            }
            throw new UnreadableEntry(Message.of("entry.no-object"));
        } catch (JsonProcessingException e) {
            throw new UnreadableEntry(Message.of("entry.not-json"), e);
        }
    }

    private static OffsetDateTime time(String text) throws UnreadableEntry {
        try {
            return EntryTime.read(text);
        } catch (DateTimeException e) {
            throw new UnreadableEntry(Message.of("entry.no-time", text), e);
        }
    }
}
