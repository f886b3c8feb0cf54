package org.tenthwise.app.ui.run;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import org.tenthwise.app.ui.theme.FittedLine;
import org.tenthwise.app.ui.theme.Texts;

/**
 * The limits as the drawing writes them and, behind them, the gauge with what it is set on; where there is no room for
 * both in one line, the gauge goes below. Mark and setting of the gauge are always there.
 */
final class LimitsLine extends Region {

    private static final double BETWEEN = 14;
    private static final int LEAST_PARTS = 2;

    private final Label limits = Texts.label("", "middling", "bold");
    private final FittedLine gauge = new FittedLine("body");

    LimitsLine() {
        limits.visibleProperty().bind(limits.textProperty().isNotEmpty());
        getChildren().addAll(limits, gauge);
        setMinHeight(USE_PREF_SIZE);
        gauge.setId("gauge-line");
    }

    void show(String drawing, List<String> parts, String between) {
        limits.setText(drawing);
        gauge.show(parts, between, false);
        requestLayout();
    }

    private double indent() {
        return limits.getText().isEmpty() ? 0 : Math.ceil(limits.prefWidth(-1)) + BETWEEN;
    }

    private boolean isOne(double width) {
        return indent() + gauge.widthOf(LEAST_PARTS) <= width;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        if (limits.getText().isEmpty() && gauge.getText().isEmpty()) {
            return 0;
        }
        double first = limits.getText().isEmpty() ? 0 : Math.ceil(limits.prefHeight(width));
        double second = gauge.getText().isEmpty() ? 0 : Math.ceil(gauge.prefHeight(isOne(width) ? -1 : width));
        return isOne(width) ? Math.max(first, second) : first + second;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        if (isOne(width)) {
            double down = Math.max(0, limits.getBaselineOffset() - gauge.getBaselineOffset());
            limits.resizeRelocate(0, 0, indent() == 0 ? 0 : indent() - BETWEEN, Math.ceil(limits.prefHeight(-1)));
            gauge.resizeRelocate(indent(), down, width - indent(), Math.ceil(gauge.prefHeight(-1)));
            return;
        }
        double high = limits.getText().isEmpty() ? 0 : Math.ceil(limits.prefHeight(width));
        limits.resizeRelocate(0, 0, width, high);
        gauge.resizeRelocate(0, high, width, Math.ceil(gauge.prefHeight(width)));
    }
}
