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
        assertTrue(answers.get(1).startsWith("{\"id\":\"b\",\"line\":2,\"ok\":false,\"problem\":\"calc is \\\"nothing\\\": it is one of "));
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
        Typed typed = Typed.piped(new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("Is a directory");
            }
        }, out);
        assertEquals("Reading broke at line 1: Is a directory.", typed.trouble());
    }
}
