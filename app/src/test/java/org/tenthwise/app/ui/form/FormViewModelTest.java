package org.tenthwise.app.ui.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.words.Words;

class FormViewModelTest {

    private final List<String> done = new ArrayList<>();
    private final Field<String> needed = Field.words("needed", "Needed", "What is needed?", true, 8);
    private final Field<String> spare = Field.words("spare", "Spare", "What else?", false, 8);
    private final Field<String> who = Field.words("who", "Who", "Who?", true, 8);
    private final FormViewModel form = new FormViewModel(
            List.of(needed, spare, who),
            Words.of(Locale.ENGLISH),
            "Do it",
            () -> done.add(needed.reads() + "/" + spare.reads() + "/" + who.reads()));

    @Test
    void whileWhatIsNeededIsMissingTheKeyDoesNothingAndSaysSo() {
        form.goOn();
        assertSame(needed, form.inHandProperty().get());
        assertFalse(form.readyProperty().get());
        assertEquals("type it first", form.lineProperty().get());
    }

    @Test
    void theKeyLeadsPastWhatNeedNotBeSaidToWhatMust() {
        form.character("7");
        assertEquals("Spare", form.lineProperty().get());
        form.goOn();
        assertSame(spare, form.inHandProperty().get());
        form.goOn();
        assertSame(who, form.inHandProperty().get());
        assertEquals(List.of(), done);
        form.character("A");
        assertEquals("Do it", form.wordProperty().get());
        form.goOn();
        assertEquals(List.of("7//A"), done);
    }

    @Test
    void whatAGaugeSendsLeadsOnAndDoesNotSign() {
        "30.012".chars().mapToObj(Character::toString).forEach(form::character);
        form.enter();
        assertSame(spare, form.inHandProperty().get());
        form.goTo(who);
        "29.998".chars().mapToObj(Character::toString).forEach(form::character);
        form.enter();
        assertEquals(List.of(), done);
        assertSame(who, form.inHandProperty().get());
        assertEquals("29.998", who.reads());
    }

    @Test
    void whatIsMissingBeforeTheOneInHandIsNotPassedOver() {
        form.goTo(who);
        form.character("A");
        assertEquals("Needed", form.lineProperty().get());
        form.goOn();
        assertSame(needed, form.inHandProperty().get());
    }

    @Test
    void itIsDoneOnceHoweverOftenTheKeyIsPressedMeanwhile() {
        form.character("7");
        form.goTo(spare);
        form.goTo(who);
        form.character("A");
        form.busy(true);
        form.goOn();
        assertEquals(List.of(), done);
        assertEquals("Saving …", form.lineProperty().get());
        form.busy(false);
        form.goOn();
        assertEquals(List.of("7//A"), done);
    }

    @Test
    void typingLeavesTheReadyAnswersAndTheyComeBack() {
        who.offer(List.of("Setter 1", "Setter 2"));
        form.goTo(who);
        who.choice().choose("Setter 2");
        assertEquals("Setter 2", who.reads());
        form.character("B");
        assertEquals("B", who.reads());
        who.choose();
        assertEquals("Setter 2", who.reads());
    }

    @Test
    void readyAnswersDoNotTakeTheLineFromSomebodyTyping() {
        form.goTo(who);
        form.character("B");
        who.offer(List.of("Setter 1"));
        assertEquals(Field.Way.TYPE, who.wayProperty().get());
        assertEquals("B", who.reads());
    }

    @Test
    void blanksAloneAreNoAnswer() {
        form.character(" ");
        assertEquals(Optional.empty(), needed.valueProperty().get());
        assertFalse(form.readyProperty().get());
    }

    @Test
    void backspaceTakesNothingFromAChosenAnswer() {
        who.offer(List.of("Setter 1"));
        form.goTo(who);
        who.choice().choose("Setter 1");
        form.takeBack();
        assertEquals("Setter 1", who.reads());
        assertTrue(form.readyProperty().get());
    }
}
