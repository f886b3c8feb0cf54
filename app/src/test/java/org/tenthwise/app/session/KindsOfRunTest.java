package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.app.store.Occasions;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Baseline;
import org.tenthwise.model.run.Occasion;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** Which checks a run asks, by what it was begun for, and what it may say of the part. */
class KindsOfRunTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));
    private static final Baseline BEFORE = new Baseline("T-1-A-0", "ab".repeat(32));

    /** 1 set-up, a hold point; 2 each piece; 3 first; 4 every third; 5 last; 6 worked out of 2 and 3. */
    private static final Plan PLAN = InventedPlans.inMillimetres(
            """
            [[step]]
            number = 1
            operation = 10
            kind = "confirm"
            name = "Jaws"
            what = "Soft jaws bored."
            hold = [1]
            """
                    + look(2, "Edges", "")
                    + size(3, "Wide", "when = [\"first\"]\n")
                    + size(4, "Narrow", "when = [\"every 3\"]\n")
                    + look(5, "Marking", "when = [\"last\"]\n")
                    + """
                    [[step]]
                    number = 6
                    operation = 10
                    kind = "calculated"
                    name = "Wall"
                    of = "(a - b) / 2"
                    names = { a = 3, b = 4 }
                    lower = 4.9
                    upper = 5.1
                    when = ["last"]
                    """);

    private final MemoryLedger ledger = new MemoryLedger();

    private static String look(int number, String name, String more) {
        return """
                [[step]]
                number = %d
                operation = 10
                kind = "look"
                name = "%s"
                what = "Right."
                %s"""
                .formatted(number, name, more);
    }

    private static String size(int number, String name, String more) {
        return """
                [[step]]
                number = %d
                operation = 10
                kind = "diameter"
                name = "%s"
                method = "As usual."
                lower = %d.0
                upper = %d.1
                places = ["middle"]
                gauge_kind = "micrometer"
                gauge = "MC-1"
                %s"""
                .formatted(number, name, number == 3 ? 40 : 30, number == 3 ? 40 : 30, more);
    }

    private RunSession begun(Occasion occasion) throws Exception {
        return begun(PLAN, occasion);
    }

    private RunSession begun(Plan plan, Occasion occasion) throws Exception {
        return new Runs(ledger, CLOCK).begin(new RunHeader(plan, "1", "L-1", "Lathe 4", "Setter 1").begunFor(occasion));
    }

    private List<Integer> asked(Occasion occasion) throws Exception {
        return asked(begun(occasion).state().sheet());
    }

    private static List<Integer> asked(Sheet sheet) {
        return sheet.lines().stream()
                .filter(Line::asked)
                .map(line -> line.step().number())
                .toList();
    }

    private static String said(RunSession session) {
        return new OutcomeWords(Words.of(Locale.ENGLISH))
                .outcome(session.state().sheet());
    }

    private static void answerAll(RunSession session) throws Exception {
        while (session.state().asked().asQuestion().isPresent()) {
            session.answer(Answer.YES);
            session.goOn();
        }
    }

    @Test
    void whereNobodySaidWhatItIsForAndInAFullFirstArticleEverythingIsAsked() throws Exception {
        List<Integer> all = List.of(1, 2, 3, 4, 5, 6);
        assertEquals(all, asked(Occasion.NOT_STATED));
        assertEquals(all, asked(Occasions.fullFirstArticle("new part")));
    }

    @Test
    void aPieceIsAskedWhatThePlanWantsOfThatPiece() throws Exception {
        assertEquals(List.of(1, 2, 3), asked(Occasion.of(Purpose.FIRST_PIECE)));
        assertEquals(List.of(1, 2, 3), asked(Occasions.inProcess(1)));
        assertEquals(List.of(1, 2), asked(Occasions.inProcess(2)));
        assertEquals(List.of(1, 2, 4), asked(Occasions.inProcess(3)));
        assertEquals(List.of(1, 2, 4), asked(Occasions.inProcess(6)));
    }

    /** Its number is not known: it may be one of each third. What is worked out of a size asks for that size. */
    @Test
    void theLastPieceIsAskedWhatMayBeDueAndWhateverThatRestsOn() throws Exception {
        assertEquals(List.of(1, 2, 3, 4, 5, 6), asked(Occasion.of(Purpose.LAST_PIECE)));
    }

    /** 6 rests on 3 and so on 4; the set-up is asked of every part that is made. */
    @Test
    void aPartialFirstArticleAsksWhatIsAffectedAndWhatProtectsTheWork() throws Exception {
        assertEquals(List.of(1, 2), asked(Occasions.partialFirstArticle(BEFORE, "new tool", List.of(2))));
        assertEquals(List.of(1, 3, 4, 6), asked(Occasions.partialFirstArticle(BEFORE, "new tool", List.of(3))));
    }

    /** The hold point waits for the jaws, so they are confirmed again too. */
    @Test
    void whatIsMeasuredAgainAreTheCharacteristics() throws Exception {
        assertEquals(List.of(1, 2, 3, 4, 5, 6), asked(Occasions.measuredAgain(BEFORE)));
    }

    /** The certificate is of the melt; what one melt is proven by does not change from piece to piece. */
    @Test
    void aPaperThatIsForTheFirstPieceIsNotAskedAgainAndKeepsNothingOpen() throws Exception {
        Plan plan = InventedPlans.inMillimetres(
                look(1, "Edges", "")
                        + """
                [[elsewhere]]
                number = 2
                name = "Position"
                where = "coordinate machine"
                when = ["first"]
                """);
        RunSession second = begun(plan, Occasions.inProcess(2));
        answerAll(second);
        assertEquals(List.of(1), asked(second.state().sheet()));
        assertEquals(List.of(), second.state().sheet().documents());
        assertEquals(Outcome.ASKED_CONFORMS, second.state().sheet().outcome());

        for (Occasion whole : List.of(Occasion.NOT_STATED, Occasions.fullFirstArticle("new part"))) {
            RunSession session = begun(plan, whole);
            answerAll(session);
            assertEquals(List.of(1, 2), asked(session.state().sheet()));
            assertEquals(Outcome.NOT_COMPLETE, session.state().sheet().outcome());
        }
    }

    @Test
    void ofARunThatLeavesSomethingOutItIsNeverSaidThatThePartConforms() throws Exception {
        RunSession session = begun(Occasions.inProcess(2));
        answerAll(session);
        Sheet sheet = session.state().sheet();

        assertEquals(Outcome.ASKED_CONFORMS, sheet.outcome());
        assertFalse(sheet.conformsUncontested());
        assertEquals(Optional.empty(), OutcomeWords.shape(sheet));
        assertEquals(
                "In process, piece 2. What was asked conforms, 4 checks of the plan are not in this run.",
                said(session));
        assertEquals(1, sheet.characteristics().size());
        assertEquals(1, sheet.count(VerdictKind.PASS));
        assertTrue(session.sign("Inspector 1", SignedAs.ACCEPTED).objection().isEmpty());
    }

    @Test
    void whileSomethingAskedIsOpenItIsNotCompleteAndSaysWhatIsLeftOutToo() throws Exception {
        RunSession session = begun(Occasions.inProcess(2));
        session.answer(Answer.YES);

        assertEquals(Outcome.NOT_COMPLETE, session.state().sheet().outcome());
        assertEquals(
                "In process, piece 2. Not complete: 1 of 1 characteristics not settled. 4 checks of the plan are "
                        + "not in this run.",
                said(session));
    }

    @Test
    void nothingIsTakenAtACheckThatIsNotInTheRun() throws Exception {
        RunSession session = begun(Occasions.inProcess(2));
        answerAll(session);
        session.goTo(3);

        assertInstanceOf(Prompt.NotInThisRun.class, session.state().asked());
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.answer(Answer.YES).objection().orElseThrow().kind());
        int before = ledger.entries(session.id()).size();
        session.enter("40.05");
        session.gauge().choose("MC-1", Optional.empty());
        assertEquals(before, ledger.entries(session.id()).size());
        assertEquals(Optional.empty(), session.state().next());
    }

    @Test
    void aRunThatAsksNoCharacteristicIsNotComplete() throws Exception {
        Plan plan = InventedPlans.inMillimetres(look(1, "Edges", "when = [\"first\"]\n"));
        RunSession session = new Runs(ledger, CLOCK)
                .begin(new RunHeader(plan, "1", "L-1", "Lathe 4", "Setter 1").begunFor(Occasions.inProcess(2)));
        assertEquals(Outcome.NOT_COMPLETE, session.state().sheet().outcome());
    }

    @Test
    void aFullFirstArticleThatIsWholeConformsAndSaysWhatItIs() throws Exception {
        Plan plan = InventedPlans.inMillimetres(look(1, "Edges", "when = [\"last\"]\n"));
        RunSession session = new Runs(ledger, CLOCK)
                .begin(new RunHeader(plan, "1", "L-1", "Lathe 4", "Setter 1")
                        .begunFor(Occasions.fullFirstArticle("new part")));
        answerAll(session);
        assertEquals(Outcome.CONFORMS, session.state().sheet().outcome());
        assertEquals("First article, full. Conforms.", said(session));
    }
}
