package org.tenthwise.app.ui.cut;

import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.form.StepCardView;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.app.ui.theme.Pictures;

/** The form to sign for a cut on what is read so far. */
public final class OnTheseView extends FormView {

    public OnTheseView(OnTheseViewModel model, Words words, Pictures pictures, Journey journey) {
        super(words.say("on-these.title"), model.form(), words,
                RunHeading.of(words.say("on-these.title"), model.inHand().stateProperty(), words, journey::back),
                new StepCardView(model.cardValue(), words, pictures), model::load);
    }
}
