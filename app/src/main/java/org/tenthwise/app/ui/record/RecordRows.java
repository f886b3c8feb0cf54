package org.tenthwise.app.ui.record;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.story.StoryChapter;
import org.tenthwise.app.ui.form.StoryRows;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The rows of the record: number, name and limits, the size, where it lies, the verdict. */
final class RecordRows {

    private static final double LIE_WIDTH = 124;
    private static final double LIE_HEIGHT = 24;
    private static final double MARK = 22;

    private final PictureFrames pictures;
    private final Words words;

    RecordRows(PictureFrames pictures, Words words) {
        this.pictures = pictures;
        this.words = words;
    }

    /**
     * @param roomy for large text: where the size lies and its verdict stand under the name
     * @param wide beside the part, not under it
     * @param open opens the row or shuts it
     */
    Region row(RecordRow row, boolean roomy, boolean wide, Runnable open) {
        Label number = Texts.label(row.number(), "body", "bold");
        number.getStyleClass().add("record-number");
        VBox name = column(Texts.label(row.name(), "body", "bold"), row.balloon(), row.limits());
        HBox.setHgrow(name, Priority.ALWAYS);
        Label value = Texts.label(row.value(), "body", "bold");
        value.getStyleClass().add("record-value");
        Region lies = row.mark()
                .<Region>map(mark -> pictures.fixed(mark, LIE_WIDTH, LIE_HEIGHT, Role.SHEET))
                .orElseGet(RecordRows::nothing);
        HBox judged = new HBox(8);
        row.standing().ifPresent(standing -> judged.getChildren()
                .add(pictures.fixed(new VerdictMark(standing, row.verdict()), MARK, MARK, Role.SHEET)));
        judged.getChildren()
                .add(Texts.label(
                        row.verdict(),
                        "body",
                        "bold",
                        row.standing().map(Texts::style).orElse("second")));
        judged.setAlignment(Pos.CENTER_LEFT);
        VBox verdict = column(judged, row.distance());
        verdict.getStyleClass().add(roomy ? "record-judged" : "record-verdict");
        if (!wide) {
            verdict.getStyleClass().add("upright");
        }
        HBox.setHgrow(verdict, roomy ? Priority.ALWAYS : Priority.NEVER);
        VBox whole = new VBox(2);
        if (roomy) {
            HBox lower = level(verdict, lies);
            lower.getStyleClass().add("record-lower");
            whole.getChildren().addAll(level(number, name, value), lower);
        } else {
            whole.getChildren().add(level(number, name, value, lies, verdict));
        }
        if (!row.after().isEmpty()) {
            Label after = Texts.label(row.after(), "body", "second");
            after.getStyleClass().add("record-after");
            whole.getChildren().add(after);
        }
        Key key = new Key(Key.Kind.QUIET, whole, open);
        key.setId("row-" + row.step());
        key.getStyleClass().addAll("ruled-below", "record-row");
        key.speak(row.spoken(words));
        return key;
    }

    /** What lies behind a row. */
    List<Region> story(List<StoryChapter> chapters, boolean roomy) {
        List<Region> lines = new StoryRows(words, !roomy).of(chapters);
        lines.forEach(line -> line.getStyleClass().add("record-detail"));
        return lines;
    }

    private static HBox level(Region... parts) {
        HBox level = new HBox(12, parts);
        level.setAlignment(Pos.CENTER_LEFT);
        return level;
    }

    private static Region nothing() {
        Region nothing = new Region();
        nothing.setMinWidth(LIE_WIDTH);
        return nothing;
    }

    /** @param below what is empty is left out */
    private static VBox column(Region first, String... below) {
        VBox column = new VBox(first);
        for (String text : below) {
            if (!text.isEmpty()) {
                column.getChildren().add(Texts.label(text, "body", "second"));
            }
        }
        return column;
    }
}
