package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.record.HoldPoints;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Run;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

class HoldWordsTest {

    private static final Words WORDS = Words.of(Locale.ENGLISH);

    private static final Plan PLAN = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "confirm"
            class = "set-up"
            name = "Lot"
            what = "The lot is that on the card."

            [[step]]
            number = 2
            operation = 10
            kind = "look"
            class = "drawing"
            name = "Finish"
            what = "No chatter."
            hold = [1, 2]

            [[step]]
            number = 3
            operation = 10
            kind = "look"
            class = "drawing"
            name = "Edge"
            what = "No burr."
            """);

    private final List<Entry> entries = new ArrayList<>();

    HoldWordsTest() {
        happened("07:31", "Setter 1", new Event.Begun(PLAN.part(), "1", "", "", PLAN.source()));
    }

    private void happened(String hour, String by, Event event) {
        entries.add(new Entry(
                entries.size() + 1, "r", OffsetDateTime.parse("2026-11-25T" + hour + ":00+01:00"), by, event));
    }

    private void lot(String hour, String by, Answer answer) {
        happened(hour, by, new StepEvent.Answered(1, Question.CONFIRMED, answer));
    }

    private void finish(String hour, String by, Answer answer) {
        happened(hour, by, new StepEvent.Answered(2, Question.LOOKS_RIGHT, answer));
    }

    private void sign(String hour, int step, Disposition disposition, String by) {
        happened(hour, "Setter 3", new StepEvent.DispositionSigned(step, disposition, "agreed", by));
    }

    private String said(String now) {
        return new HoldPoints()
                .opened(Sheet.of(PLAN, new Run(entries)), PLAN.step(2))
                .map(opened -> new HoldWords(WORDS).opened(opened, OffsetDateTime.parse(now)))
                .orElse("shut");
    }

    @Test
    void whatPassedLastIsTold() {
        lot("07:40", "Setter 1", Answer.YES);
        finish("07:52", "Setter 2", Answer.YES);
        assertEquals("opened 07:52, Setter 2", said("2026-11-25T09:00:00+01:00"));
        assertEquals("opened 25 Nov 2026, 07:52, Setter 2", said("2026-11-26T07:00:00+01:00"));
    }

    @Test
    void aConcessionNamesWhoSignedForIt() {
        lot("07:40", "Setter 1", Answer.YES);
        finish("07:52", "Setter 2", Answer.NO);
        assertEquals("shut", said("2026-11-25T09:00:00+01:00"));
        sign("08:10", 2, Disposition.USE_AS_IS, "Design office");
        assertEquals("opened 08:10 under concession, Design office", said("2026-11-25T09:00:00+01:00"));
    }

    @Test
    void whatWasCarriedOnBesideIsNotTakenForAPass() {
        lot("07:40", "Setter 1", Answer.NO);
        sign("07:45", 1, Disposition.CARRY_ON, "Setter 4");
        finish("07:52", "Setter 2", Answer.YES);
        assertEquals("opened 07:52, Setter 2; disposition: 1", said("2026-11-25T09:00:00+01:00"));
    }

    @Test
    void whatWasCarriedOnLastSaysSo() {
        finish("07:38", "Setter 2", Answer.YES);
        lot("07:40", "Setter 1", Answer.NO);
        sign("07:45", 1, Disposition.CARRY_ON, "Setter 4");
        assertEquals("opened 07:45 to carry on, Setter 4", said("2026-11-25T09:00:00+01:00"));
    }

    @Test
    void checksInARowAreToldByTheFirstAndTheLast() {
        assertEquals("4", new HoldWords(Words.ENGLISH).checks(List.of(4)));
        assertEquals("4, 5", new HoldWords(Words.ENGLISH).checks(List.of(4, 5)));
        assertEquals("2–5, 7, 9–11", new HoldWords(Words.ENGLISH).checks(List.of(2, 3, 4, 5, 7, 9, 10, 11)));
    }
}
