package org.tenthwise.app.batch;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.callout.Callout;
import org.tenthwise.model.callout.CalloutKind;
import org.tenthwise.model.callout.CalloutPart;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/**
 * A callout as one line of JSON: its parts, every figure a text of plain digits, or why it is refused, in English.
 * Figures stay in the unit they are written in, exact; where that is another than the drawing's, it is said.
 */
final class WrittenCallout {

    private WrittenCallout() {}

    /** @param ofDrawing in which figures are that have no unit of their own */
    static byte[] read(Callout callout, Unit ofDrawing) {
        return WrittenReply.line(to -> {
            to.writeStringField("text", callout.text());
            to.writeArrayFieldStart("parts");
            for (CalloutPart part : callout.parts()) {
                write(part, ofDrawing, to);
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

    private static void write(CalloutPart part, Unit ofDrawing, JsonGenerator to) throws IOException {
        to.writeStartObject();
        to.writeStringField("kind", part.kind().key());
        figure("nominal", part, part.nominal(), to);
        figure("lower", part, part.lower(), to);
        figure("upper", part, part.upper(), to);
        Optional<Unit> other = part.unit().filter(unit -> isToBeSaid(part, unit, ofDrawing));
        if (other.isPresent()) {
            to.writeStringField("unit", other.get().symbol());
        }
        if (part.count().isPresent()) {
            to.writeNumberField("count", part.count().get());
        }
        to.writeEndObject();
    }

    /** Angles are in degrees, and the kind says what a roughness is in. */
    private static boolean isToBeSaid(CalloutPart part, Unit unit, Unit ofDrawing) {
        return part.kind() == CalloutKind.SCALE || unit.isOfLength() && unit != ofDrawing;
    }

    private static void figure(String key, CalloutPart part, Optional<BigDecimal> figure, JsonGenerator to)
            throws IOException {
        if (figure.isPresent()) {
            to.writeStringField(key, part.decimal(figure.get()));
        }
    }
}
