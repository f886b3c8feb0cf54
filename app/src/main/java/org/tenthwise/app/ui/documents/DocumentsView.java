package org.tenthwise.app.ui.documents;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictMark;
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

    private static final double MARK = 22;

    private final DocumentsViewModel model;
    private final Words words;
    private final PictureFrames pictures;

    public DocumentsView(DocumentsViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("documents.title"));
        this.model = model;
        this.words = words;
        this.pictures = pictures;
        PagedRows rows = new PagedRows(words);
        rows.setId("documents");
        VBox.setVgrow(rows, Priority.ALWAYS);
        Label count = Texts.label("", "heading");
        count.setMinHeight(USE_PREF_SIZE);
        count.textProperty().bind(model.countValue());
        VBox page = new VBox(ScreenSizes.GAP, count, rows);
        page.getStyleClass().addAll("on-sheet", "form-panel");
        setTop(RunHeading.of(title(), model.stateProperty(), words, navigator::back));
        setCenter(page);
        owns(model.rowsValue().subscribe(all -> rows.show(all.size(), place -> row(all.get(place)))));
    }

    private Key row(DocumentRow row) {
        Label number = Texts.label(String.valueOf(row.step()), "body", "bold");
        number.getStyleClass().add("record-number");
        VBox said =
                column(Texts.label(row.name(), "body", "bold"), List.of(row.balloon(), row.asked(), row.document()));
        HBox.setHgrow(said, Priority.ALWAYS);
        HBox judged = new HBox(
                8,
                pictures.fixed(new VerdictMark(row.standing(), row.verdict()), MARK, MARK, Role.SHEET),
                Texts.label(row.verdict(), "body", "bold", Texts.style(row.standing())));
        judged.setAlignment(Pos.CENTER_LEFT);
        VBox verdict = column(judged, List.of(row.distance()));
        verdict.getStyleClass().addAll("record-verdict", "upright");
        HBox whole = new HBox(12, number, said, verdict);
        whole.setAlignment(Pos.CENTER_LEFT);
        Key key = new Key(Key.Kind.QUIET, whole, () -> model.take(row));
        key.setId("document-" + row.step());
        key.getStyleClass().addAll("ruled-below", "record-row");
        key.setMinHeight(ScreenSizes.CHOICE_KEY);
        key.speak(row.spoken(words));
        return key;
    }

    /** @param below what is empty is left out */
    private static VBox column(Region first, List<String> below) {
        VBox column = new VBox(first);
        below.stream().filter(text -> !text.isEmpty()).forEach(text -> column.getChildren()
                .add(Texts.label(text, "body", "second")));
        return column;
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
