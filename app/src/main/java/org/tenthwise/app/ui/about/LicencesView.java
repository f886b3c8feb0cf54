package org.tenthwise.app.ui.about;

import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.LongRows;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.shell.SidePart;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.model.words.Words;

/** The works at the side, the licence of the one in hand beside or below them, by the page. */
public final class LicencesView extends BorderPane implements Screen {

    private static final double SIDE = 432;
    private static final double SIDE_LARGE = 520;
    private static final double UPPER = 460;
    private static final double GAP = 12;

    private final LicencesViewModel model;
    private final Words words;
    private final PagedRows works;
    private final LongRows text;
    private final VBox side;
    private final BorderPane body = new BorderPane();
    private final boolean large;
    private final Subscription following;

    public LicencesView(LicencesViewModel model, Words words, Look look, Navigator journey) {
        this.model = model;
        this.words = words;
        large = look.largeTextProperty().get();
        works = new PagedRows(words);
        VBox.setVgrow(works, Priority.ALWAYS);
        side = new VBox(works);
        side.getStyleClass().addAll("on-paper", "form-side");
        text = new LongRows(words);
        VBox.setVgrow(text, Priority.ALWAYS);
        VBox read = new VBox(text);
        read.getStyleClass().addAll("on-sheet", "home-side");
        body.setCenter(read);
        setTop(RunHeading.titled(title(), words, journey::back));
        setCenter(body);
        following = model.chosenProperty().subscribe(this::show);
    }

    @Override
    public Region root() {
        return this;
    }

    @Override
    public String title() {
        return words.say("licences.title");
    }

    @Override
    public void arrange(Arrangement arrangement) {
        new SidePart(side, large ? SIDE_LARGE : SIDE, UPPER).place(body, arrangement);
    }

    @Override
    public void onGone() {
        following.unsubscribe();
    }

    private void show(LicencesViewModel.Work chosen) {
        works.show(model.works().stream().map(work -> key(work, work == chosen)).toList());
        works.reveal(model.works().indexOf(chosen));
        List<String> paragraphs = chosen.paragraphs();
        text.show(paragraphs.size(), place -> paragraph(paragraphs.get(place)));
    }

    private static Label paragraph(String words) {
        Label paragraph = label(words, "body");
        paragraph.setPadding(new Insets(0, 0, GAP, 0));
        return paragraph;
    }

    private Key key(LicencesViewModel.Work work, boolean chosen) {
        VBox name = new VBox(label(work.name(), "key-word"), label(work.licence(), "key-line"));
        Key key = new Key(Key.Kind.PLAIN, name, () -> model.choose(work));
        key.speak(work.name() + ". " + work.licence());
        key.setId("work-" + model.works().indexOf(work));
        key.getStyleClass().addAll("row", "reference-key");
        key.showChosen(chosen);
        return key;
    }

    private static Label label(String words, String style) {
        Label label = new Label(words);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
