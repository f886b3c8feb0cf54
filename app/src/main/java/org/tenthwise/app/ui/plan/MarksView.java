package org.tenthwise.app.ui.plan;

import javafx.beans.binding.Bindings;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.plan.MarksViewModel.MarkRow;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The checks of a plan on the one side, the outline that is touched on the other. */
public final class MarksView extends SidedScreen {

    private final MarksViewModel model;
    private final PagedRows rows;
    private final Key undo;
    private final Key figures;
    private final Key next;

    public MarksView(MarksViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("planning.marks"));
        this.model = model;
        rows = new PagedRows(words);
        VBox.setVgrow(rows, Priority.ALWAYS);
        Label toDo = Texts.label("", "heading");
        toDo.setId("mark-to-do");
        toDo.setMinHeight(USE_PREF_SIZE);
        toDo.textProperty().bind(model.toDoProperty());
        VBox side = new VBox(ScreenSizes.GAP, toDo, rows);
        side.getStyleClass().addAll("on-paper", "form-side");
        PictureView part = pictures.empty();
        part.setId("outline-touched");
        part.lookSmall(1, Role.SHEET);
        part.setMinSize(ScreenSizes.KEY, ScreenSizes.KEY);
        part.onTap(model::touch);
        VBox.setVgrow(part, Priority.ALWAYS);
        figures = key(Key.Kind.PLAIN, "by-figures", words.say("planning.marks.by-figures"), model::byFigures);
        next = key(Key.Kind.COMMIT, "next-mark", words.say("planning.marks.next"), model::goOn);
        HBox foot = new HBox(ScreenSizes.GAP, figures, next);
        foot.setMinHeight(USE_PREF_SIZE);
        VBox sheet = new VBox(ScreenSizes.GAP, part, foot);
        sheet.getStyleClass().addAll("on-sheet", "form-panel");
        undo = Key.onward("undo-mark", words.say("planning.undo"), model::undo);
        lay(
                RunHeading.titled(title(), words, navigator::back).end(undo),
                side,
                ScreenSizes.BALLOONS_SIDE,
                ScreenSizes.FORM_ABOVE);
        rest(sheet);
        owns(model.drawnProperty().subscribe(drawn -> drawn.ifPresentOrElse(part::show, part::clear)));
        owns(model.rowsProperty().subscribe(all -> show()));
        owns(model.inHandProperty().subscribe(place -> show()));
    }

    private static Key key(Key.Kind kind, String id, String text, Runnable press) {
        Key key = new Key(kind, text, press);
        key.setId(id);
        key.setMinHeight(ScreenSizes.CHOICE_KEY);
        key.setPrefWidth(ScreenSizes.SHARE);
        HBox.setHgrow(key, Priority.ALWAYS);
        return key;
    }

    private void show() {
        rows.show(model.rowsProperty().get().size(), this::row);
        rows.reveal(model.inHandProperty().get());
        figures.setDisable(!model.canTouch());
        next.setDisable(!model.hasNext());
        undo.setDisable(!model.canUndo());
    }

    private Key row(int place) {
        MarkRow row = model.rowsProperty().get().get(place);
        Key key = Key.field(
                Bindings.createStringBinding(row::line),
                Bindings.createStringBinding(row::title),
                () -> model.take(place));
        key.setId("mark-" + place);
        key.setMinHeight(ScreenSizes.CHOICE_KEY);
        key.showChosen(place == model.inHandProperty().get());
        return key;
    }

    @Override
    public void onShown() {
        model.load();
    }
}
