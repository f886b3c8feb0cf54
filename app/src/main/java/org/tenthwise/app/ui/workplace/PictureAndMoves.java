package org.tenthwise.app.ui.workplace;

import java.util.List;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import org.tenthwise.app.picture.RoomForRings;
import org.tenthwise.app.text.ToDo;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.Texts;

/**
 * The picture and, where there are any, the moves to make at what it shows, a line a move. What goes for all of them
 * stands over the picture, and the moves of each section under its part of it; or all of them stand beside the picture,
 * each section under its name, where that leaves the picture more. All are always there, in no smaller letters than the
 * usual ones.
 */
final class PictureAndMoves extends Region {

    private static final Insets MARGIN = new Insets(4, 12, 8, 16);
    private static final double USUAL = 18;
    private static final double LARGEST = 21;
    private static final double SMALLER = 0.94;
    private static final double BETWEEN = 2;
    /** Large letters may wrap before a line is full by so much. */
    private static final double WRAPS_BEFORE = 0.97;
    /** Under the last of them. */
    private static final double EDGE = 2;
    /** Between two sections, as their rings stand apart. */
    private static final double GAP = 14;
    /** Over the part of the picture that is of one section stands its name. */
    private static final double NAME = 26;
    /** Of the width, where the moves stand beside the picture. */
    private static final double BESIDE = 0.5;
    /** Of what is drawn of a section: nobody could read it any smaller. */
    private static final double LEAST = 120;

    private final PictureView picture;
    private final Look look;
    private ToDo toDo = ToDo.NOTHING;
    private List<Label> labels = List.of();

    PictureAndMoves(PictureView picture, Look look) {
        this.picture = picture;
        this.look = look;
        getChildren().add(picture);
    }

    void show(ToDo moves) {
        if (moves.equals(toDo)) {
            return;
        }
        getChildren().removeAll(labels);
        toDo = moves;
        labels = toDo.lines().stream()
                .map(line -> Texts.label(line, "bold", "move"))
                .toList();
        getChildren().addAll(labels);
        requestLayout();
    }

    private int sections() {
        return Math.max(1, toDo.sections().size());
    }

    /** Words at a place, so wide, and as high as they need. */
    private record Block(List<String> lines, double left, double top, double width) {}

    /** Where the picture is, and where the words are. */
    private record Arrangement(double left, double top, double width, double height, List<Block> words) {

        double worth(int sections) {
            return RoomForRings.worth(width, height, sections);
        }
    }

    @Override
    protected void layoutChildren() {
        if (toDo.isEmpty()) {
            place(
                    new Arrangement(
                            MARGIN.getLeft(),
                            MARGIN.getTop(),
                            getWidth() - MARGIN.getLeft() - MARGIN.getRight(),
                            getHeight() - MARGIN.getTop() - MARGIN.getBottom(),
                            List.of()),
                    USUAL);
            return;
        }
        Arrangement under = under(USUAL, getWidth(), getHeight());
        Arrangement beside = beside(USUAL, getWidth(), getHeight());
        boolean fits = bottom(beside, USUAL) <= getHeight();
        if (fits && beside.worth(sections()) > under.worth(sections())) {
            double letters = largest(size -> bottom(beside, size) <= getHeight());
            place(beside(letters, getWidth(), getHeight()), letters);
        } else {
            double letters =
                    largest(size -> under(size, getWidth(), getHeight()).worth(sections()) >= under.worth(sections()));
            place(under(letters, getWidth(), getHeight()), letters);
        }
    }

    /** Letters with which {@code holds}, the usual ones if with no larger. */
    private double largest(DoublePredicate holds) {
        return DoubleStream.iterate(LARGEST * look.textScale(), letters -> letters * SMALLER)
                .takeWhile(letters -> letters > USUAL)
                .filter(holds)
                .findFirst()
                .orElse(USUAL);
    }

