package org.tenthwise.app.ui.gauge;

import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.form.StepCardView;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.app.ui.theme.Pictures;

/** The form to strike out a setting that was wrong. */
public final class WrongSettingView extends FormView {

    public WrongSettingView(WrongSettingViewModel model, Words words, Pictures pictures, Journey journey) {
        super(words.say("wrong.title"), model.form(), words,
                RunHeading.of(words.say("wrong.title"), model.inHand().stateProperty(), words, journey::back),
                new StepCardView(model.cardValue(), words, pictures), model::load);
    }
}
