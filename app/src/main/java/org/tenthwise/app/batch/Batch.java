package org.tenthwise.app.batch;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Problem;
import org.tenthwise.app.sums.SumReply;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.written.NotJson;
import org.tenthwise.model.words.Explained;
import org.tenthwise.model.words.Message;

/** Answers lines one after the other, and holds no more than one of them. */
public final class Batch {

    private static final int BUFFER = 1 << 16;

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
        Output answers = new Output(new BufferedOutputStream(out, BUFFER));
        RawLines lines = new RawLines(in, answers::flush);
        for (Optional<RawLine> line = next(lines, answers); line.isPresent(); line = next(lines, answers)) {
            answers.write(reply(answers.lines + 1, line.get()));
        }
        answers.flush();
    }

    private static Optional<RawLine> next(RawLines lines, Output answers) throws StreamBroke {
        try {
            return lines.next();
        } catch (StreamBroke e) {
            throw e;
        } catch (IOException e) {
            answers.flush();
            throw StreamBroke.reading(answers.lines + 1, e);
        }
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
            SumReply reply = sums.ask(calc, question.given());
            return reply instanceof SumResult answer
                    ? WrittenReply.answered(question.id(), calc, answer)
                    : WrittenReply.refused(question.id(), number, ((Problem) reply).why());
        } catch (NotJson | CannotAnswer e) {
            return WrittenReply.refused(question.id(), number, Explained.why(e));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return WrittenReply.refused(question.id(), number, Message.of("json.failed", e));
        }
    }

    /** Counts what is out and says where writing broke. */
    private static final class Output {

        private final OutputStream to;
        private long lines;

        Output(OutputStream to) {
            this.to = to;
        }

        void write(byte[] line) throws StreamBroke {
            try {
                to.write(line);
                lines++;
            } catch (IOException e) {
                throw StreamBroke.writing(lines + 1, e);
            }
        }

        void flush() throws StreamBroke {
            try {
                to.flush();
            } catch (IOException e) {
                throw StreamBroke.writing(lines, e);
            }
        }
    }
}
