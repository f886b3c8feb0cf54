package org.tenthwise.app.ui.article;

import java.util.List;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.firstarticle.KeptReport;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The reports there are, each a key that leads to it, and the key to another. */
public final class ReportsView extends Screen {

    private final ReportsViewModel model;
    private final PagedRows rows;

    public ReportsView(ReportsViewModel model, Words words, Navigator navigator) {
        super(words.say("report.reports"));
        this.model = model;
        rows = new PagedRows(words);
        VBox.setVgrow(rows, Priority.ALWAYS);
        VBox page = new VBox(ScreenSizes.GAP, rows);
        page.getStyleClass().addAll("on-sheet", "form-panel");
        setTop(RunHeading.titled(title(), words, navigator::back)
                .end(Key.onward("another", words.say("report.another"), model::another)));
        setCenter(page);
        owns(model.reportsProperty().subscribe(found -> show(found.orElse(List.of()))));
    }

    private void show(List<KeptReport> reports) {
        if (reports.isEmpty()) {
            rows.show(List.of(Texts.label(model.none(), "heading")));
        } else {
            rows.show(reports.size(), place -> row(reports.get(place)));
        }
    }

    private Key row(KeptReport report) {
        return Key.row(
                "report-" + report.asked().identifier(),
                model.line(report),
                model.title(report),
                () -> model.open(report));
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
