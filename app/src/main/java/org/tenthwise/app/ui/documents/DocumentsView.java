package org.tenthwise.app.ui.documents;

import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** What documents prove, each a key that leads to its form or its step. */
public final class DocumentsView extends Screen {

    private final DocumentsViewModel model;
    private final Words words;
    private final DocumentRows rows;

    public DocumentsView(DocumentsViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("documents.title"));
        this.model = model;
        this.words = words;
        this.rows = new DocumentRows(pictures);
        PagedRows list = new PagedRows(words);
        list.setId("documents");
        VBox.setVgrow(list, Priority.ALWAYS);
        Label count = Texts.label("", "heading");
        count.setMinHeight(USE_PREF_SIZE);
        count.textProperty().bind(model.countValue());
        Key fromFile = Key.onward("figures-file", words.say("documents.file"), model::chooseFile);
        fromFile.disableProperty().bind(model.takesFiguresValue().map(takes -> !takes));
        VBox page = new VBox(ScreenSizes.GAP, count, list);
        page.getStyleClass().addAll("on-sheet", "form-panel");
        setTop(RunHeading.of(title(), model.stateProperty(), words, navigator::back)
                .end(fromFile));
        setCenter(page);
        owns(model.rowsValue().subscribe(all -> list.show(all.size(), place -> row(all.get(place)))));
    }

    private Key row(DocumentRow row) {
        Key key = new Key(Key.Kind.QUIET, rows.of(row), () -> model.take(row));
        key.setId("document-" + row.step());
        key.getStyleClass().addAll("ruled-below", "record-row");
        key.setMinHeight(ScreenSizes.CHOICE_KEY);
        key.speak(row.spoken(words));
        return key;
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
