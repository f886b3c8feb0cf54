package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.CutOnTheseWords;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * Wires on a thread whose root nobody measured yet may lie on it: no cut by what they read, unless someone signs for
 * it.
 */
class RootAwaitedSessionTest extends RunBegun {

    private static final int ROOT = 1;
    private static final int WIRES = 2;

    RootAwaitedSessionTest() {
        super(InventedPlans.ROOT_THEN_WIRES);
    }

    @BeforeEach
    void readOverWiresFirst() throws Exception {
        session.goTo(WIRES);
        enter("1.443", "20.600");
        assertEquals(VerdictKind.OPEN, finding().verdict().standing());
    }

    @Test
    void noCutIsTakenBeforeTheRootIsMeasured() throws Exception {
        assertFalse(session.state().mayCut());
        assertEquals(Objection.Kind.PLACES_UNREAD, refused(session.again(Why.CUT)));
        session.goTo(ROOT);
        enter("16.900");
        session.goTo(WIRES);
        enter("20.600");
        taken(session.again(Why.CUT));
    }

    @Test
    void whoSignsForItCutsAndTheRecordTellsWhatWasMissing() throws Exception {
        assertTrue(session.state().mayCutOnThese());
        assertEquals(
                "The root under the wires is not measured: they may rest on it.",
                new CutOnTheseWords(Words.of(Locale.ENGLISH))
                        .missing(session.state().inHand(), session.state().pass(), Optional.of(finding())));
        taken(session.cutOnThese("Far from size"));
        taken(session.again(Why.CUT));
    }
}
