package org.tenthwise.app.ui.deed;

import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/** Why the run in hand is put away, and who does it. */
public final class PutAwayForm extends StepForm {

    private static final int MOST = 120;
    private static final int MOST_NAME = 40;

    private final Field<String> why;
    private final Field<String> who;

    public PutAwayForm(CurrentRun inHand, Words words, Navigator navigator) {
        super(words.say("away.title"), inHand, words, navigator);
        why = Field.words("why", words.say("away.why"), words.say("away.why.question"), true, MOST);
        why.offer(Suggestions.ready(words, "away.why.ready"));
        who = Field.words("who", words.say("away.who"), words.say("away.who.question"), true, MOST_NAME);
        asks(words.say("away.act"), why, who);
    }

    @Override
    protected void offer(State state, Suggestions known) {
        who.offer(known.people());
        form().aboutProperty()
                .set(words.say("away.about", state.sheet().run().begun().serial()));
    }

    @Override
    protected List<String> notes(State state) {
        long readings = state.sheet().run().entries().stream()
                .map(Entry::event)
                .filter(event -> event.as(StepEvent.ReadingTaken.class).isPresent())
                .count();
        return List.of(words.say("away.read", readings), words.say("away.stays"));
    }

    /** Back to the runs that are open: this one is none of them any more. */
    @Override
    protected void act() {
        String reason = why.reads();
        String by = who.reads();
        inHand.ask(form(), session -> session.shelf().putAway(by, reason), state -> navigator.home());
    }
}
