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
import java.time.format.DateTimeFormatter;
import org.tenthwise.app.store.StoredEntry;
import org.tenthwise.model.run.Event;

/**
 * The record to keep: UTF-8, keys in one fixed order, sizes as text so that no reader rounds them.
 *
 * <p>It holds the plan to the byte with its hash, every entry of the run as it is stored with its hashes, the head of the
 * ledger, and what they come to. {@link RecordCheck} works the last out again from the first.
 */
public final class JsonRecord implements RecordFormat {

    /** What the file says it is, and by which rules. */
    static final String FORMAT = "tenthwise-record-1";

    private final JsonMapper json = JsonMapper.builder().disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET).build();

    @Override
    public String extension() {
        return "json";
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

    private static ObjectNode tree(Evidence evidence) {
        Event.Begun begun = evidence.sheet().run().begun();
        ObjectNode record = JsonNodeFactory.instance.objectNode();
        record.put("format", FORMAT);
        record.put("tool", evidence.tool());
        record.put("exported", evidence.exported().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
        record.set("result", JsonSheet.of(evidence.sheet()));
        ObjectNode plan = record.putObject("plan");
        plan.put("sha256", begun.plan().sha256());
        plan.put("text", begun.plan().text());
        ArrayNode entries = record.putArray("entries");
        evidence.entries().forEach(entry -> write(entry, entries.addObject()));
        record.putObject("head").put("seq", evidence.head().seq()).put("hash", evidence.head().hash());
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
