package org.tenthwise.app.ui.plan;

import java.util.EnumMap;
import java.util.Map;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.plan.PlanViewModel.PlanStepRow;
import org.tenthwise.app.ui.plan.PlanViewModel.StepDeed;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/** What is open and what can be done on the one side, the steps in the order of work on the other. */
public final class PlanView extends SidedScreen {

    private static final int ACROSS = 2;
    private static final int ACROSS_ABOVE = 4;

    private final PlanViewModel model;
    private final Words words;
    private final PagedRows steps;
    private final PagedRows open;
    private final GridPane grid = new GridPane();
    private final Map<StepDeed, Key> deeds = new EnumMap<>(StepDeed.class);
    private final Key undo;
    private final Key issue;
    private final Key next;
    private final Key changes;
    private final Key balloons;
    private final Key marks;

    public PlanView(PlanViewModel model, Words words, Navigator navigator) {
        super(words.say("planning.plan"));
        this.model = model;
        this.words = words;
        steps = new PagedRows(words);
        steps.setId("steps");
        open = new PagedRows(words);
        open.setId("open-points");
        VBox.setVgrow(open, Priority.ALWAYS);
        next = key(Key.Kind.COMMIT, "next-open", words.say("planning.next-open"), model::nextOpen);
        balloons = key(Key.Kind.PLAIN, "balloons", words.say("balloons.title"), model::balloons);
        marks = key(Key.Kind.PLAIN, "marks", words.say("planning.marks"), model::marks);
        makeDeeds();
        changes = key(Key.Kind.PLAIN, "changes", words.say("planning.changes"), model::changes);
        HBox lowest = new HBox(ScreenSizes.GAP, changes, next);
        lowest.getChildren().forEach(key -> HBox.setHgrow(key, Priority.ALWAYS));
        lowest.setMinHeight(USE_PREF_SIZE);
        VBox side = new VBox(ScreenSizes.GAP, open, grid, lowest);
        side.getStyleClass().addAll("on-paper", "form-side");
        undo = Key.onward("undo-change", words.say("planning.undo"), model::undo);
        issue = Key.onward("issue-plan", words.say("planning.issue-it"), model::issue);
        VBox.setVgrow(steps, Priority.ALWAYS);
        HBox places = new HBox(ScreenSizes.GAP, balloons, marks);
        places.getChildren().forEach(key -> HBox.setHgrow(key, Priority.ALWAYS));
        places.setMinHeight(USE_PREF_SIZE);
        VBox list = new VBox(ScreenSizes.GAP, steps, places);
        list.getStyleClass().addAll("on-sheet", "form-panel");
        lay(
                RunHeading.titled(title(), words, navigator::back)
                        .cell(words.say("planning.part-cell"), model.partValue())
                        .cell(words.say("planning.open-cell"), model.countValue())
                        .end(undo)
                        .end(Key.onward("plan-head", words.say("planning.head"), model::head))
                        .end(issue),
                side,
                ScreenSizes.FORM_SIDE,
                ScreenSizes.FORM_ABOVE);
        rest(list);
        owns(model.rowsProperty().subscribe(rows -> show()));
        owns(model.openProperty()
                .subscribe(sentences -> open.show(sentences.stream()
                        .map(sentence -> Texts.label(sentence, "body"))
                        .toList())));
        owns(model.inHandProperty().subscribe(place -> show()));
    }

    private void makeDeeds() {
        grid.setHgap(ScreenSizes.GAP);
        grid.setVgap(ScreenSizes.GAP);
        grid.setMinHeight(USE_PREF_SIZE);
        for (StepDeed deed : StepDeed.values()) {
            Key key = key(Key.Kind.PLAIN, Word.of(deed), words.say("planning.deed", deed), () -> model.act(deed));
            GridPane.setHgrow(key, Priority.ALWAYS);
            deeds.put(deed, key);
        }
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

    private Key key(Key.Kind kind, String id, String text, Runnable press) {
        Key key = new Key(kind, text, press);
        key.setId(id);
        key.setMinHeight(ScreenSizes.CHOICE_KEY);
        key.setPrefWidth(ScreenSizes.SHARE);
        return key;
    }

    private void show() {
        steps.show(model.rowsProperty().get().size(), this::row);
        steps.reveal(model.inHandProperty().get());
        deeds.forEach((deed, key) -> key.setDisable(!model.can(deed)));
        undo.setDisable(!model.canUndo());
        issue.setDisable(!model.canIssue());
        next.setDisable(model.canIssue());
        changes.setDisable(!model.canIssue());
        balloons.setDisable(!model.hasSteps());
        marks.setDisable(!model.hasSteps());
    }

    private Key row(int place) {
        PlanStepRow row = model.rowsProperty().get().get(place);
        Key key = Key.row("step-" + place, row.line(), row.title(), () -> model.take(place));
        key.showChosen(place == model.inHandProperty().get());
        return key;
    }

    @Override
    public void onShown() {
        model.load();
    }
}
