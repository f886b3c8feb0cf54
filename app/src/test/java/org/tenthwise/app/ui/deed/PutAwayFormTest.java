package org.tenthwise.app.ui.deed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.model.run.Event;

class PutAwayFormTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private RunSession session;
    private StepForm model;

    @BeforeEach
    void atTheBore() {
        session = workshop.atTheBore("014", "0.013", "0.015");
        model = new PutAwayForm(workshop.inHand(session), workshop.words, workshop);
        model.load();
    }

    private Optional<Event.PutAway> away() {
        return session.state().sheet().putAway();
    }

    private void choose(String answer) {
        Field<?> field = model.form().inHandProperty().get();
        choose(field, answer);
        model.form().goOn();
    }

    private static <T> void choose(Field<T> field, String answer) {
        T found = field.choice().offeredProperty().get().stream()
                .filter(one -> field.reads(one).equals(answer))
                .findFirst()
                .orElseThrow();
        field.choice().choose(found);
    }

    @Test
    void aReasonAndAPersonPutItAwayAndLeadToTheOpenRuns() {
        choose("Started by mistake");
        assertEquals(Optional.empty(), away());
        choose("Setter 2");
        assertEquals(Optional.of(new Event.PutAway("Setter 2", "Started by mistake")), away());
        assertEquals(List.of("home"), workshop.asked);
    }

    @Test
    void withoutAReasonNothingIsPutAwayHoweverOftenTheKeyIsPressed() {
        assertFalse(model.form().readyProperty().get());
        model.form().goOn();
        model.form().goOn();
        assertEquals(Optional.empty(), away());
    }

    /** 16 at the chuck, two at the bore. */
    @Test
    void howManyReadingsGoWithItIsSaidBefore() {
        assertEquals(
                "18 readings were taken in it: they stay in the record, and no other run has them.",
                model.card().getValue().orElseThrow().notes().get(0));
    }
}
