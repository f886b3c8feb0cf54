package org.tenthwise.app.batch;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumResult.OutputValue;

/** An answer or a refusal as one line of JSON. Every figure is a text of plain digits, so that no reader rounds it. */
final class WrittenReply {

    private static final JsonFactory JSON = new JsonFactory();

    private WrittenReply() {}

    static byte[] answered(Id id, String calc, SumResult answer) {
        return line(to -> {
            id(id, to);
            to.writeStringField("calc", calc);
            to.writeBooleanField("ok", true);
            to.writeFieldName("result");
            table(answer.results(), to);
            to.writeStringField("basis", answer.basis());
            to.writeArrayFieldStart("notes");
            for (String note : answer.notes()) {
                to.writeString(note);
            }
            to.writeEndArray();
        });
    }

    static byte[] refused(Id id, long line, String words) {
        return line(to -> {
            id(id, to);
            to.writeNumberField("line", line);
            to.writeBooleanField("ok", false);
            to.writeStringField("problem", words);
        });
    }

    private static void id(Id id, JsonGenerator to) throws IOException {
        to.writeFieldName("id");
        id.write(to);
    }

    private static void worked(OutputValue worked, JsonGenerator to) throws IOException {
        if (worked instanceof OutputValue.Plain plain) {
            to.writeString(plain.text());
        } else if (worked instanceof OutputValue.Many many) {
            to.writeStartArray();
            for (OutputValue value : many.values()) {
                worked(value, to);
            }
            to.writeEndArray();
        } else if (worked instanceof OutputValue.Table inner) {
            table(inner.values(), to);
        }
    }

    private static void table(List<SumResult.Result> results, JsonGenerator to) throws IOException {
        to.writeStartObject();
        for (SumResult.Result result : results) {
            to.writeFieldName(result.key());
            worked(result.value(), to);
        }
        to.writeEndObject();
    }

    private interface Fields {
        void write(JsonGenerator to) throws IOException;
    }

    private static byte[] line(Fields fields) {
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
