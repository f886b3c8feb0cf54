package org.tenthwise.app.ui.dispose;

import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.form.StepCardView;
import org.tenthwise.app.ui.theme.Pictures;
import org.tenthwise.app.ui.shell.Journey;

/** The form of a disposition. */
public final class DisposeView extends FormView {

    public DisposeView(DisposeViewModel model, Words words, Pictures pictures, Journey journey) {
        super(words.say("dispose.title"), model.form(), words,
                RunHeading.of(words.say("dispose.title"), model.inHand().stateProperty(), words, journey::back),
                new StepCardView(model.cardValue(), words, pictures), model::load);
    }
}
