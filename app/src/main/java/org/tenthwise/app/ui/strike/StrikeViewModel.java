package org.tenthwise.app.ui.strike;

import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** Which reading or answer of the step in hand is struck out, and why. */
public final class StrikeViewModel {

    private static final int MOST = 120;

    private final Words words;
    private final Field<Strikable> which;
    private final Field<String> why;
    private final StepForm step;

    public StrikeViewModel(CurrentRun inHand, Words words, Navigator journey) {
        this.words = words;
        which = Field.choice("which", words.say("strike.which"), words.say("strike.which.question"), Strikable::reads);
        why = Field.words("why", words.say("strike.why"), words.say("strike.why.question"), true, MOST);
        why.offer(Suggestions.ready(words, "strike.why.ready"));
        FormViewModel form = new FormViewModel(List.of(which, why), words, words.say("strike.act"), this::strike);
        form.about(which);
        step = new StepForm(
                words.say("strike.title"), form, inHand, inHand.card(words, this::notes), this::offer, journey);
    }

    public StepForm step() {
        return step;
    }

    private void offer(State state, Suggestions known) {
        which.offer(Strikable.of(state, words));
    }

    private List<String> notes(State state) {
        return List.of(words.say(Strikable.of(state, words).isEmpty() ? "strike.none" : "strike.stays"));
    }

    private void strike() {
        long entry = which.valueProperty().get().orElseThrow().entry();
        String reason = why.reads();
        step.ask(session -> session.strikeOut(entry, reason));
    }
}
