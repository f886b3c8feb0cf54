package org.tenthwise.app.ui.run;

import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.run.RunScreenState.StepLine;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.model.verdict.VerdictKind;

/** A row of the step list: verdict shape, number, name and value. Built once, filled again and again. */
final class StepRow {

    private static final PseudoClass IN_HAND = PseudoClass.getPseudoClass("in-hand");
    private static final double MARK = 24;

    private final PictureView mark;
    private final Label number = new Label();
    private final Label name = new Label();
    private final Label under = new Label();
    private final Key key;
    private VerdictKind drawn = VerdictKind.OPEN;

    StepRow(int step, PictureFrames pictures, Runnable press) {
        mark = pictures.empty(MARK, MARK);
        number.getStyleClass().addAll("body", "step-number");
        number.setMinWidth(Region.USE_PREF_SIZE);
        name.getStyleClass().addAll("body", "step-name");
        under.getStyleClass().addAll("body", "second", "step-under");
        for (Label label : new Label[] {name, under}) {
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
        }
        under.visibleProperty().bind(under.textProperty().isNotEmpty());
        under.managedProperty().bind(under.visibleProperty());
        VBox texts = new VBox(name, under);
        texts.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(texts, Priority.ALWAYS);
        HBox row = new HBox(10, mark, number, texts);
        row.setAlignment(Pos.CENTER_LEFT);
        key = new Key(Key.Kind.QUIET, row, press);
        key.getStyleClass().add("step");
        key.setId("step-" + step);
        mark.show(new VerdictMark(drawn, ""));
    }

    Key key() {
        return key;
    }

    void show(StepLine line) {
        number.setText(String.valueOf(line.number()));
        name.setText(line.name());
        under.setText(line.under());
        key.speak(line.spoken());
        key.pseudoClassStateChanged(IN_HAND, line.inHand());
        if (line.standing() != drawn) {
            drawn = line.standing();
            mark.show(new VerdictMark(drawn, ""));
        }
    }
}
