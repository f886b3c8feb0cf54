package org.tenthwise.app.batch;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Optional;

/**
 * Answers lines one after the other, and holds no more than one of them. What is answered is out before more is waited
 * for, so that whoever asks line by line is answered line by line. Closes neither stream.
 */
final class LineByLine {

    private static final int BUFFER = 1 << 16;

    private final OutputStream to;
    private long lines;

    private LineByLine(OutputStream to) {
        this.to = to;
    }

    /** What a line is answered with, its end included. */
    interface LineAnswer {
        byte[] to(long number, RawLine line);
    }

    /** @throws StreamBroke if a line could not be read or an answer could not be written */
    static void run(InputStream in, OutputStream out, LineAnswer answer) throws StreamBroke {
        LineByLine answers = new LineByLine(new BufferedOutputStream(out, BUFFER));
        RawLines lines = new RawLines(in, answers::flush);
        for (Optional<RawLine> line = answers.next(lines); line.isPresent(); line = answers.next(lines)) {
            answers.write(answer.to(answers.lines + 1, line.get()));
        }
        answers.flush();
    }

    private Optional<RawLine> next(RawLines in) throws StreamBroke {
        try {
            return in.next();
        } catch (StreamBroke e) {
            throw e;
        } catch (IOException e) {
            flush();
            throw StreamBroke.reading(lines + 1, e);
        }
    }

    private void write(byte[] line) throws StreamBroke {
        try {
            to.write(line);
            lines++;
        } catch (IOException e) {
            throw StreamBroke.writing(lines + 1, e);
        }
    }

    private void flush() throws StreamBroke {
        try {
            to.flush();
        } catch (IOException e) {
            throw StreamBroke.writing(lines, e);
        }
    }
}
