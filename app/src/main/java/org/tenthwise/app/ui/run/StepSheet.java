package org.tenthwise.app.ui.run;

import java.util.List;
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
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.app.text.ToDo;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.run.RunScreenState.Extent;
import org.tenthwise.app.ui.run.RunScreenState.Finished;
import org.tenthwise.app.ui.run.RunScreenState.Found;
import org.tenthwise.app.ui.run.RunScreenState.InHand;
import org.tenthwise.app.ui.theme.FittedLine;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.Ringed;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.app.ui.workplace.PictureSheet;
import org.tenthwise.model.words.Words;

/**
 * The step in hand: what is checked, how, the drawn picture, the verdict and what to do next. The caution and what must
 * not be missed are always whole.
 */
final class StepSheet {

    private static final PseudoClass LONG = PseudoClass.getPseudoClass("long");

    private static final PseudoClass MOVES = PseudoClass.getPseudoClass("moves");

    private static final double MARK = 48;

    private final String between;
    private final Label number = label("title", "accent");
    private final Ringed balloon = new Ringed("title");
    private final Label name = label("title");
    private final Label taken = label("middling");
    private final LimitsLine limits = new LimitsLine();
    private final HBox title = new HBox(20);
    private final HBox under = new HBox(20);
    private final FittedLine method = new FittedLine("body");
    private final Text cautionWord = piece("body", "bold");
    private final Text cautionWords = piece("body");
    private final TextFlow caution = new TextFlow(cautionWord, cautionWords);
    private final Label statement = label("heading", "statement");
    private final FinishedBand finished;
    private final VBox how = new VBox(2, method, caution);
    private final VBox howHere = new VBox(how);
    private final VBox verdictHere = new VBox();
    private final VBox words = new VBox();
    private final PictureSheet pane;
    private final HBox verdict;
    private final PictureView mark;
    private final Text word = piece("verdict", "bold");
    private final Text distance = piece("verdict");
    private final Label next = label("next");
    private final Label shown = label("body");
    private boolean besideHand;
    private boolean titleHere = true;
    private String verdictStyle = "open";

    StepSheet(PictureFrames pictures, Words words) {
        between = new GaugeWords(words).between();
        cautionWord.setText(words.say("run.caution") + " ");
        caution.setId("caution");
        method.setId("method");
        shown.setId("beside-verdict");
        next.setId("what-next");
        how.setMinHeight(Region.USE_PREF_SIZE);
        number.setMinWidth(Region.USE_PREF_SIZE);
        number.setId("step-number");
        taken.setMinWidth(Region.USE_PREF_SIZE);
        taken.setId("taken");
        name.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(name, Priority.ALWAYS);
        title.setAlignment(Pos.BASELINE_LEFT);
        HBox.setHgrow(limits, Priority.ALWAYS);
        limits.setMinWidth(0);
        showTitle(true);
        mark = pictures.empty(MARK, MARK);
        VBox said = new VBox(2, new TextFlow(word, distance), next, shown);
        said.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(said, Priority.ALWAYS);
        verdict = new HBox(18, mark, said);
        verdict.setAlignment(Pos.CENTER_LEFT);
        verdict.getStyleClass().add("verdict-line");
        verdict.setMinHeight(Region.USE_PREF_SIZE);
        finished = new FinishedBand(pictures);
        verdictHere.getChildren().add(verdict);
        verdictHere.setMinHeight(Region.USE_PREF_SIZE);
        pane = new PictureSheet(pictures, 0, verdictHere, finished, title, under, howHere, statement);
    }

    PictureSheet pane() {
        return pane;
    }

    /**
     * @param here whether number and name stand on the sheet, and not over it; there how much is taken gives way to the
     *     gauge until something is
     */
    void showTitle(boolean here) {
        titleHere = here;
        title.getChildren().setAll(here ? List.of(number, balloon, name, taken) : List.of());
        title.setVisible(here);
        title.setManaged(here);
        under.getChildren().setAll(here ? List.of(limits) : List.of(limits, taken));
    }

    /** Method, caution and verdict on the sheet, above and below the picture. */
    void keepAll() {
        besideHand = false;
    }

    /**
     * A place beside the hand for verdict, method and caution; where the verdict needs it for itself, for that alone.
     */
    Region takeWords() {
        besideHand = true;
        words.setMinHeight(Region.USE_PREF_SIZE);
        return words;
    }

    private void place(Extent extent) {
        boolean howBeside = besideHand && (extent == Extent.LITTLE || extent == Extent.MOVES);
        List.of(words, howHere, verdictHere)
                .forEach(place -> place.getChildren().clear());
        (besideHand ? words : verdictHere).getChildren().add(verdict);
        (howBeside ? words : howHere).getChildren().add(how);
        how.getStyleClass().setAll(howBeside ? "how-beside" : "how-here");
    }

    void show(InHand step, Found found, Optional<Picture> drawn, Optional<Finished> before) {
        finished.show(before);
        number.setText(String.valueOf(step.number()));
        balloon.show(step.balloon());
        name.setText(step.name());
        taken.setText(titleHere || !step.methodWhole() ? step.taken() : "");
        limits.show(step.drawing(), step.gauge(), between);
        Extent extent = found.extent();
        place(extent);
        boolean isLong = extent == Extent.LONG || extent == Extent.MOVES;
        boolean whole = step.methodWhole() || besideHand && (extent == Extent.LITTLE || extent == Extent.MOVES);
        method.show(isLong && !whole ? List.of() : step.method(), " ", whole);
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
        next.setText(extent == Extent.MOVES ? "" : found.next());
        pane.moves(extent == Extent.MOVES ? found.todo() : ToDo.NOTHING);
        verdict.pseudoClassStateChanged(MOVES, extent == Extent.MOVES);
        next.pseudoClassStateChanged(LONG, isLong);
        shown.setText(String.join(" ", found.shown()));
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
