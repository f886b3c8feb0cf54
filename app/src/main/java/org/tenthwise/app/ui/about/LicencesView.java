package org.tenthwise.app.ui.about;

import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The works at the side, the licence of the one in hand beside or below them, by the page. */
public final class LicencesView extends SidedScreen {

    private static final double GAP = 12;

    private final LicencesViewModel model;
    private final Words words;
    private final PagedRows works;
    private final PagedRows text;

    public LicencesView(LicencesViewModel model, Words words, Look look, Navigator navigator) {
        super(words.say("licences.title"));
        this.model = model;
        this.words = words;
        works = new PagedRows(words);
        VBox.setVgrow(works, Priority.ALWAYS);
        VBox side = new VBox(works);
        side.getStyleClass().addAll("on-paper", "form-side");
        text = new PagedRows(words, 0);
        text.setId("lines");
        VBox.setVgrow(text, Priority.ALWAYS);
        VBox read = new VBox(text);
        read.getStyleClass().addAll("on-sheet", "home-side");
        rest(read);
        boolean large = look.largeTextProperty().get();
        lay(
                RunHeading.titled(title(), words, navigator::back),
                side,
                large ? ScreenSizes.REFERENCE_SIDE_LARGE : ScreenSizes.REFERENCE_SIDE,
                ScreenSizes.REFERENCE_ABOVE);
        owns(model.chosenProperty().subscribe(this::show));
    }

    private void show(LicencesViewModel.Work chosen) {
        works.show(model.works().stream().map(work -> key(work, work == chosen)).toList());
        works.reveal(model.works().indexOf(chosen));
        List<String> paragraphs = chosen.paragraphs();
        text.show(paragraphs.size(), place -> paragraph(paragraphs.get(place)));
        text.reveal(0);
    }

    private static Label paragraph(String words) {
        Label paragraph = Texts.label(words, "body");
        paragraph.setPadding(new Insets(0, 0, GAP, 0));
        return paragraph;
    }

    private Key key(LicencesViewModel.Work work, boolean chosen) {
        VBox name = new VBox(Texts.label(work.name(), "key-word"), Texts.label(work.licence(), "key-line"));
        Key key = new Key(Key.Kind.PLAIN, name, () -> model.choose(work));
        key.speak(words.spoken(work.name(), work.licence()));
        key.setId("work-" + model.works().indexOf(work));
        key.getStyleClass().addAll("row", "reference-key");
        key.showChosen(chosen);
        return key;
    }
}
