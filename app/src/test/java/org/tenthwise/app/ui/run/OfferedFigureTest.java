package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.Reply;
import org.tenthwise.model.run.StepEvent.PassBegun.Why;

/** What the keypad offers of a figure, and what is taken of it: never a size that nobody has seen whole. */
class OfferedFigureTest extends RunAtHand {

    private static final String SIZE =
            """

            [[step]]
            number = %d
            operation = 10
            kind = "%s"
            name = "Size %1$d"
            method = "Three places."
            %s
            places = ["front", "middle", "back"]
            gauge_kind = "%s"
            gauge = "%s"
            """;

    private static String size(int number, String limits, String gaugeKind, String gauge) {
        return SIZE.formatted(number, "width", limits, gaugeKind, gauge);
    }

    private static String size(int number, String lower, String upper, String gaugeKind, String gauge) {
        return size(number, "lower = " + lower + "\nupper = " + upper, gaugeKind, gauge);
    }

    private RunViewModel at(String steps) throws Exception {
        beginARunOf(InventedPlans.inMillimetres(steps));
        return atOnce();
    }

    private RunViewModel betweenWholes() throws Exception {
        return at(size(1, "47.980", "48.020", "inside-micrometer", "MC-1")
                + size(2, "13.90", "14.10", "caliper", "CA-1")
                + size(3, "13.90", "14.10", "inside-micrometer", "MC-1"));
    }

    private static String shown(RunViewModel model) {
        return model.figureProperty().get();
    }

    private static String offered(RunViewModel model) {
        return model.pad().offeredProperty().get();
    }

    @Test
    void theFirstReadingIsTypedDigitByDigitButForItsPoint() throws Exception {
        RunViewModel model = betweenWholes();
        assertEquals("", shown(model));
        Finger.presses(model, "47");
        assertEquals("47", shown(model));
        Finger.presses(model, "991");
        assertEquals("47.991", shown(model));
        assertEquals("", offered(model));
        Finger.presses(model, "\n");
        assertEquals(List.of("47.991"), readings());
    }

