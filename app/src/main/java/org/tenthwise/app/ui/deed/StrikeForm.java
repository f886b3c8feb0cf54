package org.tenthwise.app.ui.deed;

import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** Which reading or answer of the step in hand is struck out, and why. */
public final class StrikeForm extends StepForm {

    private static final int MOST = 120;

    private final Field<Strikable> which;
    private final Field<String> why;

    public StrikeForm(CurrentRun inHand, Words words, Navigator navigator) {
        super(words.say("strike.title"), inHand, words, navigator);
        which = Field.choice("which", words.say("strike.which"), words.say("strike.which.question"), Strikable::reads);
        why = Field.words("why", words.say("strike.why"), words.say("strike.why.question"), true, MOST);
        why.offer(Suggestions.ready(words, "strike.why.ready"));
        asks(words.say("strike.act"), which, why);
        form().about(which);
    }

    @Override
    protected void offer(State state, Suggestions known) {
        which.offer(Strikable.of(state, words));
    }

    @Override
    protected List<String> notes(State state) {
        return List.of(words.say(Strikable.of(state, words).isEmpty() ? "strike.none" : "strike.stays"));
    }

    @Override
    protected void act() {
        long entry = which.valueProperty().get().orElseThrow().entry();
        String reason = why.reads();
        ask(session -> session.strikeOut(entry, reason));
    }
}
