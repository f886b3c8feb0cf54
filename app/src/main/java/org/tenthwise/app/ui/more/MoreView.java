package org.tenthwise.app.ui.more;

import java.util.Optional;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.form.StepCardView;
import org.tenthwise.app.ui.form.StoryRows;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Words;

/**
 * The step at one side; what else there is to say of it and what was done a page at a time, and the keys that are
 * wanted rarely.
 */
public final class MoreView extends SidedScreen {

    private static final double BETWEEN = 16;

    private final MoreViewModel model;

    public MoreView(MoreViewModel model, Words words, PictureFrames pictures) {
        super(words.say("run.more"));
        this.model = model;
        PagedRows lines = new PagedRows(words, BETWEEN);
        VBox.setVgrow(lines, Priority.ALWAYS);
        Key bench = new Key(Key.Kind.PLAIN, words.say("run.bench"), model::bench);
        bench.setId("bench");
        HBox.setHgrow(bench, Priority.ALWAYS);
        Key away = new Key(Key.Kind.PLAIN, words.say("run.put-away.key"), model::putAway);
        away.setId("put-away");
        away.disableProperty()
                .bind(model.shownProperty().map(shown -> shown.state().asked().isClosed()));
        HBox.setHgrow(away, Priority.ALWAYS);
        Key drawing = new Key(Key.Kind.PLAIN, words.say("on-drawing.title"), model::drawing);
        drawing.setId("on-drawing");
        drawing.visibleProperty().bind(model.shownProperty().map(MoreViewModel::isOnDrawing));
        drawing.managedProperty().bind(drawing.visibleProperty());
        HBox.setHgrow(drawing, Priority.ALWAYS);
        Key documents = new Key(Key.Kind.PLAIN, words.say("documents.title"), model::documents);
        documents.setId("documents");
        documents.visibleProperty().bind(model.shownProperty().map(MoreViewModel::hasDocuments));
        documents.managedProperty().bind(documents.visibleProperty());
        HBox.setHgrow(documents, Priority.ALWAYS);
        Key history = new Key(Key.Kind.PLAIN, words.say("history.title"), model::history);
        history.setId("history");
        HBox.setHgrow(history, Priority.ALWAYS);
        HBox foot = new HBox(ScreenSizes.GAP, documents, drawing, history, bench, away);
        foot.getStyleClass().add("record-foot");
        foot.setMinHeight(USE_PREF_SIZE);
        VBox panel = new VBox(lines, foot);
        panel.getStyleClass().addAll("on-sheet", "form-panel");
        StepCardView card =
                new StepCardView(model.shownProperty().map(shown -> Optional.of(shown.card())), words, pictures);
        card.getStyleClass().addAll("on-paper", "form-side");
        rest(panel);
        lay(
                RunHeading.of(
                        title(), model.shownProperty().map(shown -> Optional.of(shown.state())), words, model::back),
                card,
                ScreenSizes.FORM_SIDE,
                ScreenSizes.FORM_ABOVE);
        owns(model.shownProperty().subscribe(shown -> lines.show(new StoryRows(words, false).of(shown.chapters()))));
    }

    @Override
    public void onShown() {
        model.refresh();
    }
}
