package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/** A run begun on 25 November 2026, of one look, one document in its turn, and what is proven elsewhere. */
class DocumentSessionTest extends RunBegun {

    private static final LocalDate TODAY = LocalDate.parse("2026-11-25");

    DocumentSessionTest() {
        super(
                InventedPlans.inMillimetres(
                        """
                [[step]]
                number = 1
                operation = 10
                kind = "look"
                name = "Edges"
                what = "Edges are broken."
                hold = [1]

                [[step]]
                number = 2
                operation = 10
                kind = "document"
                name = "Crack test"
                what = "FiguresReport of the crack test."

                [[elsewhere]]
                number = 11
                name = "Position of the pattern"
                where = "coordinate machine"
                balloon = "11"
                count = 2
                upper = 0.050

                [[elsewhere]]
                number = 12
                name = "Hardness"
                where = "certificate"
                """));
    }

    private Reply give(String number, String dated, Document.Says says, String... figures) throws Exception {
        return session.documents()
                .give(
                        number,
                        LocalDate.parse(dated),
                        says,
                        "Measuring room",
                        Stream.of(figures).map(DocumentSessionTest::mm).toList());
    }

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    private Reply conforms() throws Exception {
        return give("C-1", "2026-11-25", Document.Says.CONFORMS);
    }

    private void finishAtTheMachine() throws Exception {
        taken(session.answer(Answer.YES));
        session.goTo(2);
        taken(conforms());
    }

    private Outcome outcome() {
        return session.state().sheet().outcome();
    }

    @Test
    void oneInItsTurnIsAskedAndThenTheNextIs() throws Exception {
        session.goTo(2);
        assertEquals(Objection.Kind.HELD, refused(conforms()));
        session.goTo(1);
        taken(session.answer(Answer.YES));
        assertTrue(session.goOn().state().asked().asksDocument());
        taken(conforms());
        assertTrue(session.state().asked().isNothing());
        assertEquals(VerdictKind.PASS, standing());
        assertEquals(Optional.empty(), session.state().next(), "what is proven elsewhere is not asked in its turn");
    }

    @ParameterizedTest
    @CsvSource({
        "'', 2026-11-25, CONFORMS, BLANK",
        "C-1, 2026-11-26, CONFORMS, DATED_AHEAD",
        "C-1, 2026-11-26, NOT_YET, DATED_AHEAD",
        "C-1, 2026-11-25, FIGURES, BLANK",
        "C\u202E1, 2026-11-25, CONFORMS, HIDDEN_SIGN"
    })
    void whatIsNoDocumentIsNotKept(String number, String dated, Document.Says says, Objection.Kind why)
            throws Exception {
        session.goTo(11);
        int before = ledger.entries(session.id()).size();
        assertEquals(why, refused(give(number, dated, says)));
        assertEquals(before, ledger.entries(session.id()).size());
    }

    @Test
    void figuresThatNothingIsJudgedByAreNotKept() throws Exception {
        session.goTo(11);
        assertEquals(Objection.Kind.FIGURES_UNLIKE, refused(give("C-1", "2026-11-25", Document.Says.FIGURES, "0.020")));
        assertEquals(
                Objection.Kind.FIGURES_UNLIKE,
                refused(session.documents()
                        .give(
                                "C-1",
                                TODAY,
                                Document.Says.FIGURES,
                                "Measuring room",
                                List.of(new Written("1", Unit.DEGREE), new Written("1", Unit.DEGREE)))));
        session.goTo(12);
        assertEquals(Objection.Kind.FIGURES_UNLIKE, refused(give("C-1", "2026-11-25", Document.Says.FIGURES, "0.020")));
    }

    @Test
    void whoSaysSoIsNeeded() throws Exception {
        session.goTo(12);
        assertEquals(
                Objection.Kind.BLANK,
                refused(session.documents().give("C-1", TODAY, Document.Says.CONFORMS, " ", List.of())));
    }

