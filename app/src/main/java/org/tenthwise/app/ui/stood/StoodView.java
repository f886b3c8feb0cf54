package org.tenthwise.app.ui.stood;

import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.form.StepCardView;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.app.ui.theme.Pictures;

/** The form to put the first reading of a turn to the place it was taken at. */
public final class StoodView extends FormView {

    public StoodView(StoodViewModel model, Words words, Pictures pictures, Journey journey) {
        super(words.say("stood.title"), model.form(), words,
                RunHeading.of(words.say("stood.title"), model.inHand().stateProperty(), words, journey::back),
                new StepCardView(model.cardValue(), words, pictures), model::load);
    }
}
