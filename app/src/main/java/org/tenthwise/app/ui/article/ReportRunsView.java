package org.tenthwise.app.ui.article;

import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The closed runs of a part, to be ticked, and the key that goes on with those that are. */
public final class ReportRunsView extends Screen {

    private final ReportRunsViewModel model;
    private final PagedRows rows;
    private final Label count = Texts.label("", "heading");
    private final Key on;

    public ReportRunsView(ReportRunsViewModel model, Words words, Navigator navigator) {
        super(words.say("report.runs"));
        this.model = model;
        rows = new PagedRows(words);
        VBox.setVgrow(rows, Priority.ALWAYS);
        count.setMinHeight(USE_PREF_SIZE);
        on = new Key(Key.Kind.COMMIT, words.say("ask.next"), model::goOn);
        on.setId("ticked");
        on.setMinHeight(ScreenSizes.CHOICE_KEY);
        on.setMaxWidth(Double.MAX_VALUE);
        VBox page = new VBox(ScreenSizes.GAP, count, rows, on);
        page.getStyleClass().addAll("on-sheet", "form-panel");
        setTop(RunHeading.titled(title(), words, navigator::back));
        setCenter(page);
        owns(model.runsProperty().subscribe(this::show));
        owns(model.tickedProperty().subscribe(this::show));
        show();
    }

    private void show() {
        count.setText(model.said());
        rows.show(
                model.runsProperty().get().size(),
                place -> row(model.runsProperty().get().get(place)));
        on.setDisable(!model.canGoOn());
    }

    private Key row(RunFacts run) {
        Key key = Key.row("tick-" + run.id(), model.line(run), model.title(run), () -> model.touch(run));
        key.showChosen(model.tickedProperty().get().contains(run.id()));
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
