package org.tenthwise.app.ui.deed;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.CutOnTheseWords;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** Why a cut is taken on what is read so far, with the places that nobody read before one's eyes. */
public final class CutOnTheseForm extends StepForm {

    private static final int MOST = 120;

    private final Field<String> why;

    public CutOnTheseForm(CurrentRun inHand, Words words, Navigator navigator) {
        super(words.say("on-these.title"), inHand, words, navigator);
        why = Field.words("why", words.say("on-these.why"), words.say("on-these.why.question"), true, MOST);
        why.offer(Suggestions.ready(words, "on-these.why.ready"));
        asks(words.say("on-these.act"), why);
    }

    @Override
    protected void offer(State state, Suggestions known) {
        form().aboutProperty().set(words.say("words.about", state.inHand().number()));
    }

    @Override
    protected List<String> notes(State state) {
        String missing = new CutOnTheseWords(words)
                .missing(state.inHand(), state.pass(), Optional.of(state.line().finding()));
        return Stream.of(missing, words.say("on-these.risk"))
                .filter(note -> !note.isEmpty())
                .toList();
    }

    @Override
    protected void act() {
        String reason = why.reads();
        ask(session -> session.cutOnThese(reason));
    }
}
