package org.tenthwise.app.ui.strike;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.InHand;
import org.tenthwise.app.ui.form.Known;
import org.tenthwise.app.ui.form.StepCard;
import org.tenthwise.app.ui.shell.Journey;

/** Which reading or answer of the step in hand is struck out, and why. */
public final class StrikeViewModel {

    private static final int MOST = 120;

    private final InHand inHand;
    private final Words words;
    private final Journey journey;
    private final Field<Strikable> which;
    private final Field<String> why;
    private final FormViewModel form;

    public StrikeViewModel(InHand inHand, Words words, Journey journey) {
        this.inHand = inHand;
        this.words = words;
        this.journey = journey;
        which = Field.choice("which", words.say("strike.which"), words.say("strike.which.question"), Strikable::reads);
        why = Field.words("why", words.say("strike.why"), words.say("strike.why.question"), true, MOST);
        why.offer(Known.ready(words, "strike.why.ready"));
        form = new FormViewModel(List.of(which, why), words, words.say("strike.act"), this::strike);
        which.valueProperty().subscribe(chosen -> form.aboutProperty().set(chosen.map(Strikable::reads).orElse("")));
    }

    public FormViewModel form() {
        return form;
    }

    public InHand inHand() {
        return inHand;
    }

    public ObservableValue<Optional<StepCard>> cardValue() {
        return inHand.stateProperty().map(state -> state.map(this::card));
    }

    public void load() {
        inHand.load((state, known) -> which.offer(Strikable.of(state, words)));
    }

    private StepCard card(State state) {
        boolean none = Strikable.of(state, words).isEmpty();
        return StepCard.of(state, words, List.of(words.say(none ? "strike.none" : "strike.stays")));
    }

    private void strike() {
        long entry = which.valueProperty().get().orElseThrow().entry();
        String reason = why.reads();
        form.busy(true);
        inHand.errands().ask(() -> inHand.session().strikeOut(entry, reason), state -> journey.back(),
                () -> form.busy(false));
    }
}
