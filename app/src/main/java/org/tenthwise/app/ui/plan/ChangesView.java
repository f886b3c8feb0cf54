package org.tenthwise.app.ui.plan;

import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.plan.ChangesViewModel.ChangeRow;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The checks that are otherwise on the one side; on the other what is otherwise about the one in hand. */
public final class ChangesView extends SidedScreen {

    private final ChangesViewModel model;
    private final PagedRows rows;
    private final PagedRows told;
    private final Key again;
    private final Key notAgain;

    public ChangesView(ChangesViewModel model, Words words, Navigator navigator) {
        super(words.say("planning.changes"));
        this.model = model;
        rows = new PagedRows(words);
        rows.setId("changes");
        told = new PagedRows(words);
        told.setId("told");
        VBox.setVgrow(told, Priority.ALWAYS);
        VBox.setVgrow(rows, Priority.ALWAYS);
        again = answer("check-again", words.say("planning.changes.again"), () -> model.answer(true));
        notAgain = answer("not-affected", words.say("planning.changes.not-again"), () -> model.answer(false));
        HBox keys = new HBox(ScreenSizes.GAP, again, notAgain);
        keys.setMinHeight(USE_PREF_SIZE);
        VBox side = new VBox(ScreenSizes.GAP, told, keys);
        side.getStyleClass().addAll("on-paper", "form-side");
        VBox list = new VBox(rows);
        list.getStyleClass().addAll("on-sheet", "form-panel");
        lay(
                RunHeading.titled(title(), words, navigator::back)
                        .cell(words.say("planning.changes.plans"), model.comparedProperty())
                        .cell(words.say("planning.changes.left"), model.leftValue())
                        .end(Key.onward("other-plan", words.say("planning.other"), model::chooseOther)),
                side,
                ScreenSizes.FORM_SIDE,
                ScreenSizes.FORM_ABOVE);
        rest(list);
        owns(model.rowsProperty().subscribe(all -> show()));
        owns(model.inHandProperty().subscribe(place -> show()));
    }

    private static Key answer(String id, String text, Runnable press) {
        Key key = new Key(Key.Kind.PLAIN, text, press);
        key.setId(id);
        key.setMinHeight(ScreenSizes.CHOICE_KEY);
        key.setPrefWidth(ScreenSizes.SHARE);
        HBox.setHgrow(key, Priority.ALWAYS);
        return key;
    }

    private void show() {
        int place = model.inHandProperty().get();
        rows.show(model.rowsProperty().get().size(), this::row);
        rows.reveal(place);
        if (place < model.rowsProperty().get().size()) {
            told.show(model.rowsProperty().get().get(place).told().stream()
                    .map(line -> Texts.label(line, "body"))
                    .toList());
        }
        again.setDisable(!model.canAnswer());
        notAgain.setDisable(!model.canAnswer());
    }

    private Key row(int place) {
        ChangeRow row = model.rowsProperty().get().get(place);
        Key key = Key.row("change-" + place, row.line(), row.title(), () -> model.take(place));
        key.showChosen(place == model.inHandProperty().get());
        return key;
    }

    @Override
    public void onShown() {
        model.load();
    }
}
