package org.tenthwise.app.ui.run;

import javafx.css.PseudoClass;
import javafx.scene.layout.Region;
import org.tenthwise.app.ui.run.RunScreenState.Hold;
import org.tenthwise.app.ui.theme.Elided;

/** A hold point between two steps: a thick and a thin line, broken by a few words. */
final class HoldBand extends Region {

    private static final PseudoClass SHUT = PseudoClass.getPseudoClass("shut");
    private static final double LINES = 7;
    private static final double BEFORE = 36;
    private static final double ROOM = 8;

    private final Elided words = new Elided("body");
    private final Region before = lines();
    private final Region after = lines();

    HoldBand() {
        setMouseTransparent(true);
        getChildren().addAll(before, words, after);
    }

    void show(Hold hold) {
        words.show(hold.words());
        words.pseudoClassStateChanged(SHUT, hold.shut());
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        double width = Math.min(words.wholeWidth(), getWidth() - BEFORE - 2 * ROOM);
        double high = Math.ceil(words.prefHeight(-1));
        double top = Math.round((getHeight() - LINES) / 2);
        before.resizeRelocate(0, top, BEFORE, LINES);
        words.resizeRelocate(BEFORE + ROOM, Math.round((getHeight() - high) / 2), width, high);
        double from = BEFORE + width + 2 * ROOM;
        after.resizeRelocate(from, top, Math.max(0, getWidth() - from), LINES);
    }

    private static Region lines() {
        Region lines = new Region();
        lines.getStyleClass().add("hold-lines");
        return lines;
    }
}
