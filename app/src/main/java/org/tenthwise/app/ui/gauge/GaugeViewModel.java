package org.tenthwise.app.ui.gauge;

import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** How the gauge of the step in hand is set, and what is to be done about it. */
public final class GaugeViewModel {

    private final CurrentRun inHand;
    private final Words words;
    private final Navigator journey;
    private final Field<Remedy> what;
    private final StepForm step;

    public GaugeViewModel(CurrentRun inHand, Words words, Navigator journey) {
        this.inHand = inHand;
        this.words = words;
        this.journey = journey;
        what = Field.choice("what", words.say("gauge.what"), words.say("gauge.what.question"), Remedy::reads);
        FormViewModel form = new FormViewModel(List.of(what), words, words.say("gauge.go-on"), this::goOn);
        step = new StepForm(
                words.say("gauge.card"), form, inHand, inHand.card(words, this::notes), this::offer, journey);
    }

    public StepForm step() {
        return step;
    }

    private void offer(State state, Suggestions known) {
        what.offer(Remedy.of(state, words));
    }

    private List<String> notes(State state) {
        return List.of(new GaugeWords(words).line(state.sheet().run(), state.inHand()), words.say("gauge.card.kept"));
    }

    private void goOn() {
        Remedy remedy = what.valueProperty().get().orElseThrow();
        if (remedy instanceof Remedy.SetAnew anew) {
            step.ask(session -> session.gauge().setAnew(anew.senseToo()));
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
