package org.tenthwise.app.ui.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.session.State;
import org.tenthwise.app.session.Withdrawn;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepCard;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/**
 * Strikes out a setting that was wrong. What does not count any more is listed before, run by run and check by check.
 */
public final class WrongSettingForm extends StepForm {

    private static final int MOST = 120;

    private final Entry setting;
    private final SettingFault fault;
    private final Field<String> why;
    private final ObjectProperty<Optional<StepCard>> card = new SimpleObjectProperty<>(Optional.empty());
    private List<Withdrawn> goes = List.of();

    /** @param setting entry of the run in hand that holds it */
    public WrongSettingForm(CurrentRun inHand, Entry setting, SettingFault fault, Words words, Navigator navigator) {
        super(words.say("wrong.title"), inHand, words, navigator);
        this.setting = setting;
        this.fault = fault;
        why = Field.words("why", words.say("strike.why"), words.say("strike.why.question"), true, MOST);
        why.offer(Suggestions.ready(words, words.key("wrong.why", fault)));
        asks(words.say("strike.act"), why);
        form().busy(true);
    }

    @Override
    protected void offer(State state, Suggestions known) {
        inHand.tasks().run(() -> inHand.session().gauge().sharing(setting, fault), all -> {
            goes = all;
            card.set(Optional.of(StepCard.of(state, words, notes(state))));
            form().aboutProperty()
                    .set(words.say(
                            "wrong.about",
                            all.stream().mapToInt(Withdrawn::readings).sum()));
            form().busy(false);
        });
    }

    /** Absent until it is known what goes. */
    @Override
    public ObservableValue<Optional<StepCard>> card() {
        return card;
    }

    @Override
    protected List<String> notes(State state) {
        Setting wrong = StepEvent.GaugeSet.in(setting).setting();
        List<String> notes = new ArrayList<>();
        notes.add(new GaugeWords(words).line(wrong));
        notes.add(words.say("wrong.goes", words.say("wrong.fault", fault)));
        goes.forEach(one -> notes.add(words.say("wrong.goes.line", one.run(), one.step(), one.readings())));
        notes.add(words.say(fault == SettingFault.SENSE ? "wrong.sense-anew" : "wrong.stays"));
        return notes;
    }

    @Override
    protected void act() {
        String reason = why.reads();
        ask(session -> session.gauge().strikeOut(setting, fault, reason));
    }
}
