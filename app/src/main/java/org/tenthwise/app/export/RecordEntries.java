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
            entries.add(entry(entry));
        }
        return entries;
    }

    /** An entry by its columns; what is missing is empty or zero, and then does not hold. */
    public static StoredEntry entry(JsonNode columns) {
        return new StoredEntry(
                columns.path("seq").asLong(),
                columns.path("run").asText(),
                columns.path("kind").asText(),
                columns.path("at").asText(),
                columns.path("by").asText(),
                columns.path("body").asText(),
                columns.path("previous").asText(),
                columns.path("hash").asText());
    }
}
