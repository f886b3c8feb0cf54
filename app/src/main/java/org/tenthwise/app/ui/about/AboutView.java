package org.tenthwise.app.ui.about;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.shell.SidePart;
import org.tenthwise.model.words.Words;

/** The cautions on the one side, the program on the other, both a page at a time. */
public final class AboutView extends BorderPane implements Screen {

    private static final double SIDE = 600;
    private static final double GAP = 12;

    private final AboutViewModel model;
    private final Words words;
    private final VBox cautions;
    private final BorderPane body = new BorderPane();
    private final Subscription following;

    public AboutView(AboutViewModel model, Words words, Navigator journey) {
        this.model = model;
        this.words = words;
        PagedRows first = new PagedRows(words, GAP);
        first.show(rows(model.cautions()));
        cautions = paged(first);
        cautions.getStyleClass().addAll("on-sheet", "form-panel");
        PagedRows program = new PagedRows(words, GAP);
        following = model.sectionsProperty()
                .subscribe(sections -> program.show(sections.stream()
                        .flatMap(section -> rows(section).stream())
                        .toList()));
        VBox facts = paged(program);
        facts.getStyleClass().addAll("on-paper", "form-panel");
        body.setCenter(facts);
        Key licences = way("licences", journey::licences);
        Key reference = way("reference", journey::reference);
        setTop(RunHeading.titled(title(), words, journey::back).end(licences).end(reference));
        setCenter(body);
    }

    @Override
    public Region root() {
        return this;
    }

    @Override
    public String title() {
        return words.say("about.title");
    }

    @Override
    public void arrange(Arrangement arrangement) {
        new SidePart(cautions, SIDE, SIDE).place(body, arrangement);
    }

    @Override
    public void onShown() {
        model.load();
    }

    @Override
    public void onGone() {
        following.unsubscribe();
    }

    private Key way(String id, Runnable there) {
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

    private static List<Region> rows(AboutViewModel.Section section) {
        List<Region> rows = new ArrayList<>();
        rows.add(label(section.heading(), "heading"));
        section.paragraphs().forEach(paragraph -> rows.add(label(paragraph, "body")));
        return rows;
    }

    private static Label label(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        return label;
    }
}
