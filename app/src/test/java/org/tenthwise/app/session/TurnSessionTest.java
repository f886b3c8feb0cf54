package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.store.MemoryLedger;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;

/** In which order a run-out is read, and what becomes of a first reading that was taken elsewhere. */
class TurnSessionTest {

    private static final String ANOTHER_STEP =
            """

            [[step]]
            number = 2
            operation = 10
            kind = "confirm"
            name = "It"
            what = "It is so."
            """;

    private final Runs shop =
            new Runs(new MemoryLedger(), Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1)));
    private RunSession session;

    @BeforeEach
    void begin() throws Exception {
        session = at("");
    }

    private RunSession at(String sections) throws Exception {
        Plan plan = InventedPlans.spindle(sections + ANOTHER_STEP);
        return shop.begin(new RunHeader(plan, sections.isEmpty() ? "1" : "2", "L-1", "Lathe 4", "Setter 1"));
    }

    @Test
    void aFullTurnIsAskedFirstAndNothingMoreWhereItIsInside() throws Exception {
        asks("highest", 0, 2);
        session.enter("0.014");
        asks("lowest", 1, 2);
        session.enter("-0.006");
        assertInstanceOf(Prompt.Nothing.class, session.state().asked());
        assertEquals(VerdictKind.PASS, standing());
    }

    @Test
    void whereTheTurnIsOverTheReadingsByAngleAreAskedInTheSamePass() throws Exception {
        enter("0.014", "-0.007");
        assertEquals(VerdictKind.FAIL, standing());
        asks("1.1", 0, 4);
        enter("0.010", "0.003", "-0.004");
        asks("4.1", 3, 4);
        session.enter("0.003");
        assertInstanceOf(Prompt.Nothing.class, session.state().asked());
        assertEquals(6, session.state().pass().standing().size());
        session.again(Why.MOVED);
        asks("highest", 0, 2);
    }

    @Test
    void readByAngleFirstItPassesWhereTheCircleIsInsideAndAsksForATurnWhereItIsNot() throws Exception {
        assertEquals(Optional.of(false), session.state().otherTurn());
        session.turn().sweep(false);
        assertEquals(Optional.of(true), session.state().otherTurn());
        enter("0.005", "0.000", "-0.005", "0.000");
        assertEquals(VerdictKind.PASS, standing());
        assertInstanceOf(Prompt.Nothing.class, session.state().asked());
        session.again(Why.MEASURED_AGAIN);
        session.turn().sweep(false);
        enter("0.010", "0.010", "-0.009", "-0.009");
        assertEquals(VerdictKind.UNPROVEN, standing());
        asks("highest", 0, 2);
        enter("0.010", "-0.010");
        assertEquals(VerdictKind.PASS, standing());
    }

    @Test
    void readingsByAngleGoOnWhereTheyWereBegunAfterTheRunIsOpenedAgain() throws Exception {
        session.turn().sweep(false);
        session.enter("0.005");
        session = shop.open(session.id());
        asks("2.1", 1, 4);
    }

    @Test
    void byAngleTheyCanBeAskedForAfterATurnThatIsInside() throws Exception {
        enter("0.014", "-0.006");
        session.turn().sweep(false);
        asks("1.1", 0, 4);
        assertEquals(VerdictKind.PASS, standing());
        session.goTo(2);
        session.goTo(1);
        assertInstanceOf(Prompt.Nothing.class, session.state().asked());
    }

    @Test
    void theWayIsNotChangedInTheMiddleOfATurn() throws Exception {
        session.enter("0.014");
        assertEquals(Optional.empty(), session.state().otherTurn());
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.turn().sweep(false).objection().orElseThrow().kind());
        asks("lowest", 1, 2);
        session.enter("0.000");
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.turn().sweep(true).objection().orElseThrow().kind());
        session.goTo(2);
        assertEquals(
                Objection.Kind.NOT_ASKED_HERE,
                session.turn().sweep(true).objection().orElseThrow().kind());
    }

    @Test
    void aTurnStruckOutAfterTheReadingsByAngleIsAskedForAgain() throws Exception {
        enter("0.014", "-0.007", "0.005", "0.000", "-0.005", "0.000");
        strike("highest");
        assertEquals(VerdictKind.OPEN, standing());
        asks("highest", 1, 2);
        strike("lowest");
        assertEquals(VerdictKind.PASS, standing(), "by points alone now");
    }

    @Test
    void bothSectionsAreSweptBeforeAnythingIsReadByAngle() throws Exception {
        session = at(InventedPlans.NEAR_AND_FAR);
        enter("0.030", "0.000");
        asks("far:highest", 0, 2);
        enter("0.010", "0.000");
        for (String slot : List.of("1.1", "2.1", "3.1", "4.1", "far:1.1", "far:2.1", "far:3.1", "far:4.1")) {
            assertEquals(slot, ((Prompt.Reading) session.state().asked()).slot().key());
            session.enter("0.001");
        }
        assertInstanceOf(Prompt.Nothing.class, session.state().asked());
    }

    @Test
    void theLowestOfASectionIsSetAgainstTheHighestOfTheSameAlone() throws Exception {
        session = at(InventedPlans.NEAR_AND_FAR);
        enter("0.001", "0.000", "0.105");
        assertEquals(Optional.empty(), session.enter("0.100").objection());
        session.again(Why.MEASURED_AGAIN);
        enter("0.001", "0.000", "0.105");
        assertEquals(
                Objection.Kind.WRONG_WAY_ROUND,
                session.enter("0.106").objection().orElseThrow().kind());
    }

    @Test
    void withAnotherGaugeTheHighestIsReadAgain() throws Exception {
        session.enter("0.500");
        session.gauge().choose("IN-2");
        assertEquals(
                Optional.empty(),
                session.enter("0.900").objection(),
                "a lowest of another gauge is not set against it");
        asks("highest", 1, 2);
        session.enter("0.905");
        assertEquals(VerdictKind.PASS, standing());
        assertEquals(
                2, ((RunOutFinding) session.state().line().finding()).measured().size());
    }

    // a first reading taken elsewhere

    @Test
    void aFirstReadingIsPutToThePlaceItWasTakenAtAndTheNextFollowsOn() throws Exception {
        enter("0.030", "0.000", "0.028");
        assertEquals(
                List.of("2.1", "3.1", "4.1"),
                session.state().otherPlaces().stream().map(Slot::key).toList());
        long before = session.state().sheet().run().entries().size();
        session.turn().stoodAt("3.1", "Jaw 3 was under the needle");
        assertEquals(before + 2, session.state().sheet().run().entries().size());
        assertEquals(
                "0.028", session.state().pass().standing().get("3.1").typed().text());
        assertEquals(
                "Jaw 3 was under the needle",
                session.state().pass().readings().get(2).struck().orElseThrow().reason());
        for (String slot : List.of("4.1", "1.1", "2.1")) {
            assertEquals(slot, ((Prompt.Reading) session.state().asked()).slot().key());
            session.enter("0.001");
        }
        assertInstanceOf(Prompt.Nothing.class, session.state().asked());
    }

    @Test
    void onlyOneThatStandsAloneIsPutElsewhereAndOnlyWithAReason() throws Exception {
        refused("2.1", "So", Objection.Kind.NOT_ASKED_HERE);
        enter("0.030", "0.000");
        refused("2.1", "So", Objection.Kind.NOT_ASKED_HERE);
        session.enter("0.028");
        refused("1.1", "So", Objection.Kind.NOT_ASKED_HERE);
        refused("highest", "So", Objection.Kind.NOT_ASKED_HERE);
        refused("2.1", " ", Objection.Kind.BLANK);
        session.gauge().choose("IN-2");
        refused("2.1", "So", Objection.Kind.NOT_ASKED_HERE);
        enter("0.020");
        assertEquals(
                List.of("1.1", "3.1", "4.1"),
                session.state().otherPlaces().stream().map(Slot::key).toList(),
                "of the gauge in hand");
        enter("0.020");
        refused("4.1", "So", Objection.Kind.NOT_ASKED_HERE);
    }

    @Test
    void atTheSecondSectionTheFirstReadingCanBePutElsewhereToo() throws Exception {
        session = at(InventedPlans.NEAR_AND_FAR);
        enter("0.030", "0.000", "0.030", "0.000", "0.001", "0.002", "0.003");
        assertTrue(session.state().otherPlaces().isEmpty());
        enter("0.004", "0.005");
        session.turn().stoodAt("far:4.1", "Jaw 4");
        asks("far:1.1", 1, 4);
        assertEquals(
                "0.005",
                session.state().pass().standing().get("far:4.1").typed().text());
    }

    private void refused(String slot, String reason, Objection.Kind why) throws Exception {
        assertEquals(
                why,
                session.turn().stoodAt(slot, reason).objection().orElseThrow().kind());
    }

    private void strike(String slot) throws Exception {
        session.strikeOut(session.state().pass().standing().get(slot).entry().seq(), "Gauge slipped");
    }

    private void enter(String... figures) throws Exception {
        for (String figure : figures) {
            session.enter(figure);
        }
    }

    private void asks(String slot, int taken, int of) {
        Prompt.Reading asked =
                assertInstanceOf(Prompt.Reading.class, session.state().asked());
        assertEquals(List.of(slot, taken, of), List.of(asked.slot().key(), asked.taken(), asked.of()));
    }

    private VerdictKind standing() {
        return session.state().line().finding().verdict().standing();
    }
}
