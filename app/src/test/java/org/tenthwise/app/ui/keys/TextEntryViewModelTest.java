package org.tenthwise.app.ui.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextEntryViewModelTest {

    private final List<String> entered = new ArrayList<>();
    private final TextEntryViewModel entry = new TextEntryViewModel("", 8, entered::add);

    @Test
    void theFirstLetterIsACapitalAndTheRestAreNot() {
        entry.letter("l", "L");
        entry.letter("o", "O");
        entry.letter("t", "T");
        assertEquals("Lot", entry.typedProperty().get());
    }

    @Test
    void aMarkStaysInCapitalsUntilTheyAreTurned() {
        TextEntryViewModel mark = new TextEntryViewModel("", 8, true, entered::add);
        mark.letter("a", "A");
        mark.letter("b", "B");
        assertEquals("AB", mark.typedProperty().get());
        mark.shift();
        mark.letter("c", "C");
        mark.letter("d", "D");
        assertEquals("ABcd", mark.typedProperty().get());
        mark.startAnew("7");
        mark.letter("e", "E");
        assertEquals("7E", mark.typedProperty().get());
    }

    @Test
    void aHardwareKeyboardKeepsItsOwnCapitals() {
        entry.character("a");
        entry.character("B");
        assertEquals("aB", entry.typedProperty().get());
    }

    @Test
    void theLengthIsLimited() {
        "AB-7731/45".chars().mapToObj(Character::toString).forEach(entry::character);
        assertEquals("AB-7731/", entry.typedProperty().get());
    }

    @Test
    void blanksAloneCannotBeEntered() {
        entry.character(" ");
        entry.enter();
        assertEquals(List.of(), entered);
        entry.character("7");
        entry.enter();
        assertEquals(List.of("7"), entered);
    }

    @Test
    void takingBackTakesOneCharacter() {
        entry.character("a");
        entry.character("b");
        entry.takeBack();
        assertEquals("a", entry.typedProperty().get());
    }
}
