package org.tenthwise.app.ui.reference;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The topics at the side, the sources or the figures of the one in hand beside or below them. */
public final class ReferenceView extends SidedScreen {

    private final ReferenceViewModel model;
    private final ReferenceRows rows;
    private final PagedRows list;
    private final PagedRows chapters;
    private final HBox above = new HBox(16);
    private final Key up;
    private final Label title = Texts.label("", "heading");
    private final boolean large;

    public ReferenceView(ReferenceViewModel model, Words words, Look look, Navigator navigator) {
        super(words.say("reference.title"));
        this.model = model;
        this.large = look.largeTextProperty().get();
        rows = new ReferenceRows(words);
        list = new PagedRows(words, 0);
        list.setId("lines");
        chapters = new PagedRows(words);
        up = new Key(
                Key.Kind.PLAIN,
                words.say("reference.sources"),
                () -> model.shownProperty().get().up().ifPresent(Runnable::run));
        up.setId("sources");
        up.getStyleClass().add("reference-up");
        Label sentence = Texts.label("", "middling");
        sentence.setId("sentence");
        sentence.textProperty().bind(model.sentenceValue());
        VBox.setVgrow(chapters, Priority.ALWAYS);
        VBox side = new VBox(12, sentence, chapters);
        side.getStyleClass().addAll("on-paper", "form-side");
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        above.setAlignment(Pos.CENTER_LEFT);
        above.setFillHeight(false);
        above.getStyleClass().addAll("lined-below", "home-title");
        VBox.setVgrow(list, Priority.ALWAYS);
        VBox right = new VBox(8, above, list);
        right.getStyleClass().addAll("on-sheet", "home-side");
        rest(right);
        lay(
                RunHeading.titled(title(), words, navigator::back),
                side,
                large ? ScreenSizes.REFERENCE_SIDE_LARGE : ScreenSizes.REFERENCE_SIDE,
                ScreenSizes.REFERENCE_ABOVE);
        owns(model.chaptersValue().subscribe(all -> showChapters()));
        owns(model.shownProperty().subscribe(shown -> {
            showChapters();
            show();
        }));
    }

    @Override
    public void onShown() {
        model.load();
    }

    @Override
    protected void arranged() {
        show();
    }

    private void showChapters() {
        List<Region> keys = new ArrayList<>();
        int inHand = 0;
        for (ReferenceViewModel.Chapter chapter : model.chaptersValue().getValue()) {
            Key key = rows.wide("chapter-" + chapter.id(), chapter.name(), chapter.counts(), chapter.open());
            boolean chosen = chapter.id().equals(model.shownProperty().get().chapter());
            key.showChosen(chosen);
            keys.add(key);
            inHand = chosen ? keys.size() - 1 : inHand;
        }
        chapters.show(keys);
        chapters.reveal(inHand);
    }

    private void show() {
        ReferenceViewModel.Shown shown = model.shownProperty().get();
        title.setText(shown.title());
        above.getChildren().setAll(title);
        shown.up().ifPresent(there -> above.getChildren().add(up));
        list.show(shown.lines().size(), place -> rows.row(shown.lines().get(place), place, large || !isWide()));
        list.reveal(0);
    }
}
