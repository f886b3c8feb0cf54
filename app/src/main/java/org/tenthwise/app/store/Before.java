package org.tenthwise.app.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.Optional;

/**
 * What an entry says came before it in its run.
 *
 * @param place its own place in the run, from 1
 * @param hash over the hashes of all entries of the run before it, {@link RunChain#START} where there are none
 */
public record Before(long place, String hash) {

    private static final JsonFactory JSON = new JsonFactory();

    /** Of the entry that is added behind this head. */
    public static Before after(RunHead head) {
        return new Before(head.place() + 1, head.hash());
    }

    /**
     * What the text of an entry says; absent from entries of releases that did not tie runs together, and where the
     * text cannot be read.
     */
    public static Optional<Before> in(String body) {
        try (JsonParser text = JSON.createParser(body)) {
            text.nextToken();
            while (text.nextToken() == JsonToken.FIELD_NAME) {
                String name = text.currentName();
                text.nextToken();
                if (name.equals("before")) {
                    return read(text);
                }
                text.skipChildren();
            }
            return Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    void write(ObjectNode to) {
        to.put("place", place);
        to.put("hash", hash);
    }

    static Before read(JsonFields from) throws UnreadableEntry {
        Before before = new Before(from.whole("place"), from.text("hash"));
        from.end();
        return before;
    }

    private static Optional<Before> read(JsonParser text) throws IOException {
        long place = 0;
        Optional<String> hash = Optional.empty();
        while (text.nextToken() == JsonToken.FIELD_NAME) {
            String name = text.currentName();
            text.nextToken();
            if (name.equals("place")) {
                place = text.getLongValue();
            } else if (name.equals("hash")) {
                hash = Optional.of(text.getText());
            }
        }
        long standing = place;
        return hash.map(sum -> new Before(standing, sum));
    }
}
