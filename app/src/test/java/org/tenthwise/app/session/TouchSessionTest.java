package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.app.store.sqlite.SqliteLedger;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.app.text.TouchWords;
import org.tenthwise.app.text.Words;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.run.Event.PassBegun.Why;
import org.tenthwise.model.verdict.Standing;

/** The root of an invented stub Acme thread in inches, read across grooves, and a drilled hole read to its point. */
class TouchSessionTest {

    private static final Words ENGLISH = Words.of(Locale.ENGLISH);
    private static final Plan PLAN = ((PlanReading.Good) new PlanReader().read("""
            format = 1
            part = "T-9"
            revision = "A"
            issue = "1"
            name = "Test stub, invented"
            material = "bronze"
            drawing = "T-9"
            unit = "in"

            [[operation]]
            number = 10
            name = "Thread"

            [[step]]
            number = 1
            operation = 10
            kind = "diameter"
            name = "Root"
            method = "Point micrometer."
            upper = 1.4060
            places = ["front", "back"]
            cut_again = "too big"
            gauge_kind = "micrometer"
            gauge = "MC-9"
            grooves = { threads_per_inch = 8 }
            clamping = "released"

            [[step]]
            number = 2
            operation = 10
            kind = "depth"
            name = "Hole"
            method = "With the rod."
            lower = 0.980
            upper = 1.020
            places = ["middle"]
            cut_again = "too small"
            gauge_kind = "depth-micrometer"
            gauge = "DM-9"
            drill = { diameter = 0.3125, point_angle = 118 }
            read_to = "point"
            clamping = "clamped"
            """)).plan();

    @TempDir
    private Path dir;
    private SqliteLedger ledger;
    private RunSession session;

    @BeforeEach
    void beginARun() throws Exception {
        ledger = SqliteLedger.open(dir.resolve("s.db"));
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));
        session = new Shop(ledger, clock).begin(new Beginning(PLAN, "1", "", "", "Setter 2"));
    }

    @AfterEach
    void letGo() {
        ledger.close();
    }

    private Finding finding() {
        return session.state().line().finding();
    }

    private List<String> said() {
        return new Remarks(ENGLISH).of(finding());
    }

    @Test
    void howItTouchedIsAskedOnceEveryPlaceIsRead() throws Exception {
        session.enter("1.4070");
        assertInstanceOf(Asked.Reading.class, session.state().asked());
        assertEquals(Standing.OPEN, finding().verdict().standing());
        session.enter("1.4064");
        assertEquals(new Asked.Answering(Question.GROOVES_TOUCHED), session.state().asked());
        assertEquals(Standing.OPEN, finding().verdict().standing());
        assertEquals("Nobody has said yet how the gauge touched. Points in opposite grooves read 0.0014 in too big.", said().get(0));
        assertTrue(session.answer(Answer.YES).objection().isPresent());
        session.answer(Answer.OPPOSITE_GROOVES);
        assertEquals(Standing.PASS, finding().verdict().standing());
        assertEquals("Points in opposite grooves stand half a pitch askew: \u22120.00139 in.", said().get(0));
        assertInstanceOf(Asked.Nothing.class, session.state().asked());
    }

    @Test
    void squareAcrossTheSameReadingIsStillTooBig() throws Exception {
        session.enter("1.4070");
        session.enter("1.4064");
        session.answer(Answer.SQUARE_ACROSS);
        assertEquals(Standing.CUT_AGAIN, finding().verdict().standing());
        assertTrue(said().contains("Read square across the grooves: nothing to correct."));
    }

    /** The plan has the root read released: what is too big is not in the chuck any more. */
    @Test
    void whatWasReadReleasedIsTruedUpBeforeItIsCut() throws Exception {
        String said = "It was read released: clamp it and true it up before any cut.";
        session.enter("1.4070");
        session.enter("1.4064");
        assertFalse(said().contains(said), "nothing is to be cut yet");
        session.answer(Answer.SQUARE_ACROSS);
        assertEquals(said, said().get(0));
        session.goTo(2);
        session.enter("1.010");
        assertEquals(Standing.CUT_AGAIN, finding().verdict().standing());
        assertFalse(said().contains(said), "it was read clamped");
    }

    @Test
    void aPassIsAskedAnew() throws Exception {
        session.enter("1.4070");
        session.enter("1.4064");
        session.answer(Answer.SQUARE_ACROSS);
        session.again(Why.CUT);
        session.enter("1.4060");
        session.enter("1.4060");
        assertEquals(new Asked.Answering(Question.GROOVES_TOUCHED), session.state().asked());
    }

    @Test
    void aReadingNoThreadOfThatPitchCanGiveIsRefusedEvenOnPurpose() throws Exception {
        assertEquals(Objection.Kind.NO_SUCH_SIZE, session.keep("0.0625").objection().orElseThrow().kind());
        session.goTo(2);
        assertEquals(Objection.Kind.NO_SUCH_SIZE, session.keep("0.0938").objection().orElseThrow().kind());
    }

    /** 0.3125 / (2 tan 59°) = 0.0939: 1.080 to the point is 0.9861 of full diameter. */
    @Test
    void theRodFindsThePointAndItsLengthIsTakenOff() throws Exception {
        session.goTo(2);
        String before = "Read to the point of the drill: its length, 0.094 in, is taken off. The depth is that of the full diameter.";
        assertTrue(said().contains(before));
        session.enter("1.080");
        assertEquals(Standing.PASS, finding().verdict().standing());
        session.again(Why.MEASURED_AGAIN);
        session.enter("1.010");
        assertEquals(Standing.CUT_AGAIN, finding().verdict().standing());
    }

    @Test
    void whoeverReadsItReleasedIsToldToUnclampFirst() {
        TouchWords touch = new TouchWords(ENGLISH);
        assertEquals("Unclamp first: read it released. MC-9", touch.withGauge(PLAN.step(1), "MC-9"));
        assertEquals("Read it clamped. DM-9", touch.withGauge(PLAN.step(2), "DM-9"));
    }
}
