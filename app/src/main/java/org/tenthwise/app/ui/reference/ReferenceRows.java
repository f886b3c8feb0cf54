package org.tenthwise.app.ui.reference;

import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.tenthwise.app.reference.Agreement;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The lines of a list of published cases as rows. */
final class ReferenceRows {

    private final Words words;

    ReferenceRows(Words words) {
        this.words = words;
    }

    /** @param roomy for large text or a narrow screen: the figures stand under the name */
    Region row(ReferenceLine line, int place, boolean roomy) {
        if (line instanceof ReferenceLine.Source source) {
            return source(source, place);
        }
        return line instanceof ReferenceLine.Figure figure ? figure(figure, roomy) : said((ReferenceLine.Said) line);
    }

    /** A key as wide as its list, with a name and what there is to say about it under it. */
    Key wide(String id, String name, String counts, Runnable open) {
        Key key =
                new Key(Key.Kind.PLAIN, new VBox(Texts.label(name, "key-word"), Texts.label(counts, "key-line")), open);
        key.speak(words.spoken(name, counts));
        key.setId(id);
        key.getStyleClass().addAll("row", "reference-key");
        return key;
    }

    private Region source(ReferenceLine.Source source, int place) {
        StackPane row = new StackPane(wide("source-" + place, source.name(), source.counts(), source.open()));
        row.getStyleClass().add("reference-source");
        return row;
    }

    private Region figure(ReferenceLine.Figure figure, boolean roomy) {
        VBox name = new VBox(Texts.label(figure.name(), "body", "bold"), Texts.label(figure.key(), "body", "second"));
        HBox.setHgrow(name, Priority.ALWAYS);
        HBox figures = new HBox(
                16,
                value("reference.published", figure.published()),
                value("reference.computed", figure.computed()),
                agreement(figure));
        figures.setAlignment(Pos.CENTER_LEFT);
        figures.setMinWidth(roomy ? 0 : Region.USE_PREF_SIZE);
        VBox whole = new VBox(2);
        if (roomy) {
            whole.getChildren().addAll(name, figures);
        } else {
            HBox level = new HBox(16, name, figures);
            level.setAlignment(Pos.CENTER_LEFT);
            whole.getChildren().add(level);
        }
        if (!figure.because().isEmpty()) {
            whole.getChildren().add(Texts.label(figure.because(), "body", "second"));
        }
        return ruled(
                whole,
                figure.name(),
                figure.key(),
                words.say("reference.published") + " " + figure.published(),
                words.say("reference.computed") + " " + figure.computed(),
                figure.word(),
                figure.because());
    }

    private VBox value(String name, String value) {
        VBox cell = new VBox(Texts.label(words.say(name), "body", "second"), Texts.label(value, "body", "bold"));
        cell.getStyleClass().add("reference-value");
        return cell;
    }

    private static Label agreement(ReferenceLine.Figure figure) {
        Label label = Texts.label(figure.word(), "body");
        label.getStyleClass().add("reference-agreement");
        if (figure.agreement() != Agreement.AGREES) {
            label.getStyleClass().add("bold");
        }
        if (figure.agreement() == Agreement.DISAGREES) {
            label.getStyleClass().add("fail");
        }
        return label;
    }

    private Region said(ReferenceLine.Said said) {
        return ruled(
                new VBox(2, Texts.label(said.title(), "body", "bold"), Texts.label(said.words(), "body", "second")),
                said.title(),
                said.words());
    }

    private Region ruled(VBox row, String... spoken) {
        row.getStyleClass().addAll("ruled-below", "matter");
        row.setAccessibleRole(AccessibleRole.TEXT);
        row.setAccessibleText(words.spoken(spoken));
        return row;
    }
}
