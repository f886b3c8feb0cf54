package org.tenthwise.app.ui.deed;

import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.JawWords;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.words.Words;

/** What was under the needle when the first reading of a turn was taken, where it was not what was asked for. */
public final class StoodForm extends StepForm {

    /**
     * A place it can have been taken at.
     *
     * @param brief short enough for a key to say it in full: cut off, half the places read the same
     */
    private record Place(Slot slot, String reads, String brief) {}

    private final JawWords jaws;
    private final Field<Place> where;

    public StoodForm(CurrentRun inHand, Words words, Navigator navigator) {
        super(words.say("stood.title"), inHand, words, navigator);
        this.jaws = new JawWords(words);
        where = Field.choice("where", words.say("stood.where"), words.say("stood.where.question"), Place::reads);
        asks(words.say("stood.act"), where);
        where.valueProperty().subscribe(place -> form().aboutProperty()
                .set(place.map(Place::brief).orElse("")));
    }

    @Override
    protected void offer(State state, Suggestions known) {
        where.offer(state.otherPlaces().stream()
                .map(slot -> new Place(
                        slot,
                        jaws.place(state.inHand().check(), slot),
                        jaws.briefPlace(state.inHand().check(), slot)))
                .toList());
    }

    @Override
    protected List<String> notes(State state) {
        return List.of(
                state.movable()
                        .map(read -> words.say(
                                "stood.read",
                                figure(read),
                                jaws.place(state.inHand().check(), read.slot())))
                        .orElseGet(() -> words.say("stood.none")),
                words.say("stood.stays"));
    }

    private static String figure(Measured read) {
        return Figures.withUnit(read.reading().typed());
    }

    @Override
    protected void act() {
        String slot = where.valueProperty().get().orElseThrow().slot().key();
        String reason = words.say("stood.reason", where.reads());
        ask(session -> session.turn().stoodAt(slot, reason));
    }
}
