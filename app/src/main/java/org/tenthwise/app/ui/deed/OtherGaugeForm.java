package org.tenthwise.app.ui.deed;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.words.Words;

/** Which gauge the step in hand is measured with from now on. */
public final class OtherGaugeForm extends StepForm {

    private static final int MOST = 24;

    private final Field<String> mark;

    public OtherGaugeForm(CurrentRun inHand, Words words, Navigator navigator) {
        super(words.say("gauge.title"), inHand, words, navigator);
        mark = Field.mark("mark", words.say("gauge.mark"), words.say("gauge.mark.question"), true, MOST);
        asks(words.say("gauge.act"), mark);
        form().about(mark);
    }

    @Override
    protected void offer(State state, Suggestions known) {
        mark.offer(known.gauges());
    }

    @Override
    protected List<String> notes(State state) {
        List<String> notes = new ArrayList<>();
        state.inHand()
                .check()
                .means()
                .map(Check.Means::kind)
                .ifPresent(kind -> notes.add(words.say("gauge.kind", GaugeWords.kind(words, kind))));
        state.setting()
                .ifPresent(setting ->
                        notes.add(words.say("gauge.now", setting.gauge().id())));
        notes.add(words.say("gauge.kept"));
        return notes;
    }

    @Override
    protected void act() {
        String chosen = mark.reads();
        ask(session -> session.gauge().choose(chosen));
    }
}
