package org.tenthwise.app.ui.record;

import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.Texts;

/** The rows of the record: number, name and limits, the size, where it lies, the verdict. */
final class RecordRows {

    private static final double LIE_WIDTH = 124;
    private static final double LIE_HEIGHT = 24;
    private static final double MARK = 22;

    private final PictureFrames pictures;

    RecordRows(PictureFrames pictures) {
        this.pictures = pictures;
    }

    /** @param roomy for large text: where the size lies and its verdict stand under the name */
    Region row(RecordRow row, boolean roomy) {
        Label number = Texts.label(row.number(), "body", "bold");
        number.getStyleClass().add("record-number");
        VBox name = column(Texts.label(row.name(), "body", "bold"), row.limits());
        HBox.setHgrow(name, Priority.ALWAYS);
        Label value = Texts.label(row.value(), "body", "bold");
        value.getStyleClass().add("record-value");
        Region lies = row.mark()
                .<Region>map(mark -> pictures.fixed(mark, LIE_WIDTH, LIE_HEIGHT, Role.SHEET))
                .orElseGet(RecordRows::nothing);
        PictureView shape = pictures.fixed(new VerdictMark(row.standing(), row.verdict()), MARK, MARK, Role.SHEET);
        VBox judged = column(Texts.label(row.verdict(), "body", "bold", Texts.style(row.standing())), row.distance());
        judged.getStyleClass().add(roomy ? "record-judged" : "record-verdict");
        HBox.setHgrow(judged, roomy ? Priority.ALWAYS : Priority.NEVER);
        VBox whole = new VBox(2);
        if (roomy) {
            HBox lower = level(shape, judged, lies);
            lower.getStyleClass().add("record-lower");
            whole.getChildren().addAll(level(number, name, value), lower);
        } else {
            whole.getChildren().add(level(number, name, value, lies, shape, judged));
        }
        if (!row.after().isEmpty()) {
            whole.getChildren().add(Texts.label(row.after(), "body", "second"));
        }
        whole.getStyleClass().addAll("ruled-below", "matter");
        whole.setAccessibleRole(AccessibleRole.TEXT);
        whole.setAccessibleText(row.spoken());
        return whole;
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

    private static VBox column(Label first, String second) {
        VBox column = new VBox(first);
        if (!second.isEmpty()) {
            column.getChildren().add(Texts.label(second, "body", "second"));
        }
        return column;
    }
}
