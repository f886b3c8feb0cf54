package org.tenthwise.app.ui.bench;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
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
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.model.words.Words;

/**
 * What comes of a bench sum: its formula, the picture drawn from the numbers, the headline, every other result, notes
 * and source.
 */
final class FoundSheet extends VBox {

    private static final double LEAST_PICTURE = 110;
    /** Letters of a name and its value that do not go beside others. */
    private static final int LONG = 34;

    private static final double FACTS = 224;
    private static final double FACTS_LARGE = 280;

    private final PictureView picture;
    private final PagedRows facts;
    private final Label headline = label("", "middling", "second");
    private final Label value = label("", "figure", "bold");
    private final HBox head = new HBox(16, value, headline);
    private final Label sentence = label("", "middling", "bold");
    private int across = 2;
    private List<ResultRow> others = List.of();
    private Found last = new Found("", false, List.of(), List.of(), "");

    FoundSheet(SumViewModel model, PictureFrames pictures, Words words) {
        getStyleClass().addAll("step-sheet", "on-sheet");
        Label title = label("", "title");
        title.textProperty().bind(model.shownProperty().map(BenchFormState::title));
        Label formula = label("", "body", "second");
        formula.setId("formula");
        formula.textProperty().bind(model.shownProperty().map(BenchFormState::formula));
        VBox top = new VBox(2, title, formula);
        top.getStyleClass().add("sheet-top");
        top.setMinHeight(Region.USE_PREF_SIZE);
        picture = pictures.empty();
        picture.setMinHeight(LEAST_PICTURE);
        VBox.setVgrow(picture, Priority.ALWAYS);
        VBox.setMargin(picture, new Insets(4, 12, 8, 16));
        head.setAlignment(Pos.BASELINE_LEFT);
        headline.setId("headline");
        value.setId("value");
        value.setMinWidth(USE_PREF_SIZE);
        sentence.setId("sentence");
        facts = new PagedRows(words, 4);
        VBox below = new VBox(facts);
        VBox.setVgrow(facts, Priority.ALWAYS);
        below.getStyleClass().addAll("bench-found", "lined-above");
        arrange(false, Arrangement.LANDSCAPE);
        getChildren().addAll(top, picture, below);
        model.shownProperty().subscribe(shown -> {
            shown.picture().ifPresentOrElse(picture::show, picture::clear);
            show(shown.found());
        });
    }

    /** With large text one result to a line, and across more room for them. */
    void arrange(boolean large, Arrangement arrangement) {
        across = large ? 1 : 2;
        double height = large && arrangement == Arrangement.LANDSCAPE ? FACTS_LARGE : FACTS;
        facts.setMinHeight(height);
        facts.setPrefHeight(height);
        show(last);
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
        found.notes().forEach(note -> rows.add(label(note, "body")));
        if (!found.basis().isEmpty()) {
            rows.add(label(found.basis(), "body", "second"));
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
        Label name = label(fact.name(), "body", "second");
        Label value = label(fact.value(), "body", "bold");
        value.setMinWidth(USE_PREF_SIZE);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox row = new HBox(8, name, space, value);
        row.setAlignment(Pos.BASELINE_LEFT);
        return row;
    }

    private static Label label(String text, String... styles) {
        Label label = new Label(text);
        label.getStyleClass().addAll(styles);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
