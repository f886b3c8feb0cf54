package org.tenthwise.app.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadCalloutsTest {

    @TempDir
    private Path folder = Path.of("");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    private List<String> answers(String texts, String... options) {
        Typed typed = Typed.piped("callout", new ByteArrayInputStream(texts.getBytes(UTF_8)), out, options);
        assertEquals(List.of(), typed.err());
        assertEquals(Exit.WELL, typed.exit());
        return out.toString(UTF_8).lines().toList();
    }

    @Test
    void everyLineIsAnsweredInOrderWithItsPartsOrWithWhatIsDoubtful() {
        List<String> answers = answers("4X Ø8 +0.1/0 ↧12\nR0.5 MAX\n\n10 7\n", "--unit", "mm");
        assertEquals(
                List.of(
                        "{\"text\":\"4X Ø8 +0.1/0 ↧12\",\"parts\":[{\"kind\":\"diameter\",\"nominal\":\"8\","
                                + "\"lower\":\"8\",\"upper\":\"8.1\",\"count\":4},"
                                + "{\"kind\":\"depth\",\"nominal\":\"12\",\"count\":4}]}",
                        "{\"text\":\"R0.5 MAX\",\"parts\":[{\"kind\":\"radius\",\"upper\":\"0.5\",\"count\":1}]}",
                        "{\"text\":\"\",\"refused\":\"Nothing is written\"}",
                        "{\"text\":\"10 7\",\"refused\":\"10 and 7 with nothing between them: a lost sign, or a blank "
                                + "inside a figure? Write ±, / or X between them\"}"),
                answers);
    }

    /** M6x1-6H: ISO 965-2, limits of the pitch diameter in millimetres. */
    @Test
    void figuresInAnotherUnitThanTheDrawingsComeWithTheirUnit() {
        List<String> answers =
                answers("M6x1-6H\n1/4-20 UNC-2B\n25.4 ±0.1 mm\n2.5 LBS MAX\n30°\nRa 32\n", "--unit", "in");
        assertEquals(
                List.of("mm", "", "mm", "lb", "", ""),
                answers.stream()
                        .map(answer -> answer.replaceAll(".*\"unit\":\"([^\"]+)\".*|.*", "$1"))
                        .toList());
        assertTrue(answers.get(0).contains("\"lower\":\"5.350\",\"upper\":\"5.500\",\"unit\":\"mm\",\"count\":1"));
    }

    @Test
    void theGeneralToleranceOfTheDrawingCountsForSizesWithoutTheirOwn() {
        String block = ".X ±.1 .XX ±.01 .XXX ±.005 ANGLES ±1°";
        assertTrue(answers(".50", "--unit", "in", "--general", block).get(0).contains("\"lower\":\"0.49\""));
    }

    @Test
    void aFileIsReadInPlaceOfStandardInput() throws IOException {
        Path file = Files.writeString(folder.resolve("callouts.txt"), "\uFEFFØ25 H7\r\nlast ± line", UTF_8);
        List<String> answers = answers("", "--unit=mm", file.toString());
        assertEquals(2, answers.size());
        assertTrue(answers.get(0).startsWith("{\"text\":\"Ø25 H7\",\"parts\":[{\"kind\":\"diameter\""));
        assertTrue(answers.get(1).contains("refused"));
    }

    @Test
    void bytesThatAreNoTextAreRefusedAndTheNextLineIsRead() {
        ByteArrayInputStream in = new ByteArrayInputStream(new byte[] {(byte) 0xD8, '\n', '6', '\n'});
        Typed typed = Typed.piped("callout", in, out, "--unit", "mm");
        assertEquals(Exit.WELL, typed.exit());
        List<String> answers = out.toString(UTF_8).lines().toList();
        assertTrue(answers.get(0).startsWith("{\"text\":\"\",\"refused\":"));
        assertTrue(answers.get(1).contains("\"nominal\":\"6\""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            callout                                | --unit
            callout --unit cm                      | is mm or in, not cm
            callout --unit mm --general 0.1        | is no general tolerance
            callout --unit in --general ISO_2768-m | no general tolerance
            callout --unit mm no-such-file         | cannot be read
            callout --unit mm one two              | two
            """)
    void wrongUseIsOneLineAndExitTwo(String line, String said) {
        String trouble = Typed.line((Object[]) line.split(" ")).trouble();
        assertTrue(trouble.contains(said), trouble);
    }
}
