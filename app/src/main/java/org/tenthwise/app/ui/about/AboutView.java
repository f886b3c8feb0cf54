package org.tenthwise.app.ui.about;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.shell.SidePart;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The cautions on the one side, the program on the other, both a page at a time. */
public final class AboutView extends Screen {

    private static final double GAP = 12;

    private final AboutViewModel model;
    private final VBox cautions;
    private final BorderPane body = new BorderPane();

    public AboutView(AboutViewModel model, Words words, Navigator journey) {
        super(words.say("about.title"));
        this.model = model;
        PagedRows first = new PagedRows(words, GAP);
        first.show(rows(model.cautions()));
        cautions = paged(first);
        cautions.getStyleClass().addAll("on-sheet", "form-panel");
        PagedRows program = new PagedRows(words, GAP);
        owns(model.sectionsProperty()
                .subscribe(sections -> program.show(sections.stream()
                        .flatMap(section -> rows(section).stream())
                        .toList())));
        VBox facts = paged(program);
        facts.getStyleClass().addAll("on-paper", "form-panel");
        body.setCenter(facts);
        Key licences = way(words, "licences", journey::licences);
        Key reference = way(words, "reference", journey::reference);
        setTop(RunHeading.titled(title(), words, journey::back).end(licences).end(reference));
        setCenter(body);
    }

    @Override
    public void arrange(Arrangement arrangement) {
        new SidePart(cautions, ScreenSizes.ABOUT_SIDE, ScreenSizes.ABOUT_SIDE).place(body, arrangement);
    }

    @Override
    public void onShown() {
        model.load();
    }

    private static Key way(Words words, String id, Runnable there) {
        Key key = new Key(Key.Kind.PLAIN, words.say(id + ".title"), there);
        key.setId(id);
        key.getStyleClass().add("home-setting");
        key.setMinWidth(USE_PREF_SIZE);
        return key;
    }

    private static VBox paged(PagedRows pages) {
        VBox.setVgrow(pages, Priority.ALWAYS);
        return new VBox(pages);
    }

    private static List<Region> rows(AboutViewModel.AboutSection section) {
        List<Region> rows = new ArrayList<>();
        rows.add(Texts.label(section.heading(), "heading"));
        section.paragraphs().forEach(paragraph -> rows.add(Texts.label(paragraph, "body")));
        return rows;
    }
}
