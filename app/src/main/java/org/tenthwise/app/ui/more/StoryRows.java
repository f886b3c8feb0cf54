package org.tenthwise.app.ui.more;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.story.StoryChapter;
import org.tenthwise.app.story.StoryLine;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/**
 * The chapters of a story as rows: what happened, and under it when and by whom. A heading stands on the page of the
 * first line it is over.
 */
final class StoryRows {

    private static final double BELOW_HEADING = 8;

    private StoryRows() {}

    static List<Region> of(List<StoryChapter> chapters, Words words) {
        List<Region> rows = new ArrayList<>();
        for (StoryChapter chapter : chapters) {
            for (StoryLine line : chapter.lines()) {
                Region row = row(line, words);
                rows.add(line == chapter.lines().get(0) ? headed(chapter.heading(), row) : row);
            }
        }
        return rows;
    }

    private static Region headed(String heading, Region row) {
        VBox all = new VBox(BELOW_HEADING, Texts.label(heading, "heading"), row);
        all.getStyleClass().add("story-head");
        return all;
    }

    private static Region row(StoryLine line, Words words) {
        Label said = Texts.label(line.words(), "middling");
        if (!line.counts()) {
            said.getStyleClass().add("second");
        }
        VBox row = new VBox(2, said);
        if (!line.when().isEmpty()) {
            row.getChildren().add(Texts.label(words.say("story.trace", line.when(), line.person()), "body", "second"));
        }
        return row;
    }
}
