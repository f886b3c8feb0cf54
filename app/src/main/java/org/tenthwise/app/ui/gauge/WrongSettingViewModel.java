package org.tenthwise.app.ui.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.session.State;
import org.tenthwise.app.session.Withdrawn;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.StepCard;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.words.Words;

/**
 * Strikes out a setting that was wrong. What does not count any more is listed before, run by run and check by check.
 */
public final class WrongSettingViewModel {

    private static final int MOST = 120;

    private final CurrentRun inHand;
    private final Entry setting;
    private final SettingFault fault;
    private final Words words;
    private final Field<String> why;
    private final StepForm step;
    /** Absent until it is known what goes. */
    private final ObjectProperty<Optional<StepCard>> card = new SimpleObjectProperty<>(Optional.empty());

    /** @param setting entry of the run in hand that holds it */
    public WrongSettingViewModel(CurrentRun inHand, Entry setting, SettingFault fault, Words words, Navigator journey) {
        this.inHand = inHand;
        this.setting = setting;
        this.fault = fault;
        this.words = words;
        why = Field.words("why", words.say("strike.why"), words.say("strike.why.question"), true, MOST);
        why.offer(Suggestions.ready(words, words.key("wrong.why", fault)));
        FormViewModel form = new FormViewModel(List.of(why), words, words.say("strike.act"), this::strike);
        form.busy(true);
        step = new StepForm(words.say("wrong.title"), form, inHand, card, this::offer, journey);
    }

    public StepForm step() {
        return step;
    }

    private void offer(State state, Suggestions known) {
        inHand.errands().run(() -> inHand.session().gauge().sharing(setting, fault), all -> {
            card.set(Optional.of(StepCard.of(state, words, notes(all))));
            step.form()
                    .aboutProperty()
                    .set(words.say(
                            "wrong.about",
                            all.stream().mapToInt(Withdrawn::readings).sum()));
            step.form().busy(false);
        });
    }

    private List<String> notes(List<Withdrawn> all) {
        Setting wrong = ((Event.GaugeSet) setting.event()).setting();
        List<String> notes = new ArrayList<>();
        notes.add(new GaugeWords(words).line(wrong));
        notes.add(words.say("wrong.goes", words.say("wrong.fault", fault)));
        all.forEach(gone -> notes.add(words.say("wrong.goes.line", gone.run(), gone.step(), gone.readings())));
        notes.add(words.say(fault == SettingFault.SENSE ? "wrong.sense-anew" : "wrong.stays"));
        return notes;
    }

    private void strike() {
        String reason = why.reads();
        step.ask(session -> session.gauge().strikeOut(setting, fault, reason));
    }
}
