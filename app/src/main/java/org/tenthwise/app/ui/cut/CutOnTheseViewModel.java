package org.tenthwise.app.ui.cut;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.CutOnTheseWords;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** Why a cut is taken on what is read so far, with the places that nobody read before one's eyes. */
public final class CutOnTheseViewModel {

    private static final int MOST = 120;

    private final Words words;
    private final Field<String> why;
    private final StepForm step;

    public CutOnTheseViewModel(CurrentRun inHand, Words words, Navigator journey) {
        this.words = words;
        why = Field.words("why", words.say("on-these.why"), words.say("on-these.why.question"), true, MOST);
        why.offer(Suggestions.ready(words, "on-these.why.ready"));
        FormViewModel form = new FormViewModel(List.of(why), words, words.say("on-these.act"), this::sign);
        step = new StepForm(
                words.say("on-these.title"), form, inHand, inHand.card(words, this::notes), this::offer, journey);
    }

    public StepForm step() {
        return step;
    }

    private void offer(State state, Suggestions known) {
        step.form().aboutProperty().set(words.say("words.about", state.inHand().number()));
    }

    private List<String> notes(State state) {
        String missing = new CutOnTheseWords(words)
                .missing(state.inHand(), state.pass(), Optional.of(state.line().finding()));
        return Stream.of(missing, words.say("on-these.risk"))
                .filter(note -> !note.isEmpty())
                .toList();
    }

    private void sign() {
        String reason = why.reads();
        step.ask(session -> session.cutOnThese(reason));
    }
}
