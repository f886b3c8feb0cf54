package org.tenthwise.app.ui.run;

import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.run.RunScreenState.Finished;
import org.tenthwise.app.ui.run.RunScreenState.Found;
import org.tenthwise.app.ui.run.RunScreenState.InHand;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.app.ui.workplace.PictureSheet;
import org.tenthwise.model.words.Words;

/** The step in hand: what is checked, how, the drawn picture, the verdict and what to do next. */
final class StepSheet {

    /** What is told in more signs than this is lettered smaller, so that the picture keeps its room. */
    private static final int MANY_SIGNS = 180;

    private static final PseudoClass LONG = PseudoClass.getPseudoClass("long");

    private static final double MARK = 48;

    private final Label number = label("title", "accent");
    private final Label name = label("title");
    private final Label drawing = label("middling", "bold");
    private final Label gauge = label("body", "second");
    private final Label method = label("body", "second");
    private final Text cautionWord = piece("body", "bold");
    private final Text cautionWords = piece("body");
    private final TextFlow caution = new TextFlow(cautionWord, cautionWords);
    private final Label statement = label("heading", "statement");
    private final VBox how = new VBox(4);
    private final VBox howHere = new VBox();
    private final FinishedBand finished;
    private final PictureSheet pane;
    private final PictureView mark;
    private final Text word = piece("verdict", "bold");
    private final Text distance = piece("verdict");
    private final TextFlow sentence = new TextFlow(word, distance);
    private final Label next = label("next");
    private final Label remarks = label("body", "second");
    private final VBox said = new VBox(2);
    private boolean methodGivesWay;
    private String verdictStyle = "open";

    StepSheet(PictureFrames pictures, Words words) {
        cautionWord.setText(words.say("run.caution") + " ");
        how.setMinHeight(Region.USE_PREF_SIZE);
        number.setMinWidth(Region.USE_PREF_SIZE);
        number.setId("step-number");
        HBox title = new HBox(20, number, name);
        title.setAlignment(Pos.BASELINE_LEFT);
        mark = pictures.empty(MARK, MARK);
        said.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(said, Priority.ALWAYS);
        HBox verdict = new HBox(18, mark, said);
        verdict.setAlignment(Pos.CENTER_LEFT);
        verdict.getStyleClass().add("verdict-line");
        verdict.setMinHeight(Region.USE_PREF_SIZE);
        finished = new FinishedBand(pictures);
        pane = new PictureSheet(pictures, 0, verdict, finished, title, drawing, howHere, statement);
        showHowHere();
    }

    PictureSheet pane() {
        return pane;
    }

    /**
     * Gauge, method and caution, for a place where there is more room than on the sheet.
     *
     * @param remarksToo whether the remarks go there as well, which take the place of the method once they come, and
     *     those on what is still to be read give way to it; the gauge stays on the sheet then
     */
    Region takeHow(boolean remarksToo) {
        howHere.getChildren().clear();
        how.getStyleClass().setAll("how-over");
        said.getChildren().setAll(sentence, next);
        how.getChildren().setAll(method, caution);
        if (remarksToo) {
            howHere.getChildren().setAll(gauge);
        } else {
            how.getChildren().add(0, gauge);
        }
        (remarksToo ? how.getChildren() : said.getChildren()).add(remarksToo ? 1 : 2, remarks);
        methodGivesWay = remarksToo;
        return how;
    }

    /**
     * Gauge, method and caution on the sheet; how to measure gives way to a long advice, so that the picture of it
     * keeps its room.
     */
    void showHowHere() {
        takeHow(false);
        how.getStyleClass().clear();
        howHere.getChildren().setAll(how);
    }

    void show(InHand step, Found found, Optional<Picture> drawn, Optional<Finished> before) {
        finished.show(before);
        number.setText(String.valueOf(step.number()));
        name.setText(step.name());
        drawing.setText(step.drawing());
        boolean isLong = found.next().length() > MANY_SIGNS;
        boolean givesWay = methodGivesWay && !found.remarks().isEmpty()
                || isLong && howHere.getChildren().contains(how);
        gauge.setText(step.gauge());
        method.setText(givesWay ? "" : step.method());
        cautionWords.setText(step.caution());
        caution.setVisible(!step.caution().isEmpty());
        caution.setManaged(!step.caution().isEmpty());
        statement.setText(step.statement());
        pane.draw(drawn);
        word.getStyleClass().remove(verdictStyle);
        verdictStyle = Texts.style(found.standing());
        word.getStyleClass().add(verdictStyle);
        word.setText(found.word());
        distance.setText(found.distance().isEmpty() ? "" : " " + found.distance());
        next.setText(found.next());
        next.pseudoClassStateChanged(LONG, isLong);
        remarks.setText(methodGivesWay ? found.remarks() : (found.remarks() + " " + found.ahead()).strip());
        mark.show(new VerdictMark(found.standing(), found.word()));
    }

    private static Text piece(String... styles) {
        Text piece = new Text();
        piece.getStyleClass().add("piece");
        piece.getStyleClass().addAll(styles);
        return piece;
    }

    private static Label label(String... styles) {
        Label label = Texts.label("", styles);
        label.visibleProperty().bind(label.textProperty().isNotEmpty());
        label.managedProperty().bind(label.visibleProperty());
        return label;
    }
}
