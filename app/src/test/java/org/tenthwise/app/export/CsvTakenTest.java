package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tenthwise.app.export.DemoTable.PART;
import static org.tenthwise.app.export.DemoTable.SAMPLE;
import static org.tenthwise.app.export.DemoTable.decimal;
import static org.tenthwise.app.export.DemoTable.rows;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

/** What was read, taken and answered, a row each. */
class CsvTakenTest {

    @Test
    void everyReadingEveryTemperatureAndEveryAnswerHasARow() {
        long taken = SAMPLE.events().stream()
                .filter(event -> event instanceof StepEvent.ReadingTaken
                        || event instanceof StepEvent.TemperatureTaken
                        || event instanceof StepEvent.Answered)
                .count();
        assertEquals(
                taken,
                rows(Records.whole(PART, SAMPLE)).stream()
                        .filter(row ->
                                !row.get("entry").isEmpty() && row.get("note").isEmpty())
                        .count());
    }

    /**
     * The reading of the SAMPLE, the zero and the master of its bore gauge, added by hand: 30.000 + 0.015 − 0.000; part
     * at 22.8 and gauge at 20.5 °C: 30.015·[(1 + 11.5e-6·0.5)/(1 + 16.2e-6·2.8) − 1] = −0.0011888 to the nanometre
     * −0.001189.
     */
    @Test
    void aReadingStandsWithItsCorrectionAndItsValue() {
        CSVRecord row = rows(Records.whole(PART, SAMPLE)).stream()
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

    @Test
    void aStruckOutReadingStaysWithItsReason() {
        Records.Walk walk = Records.walk(PART, SAMPLE, Integer.MAX_VALUE);
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
        Records.Walk walk = Records.walk(PART, SAMPLE, Integer.MAX_VALUE);
        long setting = walk.evidence().sheet().run().gauges().settings().stream()
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

    /** Reading less what wires make it bigger by is the pitch diameter, at 20 °C without a correction. */
    @Test
    void aReadingOverWiresAddsUpInTheTable() {
        List<CSVRecord> over = rows(Records.whole(PART, SAMPLE)).stream()
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
                .add(SAMPLE.begun())
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
}
