package org.tenthwise.app.ui.about;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The cautions on the one side, the program on the other, both a page at a time. */
public final class AboutView extends SidedScreen {

    private static final double GAP = 12;

    private final AboutViewModel model;
    private final Words words;

    public AboutView(AboutViewModel model, Words words, Navigator navigator) {
        super(words.say("about.title"));
        this.model = model;
        this.words = words;
        PagedRows first = new PagedRows(words, GAP);
        first.show(rows(model.cautions()));
        VBox cautions = paged(first);
        cautions.getStyleClass().addAll("on-sheet", "form-panel");
        PagedRows program = new PagedRows(words, GAP);
        owns(model.sectionsProperty()
                .subscribe(sections -> program.show(sections.stream()
                        .flatMap(section -> rows(section).stream())
                        .toList())));
        VBox facts = paged(program);
        facts.getStyleClass().addAll("on-paper", "form-panel");
        rest(facts);
        lay(
                RunHeading.titled(title(), words, navigator::back)
                        .end(Key.onward("guide", words.say("guide.title"), navigator::guide))
                        .end(Key.onward("licences", words.say("licences.title"), navigator::licences))
                        .end(Key.onward("reference", words.say("reference.title"), navigator::reference)),
                cautions,
                ScreenSizes.ABOUT_SIDE,
                ScreenSizes.ABOUT_SIDE);
    }

    @Override
    public void onShown() {
        model.load();
    }

    private static VBox paged(PagedRows pages) {
        VBox.setVgrow(pages, Priority.ALWAYS);
        return new VBox(pages);
    }

    private List<Region> rows(AboutViewModel.AboutSection section) {
        List<Region> rows = new ArrayList<>();
        rows.add(Texts.label(section.heading(), "heading"));
        section.paragraphs().forEach(paragraph -> rows.add(Texts.label(paragraph, "body")));
        if (model.leadsToNewKey(section)) {
            Key key = new Key(Key.Kind.PLAIN, words.say("about.new-key"), model::newKey);
            key.setId("new-key");
            rows.add(key);
        }
        return rows;
    }
}