    @Test
    void theNextOnesBeginWithTheWholeUnitsOfTheOneBefore() throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, "47991\n");
        assertEquals("47.", offered(model));
        assertEquals("47.", shown(model));
        Finger.presses(model, "\n");
        assertEquals(List.of("47.991"), readings());
        Finger.presses(model, "992\n990\n");
        assertEquals(List.of("47.991", "47.992", "47.990"), readings());
    }

    /** Whoever types a figure as the gauge shows it, with its point, gets that figure. */
    @ParameterizedTest
    @ValueSource(strings = {"47.991", "48.003", "48.15", "47.5"})
    void typedWithItsPointAFigureIsItself(String figure) throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, figure + "\n");
        Finger.presses(model, figure + "\n");
        assertEquals(List.of(figure, figure), readings());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            # before | keys    | said
            47.991   | 47991   | 3 decimals here. Any other figure: type it whole, with its point.
            47.991   | 99      | 3 decimals here. Any other figure: type it whole, with its point.
            47.991   | 9911    | 3 decimals here. Any other figure: type it whole, with its point.
            47.9     | 00      | One decimal here. Any other figure: type it whole, with its point.
            # 48.003 read, and nobody looked at the 47
            47.998   | 003     | Far from 47.998. Type it whole, with its point.
            48.003   | 998     | Far from 48.003. Type it whole, with its point.
            47.50    | 48      | 47.48 or 48? Type it whole, with its point.
            """)
    void whatCouldBeAnotherFigureStaysWithAWordToIt(String before, String keys, String said) throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, before + "\n" + keys);
        String whole = shown(model);
        Finger.presses(model, "\n");
        assertEquals(List.of(before), readings());
        assertEquals(said, model.promptProperty().get());
        assertEquals(whole, shown(model));
        Finger.presses(model, "\n");
        assertEquals(List.of(before), readings());
        Finger.presses(model, "47.991\n");
        assertEquals(List.of(before, "47.991"), readings());
    }

    /** With its point each of them would be ten times too large, or a tenth. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # step, keys of a finger that bounced, or missed one
            1,      477991
            1,      488003
            1,      4791
            2,      14402
            2,      1402<2202
            2,      142
            """)
    void aDigitTwiceOrMissingIsNotASizeNearBy(int step, String keys) throws Exception {
        RunViewModel model = betweenWholes();
        model.goTo(step);
        Finger.presses(model, keys + "\n");
        assertEquals(List.of(), readings());
    }

    @ParameterizedTest
    @CsvSource({"10.01,1001", "9.98,998", "10.00,1000", "9.99,9.99", "10.02,10.02", "99.80,99.80"})
    void limitsMayLieOnBothSidesOfTen(String figure, String keys) throws Exception {
        RunViewModel model = at(size(1, "9.98", "10.02", "caliper", "CA-1"));
        Finger.presses(model, keys);
        assertEquals(figure, shown(model));
    }

    @Test
    void aReadingOverTenIsNotTypedBehindNine() throws Exception {
        RunViewModel model = at(size(1, "9.98", "10.02", "caliper", "CA-1"));
        Finger.presses(model, "998\n01\n");
        assertEquals(List.of("9.98"), readings());
        Finger.presses(model, "10.01\n");
        assertEquals("10.", offered(model));
        Finger.presses(model, "02\n");
        assertEquals(List.of("9.98", "10.01", "10.02"), readings());
    }

    @Test
    void aDecimalMoreOrLessByAnotherGaugeIsSaidWithThePoint() throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, "47991\n992\n993\n");
        model.goTo(2);
        Finger.presses(model, "1402\n");
        assertEquals("14.", offered(model));
        Finger.presses(model, "03\n01\n");
        assertEquals(List.of("14.02", "14.03", "14.01"), readings());
        model.goTo(3);
        assertEquals("", offered(model));
        Finger.presses(model, "1402\n");
        assertEquals(List.of(), readings());
        Finger.presses(model, "14021\n022\n");
        assertEquals(List.of("14.021", "14.022"), readings());
    }

    @Test
    void backspaceOrClearTakesTheOfferForThisFigure() throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, "47991\n<");
        assertEquals("", shown(model));
        Finger.presses(model, "48003\n");
        assertEquals("48.", offered(model));
        Finger.presses(model, "00C");
        assertEquals("", shown(model));
        Finger.presses(model, "47999\n");
        assertEquals(List.of("47.991", "48.003", "47.999"), readings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"47.985", "47985", "+47.985", "985", "0.985"})
    void whatAGaugeTypesIsTakenAsItTypesIt(String sent) throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, "47991\n");
        sends(model, sent);
        assertEquals(sent, shown(model));
        assertEquals("", offered(model));
        model.enter();
        assertEquals(sent.contains("47.") ? List.of("47.991", sent) : List.of("47.991"), readings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"9", "99", "985", "-", "4", "47", "47."})
    void aGaugeInTheMiddleOfAFingersFigureMakesNoSizeOfBoth(String keys) throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, "47991\n" + keys);
        sends(model, "47.985\n");
        assertEquals(List.of("47.991"), readings());
        assertEquals(
                "Typed by hand and by a gauge. Read again.",
                model.promptProperty().get());
        sends(model, "47.986\n");
        assertEquals(List.of("47.991", "47.986"), readings());
    }

    @Test
    void aFingerInTheMiddleOfAGaugesFigureGetsNothingOffered() throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, "47991\n");
        sends(model, "4");
        Finger.presses(model, "7");
        assertEquals("47", shown(model));
        sends(model, ".985\n");
        assertEquals(List.of("47.991"), readings());
    }

    /** What a gauge read just before is offered as well: it stands on the screen as every reading does. */
    @Test
    void aFingerGoesOnWhereAGaugeBegan() throws Exception {
        RunViewModel model = betweenWholes();
        sends(model, "+47.991\n");
        assertEquals("47.", offered(model));
        Finger.presses(model, "990\n");
        assertEquals(List.of("+47.991", "47.990"), readings());
    }

    @Test
    void aFarOffFigureIsKeptWholeAndOfferedToNone() throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, "4799.0\n");
        assertEquals("4799.0", shown(model));
        assertEquals("", offered(model));
        model.keepOrAgain();
        assertEquals(List.of("4799.0"), readings());
        assertEquals("", shown(model));
    }

    @Test
    void aFarOffFigureMayBeTypedAnew() throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, "4\n47991\n");
        assertEquals(List.of("47.991"), readings());
    }

    private interface Between {
        Reply happens(RunAtHand test) throws Exception;
    }

    private void assertNothingIsOfferedAfter(Between between) throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, "47991\n99");
        assertEquals("47.99", shown(model));
        between.happens(this);
        model.refresh();
        assertEquals("", shown(model));
        Finger.presses(model, "47990");
        assertEquals("47.990", shown(model));
    }

    @Test
    void nothingIsOfferedOnceAnythingElseHappened() throws Exception {
        assertNothingIsOfferedAfter(test -> test.run.session.strikeOut(
                test.run.session.state().sheet().run().last().seq(), "slip"));
        assertNothingIsOfferedAfter(test -> test.run.session.again(Why.MEASURED_AGAIN));
        assertNothingIsOfferedAfter(test -> test.run.session.gauge().choose("MC-9"));
        assertNothingIsOfferedAfter(test -> test.run.session.note("looked at"));
    }

    @Test
    void nothingIsOfferedOfAReadingBeforeAnotherCheckCameBetween() throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, "47991\n");
        model.goTo(2);
        assertEquals("", shown(model));
        model.goTo(1);
        assertEquals("", shown(model));
        Finger.presses(model, "47990\n");
        assertEquals("47.", offered(model));
    }

    @Test
    void nothingIsOfferedOfAReadingBeforeTheRunWasOpened() throws Exception {
        Finger.presses(betweenWholes(), "47991\n");
        RunViewModel opened = atOnce();
        assertEquals("", shown(opened));
        Finger.presses(opened, "47990\n");
        assertEquals("47.", offered(opened));
    }

    /** The full check shows what was taken last; the limits are those of the next. */
    @Test
    void aFigureThatBeginsTheNextCheckHasItsPointByTheLimitsThere() throws Exception {
        RunViewModel model = betweenWholes();
        Finger.presses(model, "47991\n992\n993\n");
        assertEquals("47.993", shown(model));
        assertEquals("", offered(model));
        Finger.presses(model, "1402");
        assertEquals("14.02", shown(model));
        Finger.presses(model, "\n");
        assertEquals(2, run.session.state().inHand().number());
        assertEquals(List.of("14.02"), readings());
        assertEquals("14.", offered(model));
    }
}