    @Test
    void oneThatSaysSomethingIsStruckOutBeforeAnotherIsEntered() throws Exception {
        session.goTo(12);
        taken(give("", "2026-11-20", Document.Says.NOT_YET));
        taken(conforms());
        assertEquals(Objection.Kind.DOCUMENT_THERE, refused(give("C-2", "2026-11-25", Document.Says.CONFORMS)));
        List<Entry> entries = session.state().sheet().run().entries();
        taken(session.strikeOut(entries.get(entries.size() - 1).seq(), "Of another lot"));
        assertEquals(VerdictKind.OPEN, standing());
        taken(give("C-2", "2026-11-25", Document.Says.CONFORMS));
        assertEquals(VerdictKind.PASS, standing());
    }

    @Test
    void whatIsOnlyReadTakesNoDocument() throws Exception {
        assertEquals(Objection.Kind.NOT_ASKED_HERE, refused(conforms()));
    }

    /** The work at the machine is signed for and closed; the reports come days later. */
    @Test
    void aClosedRunWaitsForWhatIsProvenElsewhereAndIsAcceptedOnlyThen() throws Exception {
        finishAtTheMachine();
        taken(session.close("Setter 2", SignedAs.MACHINED_AND_MEASURED));
        assertEquals(Outcome.NOT_COMPLETE, outcome());
        assertEquals(Objection.Kind.NOT_TO_BE_ACCEPTED, refused(session.sign("Inspector 1", SignedAs.ACCEPTED)));
        assertEquals(Objection.Kind.CLOSED, refused(conforms()), "step 2 is of the order of work");

        session.goTo(11);
        taken(give("CM-118", "2026-11-25", Document.Says.FIGURES, "0.021", "0.050"));
        session.goTo(12);
        taken(give("H-7", "2026-11-25", Document.Says.CONFORMS));
        assertEquals(Outcome.CONFORMS, outcome());
        taken(session.sign("Inspector 1", SignedAs.ACCEPTED));
        assertTrue(session.state().sheet().run().signatures().stream().noneMatch(signature -> signature.lapsed()));
    }

    @Test
    void whatDoesNotConformElsewhereCanBeConcededInAClosedRun() throws Exception {
        finishAtTheMachine();
        taken(session.close("Setter 2", SignedAs.MACHINED_AND_MEASURED));
        session.goTo(12);
        taken(conforms());
        session.goTo(11);
        taken(give("CM-118", "2026-11-25", Document.Says.FIGURES, "0.021", "0.051"));
        assertEquals(Outcome.DOES_NOT_CONFORM, outcome());
        taken(session.dispose(Disposition.USE_AS_IS, "Fits its mate", "Design office", "CN-9"));
        assertEquals(Outcome.CONFORMS_WITH_CONCESSIONS, outcome());
    }

    @Test
    void inAClosedRunOnlyWhatIsProvenElsewhereIsStruckOut() throws Exception {
        finishAtTheMachine();
        long inTurn = last();
        session.goTo(12);
        taken(conforms());
        taken(session.close("Setter 2", SignedAs.MACHINED_AND_MEASURED));
        long elsewhere = session.state().sheet().run().entries().stream()
                .filter(entry -> entry.event()
                        .as(StepEvent.DocumentGiven.class)
                        .filter(given -> given.step() == 12)
                        .isPresent())
                .findFirst()
                .orElseThrow()
                .seq();
        assertEquals(Objection.Kind.CLOSED, refused(session.strikeOut(inTurn, "Wrong")));
        taken(session.strikeOut(elsewhere, "Of another lot"));
        assertEquals(
                VerdictKind.OPEN,
                session.state().sheet().line(12).finding().verdict().standing());
    }

    private long last() {
        List<Entry> entries = session.state().sheet().run().entries();
        return entries.get(entries.size() - 1).seq();
    }

