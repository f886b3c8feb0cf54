package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.ReadingsFile;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

class CsvRecordTest {

    private static final DemoPart PART = DemoPart.SCREW_CARRIER;

    private static final String MOMENT = "\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d(:\\d\\d(\\.\\d+)?)?(Z|[+-]\\d\\d:\\d\\d)";

    private final ReadingsFile sample = Records.passing(PART);

    @Test
    void everyCharacteristicOfThePlanHasARow() {
        Set<String> numbers = rows(Records.walk(PART, sample, 12).evidence()).stream()
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
        int all = sample.events().size();
        Evidence against = Records.walk(PART, sample, all - 1)
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

    private static String classOf(Evidence evidence, String number) {
        return rows(evidence).stream()
                .filter(row -> row.get("number").equals(number))
                .findFirst()
                .orElseThrow()
                .get("class");
    }

    @Test
    void everyReadingEveryTemperatureAndEveryAnswerHasARow() {
        long taken = sample.events().stream()
                .filter(event -> event instanceof StepEvent.ReadingTaken
                        || event instanceof StepEvent.TemperatureTaken
                        || event instanceof StepEvent.Answered)
                .count();
        assertEquals(
                taken,
                rows(Records.whole(PART, sample)).stream()
                        .filter(row ->
                                !row.get("entry").isEmpty() && row.get("note").isEmpty())
                        .count());
    }

    /**
     * The reading of the sample, the zero and the master of its bore gauge, added by hand: 30.000 + 0.015 − 0.000; part
     * at 22.8 and gauge at 20.5 °C: 30.015·[(1 + 11.5e-6·0.5)/(1 + 16.2e-6·2.8) − 1] = −0.0011888 to the nanometre
     * −0.001189.
     */
    @Test
    void aReadingStandsWithItsCorrectionAndItsValue() {
        CSVRecord row = rows(Records.whole(PART, sample)).stream()
                .filter(r -> r.get("number").equals("13")
                        && r.get("pass").equals("2")
                        && !r.get("reading").isEmpty())
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of("0.015", "mm", "-0.001189", "30.013811", "30.000", "0.000", "BG-2", "MR-30"),
                List.of(
                        row.get("reading"),
                        row.get("reading-unit"),
                        row.get("correction"),
                        row.get("size"),
                        row.get("certified"),
                        row.get("zero"),
                        row.get("gauge"),
                        row.get("set-on")));
        assertEquals(
                List.of("22.8", "20.5", "-0.001189", "16.2", "11.5"),
                List.of(
                        row.get("part-temperature"),
                        row.get("gauge-temperature"),
                        row.get("temperature-correction"),
                        row.get("part-expansion"),
                        row.get("gauge-expansion")));
    }

    /**
     * The plan's limits and the values of the table, compared here; a check that judges a mean or a movement has no
     * verdict for a place.
     */
    @ParameterizedTest
    @EnumSource(DemoPart.class)
    void everyReadingThatCountsHasTheVerdictOfItsOwnSize(DemoPart part) {
        int alone = 0;
        for (CSVRecord row : rows(Records.whole(part, Records.failing(part)))) {
            boolean counts = !row.get("reading").isEmpty()
                    && row.get("struck-out").isEmpty()
                    && row.get("taken-again").isEmpty();
            boolean each = row.get("judged-by").equals("each");
            assertEquals(counts, !row.get("place-verdict").isEmpty(), row::toString);
            if (counts && !each) {
                assertEquals("together", row.get("place-verdict"));
            } else if (counts
                    && row.get("guard-band").matches("0?\\.?0*")
                    && !row.get("verdict").matches("unproven|open")) {
                boolean inside = (row.get("lower-limit").isEmpty()
                                || decimal(row, "size").compareTo(decimal(row, "lower-limit")) >= 0)
                        && (row.get("upper-limit").isEmpty()
                                || decimal(row, "size").compareTo(decimal(row, "upper-limit")) <= 0);
                assertEquals(inside, row.get("place-verdict").equals("pass"), row::toString);
                alone++;
            }
        }
        assertTrue(alone > 5, alone + " places were judged by themselves");
    }

    private static BigDecimal decimal(CSVRecord row, String column) {
        return new BigDecimal(row.get(column));
    }

