package org.tenthwise.app.batch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.SequenceInputStream;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.OutputValues;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Message;

class BatchTest {

    /** Twice a length; what it makes of the word {@code deep} nobody thought of. */
    private static final class Twice implements Sum {

        private static final Input<Length> LENGTH = Input.length("length");
        private static final Input<String> WORD = Input.name("word").optional();
        private static final Output<String> B = Output.word("b");

        @Override
        public SumDescription description() {
            return SumDescription.named("twice").takes(LENGTH, WORD);
        }

        @Override
        public SumResult of(SumInput given) {
            String word = given.find(WORD).orElse("");
            if (word.equals("deep")) {
                endless(0);
            }
            if (word.equals("broken")) {
                throw new IllegalStateException("two\nlines");
            }
            Length length = given.get(LENGTH);
            return description()
                    .in(given.inUnit())
                    .put(Output.length("twice"), length.plus(length), 3)
                    .put(Output.tables("parts", B), List.of(new OutputValues(), new OutputValues().put(B, word)))
                    .note(Message.of("as-said", "Said \"once\" at 20 °C."))
                    .on(Message.of("as-said", "common practice"));
        }

        private static int endless(int depth) {
            return endless(depth + 1) + 1;
        }
    }

    private final Batch batch = new Batch(new Sums(List.of(new Twice())));

    private List<String> answers(String in) throws StreamBroke {
        return answers(in.getBytes(UTF_8));
    }

    private List<String> answers(byte[] in) throws StreamBroke {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        batch.run(new ByteArrayInputStream(in), out);
        assertTrue(out.size() == 0 || out.toString(UTF_8).endsWith("\n"));
        return out.toString(UTF_8).lines().toList();
    }

    @Test
    void anAnswerIsOneLineWithItsFiguresAsTexts() throws StreamBroke {
        assertEquals(
                List.of("{\"id\":\"Ø "
                        + "30\",\"calc\":\"twice\",\"ok\":true,\"result\":{\"twice\":\"2.469\","
                        + "\"parts\":[{},{\"b\":\"μ\"}]},"
                        + "\"basis\":\"common practice\",\"notes\":[\"Said \\\"once\\\" at 20 °C.\"]}"),
                answers("{\"id\":\"Ø 30\",\"calc\":\"twice\",\"unit\":\"in\",\"length\":1.2345,\"word\":\"μ\"}"));
    }

