package org.tenthwise.app.ui.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeypadViewModelTest {

    private final List<String> entered = new ArrayList<>();
    private final KeypadViewModel pad = new KeypadViewModel(entered::add);

    private void type(String text) {
        text.chars().mapToObj(Character::toString).forEach(pad::character);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            # typed,        shown,          state
            35.010,         35.010,         ENTERABLE
            +0.013,         +0.013,         ENTERABLE
            -0.0035,        -0.0035,        ENTERABLE
            '30,013',       30.013,         ENTERABLE
            .5,             0.5,            ENTERABLE
            -.5,            -0.5,           ENTERABLE
            ' 12.5 ',       12.5,           ENTERABLE
            1..5,           1.5,            ENTERABLE
            12345678901,    1234567890,     ENTERABLE
            30.,            30.,            UNFINISHED
            -,              -,              UNFINISHED
            1.2E-3,         1.2E-3,         NO_FIGURE
            12.5mm,         12.5mm,         NO_FIGURE
            1-2,            1-2,            NO_FIGURE
            '',             '',             EMPTY
            """)
    void whatIsTypedStaysAsTyped(String typed, String shown, KeypadViewModel.State state) {
        type(typed);
        assertEquals(shown, pad.typedProperty().get());
        assertEquals(state, pad.stateProperty().get());
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
        pad.digit(4);
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
}
