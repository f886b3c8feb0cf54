package org.tenthwise.app.batch;

import java.io.InputStream;
import java.io.OutputStream;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.written.NotJson;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** Answers lines one after the other, and holds no more than one of them. */
public final class Batch {

    private final Sums sums;

    public Batch(Sums sums) {
        this.sums = sums;
    }

    /**
     * Answers every line of {@code in}. What is answered is out before more is waited for, so that whoever asks line by
     * line is answered line by line. Closes neither stream.
     *
     * @throws StreamBroke if a line could not be read or an answer could not be written
     */
    public void run(InputStream in, OutputStream out) throws StreamBroke {
        LineByLine.run(in, out, this::reply);
    }

    byte[] reply(long number, RawLine line) {
        if (line instanceof RawLine.Text text) {
            return reply(number, text.text());
        }
        return WrittenReply.refused(Id.NONE, number, ((RawLine.Unfit) line).why());
    }

    /** The one place where whatever a line may bring about ends as a sentence. */
    private byte[] reply(long number, String line) {
        BatchRequest question = new BatchRequest();
        try {
            question.read(line);
            String calc = question.calc();
            return sums.ask(calc, question.given())
                    .match(
                            answer -> WrittenReply.answered(question.id(), calc, answer),
                            problem -> WrittenReply.refused(question.id(), number, problem.why()));
        } catch (NotJson | CannotAnswer e) {
            return WrittenReply.refused(question.id(), number, Explained.why(e));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return WrittenReply.refused(question.id(), number, Message.of("json.failed", e));
        }
    }
}
