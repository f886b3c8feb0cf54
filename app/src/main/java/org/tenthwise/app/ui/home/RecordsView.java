package org.tenthwise.app.ui.home;

import java.util.Optional;
import javafx.scene.layout.HBox;
import org.tenthwise.app.history.RunShelf;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/** Closed runs, each with what it came to, or those put away; one of them leads to its record. */
public final class RecordsView extends Screen {

    private final RunListViewModel model;
    private final MattersKeyModel matters;

    public RecordsView(
            RunListViewModel model, MattersKeyModel matters, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("records.title"));
        this.model = model;
        this.matters = matters;
        RunList list =
                new RunList(words.say("records.runs"), model, new HomeRows(words, pictures), words, Optional.empty());
        setTop(RunHeading.titled(title(), words, navigator::back)
                .end(shelf(RunShelf.CLOSED, words))
                .end(shelf(RunShelf.PUT_AWAY, words))
                .end(Key.onward("history", words.say("history.title"), navigator::history))
                .end(Key.onward("find", words.say("home.find"), model::ask)));
        setCenter(list);
        setBottom(foot(matters, words, navigator));
        owns(list::letGo);
    }

    private static HBox foot(MattersKeyModel counted, Words words, Navigator navigator) {
        Key takeIn = Key.onward("take-in", words.say("take-in.title"), navigator::takeIn);
        Key matters = Key.onward("matters", "", counted::open);
        matters.textProperty().bind(counted.textProperty());
        Key reports = Key.onward("reports", words.say("report.reports"), navigator::reports);
        Key handOver = Key.onward("hand-over", words.say("hand-bundle.title"), navigator::handOver);
        HBox foot = new HBox(ScreenSizes.GAP, matters.shared(), reports.shared(), takeIn.shared(), handOver.shared());
        reports.setStyle("-fx-pref-width: 10em"); // one word in German, which cannot be broken: more of the room
        foot.getStyleClass().addAll("on-paper", "lined-above", "home-foot");
        foot.setMinHeight(USE_PREF_SIZE);
        return foot;
    }

    private Key shelf(RunShelf shelf, Words words) {
        Key key = Key.onward("shelf-" + Word.of(shelf), words.say("home.shut", shelf), () -> model.list(shelf));
        owns(model.shelfProperty().subscribe(now -> {
            key.showChosen(now == shelf);
            key.speak(now == shelf ? words.say("choice.chosen", key.getText()) : key.getText());
        }));
        return key;
    }

    @Override
    public void onShown() {
        model.load();
        matters.load();
    }

    @Override
    public Typing typing() {
        return model.typing();
    }

    @Override
    public void arrange(Arrangement arrangement) {
        // one list fills the screen either way
    }
}
