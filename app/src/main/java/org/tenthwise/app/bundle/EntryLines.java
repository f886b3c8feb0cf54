package org.tenthwise.app.bundle;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tenthwise.app.export.RecordEntries;
import org.tenthwise.app.store.StoredEntry;

/** The entries of a run as they are stored, a JSON object a line. What is read is what would be written of it. */
final class EntryLines {

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private EntryLines() {}

    static byte[] write(List<StoredEntry> entries) {
        StringBuilder lines = new StringBuilder();
        for (StoredEntry entry : entries) {
            try {
                lines.append(JSON.writeValueAsString(JsonNodeFactory.instance
                                .objectNode()
                                .put("seq", entry.seq())
                                .put("run", entry.run())
                                .put("kind", entry.kind())
                                .put("at", entry.at())
                                .put("by", entry.by())
                                .put("body", entry.body())
                                .put("previous", entry.previous())
                                .put("hash", entry.hash())))
                        .append('\n');
            } catch (JsonProcessingException e) {
                throw new IllegalStateException("A tree of text and whole numbers can be written", e);
            }
        }
        return lines.toString().getBytes(UTF_8);
    }

    /** @param name of the file, for what is said */
    static List<StoredEntry> read(byte[] text, String name) throws NotABundle {
        List<StoredEntry> entries = new ArrayList<>();
        try {
            for (String line : (Iterable<String>) new String(text, UTF_8).lines()::iterator) {
                entries.add(RecordEntries.entry(JSON.readTree(line)));
            }
        } catch (JsonProcessingException e) {
            throw NotABundle.because("bundle.entries", name);
        }
        if (entries.isEmpty() || !Arrays.equals(write(entries), text)) {
            throw NotABundle.because("bundle.entries", name);
        }
        return List.copyOf(entries);
    }
}
