package org.tenthwise.app.ui.deed;

import java.time.Clock;
import org.tenthwise.app.ui.form.CurrentRun;
import org.tenthwise.app.ui.form.StepForm;
import org.tenthwise.app.ui.shell.Deed;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** The form of every deed about the step in hand. */
public final class StepForms {

    private final Words words;
    private final Navigator navigator;
    private final Clock clock;

    public StepForms(Words words, Navigator navigator, Clock clock) {
        this.words = words;
        this.navigator = navigator;
        this.clock = clock;
    }

    public StepForm of(Deed deed, CurrentRun inHand) {
        return switch (deed) {
            case STRIKE -> new StrikeForm(inHand, words, navigator, clock);
            case DISPOSE -> new DisposeForm(inHand, words, navigator);
            case STOOD_ELSEWHERE -> new StoodForm(inHand, words, navigator);
            case CUT_ON_THESE -> new CutOnTheseForm(inHand, words, navigator);
            case OTHER_GAUGE -> new OtherGaugeForm(inHand, words, navigator);
            case MACHINE -> new MachineForm(inHand, words, navigator);
            case DOCUMENT -> new DocumentForm(inHand, words, navigator, clock);
            case PUT_AWAY -> new PutAwayForm(inHand, words, navigator);
        };
    }
}
