package org.tenthwise.app.ui.gauge;

import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.form.StepCardView;
import org.tenthwise.app.ui.theme.Pictures;
import org.tenthwise.app.ui.shell.Journey;

/** The form to take another gauge. */
public final class OtherGaugeView extends FormView {

    public OtherGaugeView(OtherGaugeViewModel model, Words words, Pictures pictures, Journey journey) {
        super(words.say("gauge.title"), model.form(), words,
                RunHeading.of(words.say("gauge.title"), model.inHand().stateProperty(), words, journey::back),
                new StepCardView(model.cardValue(), words, pictures), model::load);
    }
}
