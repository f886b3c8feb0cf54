package org.tenthwise.app.batch;

import java.io.ByteArrayOutputStream;
import java.io.Flushable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.tenthwise.model.words.Message;

/**
 * Lines of UTF-8, each ended by a line feed, with or without a carriage return before it; the last may have no end. A
 * line that is too long is read past and never held.
 */
final class RawLines {

    static final int MOST_BYTES = 1_000_000;

    private static final int CHUNK = 1 << 16;
    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final InputStream in;
    private final Flushable beforeWaiting;
    private final CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    private final byte[] chunk = new byte[CHUNK];
    private int from;
    private int to;
    private boolean first = true;

    /** @param beforeWaiting flushed each time before more is read from {@code in} */
    RawLines(InputStream in, Flushable beforeWaiting) {
        this.in = in;
        this.beforeWaiting = beforeWaiting;
    }

    /** The next line; absent at the end. */
    Optional<RawLine> next() throws IOException {
        Held line = new Held();
        while (true) {
            if (from == to && !more()) {
                return line.begun ? Optional.of(read(line)) : Optional.empty();
            }
            int end = from;
            while (end < to && chunk[end] != '\n') {
                end++;
            }
            line.take(chunk, from, end);
            from = end;
            if (end < to) {
                from++;
                return Optional.of(read(line));
            }
        }
    }

    private boolean more() throws IOException {
        beforeWaiting.flush();
        from = 0;
        to = Math.max(0, in.read(chunk));
        return to > 0;
    }

    private RawLine read(Held line) {
        boolean mayBeMarked = first;
        first = false;
        if (line.tooLong()) {
            return new RawLine.Unfit(Message.of("json.too-many-bytes", MOST_BYTES));
        }
        byte[] bytes = line.toByteArray();
        int start = mayBeMarked && isMarked(bytes) ? BYTE_ORDER_MARK.length : 0;
        int end = bytes.length > start && bytes[bytes.length - 1] == '\r' ? bytes.length - 1 : bytes.length;
        try {
            return new RawLine.Text(
                    decoder.decode(ByteBuffer.wrap(bytes, start, end - start)).toString());
        } catch (CharacterCodingException e) {
            return new RawLine.Unfit(Message.of("json.not-utf-8"));
        }
    }

    private static boolean isMarked(byte[] bytes) {
        for (int i = 0; i < BYTE_ORDER_MARK.length; i++) {
            if (i >= bytes.length || bytes[i] != BYTE_ORDER_MARK[i]) {
                return false;
            }
        }
        return true;
    }

    /** What is held of a line: all of it, or nothing once it is too long. */
    private static final class Held {

        /** A carriage return at the end does not count. */
        private static final int MOST_HELD = MOST_BYTES + 1;

        private ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        private long length;
        private boolean begun;

        void take(byte[] chunk, int from, int to) {
            begun = true;
            length += to - from;
            if (length > MOST_HELD) {
                bytes = new ByteArrayOutputStream(0);
            } else {
                bytes.write(chunk, from, to - from);
            }
        }

        boolean tooLong() {
            return length > MOST_HELD || length == MOST_HELD && bytes.toByteArray()[MOST_BYTES] != '\r';
        }

        byte[] toByteArray() {
            return bytes.toByteArray();
        }
    }
}