    /** Sections beside one another, their moves under them, and no higher than they are wide. */
    private Arrangement under(double letters, double width, double height) {
        double inner = width - MARGIN.getLeft() - MARGIN.getRight();
        double column = (inner - GAP * (sections() - 1)) / sections();
        double first = height(toDo.first(), letters, inner);
        double moves = toDo.sections().stream()
                .mapToDouble(section -> height(section.lines(), letters, column))
                .max()
                .orElse(0);
        double top = first + BETWEEN;
        double room = Math.max(0, height - top - moves - EDGE);
        double high = sections() > 1 ? Math.min(room, column + NAME * look.textScale()) : room;
        Stream<Block> over = Stream.of(new Block(toDo.first(), MARGIN.getLeft(), 0, inner));
        Stream<Block> below = IntStream.range(0, toDo.sections().size())
                .mapToObj(i -> new Block(
                        toDo.sections().get(i).lines(), MARGIN.getLeft() + i * (column + GAP), top + high, column));
        return new Arrangement(
                MARGIN.getLeft(), top, inner, high, Stream.concat(over, below).toList());
    }

    private Arrangement beside(double letters, double width, double height) {
        double column = width * BESIDE;
        return new Arrangement(
                MARGIN.getLeft(),
                MARGIN.getTop(),
                width - column - MARGIN.getLeft() - MARGIN.getRight(),
                height - MARGIN.getTop() - MARGIN.getBottom(),
                List.of(new Block(toDo.lines(), width - column, MARGIN.getTop(), column - MARGIN.getRight())));
    }

    /** How far down its words reach. */
    private double bottom(Arrangement arrangement, double letters) {
        return arrangement.words().stream()
                .mapToDouble(block -> block.top() + height(block.lines(), letters, block.width()))
                .max()
                .orElse(0);
    }

    private double height(List<String> lines, double letters, double width) {
        return lines.stream().mapToDouble(line -> height(line, letters, width)).sum()
                + BETWEEN * Math.max(0, lines.size() - 1);
    }

    /** Of large letters a line takes a little more than its letters are high. */
    private double height(String line, double letters, double width) {
        Text text = new Text(line);
        text.setFont(Font.font(family(), FontWeight.BOLD, letters));
        double single = text.getLayoutBounds().getHeight();
        text.setWrappingWidth(Math.max(1, width * (letters > USUAL ? WRAPS_BEFORE : 1) - 1));
        double high = text.getLayoutBounds().getHeight();
        return letters > USUAL ? Math.round(high / single) * (Math.ceil(single) + 1) : Math.ceil(high);
    }

    /** Of the words; known before their first layout too. */
    private String family() {
        Label first = labels.get(0);
        first.applyCss();
        return first.getFont().getFamily();
    }

    private void place(Arrangement arrangement, double letters) {
        picture.resizeRelocate(
                arrangement.left(),
                arrangement.top(),
                Math.max(0, arrangement.width()),
                Math.max(0, arrangement.height()));
        int next = 0;
        for (Block block : arrangement.words()) {
            double top = block.top();
            for (String line : block.lines()) {
                Label label = labels.get(next++);
                label.setText(line);
                label.setStyle("-fx-font-size: %spx".formatted(letters));
                label.applyCss();
                double high = letters > USUAL ? label.prefHeight(block.width()) : height(line, letters, block.width());
                label.resizeRelocate(block.left(), top, block.width(), high);
                top += high + BETWEEN;
            }
        }
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    /** Whichever way needs less. */
    @Override
    protected double computeMinHeight(double width) {
        double least = MARGIN.getTop() + picture.minHeight(-1) + MARGIN.getBottom();
        if (toDo.isEmpty()) {
            return least;
        }
        double across = width < 0 ? getWidth() : width;
        double under = bottom(under(USUAL, across, 0), USUAL) + LEAST;
        return Math.max(least, Math.min(under, bottom(beside(USUAL, across, 0), USUAL)));
    }

    @Override
    protected double computePrefHeight(double width) {
        return computeMinHeight(width);
    }

    @Override
    protected double computeMinWidth(double height) {
        return MARGIN.getLeft() + picture.minWidth(-1) + MARGIN.getRight();
    }
}
