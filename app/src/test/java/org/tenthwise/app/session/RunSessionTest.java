package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.DemoPlans;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Proposal;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.VerdictKind;

/** The screw carrier of the demo, walked without a screen. Figures are reckoned by hand from its plan. */
class RunSessionTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));
    private static final int RUN_OUT = 4;
    private static final int OUTSIDE = 9;
    private static final int BORE = 13;
    private static final int PLUG = 14;

    @TempDir
    private Path dir;

    private Ledger ledger;
    private Runs shop;
    private RunSession session;

    @BeforeEach
    void beginARun() throws Exception {
        ledger = new SqliteStores().open(dir.resolve("s.db"));
        shop = new Runs(ledger, CLOCK);
        session = shop.begin(new RunHeader(DemoPlans.outsideAsRead(), " 014 ", "AB-7731", "Lathe 4", "Setter 2"));
    }

    @AfterEach
    void letGo() {
        ledger.close();
    }

    @Test
    void aRunBeginsAtTheFirstStepOfItsPlan() {
        assertEquals("LG-2207-C-014", session.id());
        assertEquals(1, session.state().inHand().number());
        assertEquals(new Prompt.Answering(Question.CONFIRMED), session.state().asked());
    }

    @Test
    void aSecondRunOfTheSameSerialGetsAnIdOfItsOwnAndTheFirstIsPointedOut() throws Exception {
        assertEquals(
                List.of("LG-2207-C-014"),
                shop.history().runsOf(session.state().sheet().plan().part(), "014").stream()
                        .map(RunFacts::id)
                        .toList());
        assertEquals(
                "LG-2207-C-014-2",
                shop.begin(new RunHeader(DemoPlans.outsideAsRead(), "014", "", "", "Setter 1", true))
                        .id());
    }

    @Test
    void aHoldPointShutsWhatComesAfterItUntilItIsPassed() throws Exception {
        session.goTo(OUTSIDE);
        assertEquals(new Prompt.Held(List.of(1, 2, 3, 4, 5)), session.state().asked());
        assertEquals(
                Objection.Kind.HELD,
                session.enter("47.990").objection().orElseThrow().kind());
        setUp();
        session.goTo(OUTSIDE);
        assertInstanceOf(Prompt.Reading.class, session.state().asked());
    }

    @Test
    void aReadingIsKeptAsTypedWithTheGaugeItWasMadeWith() throws Exception {
        setUp();
        session.goTo(8);
        session.enter("48.310");
        SizeFinding found = size(8);
        assertEquals("48.310", found.measured().get(0).reading().typed().text());
        assertEquals(
                "MC-3",
                found.measured()
                        .get(0)
                        .reading()
                        .setting()
                        .orElseThrow()
                        .gauge()
                        .id());
        assertEquals(VerdictKind.PASS, found.verdict().standing());
    }

    @Test
    void anOutsideDiameterTooBigIsCutAgainByWhatIsLeftToTheMiddle() throws Exception {
        setUp();
        session.goTo(OUTSIDE);
        for (String reading : List.of("48.032", "48.030", "48.031", "48.032")) {
            assertEquals(Optional.empty(), size(OUTSIDE).proposal());
            session.enter(reading);
        }
        assertEquals(VerdictKind.CUT_AGAIN, size(OUTSIDE).verdict().standing());
        // middle of 47.980 and 48.000 is 47.990; 47.990 − 48.031 = −0.041
        assertEquals(Optional.of(mm("-0.041")), size(OUTSIDE).proposal().flatMap(Proposal::change));

        session.again(StepEvent.PassBegun.Why.CUT);
        for (String reading : List.of("47.990", "47.991", "47.989", "47.990")) {
            session.enter(reading);
        }
        assertEquals(VerdictKind.PASS, size(OUTSIDE).verdict().standing());
        assertEquals(1, session.state().line().earlier().size());
    }

    @Test
    void aStruckOutReadingMakesRoomForAnotherAndStays() throws Exception {
        setUp();
        session.goTo(OUTSIDE);
        session.enter("47.990");
        long entry = size(OUTSIDE).measured().get(0).reading().entry().seq();
        assertEquals(
                Objection.Kind.BLANK,
                session.strikeOut(entry, "  ").objection().orElseThrow().kind());
        session.strikeOut(entry, "Chip under the anvil");
        assertTrue(size(OUTSIDE).measured().isEmpty());
        assertEquals(
                Objection.Kind.ALREADY_STRUCK,
                session.strikeOut(entry, "again").objection().orElseThrow().kind());
        session.enter("47.988");
        assertEquals(2, session.state().pass().readings().size());
        assertEquals(
                "Chip under the anvil",
                session.state().pass().readings().get(0).struck().orElseThrow().reason());
    }

    @Test
    void openedAgainARunGoesOnAtTheSameStep() throws Exception {
        setUp();
        session.goTo(OUTSIDE);
        session.enter("47.990");
        State before = session.state();
        ledger.close();
        ledger = new SqliteStores().open(dir.resolve("s.db"));
        shop = new Runs(ledger, CLOCK);
        State after = shop.open("LG-2207-C-014").state();
        assertEquals(before, after);
        assertEquals(OUTSIDE, after.inHand().number());
    }

    @Test
    void openedAgainItGoesOnWhereSomethingWasSignedLastThoughAnotherStepWasReadLast() throws Exception {
        setUp();
        session.goTo(OUTSIDE);
        session.enter("47.700");
        session.goTo(6);
        session.answer(Answer.NO);
        session.goTo(OUTSIDE);
        assertTrue(session.dispose(Disposition.REWORK, "Sleeve, then turn to size", "Inspector 1", "")
                .objection()
                .isEmpty());
        assertEquals(OUTSIDE, shop.open(session.id()).state().inHand().number());
    }

    @Test
    void aSetUpCarriedOnOpensTheHoldPointAndIsNeitherConcededNorScrapped() throws Exception {
        for (int step : List.of(1, 2, 3)) {
            session.goTo(step);
            session.answer(Answer.YES);
        }
        session.goTo(RUN_OUT);
        session.enter("0.015");
        session.enter("-0.010");
        assertEquals(
                VerdictKind.FAIL, session.state().line().finding().verdict().standing());
        session.goTo(5);
        session.answer(Answer.YES);
        session.goTo(6);
        assertEquals(new Prompt.Held(List.of(RUN_OUT)), session.state().asked());
        session.goTo(RUN_OUT);
        for (Disposition unfit : List.of(Disposition.USE_AS_IS, Disposition.SCRAP)) {
            assertEquals(
                    Objection.Kind.NOT_FOR_THIS_CLASS,
                    session.dispose(unfit, "Turned true in operation 20", "Inspector 1", "C-1")
                            .objection()
                            .orElseThrow()
                            .kind());
        }
        session.dispose(Disposition.CARRY_ON, "Turned true in operation 20", "Foreman 1", "");
        session.goTo(6);
        assertInstanceOf(Prompt.Answering.class, session.state().asked());
        assertEquals(1, session.state().sheet().carriedOn(StepClass.SET_UP));
    }

    @Test
    void aClosedRunTakesNothingMoreAndSaysWhatItIs() throws Exception {
        session.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        assertEquals(new Prompt.Closed(), session.state().asked());
        assertEquals(
                Objection.Kind.CLOSED,
                session.close("Inspector 1", SignedAs.NOT_ACCEPTED)
                        .objection()
                        .orElseThrow()
                        .kind());
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.answer(Answer.YES).objection().orElseThrow().kind());
        assertEquals(Outcome.NOT_COMPLETE, session.state().sheet().outcome());
    }

    @Test
    void aPlugThatEntersFreelyWithTheWantedClearancePasses() throws Exception {
        setUp();
        bore("0.012", "0.012", "0.011", "0.011");
        plug("29.990", "29.990", Answer.FREELY);
        assertEquals(
                VerdictKind.PASS,
                session.state().sheet().line(BORE).finding().verdict().standing());
        assertEquals(
                VerdictKind.PASS,
                session.state().sheet().line(PLUG).finding().verdict().standing());
    }

    private void setUp() throws Exception {
        for (int step : List.of(1, 2, 3)) {
            session.goTo(step);
            session.answer(Answer.YES);
        }
        session.goTo(RUN_OUT);
        assertInstanceOf(RunOutCheck.class, session.state().inHand().check());
        session.turn().sweep(false);
        for (int i = 0; i < 16; i++) {
            session.enter("0.00" + i % 8);
        }
        session.goTo(5);
        session.answer(Answer.YES);
    }

    private void bore(String... readings) throws Exception {
        session.goTo(BORE);
        session.gauge().tellSense(false);
        session.enter("30.000");
        session.enter("");
        session.gauge().confirmSense(true);
        session.enter("20");
        session.enter("20");
        for (String reading : readings) {
            session.enter(reading);
        }
    }

    private void plug(String front, String back, Answer feel) throws Exception {
        session.goTo(PLUG);
        session.enter(front);
        session.enter(back);
        session.answer(feel);
    }

    private SizeFinding size(int step) {
        return (SizeFinding) session.state().sheet().line(step).finding();
    }

    private static Length mm(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }
}
