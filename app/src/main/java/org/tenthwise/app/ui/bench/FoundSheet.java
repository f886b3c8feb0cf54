package org.tenthwise.app.ui.bench;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.bench.ResultRow;
import org.tenthwise.app.ui.bench.BenchFormState.Found;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.app.ui.workplace.PictureSheet;
import org.tenthwise.model.words.Words;

/**
 * What comes of a bench sum: its formula, the picture drawn from the numbers, the headline, every other result, notes
 * and source.
 */
final class FoundSheet {

    /** Letters of a name and its value that do not go beside others. */
    private static final int LONG = 34;

    private final PictureSheet pane;
    private final PagedRows facts;
    private final Label headline = Texts.label("", "middling", "second");
    private final Label value = Texts.label("", "figure", "bold");
    private final HBox head = new HBox(16, value, headline);
    private final Label sentence = Texts.label("", "middling", "bold");
    private int across = 2;
    private List<ResultRow> others = List.of();
    private Found last = new Found("", false, List.of(), List.of(), "");

    FoundSheet(SumViewModel model, PictureFrames pictures, Words words) {
        Label title = Texts.label("", "title");
        title.textProperty().bind(model.shownProperty().map(BenchFormState::title));
        Label formula = Texts.label("", "body", "second");
        formula.setId("formula");
        formula.textProperty().bind(model.shownProperty().map(BenchFormState::formula));
        head.setAlignment(Pos.BASELINE_LEFT);
        headline.setId("headline");
        value.setId("value");
        value.setMinWidth(Region.USE_PREF_SIZE);
        sentence.setId("sentence");
        facts = new PagedRows(words, 4);
        VBox below = new VBox(facts);
        VBox.setVgrow(facts, Priority.ALWAYS);
        below.getStyleClass().add("bench-found");
        arrange(false, Arrangement.LANDSCAPE);
        pane = new PictureSheet(pictures, ScreenSizes.SUM_PICTURE, below, title, formula);
    }

    PictureSheet pane() {
        return pane;
    }

    /** With large text one result to a line, and across more room for them. */
    void arrange(boolean large, Arrangement arrangement) {
        across = large ? 1 : 2;
        double height =
                large && arrangement == Arrangement.LANDSCAPE ? ScreenSizes.SUM_FACTS_LARGE : ScreenSizes.SUM_FACTS;
        facts.setMinHeight(height);
        facts.setPrefHeight(height);
        show(last);
    }

    void show(BenchFormState shown) {
        pane.draw(shown.picture());
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
        if (!found.sentence().isEmpty()) {
            rows.add(sentence);
        }
        if (!found.rows().isEmpty()) {
            headline.setText(found.rows().get(0).name());
            value.setText(found.rows().get(0).value());
            rows.add(head);
            others = found.rows().subList(1, found.rows().size());
            rows.addAll(pairs());
        }
        found.notes().forEach(note -> rows.add(Texts.label(note, "body")));
        if (!found.basis().isEmpty()) {
            rows.add(Texts.label(found.basis(), "body", "second"));
        }
        facts.show(rows);
    }

    private List<Region> pairs() {
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