    @Test
    void everyDoubtAndEveryNoteHasARow() {
        Evidence evidence = Records.walk(PART, sample, 12)
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
    void aStruckOutReadingStaysWithItsReason() {
        Records.Walk walk = Records.walk(PART, sample, Integer.MAX_VALUE);
        long reading = walk.evidence()
                .sheet()
                .line(12)
                .passes()
                .get(0)
                .readings()
                .get(0)
                .entry()
                .seq();
        walk.add(new Event.StruckOut(reading, "-rod, not seated\r\n\"twice\""));
        CSVRecord row = rows(walk.evidence()).stream()
                .filter(r -> r.get("number").equals("12"))
                .findFirst()
                .orElseThrow();
        assertEquals("'-rod, not seated\r\n\"twice\"", row.get("struck-out"));
        assertEquals("", row.get("size"));
        assertEquals("46.04", row.get("reading"));
        assertEquals("Setter 2", row.get("struck-out-by"));
    }

    @Test
    void whatWasReadUnderASettingStruckOutStaysWithItsReason() {
        Records.Walk walk = Records.walk(PART, sample, Integer.MAX_VALUE);
        long setting = walk.evidence().sheet().run().settings().stream()
                .filter(entry -> ((StepEvent.GaugeSet) entry.event()).step() == 12)
                .findFirst()
                .orElseThrow()
                .seq();
        walk.add(new Event.StruckOut(setting, "found off"));
        List<CSVRecord> rows = rows(walk.evidence()).stream()
                .filter(r -> r.get("number").equals("12") && !r.get("reading").isEmpty())
                .toList();
        assertFalse(rows.isEmpty());
        rows.forEach(row -> assertEquals(
                List.of("found off", "Setter 2", ""),
                List.of(row.get("struck-out"), row.get("struck-out-by"), row.get("size"))));
    }

    @Test
    void aRepairStaysInEveryRowOfItsCharacteristicAndADispositionHasItsNumber() {
        Records.Walk walk = Records.walk(PART, sample, Integer.MAX_VALUE)
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
        Records.Walk walk = Records.walk(PART, sample, Integer.MAX_VALUE)
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
        for (CSVRecord row : rows(Records.whole(PART, sample))) {
            Plan plan = PART.plan();
            assertEquals(
                    List.of(plan.name(), plan.material(), plan.drawing()),
                    List.of(row.get("part-name"), row.get("material"), row.get("drawing")));
            assertEquals(
                    row.get("number").isEmpty()
                            ? ""
                            : plan.step(Integer.parseInt(row.get("number"))).drawing(),
                    row.get("requirement"));
        }
    }

    /** Reading less what wires make it bigger by is the pitch diameter, at 20 °C without a correction. */
    @Test
    void aReadingOverWiresAddsUpInTheTable() {
        List<CSVRecord> over = rows(Records.whole(PART, sample)).stream()
                .filter(row -> !row.get("over-wires").isEmpty())
                .toList();
        assertFalse(over.isEmpty());
        for (CSVRecord row : over) {
            assertEquals("21", row.get("number"));
            assertEquals(
                    0,
                    decimal(row, "reading")
                            .subtract(decimal(row, "over-wires"))
                            .add(decimal(row, "correction"))
                            .compareTo(decimal(row, "size")),
                    row::toString);
        }
    }

    @Test
    void whatAnOlderRunAnsweredOfTheNotGoEndCountsUntilItIsAnsweredAnew() {
        Records.Walk walk = new Records.Walk(PART.plan(), "Setter 2")
                .add(sample.begun())
                .add(new StepEvent.Answered(24, Question.GO_ENTERS, Answer.YES))
                .add(new StepEvent.Answered(24, Question.NOT_GO_ENTERS, Answer.NO));
        assertEquals(List.of("go-enters yes  pass", "not-go-enters no  pass"), answers(walk));
        walk.add(new StepEvent.Answered(24, Question.NOT_GO_STAYS_OUT, Answer.NO));
        assertEquals(
                List.of("go-enters yes  fail", "not-go-enters no yes fail", "not-go-stays-out no  fail"),
                answers(walk));
    }

    private static List<String> answers(Records.Walk walk) {
        return rows(walk.evidence()).stream()
                .filter(row -> !row.get("answer").isEmpty())
                .map(row -> String.join(
                        " ", row.get("question"), row.get("answer"), row.get("taken-again"), row.get("verdict")))
                .toList();
    }

    @Test
    void linesEndAndBeginAsTheFormatSays() {
        String text = text(Records.whole(PART, sample));
        assertTrue(text.startsWith("part,revision,serial"), text.substring(0, 40));
        assertTrue(text.endsWith("\r\n"));
        assertEquals(
                text.chars().filter(sign -> sign == '\r').count(),
                text.chars().filter(sign -> sign == '\n').count());
    }

    @Test
    void aNumberIsNeverTouched() {
        List<CSVRecord> rows = rows(Records.whole(PART, Records.failing(PART)));
        assertTrue(rows.stream().anyMatch(row -> row.get("reading").startsWith("-")));
        for (CSVRecord row : rows) {
            for (String column :
                    List.of("reading", "correction", "size", "judged", "distance", "lower-limit", "upper-limit")) {
                String cell = row.get(column);
                assertTrue(
                        cell.isEmpty() || new BigDecimal(cell).toPlainString().equals(cell), column + ": " + cell);
            }
        }
    }

    /**
     * What begins a formula: OWASP Application Security Verification Standard 5.0, 1.2.10, and the full-width forms.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                "\0=1",
                "\uff1d1",
                "\uff0b1",
                "\uff0d1",
                "\uff201"
            })
    void textThatASpreadsheetWouldRunGetsAnApostrophe(String written) {
        assertEquals("'" + written, CsvText.safe(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a=1", "O'Neil", " =1", "\u2212 0.01"})
    void anyOtherTextStays(String written) {
        assertEquals(written, CsvText.safe(written));
    }

    @Test
    void noFormulaGetsThroughFromFreeText() {
        Records.Walk walk = new Records.Walk(PART.plan(), "=HYPERLINK(\"x\")")
                .add(sample.begun())
                .addAll(sample.events());
        assertFalse(rows(walk.evidence()).stream()
                .flatMap(CSVRecord::stream)
                .anyMatch(cell -> cell.startsWith("=") || cell.startsWith("@") || cell.startsWith("+")));
    }

    @Test
    void theSameEvidenceGivesTheSameBytes() {
        assertEquals(text(Records.whole(PART, sample)), text(Records.whole(PART, Records.passing(PART))));
    }

    private static List<CSVRecord> rows(Evidence evidence) {
        return ReadBack.rows(evidence);
    }

    private static String text(Evidence evidence) {
        return ReadBack.text(new CsvRecord(), evidence);
    }
}
