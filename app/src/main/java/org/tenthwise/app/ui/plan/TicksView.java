package org.tenthwise.app.ui.plan;

import javafx.beans.binding.Bindings;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** Checks to be ticked, and the key that goes on with those that are. */
public final class TicksView extends Screen {

    private final TicksViewModel model;
    private final PagedRows rows;
    private final Label count = Texts.label("", "heading");
    private final Key on;

    /** @param deed what the key reads */
    public TicksView(String title, String deed, TicksViewModel model, Words words, Navigator navigator) {
        super(title);
        this.model = model;
        rows = new PagedRows(words);
        VBox.setVgrow(rows, Priority.ALWAYS);
        count.setMinHeight(USE_PREF_SIZE);
        on = new Key(Key.Kind.COMMIT, deed, model::goOn);
        on.setId("ticked");
        on.setMinHeight(ScreenSizes.CHOICE_KEY);
        on.setMaxWidth(Double.MAX_VALUE);
        VBox page = new VBox(ScreenSizes.GAP, count, rows, on);
        page.getStyleClass().addAll("on-sheet", "form-panel");
        setTop(RunHeading.titled(title(), words, navigator::back));
        setCenter(page);
        owns(model.ticksProperty().subscribe(ticks -> show()));
    }

    private void show() {
        count.setText(model.said());
        rows.show(model.count(), this::row);
        on.setDisable(!model.canGoOn());
    }

    private Key row(int place) {
        Key key = Key.field(
                Bindings.createStringBinding(() -> model.line(place)),
                Bindings.createStringBinding(() -> model.title(place)),
                () -> model.touch(place));
        key.setId("tick-" + place);
        key.setMinHeight(ScreenSizes.CHOICE_KEY);
        key.showChosen(model.ticksProperty().get().contains(place));
        return key;
    }

    @Override
    public void arrange(Arrangement arrangement) {
        // one list fills the screen either way
    }
}
