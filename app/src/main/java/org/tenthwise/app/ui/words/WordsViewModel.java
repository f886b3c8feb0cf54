package org.tenthwise.app.ui.words;

import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** One line of words about the run in hand. */
public final class WordsViewModel {

    private static final int MOST = 160;
    private static final int MOST_NAME = 40;

    private final Navigator.Saying saying;
    private final Words words;
    private final Field<String> said;
    private final StepForm step;

    public WordsViewModel(Navigator.Saying saying, CurrentRun inHand, Words words, Navigator journey) {
        this.saying = saying;
        this.words = words;
        said = Field.words(
                "words",
                words.say("words.name", saying),
                words.say("words.question", saying),
                true,
                saying == Navigator.Saying.HAND_OVER ? MOST_NAME : MOST);
        if (saying == Navigator.Saying.DOUBT) {
            said.offer(Suggestions.ready(words, "words.doubts"));
        }
        FormViewModel form = new FormViewModel(List.of(said), words, words.say("words.act", saying), this::say);
        step = new StepForm(
                words.say("words.title", saying),
                form,
                inHand,
                inHand.card(words, state -> List.of(words.say("words.kept", saying))),
                this::offer,
                journey);
    }

    public StepForm step() {
        return step;
    }

    private void offer(State state, Suggestions known) {
        step.form().aboutProperty().set(words.say("words.about", state.inHand().number()));
        if (saying == Navigator.Saying.HAND_OVER) {
            step.form().aboutProperty().set(state.sheet().run().begun().serial());
            String now = state.sheet().run().by();
            said.offer(known.people().stream()
                    .filter(person -> !person.equals(now))
                    .toList());
        }
    }

    private void say() {
        String text = said.reads();
        step.ask(session -> switch (saying) {
            case NOTE -> session.note(text);
            case DOUBT -> session.flagDoubt(text);
            case HAND_OVER -> session.handOver(text);
        });
    }
}
