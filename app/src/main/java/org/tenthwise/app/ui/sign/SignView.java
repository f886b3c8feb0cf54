package org.tenthwise.app.ui.sign;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.ui.form.FormView;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/** The form to sign, and to close where the run is open, beside what did not pass. */
public final class SignView extends FormView {

    private static final double MARK = 24;

    public SignView(SignViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(
                words.say("sign.title"),
                model.form(),
                words,
                RunHeading.of(words.say("sign.title"), model.inHand().stateProperty(), words, navigator::back),
                model::load);
        PagedRows rows = new PagedRows(words, 0);
        rows.setMinHeight(0);
        about(rows);
        owns(model.inHand().stateProperty().subscribe(state -> rows.show(rows(model, words, pictures))));
    }

    /**
     * What it will be called, what did not pass, the weightiest first, and who signed so far: a page at a time where
     * room is short.
     */
    private static List<Region> rows(SignViewModel model, Words words, PictureFrames pictures) {
        return Stream.of(
                        Stream.of(said("will-be", model.willBeValue(), "body", "bold")),
                        model.mattersValue().getValue().stream().map(matter -> row(matter, words, pictures)),
                        Stream.of(
                                said("signed", model.signedValue(), "body"),
                                said("passed", model.passedValue(), "body", "second")))
                .flatMap(Function.identity())
                .toList();
    }

    private static Region said(String id, ObservableValue<String> words, String... styles) {
        Label label = Texts.label(words.getValue(), styles);
        label.setId(id);
        label.setPadding(new Insets(0, 0, 8, 0));
        return label;
    }

    private static Region row(OpenIssue matter, Words words, PictureFrames pictures) {
        Label name = Texts.label(matter.number() + "  " + matter.name(), "body", "bold");
        Label said = Texts.label(matter.said(), "body");
        VBox both = new VBox(name, said);
        HBox.setHgrow(both, Priority.ALWAYS);
        HBox row = new HBox(
                12, pictures.small(new VerdictMark(matter.standing(), matter.said()), MARK, MARK, Role.PAPER), both);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().addAll("ruled-below", "matter");
        row.setId("matter-" + matter.number());
        row.setAccessibleRole(AccessibleRole.TEXT);
        row.setAccessibleText(words.spoken(name.getText(), matter.said()));
        return row;
    }
}
