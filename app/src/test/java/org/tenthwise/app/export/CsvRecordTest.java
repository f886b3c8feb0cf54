package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.export.DemoTable.PART;
import static org.tenthwise.app.export.DemoTable.SAMPLE;
import static org.tenthwise.app.export.DemoTable.rows;

import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/** What is said of every characteristic and of the whole run. */
class CsvRecordTest {

    private static final String MOMENT = "\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d(:\\d\\d(\\.\\d+)?)?(Z|[+-]\\d\\d:\\d\\d)";

    @Test
    void everyCharacteristicOfThePlanHasARow() {
        Set<String> numbers = rows(Records.walk(PART, SAMPLE, 12).evidence()).stream()
                .map(row -> row.get("number"))
                .collect(Collectors.toSet());
        assertEquals(
                PART.plan().steps().stream()
                        .map(Step::number)
                        .map(String::valueOf)
                        .collect(Collectors.toSet()),
                numbers);
    }

    @Test
    void everyRowSaysTheOutcomeWhoSignedAndTheClass() {
        int all = SAMPLE.events().size();
        Evidence against = Records.walk(PART, SAMPLE, all - 2)
                .add(new Event.Closed("Setter 2", SignedAs.MACHINED_AND_MEASURED))
                .add(new Event.Signed("Inspector 1", SignedAs.NOT_ACCEPTED))
                .evidence();
        for (CSVRecord row : rows(against)) {
            assertEquals("conforms", row.get("outcome"));
            assertTrue(
                    row.get("signatures")
                            .matches("machined and measured by Setter 2 at %1$s; not accepted by Inspector 1 at %1$s"
                                    .formatted(MOMENT)),
                    row::toString);
        }
        assertEquals(
                List.of("set-up", "in-process", "drawing"),
                List.of("1", "8", "13").stream()
                        .map(number -> classOf(against, number))
                        .toList());
    }

    @Test
    void timesAreToTheSecondAsOnThePrintedPage() {
        assertEquals(
                "2026-11-25T07:31:12+01:00", CsvRow.said(OffsetDateTime.parse("2026-11-25T07:31:12.987654321+01:00")));
        assertEquals("2026-11-25T07:31:00Z", CsvRow.said(OffsetDateTime.parse("2026-11-25T07:31:00.001Z")));
    }

    /** The failing sample concedes the second pass of its bore; the first pass had been cut again. */
    @Test
    void aDispositionStandsInTheRowsOfThePassItWasSignedForAlone() {
        List<CSVRecord> conceded = rows(Records.whole(PART, Records.failing(PART))).stream()
                .filter(row -> row.get("disposition").equals("use-as-is"))
                .toList();
        assertFalse(conceded.isEmpty());
        for (CSVRecord row : rows(Records.whole(PART, Records.failing(PART)))) {
            boolean ofStep =
                    conceded.stream().anyMatch(other -> other.get("number").equals(row.get("number")));
            if (ofStep && !row.get("pass").isEmpty()) {
                String last = conceded.stream()
                        .filter(other -> other.get("number").equals(row.get("number")))
                        .findFirst()
                        .orElseThrow()
                        .get("pass");
                assertEquals(
                        row.get("pass").equals(last), row.get("disposition").equals("use-as-is"), row.toString());
            }
        }
    }

    /** A bore read in two passes: a sum over those that count takes in nothing of the first. */
    @Test
    void theRowsOfThePassTheVerdictRestsOnAreKnown() {
        List<CSVRecord> rows = rows(Records.whole(PART, Records.failing(PART)));
        Map<String, String> last = new HashMap<>();
        rows.stream()
                .filter(row -> !row.get("pass").isEmpty())
                .forEach(row -> last.merge(row.get("number"), row.get("pass"), (a, b) -> a.compareTo(b) < 0 ? b : a));
        assertTrue(last.containsValue("2"), last::toString);
        for (CSVRecord row : rows) {
            String wanted = row.get("pass").isEmpty()
                    ? ""
                    : row.get("pass").equals(last.get(row.get("number"))) ? "yes" : "replaced";
            assertEquals(wanted, row.get("pass-counts"), row.toString());
        }
    }

    private static String classOf(Evidence evidence, String number) {
        return rows(evidence).stream()
                .filter(row -> row.get("number").equals(number))
                .findFirst()
                .orElseThrow()
                .get("class");
    }

