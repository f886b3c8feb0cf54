package org.tenthwise.app.batch;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

/**
 * An answer or a refusal as one line of JSON. Every figure is a text of plain digits, so that no reader rounds it; what
 * is said is in English, and calls things by their keys.
 */
final class WrittenReply {

    private static final JsonFactory JSON = new JsonFactory();
    private static final Words WORDS = Words.ENGLISH.byKey();

    private WrittenReply() {}

    static byte[] answered(Id id, String calc, SumResult answer) {
        return line(to -> {
            id(id, to);
            to.writeStringField("calc", calc);
            to.writeBooleanField("ok", true);
            to.writeFieldName("result");
            write(answer.written(), to);
            to.writeStringField("basis", WORDS.say(answer.basis()));
            to.writeArrayFieldStart("notes");
            for (Message note : answer.notes()) {
                to.writeString(WORDS.say(note));
            }
            to.writeEndArray();
        });
    }

    static byte[] refused(Id id, long line, Message why) {
        return line(to -> {
            id(id, to);
            to.writeNumberField("line", line);
            to.writeBooleanField("ok", false);
            to.writeStringField("problem", WORDS.say(why));
        });
    }

    private static void id(Id id, JsonGenerator to) throws IOException {
        to.writeFieldName("id");
        id.write(to);
    }

    private static void write(SumValue value, JsonGenerator to) throws IOException {
        if (value instanceof SumValue.Text written) {
            to.writeString(written.text());
        } else if (value instanceof SumValue.Many many) {
            to.writeStartArray();
            for (SumValue each : many.values()) {
                write(each, to);
            }
            to.writeEndArray();
        } else if (value instanceof SumValue.Fields fields) {
            to.writeStartObject();
            for (Map.Entry<String, SumValue> each : fields.values().entrySet()) {
                to.writeFieldName(each.getKey());
                write(each.getValue(), to);
            }
            to.writeEndObject();
        }
    }

    /** What goes into a line. */
    interface Fields {
        void write(JsonGenerator to) throws IOException;
    }

    /** What is said, in English and by keys. */
    static String said(Message why) {
        return WORDS.say(why);
    }

    static byte[] line(Fields fields) {
        ByteArrayOutputStream line = new ByteArrayOutputStream(512);
        try (JsonGenerator to = JSON.createGenerator(line)) {
            to.writeStartObject();
            fields.write(to);
            to.writeEndObject();
            to.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return line.toByteArray();
    }
}
