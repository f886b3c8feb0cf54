package org.tenthwise.app.ui.matters;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.matters.OpenMatter;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** What is open, each a key that leads to where it is worked off. */
public final class MattersView extends Screen {

    private final MattersViewModel model;

    public MattersView(MattersViewModel model, Words words, Navigator navigator) {
        super(words.say("matters.title"));
        this.model = model;
        PagedRows rows = new PagedRows(words);
        rows.setId("matters");
        VBox.setVgrow(rows, Priority.ALWAYS);
        Label count = Texts.label("", "heading");
        count.setMinHeight(USE_PREF_SIZE);
        VBox page = new VBox(ScreenSizes.GAP, count, rows);
        page.getStyleClass().addAll("on-sheet", "form-panel");
        setTop(RunHeading.titled(title(), words, navigator::back));
        setCenter(page);
        owns(model.openProperty().subscribe(found -> {
            count.setText(model.count());
            List<OpenMatter> all = found.orElse(List.of());
            rows.show(all.size(), place -> row(all.get(place), place));
        }));
    }

    private Key row(OpenMatter matter, int place) {
        return Key.row("matter-" + place, model.line(matter), model.title(matter), () -> model.take(matter));
    }

    @Override
    public void onShown() {
        model.load();
    }

    @Override
    public void arrange(Arrangement arrangement) {
        // one list fills the screen either way
    }
}
