package org.tenthwise.app.ui.words;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.State;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.InHand;
import org.tenthwise.app.ui.form.Known;
import org.tenthwise.app.ui.form.StepCard;
import org.tenthwise.app.ui.shell.Journey;

/** One line of words about the run in hand. */
public final class WordsViewModel {

    private static final int MOST = 160;
    private static final int MOST_NAME = 40;

    private final Journey.Saying saying;
    private final InHand inHand;
    private final Words words;
    private final Journey journey;
    private final Field<String> said;
    private final FormViewModel form;

    public WordsViewModel(Journey.Saying saying, InHand inHand, Words words, Journey journey) {
        this.saying = saying;
        this.inHand = inHand;
        this.words = words;
        this.journey = journey;
        said = Field.words("words", words.say("words.name", saying), words.say("words.question", saying), true,
                saying == Journey.Saying.HAND_OVER ? MOST_NAME : MOST);
        if (saying == Journey.Saying.DOUBT) {
            said.offer(Known.ready(words, "words.doubts"));
        }
        form = new FormViewModel(List.of(said), words, words.say("words.act", saying), this::say);
    }

    public String title() {
        return words.say("words.title", saying);
    }

    public FormViewModel form() {
        return form;
    }

    public InHand inHand() {
        return inHand;
    }

    public ObservableValue<Optional<StepCard>> cardValue() {
        return inHand.stateProperty().map(state -> state.map(
                there -> StepCard.of(there, words, List.of(words.say("words.kept", saying)))));
    }

    public void load() {
        inHand.load(this::offer);
    }

    private void offer(State state, Known known) {
        form.aboutProperty().set(words.say("words.about", state.inHand().number()));
        if (saying == Journey.Saying.HAND_OVER) {
            form.aboutProperty().set(state.sheet().run().begun().serial());
            String now = state.sheet().run().by();
            said.offer(known.people().stream().filter(person -> !person.equals(now)).toList());
        }
    }

    private void say() {
        String text = said.reads();
        form.busy(true);
        inHand.errands().ask(() -> kept(text), state -> journey.back(), () -> form.busy(false));
    }

    private Reply kept(String text) throws CouldNotSave {
        return switch (saying) {
            case NOTE -> inHand.session().note(text);
            case DOUBT -> inHand.session().flagDoubt(text);
            case HAND_OVER -> inHand.session().handOver(text);
        };
    }
}
