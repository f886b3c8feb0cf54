package org.tenthwise.app.batch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.words.Message;

class RawLinesTest {

    private static final RawLine TOO_LONG = new RawLine.Unfit(Message.of("json.too-many-bytes", 1_000_000));

    private static List<RawLine> lines(InputStream in) throws IOException {
        RawLines lines = new RawLines(in, () -> {});
        List<RawLine> all = new ArrayList<>();
        for (Optional<RawLine> line = lines.next(); line.isPresent(); line = lines.next()) {
            all.add(line.get());
        }
        return all;
    }

    private static List<RawLine> lines(String in) throws IOException {
        return lines(new ByteArrayInputStream(in.getBytes(UTF_8)));
    }

    private static RawLine text(String text) {
        return new RawLine.Text(text);
    }

    @Test
    void endsOfEitherKindEndALineAndTheLastMayHaveNone() throws IOException {
        assertEquals(List.of(text("a"), text("b"), text(""), text("c")), lines("a\nb\r\n\nc"));
        assertEquals(List.of(text("a")), lines("a\n"));
        assertEquals(List.of(text("")), lines("\r\n"));
        assertEquals(List.of(text("a\rb")), lines("a\rb\n"));
        assertEquals(List.of(), lines(""));
    }

    @Test
    void aMarkAtTheVeryBeginningIsNoPartOfTheLine() throws IOException {
        assertEquals(List.of(text("a"), text("\uFEFFb")), lines("\uFEFFa\n\uFEFFb\n"));
    }

    @Test
    void aLineOfTheGreatestLengthIsReadAndOneByteMoreIsNot() throws IOException {
        String most = "x".repeat(RawLines.MOST_BYTES);
        assertEquals(List.of(text(most), text("b")), lines(most + "\nb"));
        assertEquals(List.of(text(most), text("b")), lines(most + "\r\nb"));
        assertEquals(List.of(TOO_LONG, text("b")), lines(most + "x\nb"));
        assertEquals(List.of(TOO_LONG, text("b")), lines(most + "x\r\nb"));
        assertEquals(List.of(TOO_LONG), lines(most + "xx"));
    }

    /** Longer than an array can be. */
    @Test
    void aLineWithoutEndIsReadPastAndNotHeld() throws IOException {
        long most = 3_000_000_000L;
        InputStream endless = new InputStream() {
            private long left = most;

            @Override
            public int read() {
                throw new AssertionError("a chunk at a time is wanted");
            }

            @Override
            public int read(byte[] into, int from, int length) {
                if (left == 0) {
                    return -1;
                }
                int taken = (int) Math.min(length, left);
                left -= taken;
                into[from] = 'x';
                return taken;
            }
        };
        assertEquals(List.of(TOO_LONG), lines(endless));
    }

    @Test
    void whatTricklesInIsPutTogether() throws IOException {
        byte[] in = "{\"a\":\"\u00B5\"}\r\nb\n".getBytes(UTF_8);
        InputStream trickle = new ByteArrayInputStream(in) {
            @Override
            public synchronized int read(byte[] into, int from, int length) {
                return super.read(into, from, Math.min(1, length));
            }
        };
        assertEquals(List.of(text("{\"a\":\"\u00B5\"}"), text("b")), lines(trickle));
    }

    @Test
    void cutAndOverlongAndHalfCharactersAreNotUtf8() throws IOException {
        for (byte[] wrong : List.of(
                new byte[] {(byte) 0xC3},
                new byte[] {(byte) 0xC0, (byte) 0x80},
                new byte[] {(byte) 0xED, (byte) 0xA0, (byte) 0x80},
                new byte[] {(byte) 0xFF})) {
            List<RawLine> lines = lines(new ByteArrayInputStream(wrong));
            assertEquals(List.of(new RawLine.Unfit(Message.of("json.not-utf-8"))), lines);
        }
        assertTrue(lines("\u0000").get(0) instanceof RawLine.Text);
    }
}
