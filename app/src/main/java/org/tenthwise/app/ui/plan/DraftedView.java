package org.tenthwise.app.ui.plan;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.checklists.drafting.Drafted;
import org.tenthwise.model.words.Words;

/** What came of a list: the lines that were refused first, with the reason, then all that were taken. */
public final class DraftedView extends Screen {

    public DraftedView(String name, Drafted drafted, Words words, Navigator navigator) {
        super(words.say("planning.drafted"));
        PagedRows rows = new PagedRows(words);
        rows.setId("lines");
        VBox.setVgrow(rows, Priority.ALWAYS);
        rows.show(rows(drafted, words));
        Key on = new Key(Key.Kind.COMMIT, words.say("planning.drafted.on"), () -> {
            navigator.back();
            navigator.plan(name);
        });
        on.setId("commit");
        on.setMinHeight(ScreenSizes.DECIDING_KEY);
        VBox page = new VBox(
                ScreenSizes.GAP,
                Texts.label(
                        words.say(
                                "planning.drafted.count",
                                drafted.lines().size(),
                                drafted.refused().size()),
                        "heading"),
                rows,
                on);
        page.getStyleClass().addAll("on-sheet", "form-panel");
        setTop(RunHeading.titled(title(), words, navigator::back));
        setCenter(page);
    }

    private static List<Region> rows(Drafted drafted, Words words) {
        Stream<Region> refused = drafted.refused().stream()
                .map(line -> Texts.label(
                        words.say(
                                "planning.drafted.refused",
                                line.number(),
                                line.requirement(),
                                line.refused().orElseThrow()),
                        "middling",
                        "bold"));
        Stream<Region> taken = drafted.lines().stream()
                .filter(line -> line.refused().isEmpty())
                .map(line -> Texts.label(
                        words.say("planning.drafted.taken", line.number(), line.requirement()), "middling"));
        return Stream.concat(refused, taken).toList();
    }

    @Override
    public void arrange(Arrangement arrangement) {
        // one list fills the screen either way
    }
}
