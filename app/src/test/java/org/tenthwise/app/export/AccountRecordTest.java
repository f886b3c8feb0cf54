package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.SixtyBalloons;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** What stands on the drawing, and the account of it, in the files a record is handed out as. */
class AccountRecordTest {

    private static final Plan FOUR_HOLES = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "bore"
            name = "Holes"
            balloon = 9
            requirement = "4X Ø8 +0.02/0"
            method = "Each across."
            lower = 8.00
            upper = 8.02
            count = 4
            gauge_kind = "inside-micrometer"

            [[step]]
            number = 2
            operation = 10
            kind = "look"
            name = "Chamfer of hole 2"
            balloon = 10
            what = "Chamfered."
            count = 4
            instance = 1
            class = "in-process"
            """);

    private static Evidence sixty(int steps) {
        return new Records.Walk(SixtyBalloons.PLAN, "Setter 1")
                .addAll(SixtyBalloons.run(steps))
                .evidence();
    }

    private static Evidence fourHoles() {
        Records.Walk walk = new Records.Walk(FOUR_HOLES, "Setter 1")
                .add(new Event.Begun(FOUR_HOLES.part(), "1", "L-1", "Lathe 4", FOUR_HOLES.source()));
        List.of("1.1 8.01", "2.1 8.03", "3.1 8.0")
                .forEach(read -> walk.add(new StepEvent.ReadingTaken(
                        1, read.split(" ")[0], new Written(read.split(" ")[1], Unit.MILLIMETRE))));
        return walk.evidence();
    }

    private static List<JsonNode> account(Evidence evidence) {
        return StreamSupport.stream(
                        ReadBack.json(evidence).at("/result/account").spliterator(), false)
                .toList();
    }

    @Test
    void sixtyBalloonsGiveSixtyLinesInTheOrderOfTheDrawing() {
        List<JsonNode> lines = account(sixty(60));
        assertEquals(60, lines.size());
        assertEquals(
                SixtyBalloons.ROW,
                lines.stream().map(line -> line.path("balloon").textValue()).toList());
        assertEquals(
                2,
                lines.stream()
                        .filter(line -> line.path("verdict").textValue().equals("open"))
                        .count());
    }

    /** Balloon 17 stands at place 19 of the row: a diameter of 20. */
    @Test
    void aLineSaysWhereItStandsAndWhatWasFound() {
        JsonNode line = account(sixty(62)).get(19);
        assertEquals("17", line.path("balloon").textValue());
        assertEquals("1", line.path("sheet").textValue());
        assertEquals("B4", line.path("drawing-zone").textValue());
        assertEquals("Ø20 +0.02/0", line.path("requirement").textValue());
        assertEquals("20.004", line.path("least").textValue());
        assertEquals("20.011", line.path("greatest").textValue());
        assertEquals("mm", line.path("unit").textValue());
        assertEquals("pass", line.path("verdict").textValue());
    }

    @Test
    void theHeadTellsDrawingAndPartApart() {
        JsonNode part = ReadBack.json(sixty(1)).at("/result/part");
        assertEquals("B", part.path("revision").textValue());
        assertEquals("D-6060", part.path("drawing-number").textValue());
        assertEquals("E", part.path("drawing-revision").textValue());
        assertEquals("[\"change 12\",\"change 14\"]", part.path("changes").toString());
        assertEquals("R-17 issue 2", part.path("route").textValue());
        CSVRecord row = ReadBack.rows(sixty(1)).get(0);
        assertEquals(
                List.of("B", "D-6060", "E", "change 12; change 14", "R-17 issue 2"),
                List.of("revision", "drawing-number", "drawing-revision", "changes", "route").stream()
                        .map(row::get)
                        .toList());
    }

    @Test
    void everyRowOfTheTableSaysWhereItsCharacteristicStands() {
        CSVRecord row = ReadBack.rows(sixty(62)).stream()
                .filter(of -> of.get("balloon").equals("17"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of("1", "B4", "", "Ø20 +0.02/0", "", ""),
                List.of("sheet", "drawing-zone", "designator", "requirement", "count", "instance").stream()
                        .map(row::get)
                        .toList());
        assertEquals(
                List.of("key"),
                ReadBack.rows(sixty(62)).stream()
                        .filter(of -> of.get("balloon").equals("3.2"))
                        .map(of -> of.get("designator"))
                        .distinct()
                        .toList());
    }

    @Test
    void eachOfFourHolesIsALineAndOneThatIsOutIsNotHiddenBehindTheOthers() {
        assertEquals(
                List.of(
                        "9 [1] 8.01 8.01 pass",
                        "9 [2] 8.03 8.03 fail",
                        "9 [3] 8.0 8.0 pass",
                        "9 [4] null null open",
                        "10 null null null open"),
                account(fourHoles()).stream()
                        .map(line -> "%s %s %s %s %s"
                                .formatted(
                                        line.path("balloon").textValue(),
                                        line.has("instances") ? line.path("instances") : "null",
                                        line.path("least").textValue(),
                                        line.path("greatest").textValue(),
                                        line.path("verdict").textValue()))
                        .toList());
        assertTrue(account(fourHoles()).get(4).path("in-process-only").booleanValue());
        assertEquals("4", ReadBack.rows(fourHoles()).get(0).get("count"));
    }

    private static List<CSVRecord> table(Evidence evidence) throws IOException {
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(ReadBack.text(new AccountTable(), evidence)))
                .getRecords();
    }

    @Test
    void theTableOfTheDrawingHasARowForEachBalloonInItsOrder() throws IOException {
        List<CSVRecord> rows = table(sixty(60));
        assertEquals(
                SixtyBalloons.ROW, rows.stream().map(row -> row.get("balloon")).toList());
        assertEquals(
                "17|1|B4||Ø20 +0.02/0|1||40|Characteristic of balloon 17|20.000|20.020|mm|20.004|20.011|||||pass||||",
                Stream.of(rows.get(19).values()).skip(4).collect(Collectors.joining("|")));
        assertEquals(
                List.of(
                        "9|4|1|8.01|8.01|pass",
                        "9|4|2|8.03|8.03|fail",
                        "9|4|3|8.0|8.0|pass",
                        "9|4|4|||open",
                        "10|4||||open"),
                table(fourHoles()).stream()
                        .map(row -> Stream.of("balloon", "count", "instances", "least", "greatest", "verdict")
                                .map(row::get)
                                .collect(Collectors.joining("|")))
                        .toList());
    }

    private static String cells(List<CSVRecord> rows, int number, String... columns) {
        CSVRecord row = rows.stream()
                .filter(of -> of.get("number").equals(String.valueOf(number)))
                .findFirst()
                .orElseThrow();
        return Stream.of(columns).map(row::get).collect(Collectors.joining("|"));
    }

    /** Which part it is, what was answered and with which gauge, the paper, and what a bonus lets the size be. */
    @Test
    void aFormCanBeFilledFromTheTableAlone() throws IOException {
        Plan plan = ExamplePart.WINCH_SHAFT.plan();
        List<CSVRecord> rows = table(Records.whole(plan, ExamplePart.WINCH_SHAFT.failingReadings()));
        assertEquals("WS-407|C|002", cells(rows, 4, "part", "revision", "serial"));
        assertEquals("mm|0.568747|0.38|fail", cells(rows, 11, "unit", "judged", "allowed", "verdict"));
        assertEquals(
                "go-enters yes; not-go-stays-out yes|TP-710|limit-gauge",
                cells(rows, 14, "answers", "gauge", "gauge-kind"));
        assertEquals("looks-right yes|", cells(rows, 54, "answers", "gauge"));
        assertEquals("TC-24-1|fail", cells(rows, 57, "document", "verdict"));
        assertEquals("CM-407-2|0.012", cells(rows, 56, "document", "judged"));
        assertEquals("SN-70|indicating-snap-gauge", cells(rows, 16, "gauge", "gauge-kind"));
    }

    /** 35 checks, of which some are set-up and some in process. */
    @Test
    void ofAPlanWithoutBalloonsItHasARowForEachCharacteristicByItsNumber() throws IOException {
        Evidence demo = Records.whole(DemoPart.SCREW_CARRIER, Records.passing(DemoPart.SCREW_CARRIER));
        assertEquals(
                demo.sheet().characteristics().stream()
                        .map(line -> String.valueOf(line.step().number()))
                        .toList(),
                table(demo).stream().map(row -> row.get("balloon")).toList());
    }

    @Test
    void theRecordProvesItsAccount() {
        String json = ReadBack.text(new JsonRecord(), fourHoles());
        assertEquals(Optional.empty(), ReadBack.check(json).found().fault());
        String changed = json.replace("\"greatest\" : \"8.03\"", "\"greatest\" : \"8.02\"");
        assertFalse(changed.equals(json));
        assertTrue(ReadBack.check(changed).found().fault().isPresent());
    }

    @Test
    void aPlanWithoutBalloonsIsWrittenAsBefore() {
        Evidence demo = Records.whole(DemoPart.SCREW_CARRIER, Records.passing(DemoPart.SCREW_CARRIER));
        assertTrue(ReadBack.json(demo).at("/result/account").isMissingNode());
        assertTrue(ReadBack.json(demo).at("/result/characteristics/20/balloon").isMissingNode());
        CSVRecord row = ReadBack.rows(demo).stream()
                .filter(of -> of.get("class").equals("drawing"))
                .findFirst()
                .orElseThrow();
        assertEquals(row.get("number"), row.get("balloon"));
        assertEquals("", ReadBack.rows(demo).get(0).get("balloon"));
    }
}
