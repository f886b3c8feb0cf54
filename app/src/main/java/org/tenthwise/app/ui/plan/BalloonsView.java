package org.tenthwise.app.ui.plan;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.picture.PagePane;
import org.tenthwise.app.ui.plan.BalloonsViewModel.BalloonToPlace;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The balloons of a plan on the one side, the page of the drawing they are placed on on the other. */
public final class BalloonsView extends SidedScreen {

    private final BalloonsViewModel model;
    private final Words words;
    private final PagedRows rows;
    private final PagePane page;
    private final Label without = Texts.label("", "body");
    private final Label said = Texts.label("", "middling", "bold");
    private final Key before;
    private final Key after;
    private final Key size;
    private final Key right;
    private final Key undo;

    public BalloonsView(BalloonsViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("balloons.title"));
        this.model = model;
        this.words = words;
        page = new PagePane(pictures.empty());
        page.setId("drawing-page");
        page.onTap(model::tap);
        rows = new PagedRows(words);
        VBox.setVgrow(rows, Priority.ALWAYS);
        Label toDo = Texts.label("", "heading");
        toDo.setMinHeight(USE_PREF_SIZE);
        toDo.textProperty().bind(model.toDoProperty());
        right = Key.onward("all-right", words.say("balloons.all-right"), model::allAreRight);
        right.managedProperty().bind(right.visibleProperty());
        VBox side = new VBox(ScreenSizes.GAP, toDo, rows);
        side.getStyleClass().addAll("on-paper", "form-side");
        undo = Key.onward("undo-place", words.say("planning.undo"), model::undo);
        before = turning("previous-page", words.say("pages.previous"), model::previous);
        after = turning("next-page", words.say("pages.next"), model::next);
        size = turning("page-size", words.say("balloons.enlarge"), model::enlarge);
        lay(
                RunHeading.titled(title(), words, navigator::back).end(right).end(undo),
                side,
                ScreenSizes.BALLOONS_SIDE,
                ScreenSizes.SETTINGS_ABOVE);
        rest(sheet());
        owns(model.rowsProperty().subscribe(all -> showRows()));
        owns(model.inHandProperty().subscribe(row -> showRows()));
        owns(model.stateProperty().subscribe(this::show));
        owns(model.toDoProperty().subscribe(sentence -> showRows()));
        owns(model.choosingProperty().subscribe(size::showChosen));
    }

    private BorderPane sheet() {
        said.setId("page");
        said.setAlignment(Pos.CENTER);
        said.setMaxWidth(Double.MAX_VALUE);
        said.setPrefWidth(ScreenSizes.SHARE);
        HBox.setHgrow(said, Priority.ALWAYS);
        without.setId("without-page");
        StackPane room = new StackPane(without, page);
        room.getStyleClass().addAll("on-sheet", "pages-room");
        room.setMinSize(0, 0);
        HBox foot = new HBox(ScreenSizes.GAP, before, said, size, after);
        foot.setAlignment(Pos.CENTER);
        foot.setMinHeight(USE_PREF_SIZE);
        foot.getStyleClass().addAll("on-sheet", "pages-foot");
        BorderPane sheet = new BorderPane(room);
        sheet.setBottom(foot);
        return sheet;
    }

    private static Key turning(String id, String words, Runnable press) {
        Key key = new Key(Key.Kind.PLAIN, words, press);
        key.setId(id);
        return key.shared();
    }

    private void showRows() {
        rows.show(model.rowsProperty().get().size(), this::row);
        rows.reveal(model.inHandProperty().get());
        undo.setDisable(!model.canUndo());
        right.setVisible(model.isReplaced());
    }

    private Key row(int at) {
        BalloonToPlace row = model.rowsProperty().get().get(at);
        Key key = Key.row("balloon-" + row.number(), row.line(), row.title(), () -> model.take(at));
        key.showChosen(at == model.inHandProperty().get());
        return key;
    }

    private void show(BalloonsState state) {
        boolean seen = state instanceof BalloonsState.Seen;
        without.setVisible(!seen);
        page.setVisible(seen);
        size.setDisable(!seen);
        size.setText(words.say(model.isEnlarged() ? "pages.whole" : "balloons.enlarge"));
        if (state instanceof BalloonsState.Seen page) {
            show(page);
        } else if (state instanceof BalloonsState.Without why) {
            page.clear();
            without.setText(why.sentence());
            said.setText("");
            before.setDisable(true);
            after.setDisable(true);
        }
    }

    private void show(BalloonsState.Seen seen) {
        page.show(seen.image(), seen.part(), seen.balloons());
        said.setText(seen.said());
        before.setDisable(!seen.before());
        after.setDisable(!seen.after());
    }

    @Override
    public void onShown() {
        model.load();
    }
}
