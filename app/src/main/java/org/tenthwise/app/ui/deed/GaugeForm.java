package org.tenthwise.app.ui.deed;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.CalibrationWords;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.form.Suggestions;
import org.tenthwise.app.ui.shell.Deed;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** How the gauge of the step in hand is set, and what is to be done about it. */
public final class GaugeForm extends StepForm {

    private final Field<Remedy> what;

    public GaugeForm(CurrentRun inHand, Words words, Navigator navigator) {
        super(words.say("gauge.card"), inHand, words, navigator);
        what = Field.choice("what", words.say("gauge.what"), words.say("gauge.what.question"), Remedy::reads);
        asks(words.say("gauge.go-on"), what);
    }

    @Override
    protected void offer(State state, Suggestions known) {
        what.offer(Remedy.of(state, words));
    }

    @Override
    protected List<String> notes(State state) {
        CalibrationWords calibrations = new CalibrationWords(words);
        List<String> notes = new ArrayList<>();
        state.pastDue().forEach(here -> notes.add(calibrations.pastDue(here.what(), here.calibration())));
        notes.add(new GaugeWords(words).line(state.sheet().run(), state.inHand()));
        state.calibrated().stream()
                .filter(here -> here.calibration().isStated())
                .map(here -> words.say(
                        "calibration.of", calibrations.named(here.what()), calibrations.of(here.calibration())))
                .forEach(notes::add);
        notes.add(words.say("gauge.card.kept"));
        return notes;
    }

    @Override
    protected void act() {
        Remedy remedy = what.valueProperty().get().orElseThrow();
        if (remedy instanceof Remedy.SetAnew anew) {
            ask(session -> session.gauge().setAnew(anew.senseToo()));
            return;
        }
        navigator.back();
        if (remedy instanceof Remedy.Wrong wrong) {
            navigator.wrongSetting(inHand.session(), wrong.setting(), wrong.fault());
        } else if (remedy instanceof Remedy.Certificate certificate) {
            navigator.calibration(inHand.session(), certificate.of());
        } else if (remedy instanceof Remedy.Machine) {
            navigator.form(Deed.MACHINE, inHand.session());
        } else {
            navigator.form(Deed.OTHER_GAUGE, inHand.session());
        }
    }
}
