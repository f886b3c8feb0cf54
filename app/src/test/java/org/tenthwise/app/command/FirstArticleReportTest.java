package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Plan;

class FirstArticleReportTest extends Walking {

    /** Walks a whole drawing with readings, and gives the run. */
    private String walked(ExamplePart part, String readings) throws IOException {
        walk(file("plan.toml", part.planText()), file("readings.toml", readings));
        try (var kept = new SqliteStores().openToRead(store)) {
            List<String> runs = kept.runs();
            return runs.get(runs.size() - 1);
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    private Typed report(Object... more) {
        List<Object> line = new ArrayList<>(List.of("first-article", "--store", store, "--out", out.resolve("fair")));
        line.addAll(List.of(more));
        return Typed.line(line.toArray());
    }

    private Typed drawnUp(ExamplePart part, Object... more) {
        List<Object> line = new ArrayList<>(List.of(
                "--identifier",
                "F-1",
                "--part",
                part.plan().part().number(),
                "--by",
                "Planner 1",
                "--reason",
                "first run of the part",
                "--organization",
                "Invented works",
                "--route",
                "R-1 issue 2"));
        line.addAll(List.of(more));
        return report(line.toArray());
    }

    private Path form(String ending) throws IOException {
        return Typed.files(out.resolve("fair")).stream()
                .filter(file -> file.toString().endsWith(ending))
                .findFirst()
                .orElseThrow();
    }

    private List<CSVRecord> rows(String ending) throws IOException {
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(Files.newBufferedReader(form(ending)))
                .getRecords();
    }

    /** What stands under a number of the standard: all somebody with a customer's form knows. */
    private static String field(CSVRecord row, int number) {
        return row.toMap().entrySet().stream()
                .filter(cell -> cell.getKey().startsWith(number + " "))
                .map(Map.Entry::getValue)
                .reduce((one, other) -> {
                    throw new AssertionError("twice");
                })
                .orElseThrow();
    }

    @Test
    void aPlugThatDragsSaysSoBeforeAClearanceThatLiesWithinItsLimits() throws IOException {
        walked(ExamplePart.HOIST_SCREW_BUSH, ExamplePart.HOIST_SCREW_BUSH.failingReadings());
        drawnUp(ExamplePart.HOIST_SCREW_BUSH);
        assertEquals(
                List.of("enters with drag; clearance 0.0010 to 0.0012"),
                rows("form-3.csv").stream()
                        .filter(row -> row.get("8 Requirement").equals("RUNNING PLUG ENTERS FREELY"))
                        .map(row -> field(row, 9))
                        .toList());
    }

    @Test
    void aBareSizeHasTheLimitsOfTheTitleBlockBehindIt() throws IOException {
        walked(ExamplePart.HOIST_SCREW_BUSH, ExamplePart.HOIST_SCREW_BUSH.passingReadings());
        drawnUp(ExamplePart.HOIST_SCREW_BUSH);
        List<String> asked =
                rows("form-3.csv").stream().map(row -> field(row, 8)).toList();
        assertEquals("4.400 (4.395 to 4.405 in)", asked.get(0));
        assertTrue(asked.contains("Ø1.750 ±.001"), asked::toString);
    }

    @ParameterizedTest
    @EnumSource
    void everyCharacteristicOfAWholeDrawingIsAccountedFor(ExamplePart part) throws IOException {
        walked(part, part.passingReadings());
        Typed typed = drawnUp(part);
        assertEquals(List.of(), typed.err());
        Plan plan = part.plan();
        List<String> wanted = plan.steps().stream()
                .filter(step -> step.isOfDrawing())
                .flatMap(step -> plan.balloon(step).stream())
                .map(BalloonNumber::text)
                .distinct()
                .sorted()
                .toList();
        List<CSVRecord> rows = rows("form-3.csv");
        assertEquals(
                wanted,
                rows.stream()
                        .map(row -> field(row, 5))
                        .filter(number -> !number.isEmpty())
                        .distinct()
                        .sorted()
                        .toList());
        rows.forEach(row ->
                assertTrue(!field(row, 9).isEmpty() || row.get("verdict").equals("Open"), () -> "no result: " + row));
        rows.stream()
                .filter(row ->
                        !row.get("lower").isEmpty() && row.get("document").isEmpty())
                .forEach(row -> assertTrue(field(row, 9).matches(".*\\d.*"), () -> "no figure: " + row));
    }

    @ParameterizedTest
    @EnumSource
    void whatFailsStandsOnALineOfItsOwnAndTheReportIsNotComplete(ExamplePart part) throws IOException {
        walked(part, part.failingReadings());
        Typed typed = drawnUp(part);
        assertEquals(1, typed.exit(), typed::toString);
        assertEquals("Report F-1: Not complete.", typed.out().get(0));
        List<CSVRecord> failed = rows("form-3.csv").stream()
                .filter(row -> row.get("verdict").equals("Fail"))
                .toList();
        assertTrue(!failed.isEmpty());
        failed.forEach(row -> assertTrue(!field(row, 9).isEmpty(), row::toString));
        assertEquals(
                "Yes",
                rows("form-1.csv").stream()
                        .filter(row -> row.get("No.").equals("19"))
                        .findFirst()
                        .orElseThrow()
                        .get("Entry"));
    }

    /** Fields 1 to 4 and 5 to 12 by their numbers, as they stand on any form that follows the standard. */
    @Test
    void aCustomersFormIsFilledByTheNumbersOfTheFieldsAlone() throws IOException {
        walked(ExamplePart.GATE_ROLLER_PIN, ExamplePart.GATE_ROLLER_PIN.passingReadings());
        drawnUp(ExamplePart.GATE_ROLLER_PIN, "--order", "PO-77");
        Map<String, String> first = new LinkedHashMap<>();
        rows("form-1.csv").forEach(row -> first.putIfAbsent(row.get("No."), row.get("Entry")));
        assertEquals("GR-341", first.get("1"));
        assertEquals("F-1", first.get("4"));
        assertEquals("A", first.get("5"));
        assertEquals("PO-77", first.get("12"));
        assertEquals("Detail part", first.get("13"));
        assertEquals("", first.get("24"));
        List<String> heads = CSVFormat.RFC4180
                .parse(Files.newBufferedReader(form("form-3.csv")))
                .getRecords()
                .get(0)
                .toList();
        assertEquals(
                List.of("5", "6", "7", "8", "9", "10", "11", "12"),
                heads.subList(0, 8).stream().map(head -> head.split(" ")[0]).toList());
        rows("form-3.csv").forEach(row -> {
            for (int number = 5; number <= 12; number++) {
                field(row, number);
            }
        });
    }

    @Test
    void theSameReportIsWrittenAgainByteForByte() throws IOException {
        walked(ExamplePart.GATE_ROLLER_PIN, ExamplePart.GATE_ROLLER_PIN.passingReadings());
        drawnUp(ExamplePart.GATE_ROLLER_PIN);
        Path again = folder.resolve("again");
        Typed.line("first-article", "--store", store, "--identifier", "F-1", "--out", again);
        List<Path> files = Typed.files(again);
        assertEquals(
                Typed.files(out.resolve("fair")).stream().map(Path::getFileName).toList(),
                files.stream().map(Path::getFileName).toList());
        for (Path file : files) {
            assertArrayEquals(
                    Files.readAllBytes(out.resolve("fair").resolve(file.getFileName())), Files.readAllBytes(file));
        }
    }

    @Test
    void whatIsMissingIsSaidInASentence() throws IOException {
        ExamplePart part = ExamplePart.GATE_ROLLER_PIN;
        assertEquals(
                "Say who draws up or signs the report: --by NAME.",
                report("--identifier", "F-1", "--part", "GR-341").trouble());
        String run = walked(part, part.passingReadings());
        assertTrue(report("--identifier", "F-9").trouble().startsWith("There is no report F-9 in "));
        assertEquals(
                "There is no closed run of part WS-407 in the store",
                report("--identifier", "F-1", "--part", "WS-407", "--by", "Planner 1")
                        .trouble());
        assertEquals(
                "Run %s is of part GR-341, the report of WS-407: a report is on one part number".formatted(run),
                report("--identifier", "F-1", "--part", "WS-407", "--by", "P", "--run", run)
                        .trouble());
        assertEquals(
                "A partial first-article report names its baseline, its reason and at least one characteristic it "
                        + "affects",
                drawnUp(part, "--extent", "partial").trouble());
    }
}
