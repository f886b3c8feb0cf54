package org.tenthwise.app.ui.run;

import java.util.List;
import java.util.stream.DoubleStream;
import javafx.geometry.Orientation;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.Texts;

/**
 * What to do, a line a move, to stand beside the picture of it. Lettered as large as it finds room, large text too down
 * to the usual letters; all of it is always there.
 */
final class MoveLines extends VBox {

    private static final double USUAL = 18;
    private static final double LARGEST = 21;
    private static final double SMALLER = 0.94;
    private static final double BETWEEN = 4;

    private final Look look;
    private List<String> moves = List.of();

    MoveLines(Look look) {
        super(BETWEEN);
        this.look = look;
        getStyleClass().add("moves");
        setId("moves");
        widthProperty().subscribe(width -> fit());
        heightProperty().subscribe(height -> fit());
    }

    void show(List<String> lines) {
        moves = List.copyOf(lines);
        getChildren()
                .setAll(moves.stream().map(move -> Texts.label(move, "bold")).toList());
        fit();
    }

    private void fit() {
        double room = getHeight() - snappedTopInset() - snappedBottomInset();
        double size = DoubleStream.iterate(LARGEST * look.textScale(), letters -> letters * SMALLER)
                .takeWhile(letters -> letters > USUAL)
                .filter(letters -> height(letters, getWidth()) <= room)
                .findFirst()
                .orElse(USUAL);
        setStyle("-fx-font-size: %spx".formatted(size));
    }

    private double height(double letters, double width) {
        double across = Math.max(1, width - snappedLeftInset() - snappedRightInset());
        return moves.stream()
                        .mapToDouble(move -> {
                            Text line = new Text(move);
                            line.setFont(Font.font(family(), FontWeight.BOLD, letters));
                            line.setWrappingWidth(across);
                            return Math.ceil(line.getLayoutBounds().getHeight()) + 1;
                        })
                        .sum()
                + BETWEEN * Math.max(0, moves.size() - 1);
    }

    private String family() {
        return getChildren().stream()
                .map(Label.class::cast)
                .map(label -> label.getFont().getFamily())
                .findFirst()
                .orElseGet(() -> Font.getDefault().getFamily());
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinHeight(double width) {
        return snappedTopInset() + height(USUAL, width < 0 ? getWidth() : width) + snappedBottomInset();
    }

    @Override
    protected double computePrefHeight(double width) {
        return computeMinHeight(width);
    }
}
