package org.tenthwise.app.ui.shell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.shell.HeadingCell.Told;
import org.tenthwise.app.ui.theme.Icon;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Words;

/**
 * The heading line of a screen: the way back, cells of name and value, and a key or two at the right. Where there is no
 * room for all cells, those added last give way first; a cell is shown whole or not at all. The cells fill the line.
 */
public final class Heading extends HBox {

    private final List<Region> cells = new ArrayList<>();
    private final Region space = new Region();
    private Optional<HeadingCell> worded = Optional.empty();

    public Heading() {
        getStyleClass().addAll("heading-line", "on-paper", "lined-below");
        setAlignment(Pos.CENTER_LEFT);
        setFillHeight(true);
        setMinHeight(USE_PREF_SIZE);
        HBox.setHgrow(space, Priority.ALWAYS);
        getChildren().add(space);
    }

    /** The way back, at the left. */
    public Heading back(Words words, Runnable back) {
        Key key = new Key(Key.Kind.QUIET, Icon.BACK, words.say("heading.back"), back);
        key.setId("back");
        key.setMinWidth(ScreenSizes.KEY);
        getChildren().add(0, key);
        return this;
    }

    /** A cell: a small name over a value. The more it matters, the sooner it is added. */
    public Heading cell(String name, ObservableValue<String> value) {
        return cell(new HeadingCell(name, value));
    }

    /**
     * The one cell with a quiet word behind its name or in the place of that, where it costs no other cell its room.
     */
    public Heading cell(String name, ObservableValue<String> value, ObservableValue<String> word) {
        HeadingCell cell = new HeadingCell(name, value);
        cell.beside(word);
        worded = Optional.of(cell);
        return cell(cell);
    }

    /** A cell of one's own. */
    public Heading cell(Region cell) {
        cell.getStyleClass().addAll("heading-cell", "lined-left");
        cell.setMinWidth(USE_PREF_SIZE);
        cells.add(cell);
        getChildren().add(getChildren().indexOf(space), cell);
        return this;
    }

    /** Something that always stands at the right end. */
    public Heading end(Node node) {
        HBox.setMargin(node, new Insets(0, 0, 0, 8));
        getChildren().add(node);
        return this;
    }

    @Override
    protected void layoutChildren() {
        int most = fitting(Told.NOT);
        Told told = Arrays.stream(Told.values())
                .filter(way -> fitting(way) == most)
                .findFirst()
                .orElse(Told.NOT);
        worded.ifPresent(cell -> cell.tell(told));
        List<Region> seen = cells.subList(0, most);
        cells.forEach(cell -> cell.setVisible(seen.contains(cell)));
        cells.forEach(cell -> cell.setManaged(seen.contains(cell)));
        super.layoutChildren();
        spread(seen);
    }

    /** How many cells there is room for with the quiet words told so. */
    private int fitting(Told told) {
        double taken = 0;
        for (Node child : getChildren()) {
            if (!cells.contains(child) && child != space) {
                taken += Math.max(child.minWidth(-1), child.prefWidth(-1)) + 8;
            }
        }
        int fitting = 0;
        for (Region cell : cells) {
            taken += wanted(cell, told);
            if (taken > getWidth()) {
                return fitting;
            }
            fitting++;
        }
        return fitting;
    }

    /** Room to spare is shared among the cells, so that they fill the line. */
    private void spread(List<Region> seen) {
        double spare = space.getWidth();
        double share = Math.floor(spare / Math.max(1, seen.size()));
        double left = seen.isEmpty() ? 0 : seen.get(0).getLayoutX();
        for (Region cell : seen) {
            boolean last = cell == seen.get(seen.size() - 1);
            double width = cell.getWidth() + (last ? spare - share * (seen.size() - 1) : share);
            cell.resizeRelocate(left, cell.getLayoutY(), width, cell.getHeight());
            left += width;
        }
    }

    private double wanted(Region cell, Told told) {
        return worded.filter(cell::equals).map(with -> with.wanted(told)).orElseGet(() -> wanted(cell));
    }

    private static double wanted(Region cell) {
        return Math.ceil(Math.max(cell.minWidth(-1), cell.prefWidth(-1)));
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }
}
