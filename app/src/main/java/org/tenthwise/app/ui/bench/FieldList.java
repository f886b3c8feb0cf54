package org.tenthwise.app.ui.bench;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.bench.BenchFormState.FieldShown;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.theme.Elided;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Words;

/** What a bench sum asks for, a key each with its name and what is filled in; pages where there is little room. */
final class FieldList extends StackPane {

    private static final PseudoClass EMPTY = PseudoClass.getPseudoClass("empty");
    private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");

    /** A key and the lines on it. */
    private record Row(Key key, Label name, Label value, Label remark) {}

    private final SumViewModel model;
    private final PagedRows rows;
    private final Map<String, Row> known = new HashMap<>();
    private List<String> listed = List.of();

    FieldList(SumViewModel model, Words words) {
        this.model = model;
        this.rows = new PagedRows(words);
        getStyleClass().add("bench-fields");
        setMinHeight(0);
        setPrefHeight(ScreenSizes.LEAST_LIST);
        getChildren().add(rows);
    }

    void show(List<FieldShown> fields) {
        fields.forEach(this::show);
        List<String> ids = fields.stream().map(FieldShown::id).toList();
        if (!ids.equals(listed)) {
            listed = ids;
            rows.show(ids.stream().map(id -> known.get(id).key()).toList());
        }
        IntStream.range(0, fields.size())
                .filter(i -> fields.get(i).inHand())
                .findFirst()
                .ifPresent(rows::reveal);
    }

    private void show(FieldShown field) {
        Row row = known.computeIfAbsent(field.id(), id -> row(field));
        row.name().setText(field.name());
        if (row.value() instanceof Elided last) {
            last.show(field.value());
        } else {
            row.value().setText(field.value());
        }
        row.remark().setText(field.remark());
        row.remark().setManaged(!field.remark().isEmpty());
        row.remark().setVisible(!field.remark().isEmpty());
        row.key().showChosen(field.inHand());
        row.key().pseudoClassStateChanged(EMPTY, field.empty());
        row.key().pseudoClassStateChanged(REFUSED, field.refused());
        row.key().speak(field.spoken());
    }

    /** Of several figures the last are seen, as many as there is room for. */
    private Row row(FieldShown field) {
        Label name = label("key-word");
        Label value = field.several() ? Elided.toTheLast("key-line") : label("key-line");
        Label remark = label("key-remark");
        VBox both = new VBox(name, value, remark);
        both.setAlignment(Pos.CENTER_LEFT);
        Key key = new Key(Key.Kind.PLAIN, both, () -> model.goTo(field.id()));
        key.setId("field-" + field.id());
        key.getStyleClass().addAll("row", "form-field");
        return new Row(key, name, value, remark);
    }

    private static Label label(String style) {
        Label label = new Label();
        label.getStyleClass().add(style);
        label.setWrapText(true);
        return label;
    }
}
