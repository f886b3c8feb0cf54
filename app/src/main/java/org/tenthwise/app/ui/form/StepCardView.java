package org.tenthwise.app.ui.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/**
 * Lays a step card out, its title and its verdict always in sight, the rest a page at a time where there is little
 * room; empty until the step is known.
 */
public final class StepCardView extends VBox {

    private static final double MARK = 40;
    private static final double GAP = 12;

    private final Label number = Texts.label("", "title", "accent");
    private final Label name = Texts.label("", "title");
    private final PagedRows rows;
    private final PictureFrames pictures;

    public StepCardView(ObservableValue<Optional<StepCard>> card, Words words, PictureFrames pictures) {
        this.rows = new PagedRows(words, GAP);
        this.pictures = pictures;
        number.setMinWidth(USE_PREF_SIZE);
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        HBox title = new HBox(ScreenSizes.GAP, number, name);
        title.setAlignment(Pos.CENTER_LEFT);
        title.setFillHeight(false);
        title.setMinHeight(USE_PREF_SIZE);
        rows.turnAt(title);
        rows.setMinHeight(ScreenSizes.PAGE_KEY);
        VBox.setVgrow(rows, Priority.ALWAYS);
        setSpacing(GAP);
        getChildren().addAll(title, rows);
        card.subscribe(step -> step.ifPresent(this::show));
    }

    private void show(StepCard card) {
        number.setText(card.number());
        name.setText(card.name());
        Label verdict = Texts.label(card.verdict(), "strong", Texts.style(card.standing()));
        verdict.setId("verdict");
        Label sentence = Texts.label(card.sentence(), "middling");
        VBox said = new VBox(4, verdict);
        if (!card.sentence().isEmpty()) {
            said.getChildren().add(sentence);
        }
        HBox.setHgrow(said, Priority.ALWAYS);
        HBox standing = new HBox(
                16, pictures.framed(new VerdictMark(card.standing(), card.verdict()), MARK, MARK, Role.PAPER), said);
        standing.setAlignment(Pos.CENTER_LEFT);
        List<Region> all = new ArrayList<>(List.of(standing, Texts.label(card.place(), "body", "second")));
        card.notes().forEach(note -> all.add(Texts.label(note, "body")));
        rows.show(all);
    }
}
