package org.tenthwise.app.ui.strike;

import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.form.StepCardView;
import org.tenthwise.app.ui.theme.Pictures;
import org.tenthwise.app.ui.shell.Journey;

/** The form to strike something out. */
public final class StrikeView extends FormView {

    public StrikeView(StrikeViewModel model, Words words, Pictures pictures, Journey journey) {
        super(words.say("strike.title"), model.form(), words,
                RunHeading.of(words.say("strike.title"), model.inHand().stateProperty(), words, journey::back),
                new StepCardView(model.cardValue(), words, pictures), model::load);
    }
}
