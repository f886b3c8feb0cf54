package org.tenthwise.app.ui.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.bench.ResultRow;
import org.tenthwise.app.ui.bench.BenchFormState.FieldShown;
import org.tenthwise.app.ui.bench.BenchFormState.Found;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/**
 * What comes of a bench sum: the picture drawn from the numbers, the headline, every other result, notes, formula and
 * source; before there is an answer, what is filled in so far. The results have the height they need, as long as the
 * picture keeps its share; the headline, the first of the rest and what to heed before using it are always in sight.
 */
final class FoundSheet extends Region {

    /** Letters of a name and its value that do not go beside others. */
    private static final int LONG = 33;

    /** What the picture keeps of the height under the name. */
    private static final double PICTURE_SHARE = 0.5;

    /** Rows under the headline that are in sight before the picture has its share. */
    private static final int IN_SIGHT = 3;

    /** What it keeps for all that. */
    private static final double PICTURE_LEAST = 0.36;

    private static final double SIDE = 16;
    private static final double RIGHT = 12;

    private final PictureView picture;
    private final VBox top;
    private final VBox below;
    private final PagedRows facts;
    private final Label headline = Texts.label("", "middling", "second");
    private final Label value = Texts.label("", "figure", "bold");
    private final FlowPane head = new FlowPane(16, 0, value, headline);
    private final Label sentence = Texts.label("", "middling", "bold");
    private final HBox line;
    private final Label formula = Texts.label("", "body", "second");
    private int across = 2;
    private Found last = new Found("", false, List.of(), List.of(), List.of(), List.of(), "");

    FoundSheet(SumViewModel model, PictureFrames pictures, Words words) {
        getStyleClass().addAll("step-sheet", "on-sheet");
        Label title = Texts.label("", "title");
        title.setId("sum-title");
        title.textProperty().bind(model.shownProperty().map(BenchFormState::title));
        formula.setId("formula");
        formula.textProperty().bind(model.shownProperty().map(BenchFormState::formula));
        top = new VBox(2, title);
        top.getStyleClass().add("sheet-top");
        picture = pictures.empty();
        head.setRowValignment(VPos.BASELINE);
        headline.setId("headline");
        value.setId("value");
        value.setMinWidth(USE_PREF_SIZE);
        sentence.setId("sentence");
        facts = new PagedRows(words, 4);
        facts.setId("facts");
        VBox said = new VBox(head, sentence);
        said.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(said, Priority.ALWAYS);
        line = new HBox(ScreenSizes.GAP, said);
        facts.turnAt(line);
        line.setFillHeight(false);
        line.setId("line");
        below = new VBox(line, facts);
        VBox.setVgrow(facts, Priority.ALWAYS);
        below.getStyleClass().addAll("bench-found", "lined-above");
        getChildren().addAll(top, picture, below);
    }

    /** With large text one result to a line. */
    void arrange(boolean large) {
        across = large ? 1 : 2;
        show(last);
    }

    void show(BenchFormState shown) {
        picture.setVisible(shown.picture().isPresent());
        shown.picture().ifPresentOrElse(picture::show, picture::clear);
        show(shown.found());
    }

    private void show(Found found) {
        last = found;
        List<Region> rows = new ArrayList<>();
        sentence.setText(found.sentence());
        sentence.getStyleClass().remove("fail");
        if (found.refused()) {
            sentence.getStyleClass().add("fail");
        }
        see(sentence, !found.sentence().isEmpty());
        see(head, !found.rows().isEmpty());
        found.cautions().forEach(caution -> rows.add(Texts.label(caution, "body")));
        if (!found.rows().isEmpty()) {
            headline.setText(found.rows().get(0).name());
            value.setText(found.rows().get(0).value());
            rows.addAll(pairs(found.rows().subList(1, found.rows().size())));
        }
        found.typed().stream()
                .sorted(Comparator.comparing(field -> !field.refused()))
                .map(FoundSheet::typed)
                .forEach(rows::add);
        found.notes().forEach(note -> rows.add(Texts.label(note, "body")));
        rows.add(formula);
        if (!found.basis().isEmpty()) {
            rows.add(Texts.label(found.basis(), "body", "second"));
        }
        facts.show(rows);
        requestLayout();
    }

    private static void see(Region what, boolean seen) {
        what.setVisible(seen);
        what.setManaged(seen);
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double heading = top.prefHeight(width);
        double free = getHeight() - heading;
        double inside = width - below.getInsets().getLeft() - below.getInsets().getRight();
        double heads = below.getInsets().getTop() + below.getInsets().getBottom() + line.prefHeight(inside);
        double least = Math.min(
                heads + facts.heightOfFirst(IN_SIGHT, inside),
                free - Math.max(ScreenSizes.SUM_PICTURE, free * PICTURE_LEAST));
        double most = Math.max(least, free - Math.max(ScreenSizes.SUM_PICTURE, free * PICTURE_SHARE));
        double results = picture.isVisible() ? Math.min(heads + facts.heightOfAll(inside), most) : free;
        top.resizeRelocate(0, 0, width, heading);
        picture.resizeRelocate(
                SIDE, heading + 4, width - SIDE - RIGHT, Math.max(0, free - results - ScreenSizes.GAP - 4));
        below.resizeRelocate(0, getHeight() - results, width, results);
    }

    @Override
    protected double computePrefHeight(double width) {
        return computeMinHeight(width);
    }

    @Override
    protected double computeMinHeight(double width) {
        return top.minHeight(width) + ScreenSizes.SUM_PICTURE + ScreenSizes.SUM_FACTS;
    }

    /** What is filled in under one field, and why it is refused. */
    private static Region typed(FieldShown field) {
        HBox row = fact(new ResultRow(field.id(), field.name(), field.value()));
        if (!field.refused()) {
            return row;
        }
        VBox both = new VBox(2, Texts.label(field.remark(), "middling", "bold", "fail"), row);
        both.setId("refused");
        return both;
    }

    private List<Region> pairs(List<ResultRow> others) {
        List<Region> rows = new ArrayList<>();
        for (int from = 0; from < others.size(); ) {
            int beside = isLong(others.get(from)) ? 1 : across;
            List<ResultRow> row = others.subList(from, Math.min(others.size(), from + beside)).stream()
                    .takeWhile(fact -> beside == 1 || !isLong(fact))
                    .toList();
            rows.add(line(row, beside));
            from += row.size();
        }
        return rows;
    }

    private static boolean isLong(ResultRow fact) {
        return fact.name().length() + fact.value().length() > LONG;
    }

    private static GridPane line(List<ResultRow> facts, int beside) {
        GridPane row = new GridPane();
        row.setHgap(16);
        for (int i = 0; i < beside; i++) {
            ColumnConstraints share = new ColumnConstraints();
            share.setPercentWidth(100.0 / beside);
            row.getColumnConstraints().add(share);
        }
        for (int i = 0; i < facts.size(); i++) {
            row.add(fact(facts.get(i)), i, 0);
        }
        return row;
    }

    private static HBox fact(ResultRow fact) {
        Label name = Texts.label(fact.name(), "body", "second");
        Label value = Texts.label(fact.value(), "body", "bold");
        value.setMinWidth(Region.USE_PREF_SIZE);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox row = new HBox(8, name, space, value);
        row.setAlignment(Pos.BASELINE_LEFT);
        return row;
    }
}
