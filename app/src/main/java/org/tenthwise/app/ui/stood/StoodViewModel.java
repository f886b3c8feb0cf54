package org.tenthwise.app.ui.stood;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.JawWords;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.InHand;
import org.tenthwise.app.ui.form.StepCard;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.record.Measured;

/** What was under the needle when the first reading of a turn was taken, where it was not what was asked for. */
public final class StoodViewModel {

    /** A place it can have been taken at. */
    private record Place(Slot slot, String reads) {
    }

    private final InHand inHand;
    private final Words words;
    private final JawWords jaws;
    private final Journey journey;
    private final Field<Place> where;
    private final FormViewModel form;

    public StoodViewModel(InHand inHand, Words words, Journey journey) {
        this.inHand = inHand;
        this.words = words;
        this.jaws = new JawWords(words);
        this.journey = journey;
        where = Field.choice("where", words.say("stood.where"), words.say("stood.where.question"), Place::reads);
        form = new FormViewModel(List.of(where), words, words.say("stood.act"), this::put);
        where.valueProperty().subscribe(chosen -> form.aboutProperty().set(chosen.map(Place::reads).orElse("")));
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
        inHand.load((state, known) -> where.offer(state.otherPlaces().stream()
                .map(slot -> new Place(slot, jaws.place(state.inHand().check(), slot))).toList()));
    }

    private StepCard card(State state) {
        return StepCard.of(state, words, List.of(state.movable().map(read -> words.say("stood.read", figure(read),
                jaws.place(state.inHand().check(), read.slot()))).orElseGet(() -> words.say("stood.none")), words.say("stood.stays")));
    }

    private static String figure(Measured read) {
        return Figures.written(read.reading().typed()) + " " + read.reading().typed().unit().symbol();
    }

    private void put() {
        String slot = where.valueProperty().get().orElseThrow().slot().key();
        String reason = words.say("stood.reason", where.reads());
        form.busy(true);
        inHand.errands().ask(() -> inHand.session().turn().stoodAt(slot, reason), state -> journey.back(), () -> form.busy(false));
    }
}
