package org.tenthwise.app.ui.cut;

import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.form.StepCardView;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.app.ui.theme.Pictures;

/** The form that says how the register of the machine counts, and puts it right. */
public final class MachineView extends FormView {

    public MachineView(MachineViewModel model, Words words, Pictures pictures, Journey journey) {
        super(words.say("machine.title"), model.form(), words,
                RunHeading.of(words.say("machine.title"), model.inHand().stateProperty(), words, journey::back),
                new StepCardView(model.cardValue(), words, pictures), model::load);
    }
}
