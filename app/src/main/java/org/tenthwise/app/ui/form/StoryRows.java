package org.tenthwise.app.ui.form;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.story.StoryChapter;
import org.tenthwise.app.story.StoryLine;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/**
 * The chapters of a story as rows: what happened, and when and by whom. A heading stands on the page of the first line
 * it is over.
 */
public final class StoryRows {

    private static final double BELOW_HEADING = 8;

    private final Words words;
    private final boolean beside;

    /** @param beside whether when and by whom stands at the end of the line, not under it */
    public StoryRows(Words words, boolean beside) {
        this.words = words;
        this.beside = beside;
    }

    public List<Region> of(List<StoryChapter> chapters) {
        List<Region> rows = new ArrayList<>();
        for (StoryChapter chapter : chapters) {
            for (StoryLine line : chapter.lines()) {
                Region row = row(line);
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

    private Region row(StoryLine line) {
        Label said = Texts.label(line.words(), beside ? "body" : "middling");
        if (!line.counts()) {
            said.getStyleClass().add("second");
        }
        if (line.when().isEmpty()) {
            return said;
        }
        Label trace = Texts.label(words.say("story.trace", line.when(), line.person()), "body", "second");
        if (!beside) {
            return new VBox(2, said, trace);
        }
        HBox.setHgrow(said, Priority.ALWAYS);
        said.setMaxWidth(Double.MAX_VALUE);
        trace.setMinWidth(Region.USE_PREF_SIZE);
        return new HBox(ScreenSizes.GAP, said, trace);
    }
}
