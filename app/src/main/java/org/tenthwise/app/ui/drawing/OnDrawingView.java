package org.tenthwise.app.ui.drawing;

import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.picture.PagePane;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The drawing about the balloon of a step over the whole screen, at its foot what it is good for. */
public final class OnDrawingView extends Screen {

    private final OnDrawingViewModel model;
    private final PagePane page;
    private final Label without = Texts.label("", "body");
    private final Key size;

    public OnDrawingView(OnDrawingViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("on-drawing.title"));
        this.model = model;
        page = new PagePane(pictures.empty());
        without.setId("without-page");
        StackPane room = new StackPane(without, page);
        room.getStyleClass().addAll("on-sheet", "pages-room");
        room.setMinSize(0, 0);
        Label note = Texts.label(model.note(), "body");
        note.setId("note");
        note.setMaxWidth(Double.MAX_VALUE);
        note.setPrefWidth(ScreenSizes.SHARE);
        note.setMinHeight(USE_PREF_SIZE);
        HBox.setHgrow(note, Priority.ALWAYS);
        size = new Key(Key.Kind.PLAIN, model.size(), model::changeSize);
        size.setId("page-size");
        size.setMinWidth(USE_PREF_SIZE);
        HBox foot = new HBox(ScreenSizes.GAP, note, size);
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.setMinHeight(USE_PREF_SIZE);
        foot.getStyleClass().addAll("on-sheet", "pages-foot");
        setTop(RunHeading.of(title(), new SimpleObjectProperty<>(Optional.of(model.run())), words, navigator::back));
        setCenter(room);
        setBottom(foot);
        owns(model.stateProperty().subscribe(this::show));
    }

    private void show(OnDrawingState state) {
        boolean isSeen = state instanceof OnDrawingState.Seen;
        without.setVisible(!isSeen);
        page.setVisible(isSeen);
        size.setDisable(!isSeen);
        size.setText(model.size());
        if (state instanceof OnDrawingState.Seen seen) {
            page.show(seen.image(), seen.part(), seen.balloon());
        } else if (state instanceof OnDrawingState.Without why) {
            page.clear();
            without.setText(why.sentence());
        }
    }

    @Override
    public void onShown() {
        model.load();
    }

    @Override
    public void arrange(Arrangement arrangement) {
        // one page fills the screen either way
    }
}
