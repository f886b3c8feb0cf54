package org.tenthwise.app.ui.deed;

import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** One line of words about the run in hand. */
public final class WordsForm extends StepForm {

    private static final int MOST = 160;
    private static final int MOST_NAME = 40;

    private final Navigator.Saying saying;
    private final Field<String> said;

    public WordsForm(Navigator.Saying saying, CurrentRun inHand, Words words, Navigator navigator) {
        super(words.say("words.title", saying), inHand, words, navigator);
        this.saying = saying;
        said = Field.words(
                "words",
                words.say("words.name", saying),
                words.say("words.question", saying),
                true,
                saying == Navigator.Saying.HAND_OVER ? MOST_NAME : MOST);
        if (saying == Navigator.Saying.DOUBT) {
            said.offer(Suggestions.ready(words, "words.doubts"));
        }
        if (saying == Navigator.Saying.NOTE) {
            said.offer(Suggestions.ready(words, "words.notes"));
        }
        asks(words.say("words.act", saying), said);
    }

    @Override
    protected void offer(State state, Suggestions known) {
        form().aboutProperty().set(words.say("words.about", state.inHand().number()));
        if (saying == Navigator.Saying.HAND_OVER) {
            form().aboutProperty().set(state.sheet().run().begun().serial());
            String now = state.sheet().run().by();
            said.offer(known.people().stream()
                    .filter(person -> !person.equals(now))
                    .toList());
        }
    }

    @Override
    protected List<String> notes(State state) {
        return List.of(words.say("words.kept", saying));
    }

    @Override
    protected void act() {
        String text = said.reads();
        ask(session -> switch (saying) {
            case NOTE -> session.note(text);
            case DOUBT -> session.flagDoubt(text);
            case HAND_OVER -> session.handOver(text);
        });
    }
}
