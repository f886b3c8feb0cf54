package org.tenthwise.app.ui.bench;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;

/** Columns and rows that share a grid evenly. */
final class Shares {

    private static final double WHOLE = 100;

    private Shares() {}

    static List<ColumnConstraints> columns(int number) {
        return IntStream.range(0, number)
                .mapToObj(i -> {
                    ColumnConstraints width = new ColumnConstraints();
                    width.setPercentWidth(WHOLE / number);
                    return width;
                })
                .toList();
    }

    static List<RowConstraints> rows(int number) {
        return IntStream.range(0, number)
                .mapToObj(i -> {
                    RowConstraints height = new RowConstraints();
                    height.setPercentHeight(WHOLE / number);
                    height.setVgrow(Priority.ALWAYS);
                    return height;
                })
                .toList();
    }
}
