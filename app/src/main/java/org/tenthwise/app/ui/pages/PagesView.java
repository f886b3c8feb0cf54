package org.tenthwise.app.ui.pages;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.pages.PagesState.Shown;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** A page of the record over the whole screen, the keys to turn it at the foot. */
public final class PagesView extends Screen {

    private final PagesViewModel model;
    private final PictureView paper;
    private final Label said = Texts.label("", "middling", "bold");
    private final Key before;
    private final Key after;
    private final Key size;

    public PagesView(PagesViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("pages.title"));
        this.model = model;
        paper = pictures.empty();
        said.setId("page");
        said.setAlignment(Pos.CENTER);
        said.setMaxWidth(Double.MAX_VALUE);
        before = turning("previous-page", words.say("pages.previous"), model::previous);
        after = turning("next-page", words.say("pages.next"), model::next);
        size = turning("page-size", words.say("pages.larger"), model::changeSize);
        HBox.setHgrow(said, Priority.ALWAYS);
        said.setPrefWidth(ScreenSizes.SHARE);
        HBox foot = new HBox(ScreenSizes.GAP, before, said, size, after);
        foot.setAlignment(Pos.CENTER);
        foot.setMinHeight(USE_PREF_SIZE);
        foot.getStyleClass().addAll("on-paper", "pages-foot");
        setTop(RunHeading.titled(title(), words, navigator::back));
        StackPane room = new StackPane(paper);
        room.getStyleClass().addAll("on-paper", "pages-room");
        room.setMinSize(0, 0);
        setCenter(room);
        setBottom(foot);
        owns(model.stateProperty().subscribe(this::show));
        owns(paper.widthProperty().subscribe(width -> model.room(width.doubleValue(), paper.getHeight())));
        owns(paper.heightProperty().subscribe(height -> model.room(paper.getWidth(), height.doubleValue())));
    }

    @Override
    public void onShown() {
        model.load();
    }

    @Override
    public void arrange(Arrangement arrangement) {}

    private void show(PagesState state) {
        if (state instanceof Shown shown) {
            paper.show(shown.picture());
            said.setText(shown.said());
            size.setText(shown.size());
            before.setDisable(!shown.before());
            after.setDisable(!shown.after());
            size.setDisable(!shown.resizes());
        } else if (state instanceof PagesState.Waiting waiting) {
            said.setText(waiting.sentence());
            before.setDisable(true);
            after.setDisable(true);
            size.setDisable(true);
        }
    }

    private static Key turning(String id, String words, Runnable press) {
        Key key = new Key(Key.Kind.PLAIN, words, press);
        key.setId(id);
        return key.shared();
    }
}
