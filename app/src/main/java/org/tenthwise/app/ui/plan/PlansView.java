package org.tenthwise.app.ui.plan;

import java.util.List;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.plan.PlansViewModel.PlanRow;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The plans there are, each a key that leads to its steps. */
public final class PlansView extends Screen {

    private final PlansViewModel model;

    public PlansView(PlansViewModel model, Words words, Navigator navigator) {
        super(words.say("planning.title"));
        this.model = model;
        PagedRows rows = new PagedRows(words);
        VBox.setVgrow(rows, Priority.ALWAYS);
        VBox page = new VBox(ScreenSizes.GAP, Texts.label(words.say("planning.question"), "heading"), rows);
        page.getStyleClass().addAll("on-sheet", "form-panel");
        setTop(RunHeading.titled(title(), words, navigator::back)
                .end(Key.onward("from-list", words.say("planning.list"), model::beginOfList))
                .end(Key.onward("new-plan", words.say("planning.new"), model::begin)));
        setCenter(page);
        owns(model.rowsProperty().subscribe(all -> rows.show(rows(all))));
    }

    private List<Key> rows(List<PlanRow> all) {
        return all.stream().map(this::row).toList();
    }

    private Key row(PlanRow row) {
        return Key.row("plan-" + row.name(), row.line(), row.title(), () -> model.open(row));
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
