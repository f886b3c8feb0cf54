package org.tenthwise.app.ui.settings;

import java.nio.file.Path;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
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

/** The folders in a folder, a key each; one key up, one to take the folder that is looked at. */
public final class FolderView extends Screen {

    private final FolderViewModel model;

    public FolderView(FolderViewModel model, Words words, Navigator navigator) {
        super(words.say("folder.title"));
        this.model = model;
        Label at = Texts.label("", "heading");
        PagedRows rows = new PagedRows(words);
        VBox.setVgrow(rows, Priority.ALWAYS);
        Key up = key(Key.Kind.PLAIN, "up", words.say("folder.up"), model::up);
        Key choose = key(Key.Kind.COMMIT, "choose-folder", words.say("folder.choose"), model::choose);
        VBox page = new VBox(ScreenSizes.GAP, at, rows, new HBox(ScreenSizes.GAP, up, choose));
        page.getStyleClass().addAll("on-sheet", "form-panel");
        setTop(RunHeading.titled(title(), words, navigator::back));
        setCenter(page);
        owns(model.placeProperty().subscribe(place -> {
            at.setText(place.at().map(Path::toString).orElseGet(() -> words.say("folder.drives")));
            up.setDisable(place.at().isEmpty());
            choose.setDisable(place.at().isEmpty());
            rows.show(place.inside().stream().map(this::row).toList());
        }));
    }

    private Key row(Path folder) {
        Path name = folder.getFileName();
        Key key = new Key(Key.Kind.PLAIN, name == null ? folder.toString() : name.toString(), () -> model.into(folder));
        key.getStyleClass().add("row");
        return key;
    }

    private static Key key(Key.Kind kind, String id, String text, Runnable press) {
        Key key = new Key(kind, text, press);
        key.setId(id);
        key.getStyleClass().add("form-lead");
        return key.shared();
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