    @Test
    void aRunThatWasPutAwayTakesNone() throws Exception {
        taken(session.shelf().putAway("Setter 2", "Begun twice"));
        session.goTo(12);
        assertEquals(Objection.Kind.PUT_AWAY, refused(conforms()));
    }

    private static final FiguresReport REPORT = new FiguresReport("CM-118", TODAY, "Measuring room");

    private static Map<Integer, List<Written>> table(String first, String second) {
        return Map.of(11, List.of(mm(first), mm(second)));
    }

    @Test
    void aReportIsForeseenBeforeAnyOfItCounts() throws Exception {
        int before = ledger.entries(session.id()).size();
        Foreseen foreseen = session.documents().foresee(REPORT, table("0.021", "0.062"));
        assertEquals(Map.of(), foreseen.against());
        assertEquals(
                VerdictKind.FAIL, foreseen.sheet().line(11).finding().verdict().standing());
        assertEquals(
                VerdictKind.OPEN,
                session.state().sheet().line(11).finding().verdict().standing());
        assertEquals(before, ledger.entries(session.id()).size());

        taken(session.documents().give(REPORT, table("0.021", "0.030")));
        assertEquals(
                VerdictKind.PASS,
                session.state().sheet().line(11).finding().verdict().standing(),
                "what is given counts, not what was foreseen");
        assertEquals(1, session.state().inHand().number(), "the step in hand stays");
    }

    /** Nobody can tell afterwards which half of a report was taken. */
    @Test
    void ofAReportAllIsEnteredOrNothing() throws Exception {
        int before = ledger.entries(session.id()).size();
        Map<Integer, List<Written>> both = Map.of(11, List.of(mm("0.021"), mm("0.030")), 12, List.of(mm("1")));
        assertEquals(
                Set.of(12), session.documents().foresee(REPORT, both).against().keySet());
        assertEquals(Objection.Kind.FIGURES_UNLIKE, refused(session.documents().give(REPORT, both)));
        assertEquals(before, ledger.entries(session.id()).size());
    }

    @Test
    void aReportTakesNoPlaceOfADocumentThatIsThere() throws Exception {
        session.goTo(11);
        taken(give("CM-117", "2026-11-20", Document.Says.FIGURES, "0.021", "0.050"));
        assertEquals(
                Objection.Kind.DOCUMENT_THERE,
                session.documents()
                        .foresee(REPORT, table("0.021", "0.030"))
                        .against()
                        .get(11)
                        .kind());
        assertEquals(Objection.Kind.DOCUMENT_THERE, refused(session.documents().give(REPORT, table("0.021", "0.030"))));
    }

    @Test
    void aReportDatedAheadIsNotKept() throws Exception {
        FiguresReport ahead = new FiguresReport("CM-118", TODAY.plusDays(1), "Measuring room");
        assertEquals(Objection.Kind.DATED_AHEAD, refused(session.documents().give(ahead, table("0.021", "0.030"))));
    }

    @Test
    void aClosedRunTakesAReport() throws Exception {
        finishAtTheMachine();
        taken(session.close("Setter 2", SignedAs.MACHINED_AND_MEASURED));
        taken(session.documents().give(REPORT, table("0.021", "0.030")));
        assertEquals(
                VerdictKind.PASS,
                session.state().sheet().line(11).finding().verdict().standing());
    }

    @Test
    void whatWasEnteredIsReadBackFromTheStore() throws Exception {
        session.goTo(11);
        taken(give("CM-118", "2026-11-20", Document.Says.FIGURES, "0.021", "0.050"));
        Event kept = ledger.entries(session.id())
                .get(ledger.entries(session.id()).size() - 1)
                .event();
        assertEquals(
                new StepEvent.DocumentGiven(
                        11,
                        new Document(
                                "CM-118",
                                LocalDate.parse("2026-11-20"),
                                Document.Says.FIGURES,
                                "Measuring room",
                                List.of(mm("0.021"), mm("0.050")))),
                kept);
    }
}
