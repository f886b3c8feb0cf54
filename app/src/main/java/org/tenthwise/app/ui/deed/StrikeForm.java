package org.tenthwise.app.ui.deed;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.keys.Settling;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/**
 * Which reading or answer of the step in hand is struck out, and why. The last one lies ready; a tap on a ready reason
 * strikes it out.
 */
public final class StrikeForm extends StepForm {

    private static final int MOST = 120;

    private final Field<Strikable> which;
    private final Field<String> why;
    private final Settling reasons;

    public StrikeForm(CurrentRun inHand, Words words, Navigator navigator, Clock clock) {
        super(words.say("strike.title"), inHand, words, navigator);
        this.reasons = new Settling(clock);
        which = Field.choice("which", words.say("strike.which"), words.say("strike.which.question"), Strikable::reads);
        why = Field.words("why", words.say("strike.why"), words.say("strike.why.question"), true, MOST);
        asks(words.say("strike.act"), which, why);
        form().about(which);
        form().actsOn(why, reasons::settled);
        which.valueProperty().subscribe(this::about);
    }

    private void about(Optional<Strikable> one) {
        reasons.means(one);
        why.aboutProperty().set(one.map(Strikable::reads).orElse(""));
        one.ifPresent(chosen -> {
            why.offer(Suggestions.ready(words, words.key("strike.why.ready", chosen.kind())));
            form().goTo(why);
        });
    }

    @Override
    protected void offer(State state, Suggestions known) {
        List<Strikable> counting = Strikable.of(state, words);
        which.offer(counting);
        if (which.valueProperty().get().isEmpty()) {
            counting.stream().findFirst().ifPresent(which.choice()::choose);
        }
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
