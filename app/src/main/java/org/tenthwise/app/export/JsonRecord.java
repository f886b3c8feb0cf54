package org.tenthwise.app.export;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import org.tenthwise.app.store.RunHead;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.run.Event;

/**
 * The record to keep: UTF-8, keys in one fixed order, sizes as text so that no reader rounds them.
 *
 * <p>It holds the plan to the byte with its hash, every entry of the run as it is stored with its hashes, and what they
 * come to. Nothing stands in it that the entries do not give, so that {@link RecordCheck} can make all of it again from
 * them: not who wrote it, nor when.
 */
public final class JsonRecord implements RecordFormat {

    /** What the file says it is, and by which rules. */
    static final String FORMAT = "tenthwise-record-3";
    /** What files said of themselves while what a gauge was set on stood among the corrections. */
    static final String SECOND_FORMAT = "tenthwise-record-2";
    /** What files said of themselves before their entries proved that none is missing. */
    static final String FIRST_FORMAT = "tenthwise-record-1";

    private final JsonMapper json = JsonMapper.builder()
            .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
            .build();

    @Override
    public String extension() {
        return "json";
    }

    @Override
    public String mediaType() {
        return "application/json";
    }

    @Override
    public boolean isSource() {
        return true;
    }

    @Override
    public void write(Evidence evidence, OutputStream out) throws IOException {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        printer.indentObjectsWith(lines);
        printer.indentArraysWith(lines);
        json.writer(printer).writeValue(out, tree(evidence));
        out.write('\n');
    }

    /** All that the file says. */
    static ObjectNode tree(Evidence evidence) {
        Event.Begun begun = evidence.sheet().run().begun();
        ObjectNode record = JsonNodeFactory.instance.objectNode();
        record.put("format", FORMAT);
        record.set("result", JsonSheet.of(evidence.sheet()));
        ObjectNode plan = record.putObject("plan");
        plan.put("sha256", begun.plan().sha256());
        plan.put("text", begun.plan().text());
        ArrayNode entries = record.putArray("entries");
        evidence.entries().forEach(entry -> write(entry, entries.addObject()));
        RunHead head = evidence.head();
        record.putObject("head")
                .put("entries", head.place())
                .put("last", head.seq())
                .put("hash", head.hash());
        return record;
    }

    private static void write(StoredEntry entry, ObjectNode to) {
        to.put("seq", entry.seq());
        to.put("run", entry.run());
        to.put("kind", entry.kind());
        to.put("at", entry.at());
        to.put("by", entry.by());
        to.put("body", entry.body());
        to.put("previous", entry.previous());
        to.put("hash", entry.hash());
    }
}
