package org.tenthwise.app.ui.gauge;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.words.Words;

/** Which gauge the step in hand is measured with from now on. */
public final class OtherGaugeViewModel {

    private static final int MOST = 24;

    private final Words words;
    private final Field<String> mark;
    private final StepForm step;

    public OtherGaugeViewModel(CurrentRun inHand, Words words, Navigator journey) {
        this.words = words;
        mark = Field.words("mark", words.say("gauge.mark"), words.say("gauge.mark.question"), true, MOST);
        FormViewModel form = new FormViewModel(List.of(mark), words, words.say("gauge.act"), this::choose);
        form.about(mark);
        step = new StepForm(
                words.say("gauge.title"), form, inHand, inHand.card(words, this::notes), this::offer, journey);
    }

    public StepForm step() {
        return step;
    }

    private void offer(State state, Suggestions known) {
        mark.offer(known.gauges());
    }

    private List<String> notes(State state) {
        List<String> notes = new ArrayList<>();
        state.inHand()
                .check()
                .means()
                .map(Check.Means::kind)
                .ifPresent(kind -> notes.add(words.say("gauge.kind", words.say("gauge-kind", kind))));
        state.setting()
                .ifPresent(setting ->
                        notes.add(words.say("gauge.now", setting.gauge().id())));
        notes.add(words.say("gauge.kept"));
        return notes;
    }

    private void choose() {
        String chosen = mark.reads();
        step.ask(session -> session.gauge().choose(chosen));
    }
}
