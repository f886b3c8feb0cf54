package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.app.ui.run.RunScreenState.Act;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.verdict.VerdictKind;

/** A plug with a certificate, and the turns of a NOT GO, invented. */
class LimitGaugeScreenTest extends RunAtHand {

    private static final String PLUG_AND_TURNS =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "go-not-go"
            name = "Bore Ø20 H7 by plug"
            drawing = "Ø20 H7"
            method = "Wipe both, no force."
            go = "Enters over the full length."
            not_go = "Enters."
            gauge = "LP-1"
            gauge_form = "plug"
            go_size = 20.004
            not_go_size = 20.019
            lower = 20.000
            upper = 20.021

            [[step]]
            number = 2
            operation = 10
            kind = "scale"
            name = "M10-6H, NOT GO"
            drawing = "M10-6H"
            method = "Turned by hand until it stops; count the turns."
            unit = "turns"
            upper = 2
            places = ["thread"]
            gauge_kind = "thread-plug-gauge"
            gauge = "TP-1"
            """;

    @BeforeEach
    void begun() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(PLUG_AND_TURNS));
    }

    private Finding finding() {
        return run.session.state().line().finding();
    }

    @Test
    void thePlugSaysWhatItReallyAccepts() {
        assertEquals(
                List.of("By its certificate the plug gauge accepts 20.004 to 20.019 mm."),
                new Remarks(words).of(finding()));
        seen("run", "run-limit-gauge-open", this::screen);
    }

    @Test
    void oneEndAloneNeverPasses() throws Exception {
        run.session.answer(Answer.YES);
        assertEquals(VerdictKind.OPEN, finding().verdict().standing());
        assertEquals(1, finding().missing());
    }

    /** A worn GO enters a bore that is too small: what passes it is not proven, what does not is out all the same. */
    @Test
    void whatPassesAWornGoIsUnproven() throws Exception {
        beginARunOf(
                InventedPlans.inMillimetres(PLUG_AND_TURNS.replace("go_size = 20.004\nnot", "go_size = 19.998\nnot")));
        assertTrue(
                new Remarks(words)
                        .of(finding())
                        .contains(
                                "Its GO of 19.998 mm is 0.002 mm below the lower limit: work that much too small passes"
                                        + " too."),
                () -> new Remarks(words).of(finding()).toString());
        seen("run", "run-limit-gauge-worn", this::screen);
        run.session.answer(Answer.YES);
        run.session.answer(Answer.YES);
        assertEquals(VerdictKind.UNPROVEN, finding().verdict().standing());
        assertEquals(Act.DISPOSE, atOnce().commitProperty().get().act());
        seen("run", "run-limit-gauge-worn-passed", this::screen);
    }

    @Test
    void whatDoesNotPassAWornGoIsOut() throws Exception {
        beginARunOf(
                InventedPlans.inMillimetres(PLUG_AND_TURNS.replace("go_size = 20.004\nnot", "go_size = 19.998\nnot")));
        run.session.answer(Answer.NO);
        assertEquals(VerdictKind.FAIL, finding().verdict().standing());
    }

    /** At most two turns, ISO 1502, from memory. */
    @Test
    void theTurnsOfANotGoAreAFigure() throws Exception {
        run.session.goTo(2);
        run.enter("2.5");
        assertEquals(VerdictKind.FAIL, finding().verdict().standing());
        seen("run", "run-turns-fail", this::screen);
    }
}
