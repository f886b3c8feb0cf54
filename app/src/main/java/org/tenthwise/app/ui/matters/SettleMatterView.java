package org.tenthwise.app.ui.matters;

import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The form by which somebody signs for what becomes of an open matter, beside what it is. */
public final class SettleMatterView {

    private SettleMatterView() {}

    public static FormView of(SettleMatterViewModel model, Words words, Navigator navigator) {
        VBox about = new VBox(
                ScreenSizes.GAP,
                Texts.label(model.title(), "middling"),
                Texts.label(model.line(), "body", "second"),
                Texts.label(words.say("dispose.right"), "body"));
        about.setMinHeight(0);
        return FormView.titled(words.say("matters.settle"), model.form(), words, navigator::back, model::load)
                .about(about);
    }
}
