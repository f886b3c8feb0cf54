package org.tenthwise.app.ui.plan;

import java.util.EnumMap;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.plan.OutlineViewModel.ElementDeed;
import org.tenthwise.app.ui.plan.OutlineViewModel.ElementRow;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.checklists.editing.OutlineText.Side;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/** The part and what can be done to an element on the one side, the elements from the left end on the other. */
public final class OutlineView extends SidedScreen {

    private static final int ACROSS = 2;
    private static final int ACROSS_ABOVE = 5;

    private final OutlineViewModel model;
    private final PagedRows rows;
    private final GridPane grid = new GridPane();
    private final Map<ElementDeed, Key> deeds = new EnumMap<>(ElementDeed.class);
    private final Map<Side, Key> sides = new EnumMap<>(Side.class);
    private final Key undo;

    public OutlineView(OutlineViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("planning.outline"));
        this.model = model;
        rows = new PagedRows(words);
        VBox.setVgrow(rows, Priority.ALWAYS);
        PictureView part = pictures.empty();
        part.setId("outline-drawn");
        part.lookSmall(1, Role.PAPER);
        part.setMinSize(ScreenSizes.KEY, ScreenSizes.KEY);
        VBox.setVgrow(part, Priority.ALWAYS);
        Label said = Texts.label("", "body");
        said.setId("outline-said");
        said.setMinHeight(USE_PREF_SIZE);
        said.textProperty().bind(model.saidProperty());
        grid.setHgap(ScreenSizes.GAP);
        grid.setVgap(ScreenSizes.GAP);
        grid.setMinHeight(USE_PREF_SIZE);
        for (ElementDeed deed : ElementDeed.values()) {
            Key key = key(Word.of(deed), words.say("planning.element-deed", deed), () -> model.act(deed));
            GridPane.setHgrow(key, Priority.ALWAYS);
            deeds.put(deed, key);
        }
        VBox hand = new VBox(ScreenSizes.GAP, said, part, grid);
        hand.getStyleClass().addAll("on-paper", "form-side");
        HBox turns = new HBox(ScreenSizes.GAP);
        turns.setMinHeight(USE_PREF_SIZE);
        for (Side side : Side.values()) {
            Key key = key(Word.of(side), words.say("planning.outline.side", side), () -> model.turnTo(side));
            HBox.setHgrow(key, Priority.ALWAYS);
            sides.put(side, key);
            turns.getChildren().add(key);
        }
        VBox list = new VBox(ScreenSizes.GAP, turns, rows);
        list.getStyleClass().addAll("on-sheet", "form-panel");
        undo = Key.onward("undo-element", words.say("planning.undo"), model::undo);
        lay(
                RunHeading.titled(title(), words, navigator::back).end(undo),
                hand,
                ScreenSizes.FORM_SIDE,
                ScreenSizes.FORM_ABOVE);
        rest(list);
        owns(model.drawnProperty().subscribe(drawn -> drawn.ifPresentOrElse(part::show, part::clear)));
        owns(model.rowsProperty().subscribe(all -> show()));
        owns(model.inHandProperty().subscribe(place -> show()));
        owns(model.sideProperty().subscribe(side -> show()));
        owns(model.saidProperty().subscribe(sentence -> show()));
    }

    private static Key key(String id, String text, Runnable press) {
        Key key = new Key(Key.Kind.PLAIN, text, press);
        key.setId(id);
        key.setMinHeight(ScreenSizes.CHOICE_KEY);
        key.setPrefWidth(ScreenSizes.SHARE);
        return key;
    }

    @Override
    protected void arranged() {
        int across = isWide() ? ACROSS : ACROSS_ABOVE;
        grid.getChildren().clear();
        deeds.values().forEach(key -> {
            int at = grid.getChildren().size();
            grid.add(key, at % across, at / across);
        });
    }

    private void show() {
        rows.show(model.rowsProperty().get().size(), this::row);
        rows.reveal(model.inHandProperty().get());
        deeds.forEach((deed, key) -> key.setDisable(!model.can(deed)));
        sides.forEach((side, key) -> key.showChosen(side == model.sideProperty().get()));
        undo.setDisable(!model.canUndo());
    }

    private Key row(int place) {
        ElementRow row = model.rowsProperty().get().get(place);
        Key key = Key.field(
                Bindings.createStringBinding(row::line),
                Bindings.createStringBinding(row::title),
                () -> model.take(place));
        key.setId("element-" + place);
        key.setMinHeight(ScreenSizes.CHOICE_KEY);
        key.showChosen(place == model.inHandProperty().get());
        return key;
    }

    @Override
    public void onShown() {
        model.load();
    }
}
