package org.tenthwise.app.ui.plan;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.checklists.editing.Template;
import org.tenthwise.model.words.Words;

/** Every template a key that puts its checks into the plan. */
public final class TemplatesView extends Screen {

    private final TemplatesViewModel model;

    public TemplatesView(TemplatesViewModel model, Words words, Navigator navigator) {
        super(words.say("planning.templates"));
        this.model = model;
        PagedRows rows = new PagedRows(words);
        VBox.setVgrow(rows, Priority.ALWAYS);
        VBox page = new VBox(ScreenSizes.GAP, Texts.label(words.say("planning.templates.question"), "heading"), rows);
        page.getStyleClass().addAll("on-sheet", "form-panel");
        setTop(RunHeading.titled(title(), words, navigator::back));
        setCenter(page);
        owns(model.templatesProperty().subscribe(all -> rows.show(keys(all))));
    }

    private List<Key> keys(List<Template> all) {
        return IntStream.range(0, all.size())
                .mapToObj(place -> key(place, all.get(place)))
                .toList();
    }

    private Key key(int place, Template template) {
        return Key.row("template-" + place, model.line(template), template.name(), () -> model.take(template));
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
