package org.tenthwise.app.ui.documents;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.Texts;

/** A row of what a document proves: number, name, where and which document, verdict. */
record DocumentRows(PictureFrames pictures) {

    private static final double MARK = 22;

    Region of(DocumentRow row) {
        Label number = Texts.label(String.valueOf(row.step()), "body", "bold");
        number.getStyleClass().add("record-number");
        VBox said =
                column(Texts.label(row.name(), "body", "bold"), List.of(row.balloon(), row.asked(), row.document()));
        HBox.setHgrow(said, Priority.ALWAYS);
        HBox judged = new HBox(
                8,
                pictures.fixed(new VerdictMark(row.standing(), row.verdict()), MARK, MARK, Role.SHEET),
                Texts.label(row.verdict(), "body", "bold", Texts.style(row.standing())));
        judged.setAlignment(Pos.CENTER_LEFT);
        VBox verdict = column(judged, List.of(row.distance()));
        verdict.getStyleClass().addAll("record-verdict", "upright");
        HBox whole = new HBox(12, number, said, verdict);
        whole.setAlignment(Pos.CENTER_LEFT);
        return whole;
    }

    /** @param below what is empty is left out */
    private static VBox column(Region first, List<String> below) {
        VBox column = new VBox(first);
        below.stream().filter(text -> !text.isEmpty()).forEach(text -> column.getChildren()
                .add(Texts.label(text, "body", "second")));
        return column;
    }
}
