package org.tenthwise.app.ui.matters;

import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/**
 * The form by which somebody signs for what becomes of an open matter, beside what it is, with a key to look at the run
 * before.
 */
public final class SettleMatterView extends FormView {

    public SettleMatterView(SettleMatterViewModel model, Words words, Navigator navigator) {
        super(
                words.say("matters.settle"),
                model.form(),
                words,
                RunHeading.titled(words.say("matters.settle"), words, navigator::back),
                model::load);
        VBox about = new VBox(
                ScreenSizes.GAP,
                Texts.label(model.title(), "middling"),
                Texts.label(model.line(), "body", "second"),
                Texts.label(words.say("dispose.right"), "body"));
        if (model.isOfARun()) {
            about.getChildren().add(2, new HBox(Key.onward("look", words.say("matters.look"), model::look)));
        }
        about.setMinHeight(0);
        about(about);
    }
}
