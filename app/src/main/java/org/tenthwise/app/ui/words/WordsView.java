package org.tenthwise.app.ui.words;

import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.form.StepCardView;
import org.tenthwise.app.ui.theme.Pictures;
import org.tenthwise.app.ui.shell.Journey;

/** The form to say something. */
public final class WordsView extends FormView {

    public WordsView(WordsViewModel model, Words words, Pictures pictures, Journey journey) {
        super(model.title(), model.form(), words,
                RunHeading.of(model.title(), model.inHand().stateProperty(), words, journey::back),
                new StepCardView(model.cardValue(), words, pictures), model::load);
    }
}
