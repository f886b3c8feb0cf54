package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * An invented stub in inches from the readings file to its record: a root read across grooves in two passes, a bore
 * read released and warm, in °F, a hole drilled to its point. √(1.4070² − 0.0625²) = 1.4056112; 1.18195 / (1 + 9.0e-6 ·
 * 9) = 1.1818543; 0.3125 / (2 tan 59°) = 0.0938845.
 */
class ReadAsPlannedTest {

    private static final Path PLANS = Path.of("src/test/resources/plans");

    @TempDir
    private Path folder;

    private Typed walked;
    private Path json;
    private List<CSVRecord> rows;

    @BeforeEach
    void walk() throws Exception {
        Path out = folder.resolve("out");
        walked = Typed.line(
                "walk",
                PLANS.resolve("stub-in-inches.toml"),
                "--readings",
                PLANS.resolve("stub-in-inches.readings.toml"),
                "--store",
                folder.resolve("s.db"),
                "--out",
                out);
        List<Path> files = Typed.files(out);
        json = files.get(1);
        try (CSVParser csv = CSVParser.parse(
                files.get(0),
                StandardCharsets.UTF_8,
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            rows = csv.getRecords();
        }
    }

    private JsonNode characteristic(int number) throws Exception {
        JsonNode record = new ObjectMapper().readTree(Files.readString(json));
        JsonNode all = record.findValue("characteristics");
        return StreamSupport.stream(all.spliterator(), false)
                .filter(one -> one.path("number").intValue() == number)
                .findFirst()
                .orElseThrow();
    }

    private CSVRecord reading(int number, String place, String pass) {
        return rows.stream()
                .filter(row -> row.get("number").equals(String.valueOf(number))
                        && row.get("place").equals(place)
                        && row.get("pass").equals(pass))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void itComesToWhatTheReadingsFileExpects() {
        assertEquals(List.of(), walked.err());
        assertEquals(
                List.of(),
                walked.out().stream().filter(line -> line.contains("expects")).toList());
        assertTrue(
                walked.out().get(0).strip().startsWith("1 ")
                        && walked.out().get(0).contains("1.4056"),
                walked.out()::toString);
    }

    @Test
    void theRecordHasTheReadingTheCorrectionForTheGroovesAndTheSize() throws Exception {
        JsonNode read = characteristic(1).at("/passes/1/readings/0");
        assertEquals("1.4070", read.at("/reading/figure").textValue());
        assertTrue(read.path("correction-for-contact").textValue().startsWith("-0.00138"), read::toString);
        assertEquals(read.path("correction"), read.path("correction-for-contact"));
        assertTrue(read.path("size").textValue().startsWith("1.40561"), read::toString);
        CSVRecord row = reading(1, "front", "2");
        assertEquals("1.4070", row.get("reading"));
        assertTrue(row.get("contact-correction").startsWith("-0.00138"), row::toString);
    }

    @Test
    void theRecordSaysWhetherThePartWasClamped() throws Exception {
        assertEquals("clamped", characteristic(1).path("clamping").textValue());
        assertEquals("clamped", reading(1, "front", "2").get("clamping"));
        assertEquals("released", characteristic(2).path("clamping").textValue());
        assertEquals("released", reading(2, "0°", "1").get("clamping"));
    }

    @Test
    void anAnswerThatWasStruckOutStandsInTheRecordAndDoesNotCount() throws Exception {
        JsonNode answers = characteristic(1).at("/passes/1/answers");
        assertEquals("square-across", answers.at("/0/answer").textValue());
        assertEquals(false, answers.at("/0/counts").booleanValue());
        assertEquals("opposite-grooves", answers.at("/1/answer").textValue());
        assertEquals(true, answers.at("/1/counts").booleanValue());
    }

    @Test
    void thePassBeforeTheCutIsCutAgain() throws Exception {
        assertEquals("cut-again", characteristic(1).at("/passes/0/verdict").textValue());
    }

    @Test
    void theRecordHasTemperaturesAndExpansionInDegreesFahrenheit() throws Exception {
        JsonNode pass = characteristic(2).at("/passes/0");
        assertEquals("77.0", pass.at("/temperatures/0/fahrenheit").textValue());
        JsonNode part = pass.at("/temperature/corrected-by/part");
        assertEquals("77.0", part.path("fahrenheit").textValue());
        assertEquals("9", part.path("expansion-1e-6-per-fahrenheit").textValue());
        assertTrue(
                pass.at("/readings/0/correction-for-temperature").textValue().startsWith("-0.00009"), pass::toString);
        CSVRecord row = reading(2, "0°", "1");
        assertEquals("°F", row.get("degrees"));
        assertEquals("77.0", row.get("part-temperature"));
        assertEquals("9", row.get("part-expansion"));
        assertEquals("6.3889", row.get("gauge-expansion"));
        assertEquals("", reading(3, "middle", "1").get("degrees"));
    }

    @Test
    void theRecordHasTheLengthOfTheDrillPointThatWasTakenOff() throws Exception {
        JsonNode read = characteristic(3).at("/passes/0/readings/0");
        assertTrue(read.path("correction-for-contact").textValue().startsWith("-0.0938"), read::toString);
        assertTrue(read.path("size").textValue().startsWith("0.9861"), read::toString);
    }

    @Test
    void theRecordProvesItselfFromItsEntries() {
        Typed verified = Typed.line("verify", json);
        assertEquals(0, verified.exit(), verified::toString);
    }
}