    /** 0.1 + 0.2 is not 0.3 in binary; and a number of JSON and a text are the same decimal. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            0.0005                | 0.001
            "0.0005"              | 0.001
            1e-3                  | 0.002
            0.00024999999999999   | 0.000
            0.00025               | 0.000
            0.00025000000000001   | 0.001
            -12345678901234567.89 | -24691357802469135.780
            """)
    void aNumberIsReadAsTheDecimalThatWasTyped(String typed, String twice) throws StreamBroke {
        String answer = answers("{\"calc\":\"twice\",\"unit\":\"mm\",\"length\":" + typed + "}")
                .get(0);
        assertTrue(answer.contains("\"twice\":\"" + twice + "\""), answer);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
            {"id":"a b","calc":"x"}       | "a b"
            {"id":"","calc":"x"}          | ""
            {"id":7,"calc":"x"}           | 7
            {"id":1.50,"calc":"x"}        | 1.50
            {"id":-1E400,"calc":"x"}      | -1E400
            {"id":null,"calc":"x"}        | null
            {"calc":"x"}                  | null
            {"calc":"x","id":"last"}      | "last"
            {"id":"early","calc":         | "early"
            {"calc":                      | null
            """)
    void anIdGoesBackAsItCame(String line, String id) throws StreamBroke {
        String answer = answers(line).get(0);
        assertTrue(answer.startsWith("{\"id\":" + id + ",\"line\":1,\"ok\":false,"), answer);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
            nonsense                                                       | The line is not JSON: something is wrong at character 8, near "nonsense"
            5                                                              | The line is not a JSON object: it begins with "5"
            [1,2]                                                          | The line is not a JSON object: it begins with "[1,2]"
            {"calc":"twice"                                                | The line is not JSON: it ends in the middle, after the key calc
            {"calc":"twice"} {"calc":"twice"}                              | Something follows the end of the object: "…{"calc":"twice"}"
            {"calc":"twice","calc":"once"}                                 | calc is given twice: give it once
            {"calc":"twice","length":NaN}                                  | The line is not JSON: something is wrong at character 26, near "…e","length":NaN}", under the key length: write a number as 3, 0.5 or -2.5, and a word in quotes
            {"calc":"twice","length":+1}                                   | The line is not JSON: something is wrong at character 26, near "…e","length":+1}", under the key length: write a number as 3, 0.5 or -2.5, and a word in quotes
            {"calc":"twice","length":01}                                   | The line is not JSON: something is wrong at character 26, near "…e","length":01}", under the key length: write a number as 3, 0.5 or -2.5, and a word in quotes
            {"unit":"mm","length":1}                                       | calc is missing: it names the sum
            {"calc":["twice"],"length":1}                                  | calc is a list: a word was expected
            {"calc":"thrice","length":1}                                   | calc is "thrice": it is one of twice
            {"calc":"twice","unit":"cm","length":1}                        | unit is "cm": it is mm or in
            {"calc":"twice","unit":null,"length":1}                        | unit is null: mm or in was expected
            {"calc":"twice","length":1}                                    | unit is missing: it is mm or in
            {"calc":"twice","unit":"mm"}                                   | length is missing
            {"calc":"twice","unit":"mm","length":"wide"}                   | length is "wide": it is not a decimal number
            {"calc":"twice","unit":"mm","length":true}                     | length is true: a number was expected
            {"calc":"twice","unit":"mm","length":1,"lenght":2}             | twice takes no lenght: it takes length, word
            {"calc":"twice","unit":"mm","length":1e99999999999}            | length is "1e99999999999": it is not a decimal number
            {"calc":"twice","unit":"mm","length":1e999}                    | length is 1e999: it is outside any range a shop measures in
            {"id":["a"],"calc":"twice"}                                    | id is neither text nor a number: it cannot be given back
            {"calc":"twice","length":"\\uD800"}                            | length holds half of a character
            {"calc":"twice","length":[[[[[[[[[1]]]]]]]]]}                  | length is nested more than 8 deep: no sum takes that
            {"calc":"twice","unit":"mm","length":1,"word":"broken"}        | The sum twice cannot be worked out with these inputs: two lines
            """)
    void aLineThatCannotBeAnsweredIsRefusedInOneSentence(String line, String words) throws StreamBroke {
        assertEquals(
                List.of("{\"id\":null,\"line\":1,\"ok\":false,\"problem\":\"" + words.replace("\"", "\\\"") + "\"}"),
                answers(line).stream().map(answer -> answer.replace("\\n", " ")).toList());
    }

    @Test
    void aSumThatNeverEndsItsRecursionIsRefusedAndTheNextLineAnswered() throws StreamBroke {
        List<String> answers = answers("{\"id\":1,\"calc\":\"twice\",\"unit\":\"mm\",\"length\":1,\"word\":\"deep\"}\n"
                + "{\"id\":2,\"calc\":\"twice\",\"unit\":\"mm\",\"length\":1}");
        assertTrue(
                answers.get(0)
                        .startsWith("{\"id\":1,\"line\":1,\"ok\":false,\"problem\":\"Something went wrong that should "
                                + "not have; "),
                answers.get(0));
        assertTrue(answers.get(1).startsWith("{\"id\":2,\"calc\":\"twice\",\"ok\":true,"), answers.get(1));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            {"length":        | }
            {"calc":          | }
            {"id":            | }
            {"calc":"twice","unit":"mm","length":1,"word": | }
            """)
    void depthWithoutEndIsRefused(String before, String after) throws StreamBroke {
        String deep = before + "[".repeat(200_000) + "]".repeat(200_000) + after;
        assertTrue(
                answers(deep).get(0).contains("is nested more than 8 deep"),
                answers(deep).get(0));
        String tables = before + "{\"a\":".repeat(100_000) + "1" + "}".repeat(100_000) + after;
        assertTrue(
                answers(tables).get(0).contains("is nested more than 8 deep"),
                answers(tables).get(0));
    }

    @Test
    void aRefusalStaysShortHoweverMuchWasTyped() throws StreamBroke {
        for (String line : List.of(
                "{\"calc\":\"" + "x".repeat(500_000) + "\"}",
                "{\"calc\":\"twice\",\"" + "k".repeat(40_000) + "\":1}",
                "{\"calc\":\"twice\",\"" + "k".repeat(90_000) + "\":1}",
                "{\"calc\":\"twice\",\"unit\":\"" + "u".repeat(9_000) + "\"}",
                "{\"calc\":\"twice\",\"unit\":\"mm\",\"length\":" + "9".repeat(900_000) + "}",
                "{\"calc\":\"twice\",\"unit\":\"mm\",\"length\":\"" + "\uD83D\uDE00".repeat(50_000) + "\"}",
                "y".repeat(900_000))) {
            String answer = answers(line).get(0);
            assertTrue(answer.codePoints().count() < 1000, answer);
            assertTrue(answer.contains("\"ok\":false"), answer);
        }
    }

    @Test
    void everyLineIsAnsweredInItsPlaceBlankOnesToo() throws StreamBroke {
        List<String> answers = answers("{\"id\":1}\r\n\n  \n{\"id\":4}\r\n{\"id\":5}");
        assertEquals(5, answers.size());
        assertEquals(
                "{\"id\":1,\"line\":1,\"ok\":false,\"problem\":\"calc is missing: it names the sum\"}", answers.get(0));
        assertEquals(
                "{\"id\":null,\"line\":2,\"ok\":false,\"problem\":\"The line is blank: one JSON object was expected\"}",
                answers.get(1));
        assertEquals(answers.get(1).replace(":2,", ":3,"), answers.get(2));
        assertTrue(answers.get(4).startsWith("{\"id\":5,\"line\":5,"), answers.get(4));
    }

    @Test
    void nothingInIsNothingOut() throws StreamBroke {
        assertEquals(List.of(), answers(""));
    }

    @Test
    void bytesThatAreNoTextAreRefused() throws StreamBroke {
        byte[] in = "{\"id\":1}\n{\"id\":\"?\"}\n{\"id\":3}\n".getBytes(UTF_8);
        in[15] = (byte) 0xC3;
        List<String> answers = answers(in);
        assertEquals(
                "{\"id\":null,\"line\":2,\"ok\":false,\"problem\":\"The line holds bytes that are not UTF-8\"}",
                answers.get(1));
        assertTrue(answers.get(2).startsWith("{\"id\":3,"), answers.get(2));
    }

    @Test
    void aHundredThousandLinesComeBackInTheirOrder() throws StreamBroke {
        String in = IntStream.range(0, 100_000)
                .mapToObj(i -> switch (i % 10) {
                    case 3 -> "garbage " + i;
                    case 6 -> "{\"id\":" + i + ",\"calc\":\"nothing\"}";
                    default -> "{\"id\":" + i + ",\"calc\":\"twice\",\"unit\":\"mm\",\"length\":\"" + i + "\"}";
                })
                .collect(Collectors.joining("\n"));
        List<String> answers = answers(in);
        assertEquals(100_000, answers.size());
        for (int i = 0; i < answers.size(); i++) {
            String begins =
                    switch (i % 10) {
                        case 3 -> "{\"id\":null,\"line\":" + (i + 1) + ",\"ok\":false,";
                        case 6 -> "{\"id\":" + i + ",\"line\":" + (i + 1) + ",\"ok\":false,";
                        default ->
                            "{\"id\":" + i + ",\"calc\":\"twice\",\"ok\":true,\"result\":{\"twice\":\"" + 2 * i
                                    + ".000\",";
                    };
            assertTrue(answers.get(i).startsWith(begins), answers.get(i));
        }
    }

    @Test
    @Timeout(60)
    void whoeverAsksLineByLineIsAnsweredLineByLine() throws Exception {
        PipedOutputStream ask = new PipedOutputStream();
        PipedInputStream heard = new PipedInputStream();
        InputStream in = new PipedInputStream(ask);
        OutputStream out = new PipedOutputStream(heard);
        Thread worker = new Thread(() -> {
            try {
                batch.run(in, out);
            } catch (StreamBroke e) {
                throw new AssertionError(e);
            }
        });
        worker.start();
        for (int i = 1; i <= 3; i++) {
            ask.write(("{\"id\":" + i + "}\n").getBytes(UTF_8));
            ask.flush();
            StringBuilder answer = new StringBuilder();
            for (int read = heard.read(); read != '\n'; read = heard.read()) {
                answer.append((char) read);
            }
            assertTrue(answer.toString().startsWith("{\"id\":" + i + ",\"line\":" + i + ","), answer.toString());
        }
        ask.close();
        worker.join(TimeUnit.SECONDS.toMillis(30));
        assertTrue(!worker.isAlive());
    }

    @Test
    void answersThatCannotBeWrittenEndTheWork() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        StreamBroke e = assertThrows(
                StreamBroke.class, () -> batch.run(new ByteArrayInputStream("{}\n".getBytes(UTF_8)), full));
        assertEquals("Writing broke at line 1: No space left on device.", e.getMessage());
    }

    @Test
    void linesThatCannotBeReadEndTheWorkAndWhatCameBeforeIsAnswered() {
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("Input/output error");
            }
        };
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        StreamBroke e = assertThrows(
                StreamBroke.class,
                () -> batch.run(
                        new SequenceInputStream(
                                new ByteArrayInputStream("{\"id\":1}\n{\"id\":".getBytes(UTF_8)), broken),
                        out));
        assertEquals("Reading broke at line 2: Input/output error.", e.getMessage());
        assertTrue(out.toString(UTF_8).startsWith("{\"id\":1,\"line\":1,"));
    }
}
