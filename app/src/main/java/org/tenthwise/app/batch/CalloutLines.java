package org.tenthwise.app.batch;

import java.io.InputStream;
import java.io.OutputStream;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/** Reads callouts, a line each, and writes what each says or why it is refused. */
public final class CalloutLines {

    private final CalloutReader reader;

    public CalloutLines(CalloutReader reader) {
        this.reader = reader;
    }

    /**
     * Answers every line of {@code in}, in order. Closes neither stream.
     *
     * @throws StreamBroke if a line could not be read or an answer could not be written
     */
    public void run(InputStream in, OutputStream out) throws StreamBroke {
        LineByLine.run(in, out, (number, line) -> answer(line));
    }

    private byte[] answer(RawLine line) {
        return line instanceof RawLine.Text text
                ? answer(text.text())
                : WrittenCallout.refused("", ((RawLine.Unfit) line).why());
    }

    /** The one place where whatever a line may bring about ends as a sentence. */
    private byte[] answer(String text) {
        try {
            return WrittenCallout.read(reader.read(text), reader.ofDrawing());
        } catch (Refused e) {
            return WrittenCallout.refused(text, e.why());
        } catch (RuntimeException | StackOverflowError e) {
            return WrittenCallout.refused(text, Message.of("json.failed", e));
        }
    }
}
