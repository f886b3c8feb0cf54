package org.tenthwise.app.ui.matters;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Heading;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/**
 * The form by which somebody signs for what becomes of an open matter, beside what it is, with a key in the heading to
 * look at the run before; what there is no room for beside its fields is on a page of its own.
 */
public final class SettleMatterView extends FormView {

    public SettleMatterView(SettleMatterViewModel model, Words words, Navigator navigator) {
        super(words.say("matters.settle"), model.form(), words, heading(model, words, navigator), model::load);
        Label title = Texts.label(model.title(), "middling");
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        HBox line = new HBox(ScreenSizes.GAP, title);
        line.setMinHeight(USE_PREF_SIZE);
        PagedRows paged = new PagedRows(words);
        paged.turnAt(line);
        paged.setMinHeight(ScreenSizes.PAGE_KEY);
        paged.show(
                List.of(Texts.label(model.line(), "body", "second"), Texts.label(words.say("dispose.right"), "body")));
        VBox.setVgrow(paged, Priority.ALWAYS);
        about(new VBox(ScreenSizes.GAP, line, paged));
    }

    private static Heading heading(SettleMatterViewModel model, Words words, Navigator navigator) {
        Heading heading = RunHeading.titled(words.say("matters.settle"), words, navigator::back);
        return model.isOfARun() ? heading.end(Key.onward("look", words.say("matters.look"), model::look)) : heading;
    }
}
