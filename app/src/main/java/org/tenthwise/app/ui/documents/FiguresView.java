package org.tenthwise.app.ui.documents;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.documents.FiguresViewModel.Seen;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** What a table of figures comes to: what was refused first, with the reason, then every check with its verdict. */
public final class FiguresView extends Screen {

    private final FiguresViewModel model;

    public FiguresView(FiguresViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("documents.file.title"));
        this.model = model;
        DocumentRows rows = new DocumentRows(pictures);
        PagedRows list = new PagedRows(words);
        list.setId("figures");
        VBox.setVgrow(list, Priority.ALWAYS);
        Label said = Texts.label("", "heading");
        said.setMinHeight(USE_PREF_SIZE);
        Key enter = new Key(Key.Kind.COMMIT, words.say("documents.file.enter", ""), model::enter);
        enter.setId("commit");
        enter.setMinHeight(ScreenSizes.DECIDING_KEY);
        VBox page = new VBox(ScreenSizes.GAP, said, list, enter);
        page.getStyleClass().addAll("on-sheet", "form-panel");
        setTop(RunHeading.of(title(), model.seenProperty().map(seen -> seen.map(Seen::state)), words, navigator::back));
        setCenter(page);
        owns(model.seenProperty().subscribe(seen -> {
            enter.setDisable(seen.filter(Seen::mayEnter).isEmpty());
            seen.ifPresent(now -> {
                said.setText(now.said());
                enter.setText(words.say(
                        "documents.file.enter",
                        now.state().sheet().run().begun().serial()));
                list.show(lines(now, rows));
            });
        }));
    }

    private static List<Region> lines(Seen now, DocumentRows rows) {
        return Stream.concat(
                        now.refused().stream().map(line -> Texts.label(line, "middling", "bold")),
                        now.rows().stream().map(rows::of))
                .toList();
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
