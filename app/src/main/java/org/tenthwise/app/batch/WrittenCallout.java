package org.tenthwise.app.batch;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.callout.Callout;
import org.tenthwise.model.callout.CalloutPart;
import org.tenthwise.model.words.Message;

/** A callout as one line of JSON: its parts, every figure a text of plain digits, or why it is refused, in English. */
final class WrittenCallout {

    private WrittenCallout() {}

    static byte[] read(Callout callout) {
        return WrittenReply.line(to -> {
            to.writeStringField("text", callout.text());
            to.writeArrayFieldStart("parts");
            for (CalloutPart part : callout.parts()) {
                write(part, to);
            }
            to.writeEndArray();
        });
    }

    static byte[] refused(String text, Message why) {
        return WrittenReply.line(to -> {
            to.writeStringField("text", text);
            to.writeStringField("refused", WrittenReply.said(why));
        });
    }

    private static void write(CalloutPart part, JsonGenerator to) throws IOException {
        to.writeStartObject();
        to.writeStringField("kind", part.kind().key());
        figure("nominal", part, part.nominal(), to);
        figure("lower", part, part.lower(), to);
        figure("upper", part, part.upper(), to);
        if (part.count().isPresent()) {
            to.writeNumberField("count", part.count().get());
        }
        to.writeEndObject();
    }

    private static void figure(String key, CalloutPart part, Optional<BigDecimal> figure, JsonGenerator to)
            throws IOException {
        if (figure.isPresent()) {
            to.writeStringField(key, part.decimal(figure.get()));
        }
    }
}
