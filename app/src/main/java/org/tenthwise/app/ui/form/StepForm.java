package org.tenthwise.app.ui.form;

import java.util.Optional;
import java.util.function.BiConsumer;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.shell.Navigator;

/**
 * A form about the step in hand, beside the card of the step. What it asks of the run leads back once it is on the
 * disk.
 *
 * @param card absent until all is known that it says
 * @param offer is given the run and the ready answers each time the form is shown
 */
public record StepForm(
        String title,
        FormViewModel form,
        CurrentRun inHand,
        ObservableValue<Optional<StepCard>> card,
        BiConsumer<State, Suggestions> offer,
        Navigator journey) {

    public void load() {
        inHand.load(offer);
    }

    public void ask(CurrentRun.Verb verb) {
        inHand.ask(form, verb, state -> journey.back());
    }
}
