package org.tenthwise.app.ui.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class KeypadViewModelTest {

    private final List<String> entered = new ArrayList<>();
    private final KeypadViewModel pad = new KeypadViewModel(entered::add);

    private void type(String text) {
        text.chars().mapToObj(Character::toString).forEach(pad::character);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # typed,        shown,          state
            35.010,         35.010,         ENTERABLE
            +0.013,         +0.013,         ENTERABLE
            -0.0035,        -0.0035,        ENTERABLE
            '30,013',       30.013,         ENTERABLE
            .5,             0.5,            ENTERABLE
            -.5,            -0.5,           ENTERABLE
            ' 12.5 ',       '12.5 ',        ENTERABLE
            .1800,          0.1800,         ENTERABLE
            1234567890,     1234567890,     ENTERABLE
            30.,            30.,            UNFINISHED
            -,              -,              UNFINISHED
            1.2E-3,         1.2E-3,         NO_FIGURE
            12.5mm,         12.5mm,         NO_FIGURE
            1-2,            1-2,            NO_FIGURE
            '',             '',             EMPTY
            """)
    void whatIsTypedStaysAsTyped(String typed, String shown, KeypadViewModel.PadState state) {
        type(typed);
        assertEquals(shown, pad.typedProperty().get());
        assertEquals(state, pad.stateProperty().get());
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # typed on a plan in mm, what is wrong with it
            1..5,           SECOND_POINT
            0.0020.003,     SECOND_POINT
            12.5in,         OTHER_UNIT
            12.5 °C,        OTHER_UNIT
            '12 5',         BLANK_INSIDE
            12345678901,    TOO_MANY_DIGITS
            12.5x,          NO_NUMBER
            mm,             NO_NUMBER
            """)
    void whatIsNoFigureSaysWhyAndIsNotEntered(String typed, TypedFigure.Unfit why) {
        pad.unitProperty().set("mm");
        type(typed);
        pad.enter();
        assertEquals(Optional.of(why), pad.unfit());
        assertEquals(List.of(), entered);
    }

    @ParameterizedTest
    @ValueSource(strings = {"12.50", " 12.50", "12.50 ", "12.50mm", "12.50 mm ", "12.50MM"})
    void blanksRoundAFigureAndTheUnitOfThePlanBehindItAreNothing(String typed) {
        pad.unitProperty().set("mm");
        type(typed);
        pad.enter();
        assertEquals(List.of("12.50"), entered);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            textBlock =
                    """
            # typed where degrees and minutes are read, state,  what is wrong, next mark
            30,               ENTERABLE,  ,                   °
            30°,              ENTERABLE,  ,                   ′
            30°15,            ENTERABLE,  ,                   ′
            30°15′7.5,        ENTERABLE,  ,                   ″
            30°15',           ENTERABLE,  ,                   ″
            30.25°,           ENTERABLE,  ,                   ′
            30°15.,           UNFINISHED, ,                   ′
            30.,              UNFINISHED, ,                   °
            ||,               EMPTY,      ,                   °
            30.10,            NO_FIGURE,  DEGREES_OR_MINUTES, °
            30°60,            NO_FIGURE,  NO_ANGLE,           ′
            30°15x,           NO_FIGURE,  NO_ANGLE,           ′
            30mm,             NO_FIGURE,  OTHER_UNIT,         °
            """)
    void anAngleHasItsMarksInside(
            String typed, KeypadViewModel.PadState state, TypedFigure.Unfit why, String nextMark) {
        pad.unitProperty().set("° ′");
        type(typed);
        assertEquals(state, pad.stateProperty().get());
        assertEquals(Optional.ofNullable(why), pad.unfit());
        assertEquals(nextMark, pad.signKeyProperty().getValue());
    }

    /** A mark too many is no figure: nobody knows what was meant by the one before it. */
    @ParameterizedTest
    @CsvSource({"30°,ENTERABLE", "30.25°,ENTERABLE", "30°15°,NO_FIGURE", "30°15′°,NO_FIGURE", "30°°,NO_FIGURE"})
    void inDecimalsOfADegreeAMarkBehindIsPartOfTheAngle(String typed, KeypadViewModel.PadState state) {
        pad.unitProperty().set("°");
        type(typed);
        assertEquals(state, pad.stateProperty().get());
    }

    @Test
    void theKeyOfTheSignPutsTheMarksOfAnAngle() {
        assertEquals("±", pad.signKeyProperty().getValue());
        pad.unitProperty().set("°");
        type("30");
        pad.sign();
        type("15");
        pad.sign();
        type("07");
        pad.sign();
        pad.enter();
        assertEquals(List.of("30°15′07″"), entered);
    }

    @Test
    void onlyAFigureIsEntered() {
        type("30.");
        pad.enter();
        type("5x");
        pad.enter();
        pad.takeBack();
        pad.enter();
        assertEquals(List.of("30.5"), entered);
    }

    @Test
    void anEnteredFigureStaysUntilItIsCleared() {
        type("7");
        pad.enter();
        assertEquals("7", pad.typedProperty().get());
        pad.clear();
        assertEquals("", pad.typedProperty().get());
    }

    @Test
    void theSignTurns() {
        pad.sign();
        pad.character("4");
        assertEquals("-4", pad.typedProperty().get());
        pad.sign();
        assertEquals("4", pad.typedProperty().get());
        pad.takeBack();
        type("+4");
        pad.sign();
        assertEquals("-4", pad.typedProperty().get());
    }

    @Test
    void takingBackFromNothingDoesNothing() {
        pad.takeBack();
        assertEquals("", pad.typedProperty().get());
    }

    private static final Offer OFFER = new Offer("47.", Set.of("47", "48"), 3, Optional.of(new BigDecimal("47.991")));
    private static final Offer DIAL = new Offer("0.", Set.of("0"), 3, Optional.empty());

    private void touch(String keys) {
        keys.chars().mapToObj(Character::toString).forEach(pad::touched);
    }

    private void assertStands(String offered, String typed) {
        assertEquals(offered, pad.offeredProperty().get());
        assertEquals(typed, pad.typedProperty().get());
    }

    @Test
    void whatIsOfferedIsInSightBeforeADigitAndCannotBeEnteredAlone() {
        pad.offer(OFFER);
        assertStands("47.", "");
        assertEquals(KeypadViewModel.PadState.EMPTY, pad.stateProperty().get());
        touch("990");
        assertStands("47.", "47.990");
        pad.enter();
        assertEquals(List.of("47.990"), entered);
    }

    @Test
    void aPointDropsIt() {
        pad.offer(OFFER);
        touch("48");
        assertStands("47.", "47.48");
        touch(".");
        assertStands("", "48.");
        touch("151");
        assertStands("", "48.151");
        assertEquals(Optional.empty(), pad.doubt());
    }

    @Test
    void whatDidNotComeByTheKeysIsTakenAsItCame() {
        pad.offer(OFFER);
        type("990");
        assertStands("", "990");
        assertEquals(Optional.empty(), pad.doubt());
    }

    @Test
    void whatCameInTheMiddleOfADigitAndTheNextStandsBehindTheWholeOfIt() {
        pad.offer(OFFER);
        touch("9");
        type("47.985");
        assertStands("", "47.947.985");
        touch("0");
        assertStands("", "47.947.9850");
    }

    @Test
    void takeBackGoesDigitByDigitAndAtLastTakesTheOffer() {
        pad.offer(OFFER);
        touch("99");
        pad.takeBack();
        assertStands("47.", "47.9");
        pad.takeBack();
        assertStands("47.", "");
        pad.takeBack();
        assertStands("", "");
        touch("48151");
        assertStands("", "48.151");
    }

    @Test
    void theFigureIsClearedWithItsOfferOrWithout() {
        pad.offer(OFFER);
        pad.clearWithOffer();
        assertStands("47.", "");
        touch("99");
        pad.clear();
        assertStands("47.", "");
        touch("99");
        pad.clearWithOffer();
        assertStands("", "");
    }

    /** 039 behind a point that is gone would be 0.39. */
    @Test
    void whatIsOfferedOnADialStaysWhenItsFigureIsClearedAndGoesByThePoint() {
        pad.offer(DIAL);
        pad.clearWithOffer();
        assertStands("0.", "");
        pad.sign();
        touch("38");
        pad.clearWithOffer();
        assertStands("0.", "");
        touch("039");
        assertStands("0.", "0.039");
        pad.clearWithOffer();
        touch("1.");
        assertStands("", "1.");
    }

    @Test
    void theSignStandsBeforeWhatIsOffered() {
        pad.offer(DIAL);
        pad.sign();
        assertStands("0.", "-0.");
        assertEquals(KeypadViewModel.PadState.UNFINISHED, pad.stateProperty().get());
        touch("143");
        assertStands("0.", "-0.143");
        pad.sign();
        assertStands("0.", "0.143");
    }

    @Test
    void aFigureInWhichSomethingIsOfferedGoesWithTheOffer() {
        pad.offer(OFFER);
        touch("99");
        pad.offer(Offer.NONE);
        assertStands("", "");
        touch("99");
        pad.offer(OFFER);
        assertStands("", "99");
        touch("1");
        assertStands("", "991");
        pad.clear();
        assertStands("47.", "");
    }
}