    @Test
    void everyDoubtAndEveryNoteHasARow() {
        Evidence evidence = Records.walk(PART, SAMPLE, 12)
                .add(new StepEvent.DoubtFlagged(12, "Which end?"))
                .add(new StepEvent.NoteMade(12, "=Night shift"))
                .add(new StepEvent.NoteMade(0, "Coolant 21 °C"))
                .evidence();
        List<CSVRecord> said = rows(evidence).stream()
                .filter(row -> !row.get("doubt").isEmpty() || !row.get("note").isEmpty())
                .toList();
        assertEquals(
                List.of("12|Which end?|", "12||'=Night shift", "||Coolant 21 °C"),
                said.stream()
                        .map(row -> row.get("number") + "|" + row.get("doubt") + "|" + row.get("note"))
                        .toList());
        assertTrue(said.stream()
                .allMatch(row -> row.get("person").equals("Setter 2")
                        && !row.get("time").isEmpty()
                        && row.get("verdict").isEmpty()));
    }

    @Test
    void aRepairStaysInEveryRowOfItsCharacteristicAndADispositionHasItsNumber() {
        Records.Walk walk = Records.walk(PART, SAMPLE, Integer.MAX_VALUE)
                .add(new StepEvent.DispositionSigned(
                        12, Disposition.REPAIR, "Insert fitted.", "Design office", Optional.of("A-7")))
                .add(new StepEvent.ReadingTaken(12, "1.1", new Written("45.2", Unit.MILLIMETRE)))
                .add(new StepEvent.DispositionSigned(
                        26, Disposition.USE_AS_IS, "Agreed.", "Design office", Optional.of("C-117")));
        List<CSVRecord> rows = rows(walk.evidence()).stream()
                .filter(row -> !row.get("repaired").isEmpty())
                .toList();
        assertEquals(Set.of("12"), rows.stream().map(row -> row.get("number")).collect(Collectors.toSet()));
        List<CSVRecord> last = rows.subList(rows.size() - 2, rows.size());
        assertEquals(
                List.of("repaired", ""),
                last.stream().map(row -> row.get("pass-begun-for")).toList());
        assertTrue(rows(walk.evidence()).stream()
                .filter(row -> row.get("number").equals("26")
                        && !row.get("disposition").isEmpty())
                .allMatch(row -> row.get("disposition-number").equals("C-117")));
    }

    /**
     * The repair lapses with the reading that follows it; what was signed under which number, by whom and when, is
     * still there to be read.
     */
    @Test
    void whatWasEverSignedHasARowOfItsOwn() {
        Records.Walk walk = Records.walk(PART, SAMPLE, Integer.MAX_VALUE)
                .add(new StepEvent.DispositionSigned(
                        12, Disposition.REPAIR, "Insert fitted.", "Design office", Optional.of("A-7")))
                .add(new StepEvent.ReadingTaken(12, "1.1", new Written("45.2", Unit.MILLIMETRE)))
                .add(new StepEvent.DispositionSigned(
                        12, Disposition.USE_AS_IS, "Agreed.", "Design office", Optional.of("C-117")));
        long reading = walk.evidence().last().seq() - 1;
        List<CSVRecord> rows = rows(walk.evidence()).stream()
                .filter(row ->
                        !row.get("disposition").isEmpty() && row.get("pass").isEmpty())
                .toList();
        assertEquals(
                List.of(
                        "12 repair Insert fitted. Design office A-7 %d Setter 2 %d".formatted(reading - 1, reading),
                        "12 use-as-is Agreed. Design office C-117 %d Setter 2 ".formatted(reading + 1)),
                rows.stream()
                        .map(row -> String.join(
                                " ",
                                List.of(
                                        row.get("number"),
                                        row.get("disposition"),
                                        row.get("disposition-reason"),
                                        row.get("disposition-signed-by"),
                                        row.get("disposition-number"),
                                        row.get("entry"),
                                        row.get("person"),
                                        row.get("disposition-lapsed-with"))))
                        .toList());
        rows.forEach(row -> assertTrue(row.get("time").matches(MOMENT), row::toString));
    }

    @Test
    void everyRowNamesThePartTheDrawingAndWhatItRequires() {
        for (CSVRecord row : rows(Records.whole(PART, SAMPLE))) {
            Plan plan = PART.plan();
            assertEquals(
                    List.of(plan.name(), plan.material(), plan.drawing().title()),
                    List.of(row.get("part-name"), row.get("material"), row.get("drawing")));
            assertEquals(
                    row.get("number").isEmpty()
                            ? ""
                            : plan.step(Integer.parseInt(row.get("number")))
                                    .drawing()
                                    .requirement(),
                    row.get("requirement"));
        }
    }
}
