package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.text.Advice;
import org.tenthwise.app.text.Remarks;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.ui.keys.KeypadViewModel.PadState;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.verdict.VerdictKind;

/** A length and then an angle in degrees and minutes, by hand. */
class AngleScreenTest extends RunAtHand {

    static final String LENGTH_THEN_ANGLE =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "width"
            name = "Slot 30"
            method = "One place."
            lower = 29.9
            upper = 30.1
            places = ["middle"]
            gauge_kind = "caliper"
            gauge = "CA-1"

            [[step]]
            number = 2
            operation = 10
            kind = "angle"
            name = "Dovetail 30°"
            drawing = "30° ±0°30'"
            method = "Bevel protractor, blade on the flank, stock on the floor; no light between, two places."
            nominal = "30°"
            plus_minus = "0°30'"
            guard_band = "0°05'"
            places = ["front", "back"]
            gauge_kind = "bevel-protractor"
            gauge = "BP-1"
            """;

    @BeforeEach
    void withTheSlotRead() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(LENGTH_THEN_ANGLE));
        run.enter("30.02");
    }

    /** What a gauge of lengths sends must not be taken for degrees. */
    @Test
    void aFigureTypedBehindALengthDoesNotBeginAnAngle() {
        assertFalse(run.session.state().figureBeginsNext());
        RunViewModel model = atOnce();
        sends(model, "30.00\n");
        assertEquals(1, run.session.state().inHand().number());
    }

    @Test
    void theKeyBesideZeroPutsTheMarks() throws Exception {
        run.session.goTo(2);
        RunViewModel model = atOnce();
        model.touched("3");
        model.touched("0");
        model.sign();
        model.touched("1");
        model.touched("5");
        assertEquals("30°15", model.figureProperty().get());
        model.press();
        assertEquals(List.of("30°15′"), readings());
    }

    /** Ten minutes or a tenth of a degree: nobody knows. */
    @Test
    void aDecimalWithoutAMarkIsNotTaken() throws Exception {
        run.session.goTo(2);
        RunViewModel model = atOnce();
        sends(model, "30.10\n");
        assertEquals(List.of(), readings());
        assertEquals(PadState.NO_FIGURE, model.pad().stateProperty().get());
        assertEquals(
                "Degrees? Press °. Minutes: 30°10′.", model.promptProperty().get());
        sends(model, "30.10°\n");
        assertEquals(List.of("30.10"), readings());
    }

    @Test
    void beforeItsFirstReadingItHoldsEverywhere() throws Exception {
        run.session.goTo(2);
        assertEquals(
                "29°30′ to 30°30′",
                new Sentences(words).limits(run.session.state().inHand()));
        seen("run", "run-angle-open", this::screen);
    }

    @Test
    void whereItPassesItHoldsEverywhere() throws Exception {
        run.session.goTo(2);
        run.enter("30°10'", "29°45'");
        assertEquals(VerdictKind.PASS, standing());
        seen("run", "run-angle-pass", this::screen);
    }

    @Test
    void whereItFailsItHoldsEverywhereAndNoCutIsNamed() throws Exception {
        run.session.goTo(2);
        run.enter("30°10'", "30°41'30");
        assertEquals(VerdictKind.FAIL, standing());
        assertEquals(Optional.empty(), run.session.state().line().finding().proposal());
        assertEquals(
                "Measure again. If it stays out, stop: it needs a disposition, rework only where metal is left.",
                new Advice(words).next(run.session.state().line()));
        seen("run", "run-angle-fail", this::screen);
    }

    /** 90° − 30° = 60°: read from the other side of the protractor. */
    @Test
    void theAngleOfTheOtherSideIsSaidToBeThat() throws Exception {
        run.session.goTo(2);
        run.session.keep("60°");
        assertEquals(
                "60° looks like the angle on the other side: check how the gauge was laid.",
                new Remarks(words).of(run.session.state().line().finding()).get(0));
    }

    /** 30.25° beside the marks of minutes would be neither. */
    @Test
    void theUnitStandsBesideAFigureOnlyWhereItIsNotInIt() throws Exception {
        run.session.goTo(2);
        assertEquals("° ′", text(opened().scene(), "reading-unit"));
        run.enter("30°10'", "30.25°");
        Window taken = opened();
        assertEquals(
                List.of("30.25°", ""), List.of(text(taken.scene(), "reading"), text(taken.scene(), "reading-unit")));
    }

    @Test
    void neitherDoesTheUnitOfThePlanStandBesideALengthReadInTheOther() throws Exception {
        beginARunOf(InventedPlans.inMillimetres(LENGTH_THEN_ANGLE));
        assertEquals("mm", text(opened().scene(), "reading-unit"));
        run.session.enter("1.1811", Unit.INCH);
        Window taken = opened();
        assertEquals(
                List.of("1.1811 in", ""), List.of(text(taken.scene(), "reading"), text(taken.scene(), "reading-unit")));
    }

    private VerdictKind standing() {
        return run.session.state().line().finding().verdict().standing();
    }
}
