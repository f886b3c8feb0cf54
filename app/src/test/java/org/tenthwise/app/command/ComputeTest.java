package org.tenthwise.app.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

class ComputeTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    private static InputStream lines(String... lines) {
        return new ByteArrayInputStream(String.join("\n", lines).getBytes(UTF_8));
    }

    @Test
    void everyLineAnsweredIsWellWhateverTheAnswers() {
        Typed typed = Typed.piped(lines("garbage", "{\"id\":\"b\",\"calc\":\"nothing\"}"), out);
        assertEquals(Exit.WELL, typed.exit());
        assertEquals(List.of(), typed.out());
        assertEquals(List.of(), typed.err());
        List<String> answers = out.toString(UTF_8).lines().toList();
        assertEquals(2, answers.size());
        assertTrue(answers.get(1)
                .startsWith(
                        "{\"id\":\"b\",\"line\":2,\"ok\":false,\"problem\":\"calc is \\\"nothing\\\": it is one of "));
    }

    @Test
    void theSumsAreListedWithWhatTheyTakeGiveAndRestOn() {
        List<String> listed = Typed.piped(lines(), out, "--sums").out();
        int at = listed.indexOf("lever");
        assertEquals(
                List.of(
                        "lever",
                        "  in: reading, angle",
                        "  out: true_reading",
                        "  basis: geometry of a lever with a ball tip, exact cosine"),
                listed.subList(at, at + 4));
    }

    /**
     * 34 c11: Shigley's Mechanical Engineering Design, 9th ed., p. 398, Example 7-7, prints a shaft of 33.72 to 33.88.
     * A gauge whose number falls as the size grows reads 0.007 in on a master of 2.000 in: by hand, 1.993. On the limit
     * is a pass by ISO 14253-1 without a guard band.
     */
    @Test
    void lengthsOutAreInTheUnitOfLengthsIn() {
        Typed typed = Typed.piped(
                lines(
                        "{\"id\":\"a\",\"calc\":\"limits\",\"unit\":\"mm\",\"diameter\":\"34\",\"zone\":\"c11\"}",
                        "{\"id\":\"b\",\"calc\":\"from-master\",\"unit\":\"in\",\"master\":\"2.000\","
                                + "\"reading\":\"0.007\",\"sense\":-1}",
                        "{\"id\":\"c\",\"calc\":\"judge\",\"unit\":\"mm\",\"lower\":\"29.980\","
                                + "\"upper\":\"30.001\",\"value\":\"30.001\"}",
                        "{\"id\":\"d\",\"calc\":\"judge\",\"unit\":\"mm\",\"lower\":\"29.980\","
                                + "\"upper\":\"30.001\",\"value\":30.0010000000000000001}"),
                out);
        assertEquals(Exit.WELL, typed.exit());
        List<String> answers = out.toString(UTF_8).lines().toList();
        assertTrue(
                answers.get(0)
                        .startsWith("{\"id\":\"a\",\"calc\":\"limits\",\"ok\":true,"
                                + "\"result\":{\"upper_deviation\":\"-0.120000\","
                                + "\"lower_deviation\":\"-0.280000\",\"greatest\":\"33.880000\","
                                + "\"least\":\"33.720000\"},\"basis\":\""),
                answers.get(0));
        assertTrue(
                answers.get(1)
                        .startsWith("{\"id\":\"b\",\"calc\":\"from-master\",\"ok\":true,"
                                + "\"result\":{\"size\":\"1.99300000\"}"),
                answers.get(1));
        assertTrue(
                answers.get(2)
                        .startsWith("{\"id\":\"c\",\"calc\":\"judge\",\"ok\":true,\"result\":{\"verdict\":\"pass\","
                                + "\"distance\":\"0.000000\""),
                answers.get(2));
        assertTrue(
                answers.get(3)
                        .startsWith("{\"id\":\"d\",\"calc\":\"judge\",\"ok\":true,\"result\":{\"verdict\":\"fail\""),
                answers.get(3));
    }

    @Test
    void nothingToAnswerIsWell() {
        assertEquals(Exit.WELL, Typed.piped(InputStream.nullInputStream(), out).exit());
        assertEquals(0, out.size());
    }

    @Test
    void aBrokenOutputIsOneLineAndExitTwo() {
        Typed typed = Typed.piped(lines("{}"), new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException("Broken pipe");
            }
        });
        assertEquals("Writing broke at line 1: Broken pipe.", typed.trouble());
    }

    @Test
    void aBrokenInputIsOneLineAndExitTwo() {
        Typed typed = Typed.piped(
                new InputStream() {
                    @Override
                    public int read() throws IOException {
                        throw new IOException("Is a directory");
                    }
                },
                out);
        assertEquals("Reading broke at line 1: Is a directory.", typed.trouble());
    }
}
