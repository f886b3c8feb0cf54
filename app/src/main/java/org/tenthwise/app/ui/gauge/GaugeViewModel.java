package org.tenthwise.app.ui.gauge;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.InHand;
import org.tenthwise.app.ui.form.StepCard;
import org.tenthwise.app.ui.shell.Journey;

/** How the gauge of the step in hand is set, and what is to be done about it. */
public final class GaugeViewModel {

    private final InHand inHand;
    private final Words words;
    private final Journey journey;
    private final Field<Remedy> what;
    private final FormViewModel form;

    public GaugeViewModel(InHand inHand, Words words, Journey journey) {
        this.inHand = inHand;
        this.words = words;
        this.journey = journey;
        what = Field.choice("what", words.say("gauge.what"), words.say("gauge.what.question"), Remedy::reads);
        form = new FormViewModel(List.of(what), words, words.say("gauge.go-on"), this::goOn);
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
        inHand.load((state, known) -> what.offer(Remedy.of(state, words)));
    }

    private StepCard card(State state) {
        return StepCard.of(state, words,
                List.of(new GaugeWords(words).line(state.sheet().run(), state.inHand()), words.say("gauge.card.kept")));
    }

    private void goOn() {
        Remedy remedy = what.valueProperty().get().orElseThrow();
        if (remedy instanceof Remedy.SetAnew anew) {
            form.busy(true);
            inHand.errands().ask(() -> inHand.session().gauge().setAnew(anew.senseToo()), state -> journey.back(),
                    () -> form.busy(false));
            return;
        }
        journey.back();
        if (remedy instanceof Remedy.Wrong wrong) {
            journey.wrongSetting(inHand.session(), wrong.setting(), wrong.fault());
        } else if (remedy instanceof Remedy.Machine) {
            journey.machine(inHand.session());
        } else {
            journey.otherGauge(inHand.session());
        }
    }
}
