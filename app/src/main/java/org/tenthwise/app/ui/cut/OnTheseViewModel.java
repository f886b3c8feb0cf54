package org.tenthwise.app.ui.cut;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.InHand;
import org.tenthwise.app.ui.form.Known;
import org.tenthwise.app.ui.form.StepCard;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Slot;

/** Why a cut is taken on what is read so far, with the places that nobody read before one's eyes. */
public final class OnTheseViewModel {

    private static final int MOST = 120;

    private final InHand inHand;
    private final Words words;
    private final Journey journey;
    private final Field<String> why;
    private final FormViewModel form;

    public OnTheseViewModel(InHand inHand, Words words, Journey journey) {
        this.inHand = inHand;
        this.words = words;
        this.journey = journey;
        why = Field.words("why", words.say("on-these.why"), words.say("on-these.why.question"), true, MOST);
        why.offer(Known.ready(words, "on-these.why.ready"));
        form = new FormViewModel(List.of(why), words, words.say("on-these.act"), this::sign);
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
        inHand.load((state, known) -> form.aboutProperty().set(words.say("words.about", state.inHand().number())));
    }

    private StepCard card(State state) {
        List<Slot> unread = state.inHand().check().slots().stream().filter(slot -> !state.pass().standing().containsKey(slot.key())).toList();
        String places = unread.stream().map(Slot::place).map(Place::name).distinct().collect(Collectors.joining(", "));
        return StepCard.of(state, words, List.of(unread.isEmpty() ? words.say("on-these.temperatures") : words.say("on-these.unread", places),
                words.say("on-these.risk")));
    }

    private void sign() {
        String reason = why.reads();
        form.busy(true);
        inHand.errands().ask(() -> inHand.session().cutOnThese(reason), state -> journey.back(), () -> form.busy(false));
    }
}
