package org.tenthwise.app.ui.run;

import java.util.function.IntConsumer;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.run.RunScreenState.StepLine;
import org.tenthwise.app.ui.theme.Elided;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.Ringed;
import org.tenthwise.model.verdict.VerdictKind;

/** A row of the step list, two lines: verdict shape and name, number, balloon and value. Filled again and again. */
final class StepRow {

    private static final PseudoClass IN_HAND = PseudoClass.getPseudoClass("in-hand");
    private static final PseudoClass BEFORE_HOLD = PseudoClass.getPseudoClass("before-hold");
    private static final PseudoClass AFTER_HOLD = PseudoClass.getPseudoClass("after-hold");
    private static final double MARK = 22;
    private static final double GAP = 8;
    private static final double BALLOON_GAP = 6;
    /** At the end of the key. */
    private static final double EDGE = 6;

    private final PictureView mark;
    private final Label number = new Label();
    private final Elided name = new Elided("body", "step-name");
    private final Ringed balloon = new Ringed("body");
    private final Elided under = new Elided("body", "second", "step-under");
    private final HBox second = new HBox(BALLOON_GAP);
    private final VBox place;
    private final Key key;
    private VerdictKind drawn = VerdictKind.OPEN;
    private int step;

    StepRow(PictureFrames pictures, IntConsumer goTo) {
        mark = pictures.empty(MARK, MARK);
        number.getStyleClass().addAll("body", "step-number");
        place = new VBox(mark, number);
        place.getStyleClass().add("step-place");
        place.setAlignment(Pos.CENTER);
        HBox.setHgrow(under, Priority.ALWAYS);
        second.setAlignment(Pos.CENTER_LEFT);
        second.setMinWidth(0);
        second.getChildren().setAll(balloon, under);
        VBox texts = new VBox(name, second);
        texts.setAlignment(Pos.CENTER_LEFT);
        texts.setMinWidth(0);
        HBox.setHgrow(texts, Priority.ALWAYS);
        HBox row = new HBox(GAP, place, texts);
        row.setAlignment(Pos.CENTER_LEFT);
        key = new Key(Key.Kind.QUIET, row, () -> goTo.accept(step));
        key.getStyleClass().add("step");
        mark.show(new VerdictMark(drawn, ""));
    }

    Key key() {
        return key;
    }

    /** How wide it is with nothing left out of its balloon and value. */
    double wholeWidth() {
        double ring = balloon.isVisible() ? balloon.prefWidth(-1) + BALLOON_GAP : 0;
        return place.prefWidth(-1) + GAP + ring + under.wholeWidth() + EDGE;
    }

    /** @param held what stands in the second line instead of the value; empty where nothing does */
    void show(StepLine line, String held, boolean beforeHold, boolean afterHold) {
        step = line.number();
        key.setId("step-" + step);
        number.setText(String.valueOf(step));
        name.show(line.name());
        under.show(held.isEmpty() ? line.under() : held);
        balloon.show(line.balloon());
        second.setVisible(!under.getText().isEmpty() || balloon.isVisible());
        second.setManaged(second.isVisible());
        key.speak(line.spoken());
        key.pseudoClassStateChanged(IN_HAND, line.inHand());
        key.pseudoClassStateChanged(BEFORE_HOLD, beforeHold);
        key.pseudoClassStateChanged(AFTER_HOLD, afterHold);
        mark.setVisible(line.asked());
        if (line.standing() != drawn) {
            drawn = line.standing();
            mark.show(new VerdictMark(drawn, ""));
        }
    }
}
