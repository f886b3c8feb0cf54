package org.tenthwise.app.ui.gauge;

import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.form.StepCardView;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.app.ui.theme.Pictures;

/** The card of the gauge of the step in hand. */
public final class GaugeView extends FormView {

    public GaugeView(GaugeViewModel model, Words words, Pictures pictures, Journey journey) {
        super(words.say("gauge.card"), model.form(), words,
                RunHeading.of(words.say("gauge.card"), model.inHand().stateProperty(), words, journey::back),
                new StepCardView(model.cardValue(), words, pictures), model::load);
    }
}
