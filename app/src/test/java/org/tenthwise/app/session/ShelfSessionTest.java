package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.LastPartQuery;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.history.RunQuery;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** A run put away: kept whole, among the open ones no more, and never what looks accepted. */
class ShelfSessionTest extends RunBegun {

    private static final String WHY = "Started by mistake";

    ShelfSessionTest() {
        super(
                InventedPlans.inMillimetres(
                        """
                [[step]]
                number = 1
                operation = 10
                kind = "width"
                name = "Slot"
                method = "In the middle."
                lower = 12.000
                upper = 12.043
                places = ["middle"]
                gauge_kind = "inside-micrometer"
                gauge = "IM-1"
                """));
    }

    @BeforeEach
    void measured() throws Exception {
        enter("12.020");
        assertEquals(Outcome.CONFORMS, outcome());
    }

    private Outcome outcome() {
        return session.state().sheet().outcome();
    }

    private void putAway() throws Exception {
        taken(session.shelf().putAway(" Setter 3 ", WHY));
    }

    private List<String> listed(RunShelf shelf) {
        return ledger.history().runs(new RunQuery(shelf, Optional.empty(), "", Optional.empty(), 10)).stream()
                .map(run -> run.run().id())
                .toList();
    }

    @Test
    void itComesToNothingButThatItWasPutAway() throws Exception {
        putAway();
        assertEquals(Outcome.PUT_AWAY, outcome());
        assertFalse(session.state().sheet().conformsUncontested());
        assertEquals(
                "Put away by Setter 3 (Started by mistake), neither closed nor accepted.",
                new OutcomeWords(Words.ENGLISH).outcome(session.state().sheet()));
        assertEquals(Optional.empty(), OutcomeWords.shape(session.state().sheet()));
    }

    @Test
    void anAcceptanceOfBeforeLapses() throws Exception {
        taken(session.sign("Inspector 1", SignedAs.ACCEPTED));
        putAway();
        assertTrue(session.state().sheet().run().signatures().get(0).lapsed());
    }

    @Test
    void whatWasReadStaysAndNothingMoreIsTaken() throws Exception {
        putAway();
        assertEquals(1, session.state().pass().readings().size());
        assertTrue(session.state().asked().isClosed());
        assertEquals(Objection.Kind.PUT_AWAY, refused(session.enter("12.021")));
        assertEquals(Objection.Kind.PUT_AWAY, refused(session.again(StepEvent.PassBegun.Why.MEASURED_AGAIN)));
        assertEquals(Objection.Kind.PUT_AWAY, refused(session.sign("Inspector 1", SignedAs.ACCEPTED)));
        assertEquals(Objection.Kind.PUT_AWAY, refused(session.close("Inspector 1", SignedAs.NOT_ACCEPTED)));
        assertEquals(Objection.Kind.PUT_AWAY, refused(session.shelf().putAway("Setter 3", WHY)));
        long reading = session.state().pass().readings().get(0).entry().seq();
        assertEquals(Objection.Kind.PUT_AWAY, refused(session.strikeOut(reading, "Misread")));
        taken(session.note("The bar is back in the rack"));
    }

    @Test
    void takenUpAgainItGoesOnAsItWas() throws Exception {
        putAway();
        taken(session.shelf().takeUp());
        assertEquals(Outcome.CONFORMS, outcome());
        taken(session.sign("Inspector 1", SignedAs.ACCEPTED));
        assertEquals(Objection.Kind.NOT_ASKED_HERE, refused(session.shelf().takeUp()));
    }

    @Test
    void somebodyPutsItAwayAndForAReason() throws Exception {
        assertEquals(Objection.Kind.BLANK, refused(session.shelf().putAway(" ", WHY)));
        assertEquals(Objection.Kind.BLANK, refused(session.shelf().putAway("Setter 3", " ")));
        assertEquals(Objection.Kind.HIDDEN_SIGN, refused(session.shelf().putAway("Setter\u200b3", WHY)));
        assertEquals(Outcome.CONFORMS, outcome());
    }

    /** What scrapped the part would lie out of sight. */
    @Test
    void aScrappedPartIsNotPutAway() throws Exception {
        taken(session.again(StepEvent.PassBegun.Why.MEASURED_AGAIN));
        enter("12.090");
        taken(session.dispose(Disposition.SCRAP, "Too wide", "Inspector 1", "N-1"));
        assertEquals(Objection.Kind.SCRAPPED, refused(session.shelf().putAway("Setter 3", WHY)));
        assertEquals(Outcome.DOES_NOT_CONFORM, outcome());
    }

    @Test
    void aClosedRunIsNotPutAway() throws Exception {
        taken(session.close("Inspector 1", SignedAs.ACCEPTED));
        assertEquals(Objection.Kind.CLOSED, refused(session.shelf().putAway("Setter 3", WHY)));
        assertEquals(Objection.Kind.CLOSED, refused(session.shelf().takeUp()));
    }

    @Test
    void itIsAmongTheOpenRunsNoMoreUntilItIsTakenUp() throws Exception {
        History history = ledger.history();
        PartId part = session.state().sheet().plan().part();
        putAway();
        assertEquals(List.of(), listed(RunShelf.OPEN));
        assertEquals(List.of(session.id()), listed(RunShelf.PUT_AWAY));
        RunFacts facts = history.last().orElseThrow();
        assertTrue(facts.putAway());
        assertFalse(facts.closed());
        assertEquals(Optional.empty(), history.openOf(part, "1"));
        session.shelf().takeUp();
        assertEquals(List.of(session.id()), listed(RunShelf.OPEN));
        assertEquals(List.of(), listed(RunShelf.PUT_AWAY));
    }

    @Test
    void itIsNotThePartBefore() throws Exception {
        Plan plan = session.state().sheet().plan();
        LastPartQuery next = new LastPartQuery(plan.part(), "2", plan.step(1), Long.MAX_VALUE);
        assertTrue(ledger.history().lastPart(next).isPresent());
        putAway();
        assertEquals(Optional.empty(), ledger.history().lastPart(next));
    }

    @Test
    void aStoreOpenedAgainKnowsIt() throws Exception {
        putAway();
        assertEquals(
                Optional.of(new Event.PutAway("Setter 3", WHY)),
                new Runs(ledger, Clock.systemUTC())
                        .open(session.id())
                        .state()
                        .sheet()
                        .putAway());
        List<Entry> entries = ledger.entries(session.id());
        assertEquals(
                new Event.PutAway("Setter 3", WHY),
                entries.get(entries.size() - 1).event());
    }
}
