package org.tenthwise.app.ui.deed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.shell.Navigator.Saying;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.StepEvent;

class WordsFormTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;

    @BeforeEach
    void open() {
        session = workshop.atTheBore("014", "0.013");
    }

    private StepForm model(Saying saying) {
        StepForm model = new WordsForm(saying, workshop.inHand(session), workshop.words, workshop);
        model.load();
        return model;
    }

    private Event say(Saying saying, String text) {
        StepForm model = model(saying);
        text.chars().mapToObj(Character::toString).forEach(model.form()::character);
        model.form().goOn();
        List<Entry> entries = session.state().sheet().run().entries();
        return entries.get(entries.size() - 1).event();
    }

    @Test
    void aNoteIsKeptWithTheStepInHand() {
        assertEquals(new StepEvent.NoteMade(13, "Boring bar sings"), say(Saying.NOTE, "Boring bar sings"));
        assertEquals(List.of("back"), workshop.asked);
    }

    @Test
    void aDoubtIsKeptWithTheStepInHand() {
        assertEquals(new StepEvent.DoubtFlagged(13, "Tip?"), say(Saying.DOUBT, "Tip?"));
    }

    @Test
    void whoTakesOverHasTheRunFromThenOn() {
        say(Saying.HAND_OVER, "Setter 3");
        assertEquals("Setter 3", session.state().sheet().run().by());
    }

    @Test
    void nobodyHandsOverToThemselves() {
        StepForm model = model(Saying.HAND_OVER);
        @SuppressWarnings("unchecked")
        Field<String> who = (Field<String>) model.form().fields().get(0);
        assertFalse(who.choice().offeredProperty().get().contains("Setter 2"));
    }

    @Test
    void aLedgerThatIsGoneIsSaidAndWhatWasTypedStays() {
        StepForm model = model(Saying.NOTE);
        "Wet".chars().mapToObj(Character::toString).forEach(model.form()::character);
        workshop.loseTheLedger();
        model.form().goOn();
        assertEquals(1, workshop.told.size());
        assertEquals(List.of(), workshop.asked);
        assertEquals("Wet", model.form().fields().get(0).reads());
    }
}
