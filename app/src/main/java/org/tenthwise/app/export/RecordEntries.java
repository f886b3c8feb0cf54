package org.tenthwise.app.export;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.store.StoredEntry;

/** The entries a JSON record holds, as they were stored; whether they are sound is for {@link RecordCheck} to say. */
public final class RecordEntries {

    private RecordEntries() {}

    /** @throws IOException if the stream cannot be read or holds no JSON */
    public static List<StoredEntry> in(InputStream record) throws IOException {
        return of(JsonMapper.builder().build().readTree(record));
    }

    static List<StoredEntry> of(JsonNode record) {
        List<StoredEntry> entries = new ArrayList<>();
        for (JsonNode entry : record.path("entries")) {
            entries.add(new StoredEntry(
                    entry.path("seq").asLong(),
                    entry.path("run").asText(),
                    entry.path("kind").asText(),
                    entry.path("at").asText(),
                    entry.path("by").asText(),
                    entry.path("body").asText(),
                    entry.path("previous").asText(),
                    entry.path("hash").asText()));
        }
        return entries;
    }
}
