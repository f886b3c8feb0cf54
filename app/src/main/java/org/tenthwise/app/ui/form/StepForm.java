package org.tenthwise.app.ui.form;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/**
 * A form about the step in hand, beside the card of the step: what it asks, and the deed it leads to, which leads back
 * once it is on the disk.
 */
public abstract class StepForm {

    protected final Words words;
    protected final CurrentRun inHand;
    protected final Navigator navigator;
    private final String title;
    private FormViewModel form;

    protected StepForm(String title, CurrentRun inHand, Words words, Navigator navigator) {
        this.title = title;
        this.inHand = inHand;
        this.words = words;
        this.navigator = navigator;
    }

    /** Each form says once, as it is made, what it asks and what its last key reads. */
    protected final void asks(String deed, Field<?>... fields) {
        form = new FormViewModel(List.of(fields), words, deed, this::act);
    }

    public final String title() {
        return title;
    }

    public final FormViewModel form() {
        return form;
    }

    public final CurrentRun inHand() {
        return inHand;
    }

    /** Absent until all is known that it says. */
    public ObservableValue<Optional<StepCard>> card() {
        return inHand.stateProperty().map(run -> run.map(state -> StepCard.of(state, words, notes(state))));
    }

    public final void load() {
        inHand.load(this::offer);
    }

    public final void back() {
        navigator.back();
    }

    /** Offers ready answers, each time the form is shown. */
    protected abstract void offer(State state, Suggestions known);

    /** What else the card says before the form is filled in. */
    protected abstract List<String> notes(State state);

    protected abstract void act();

    protected final void ask(CurrentRun.Verb verb) {
        inHand.ask(form, verb, state -> navigator.back());
    }
}
