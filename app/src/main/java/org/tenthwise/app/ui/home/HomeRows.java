package org.tenthwise.app.ui.home;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.history.StepSummary;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** The rows of the home screen: a run begun, a part to begin one on. */
final class HomeRows {

    private static final double OUTLINE_WIDTH = 212;
    private static final double OUTLINE_HEIGHT = 116;
    private static final double OUTLINE_WIDTH_LARGE = 150;
    private static final double OUTLINE_HEIGHT_LARGE = 84;
    /** Of the part of the one run there is. */
    private static final double ALONE_HEIGHT = 250;

    private static final double CHECKS_WIDTH = 368;
    private static final double CHECKS_ALONE = 600;
    private static final double CHECKS_HEIGHT = 42;
    private static final double MARK = 20;
    /** A longer serial has a line of its own, on which it can wrap. */
    private static final int LONGEST_BESIDE = 20;

    private final Words words;
    private final PictureFrames pictures;
    private final Pictures drawn;

    HomeRows(Words words, PictureFrames pictures) {
        this.words = words;
        this.pictures = pictures;
        this.drawn = new Pictures(words);
    }

    /** The one run there is: its part as large as there is room. */
    Region alone(RunRow run, Runnable goOn) {
        VBox row = new VBox(16, line(run, true, CHECKS_ALONE, goOn));
        part(run).ifPresent(part -> row.getChildren()
                .add(0, pictures.framed(part, Double.MAX_VALUE, ALONE_HEIGHT, Role.SHEET)));
        row.getStyleClass().addAll("ruled-below", "home-row");
        return spoken(row, run.spoken());
    }

    /** @param foremost whether going on with it is the likeliest wish */
    Region run(RunRow run, boolean foremost, Runnable goOn) {
        HBox row = line(run, foremost, CHECKS_WIDTH, goOn);
        row.getStyleClass().addAll("ruled-below", "home-row");
        part(run).ifPresent(part -> row.getChildren()
                .add(0, pictures.fixed(part, outlineWidth(), outlineHeight(), Role.SHEET)));
        return spoken(row, run.spoken());
    }

    private Optional<Picture> part(RunRow run) {
        return run.summary().plan().flatMap(plan -> run.summary()
                .inHand()
                .flatMap(step -> drawn.part(plan, step))
                .or(() -> drawn.part(plan)));
    }

    private boolean isLarge() {
        return pictures.look().largeTextProperty().get();
    }

    /** With large text the words have more of the room. */
    private double outlineWidth() {
        return isLarge() ? OUTLINE_WIDTH_LARGE : OUTLINE_WIDTH;
    }

    private double outlineHeight() {
        return isLarge() ? OUTLINE_HEIGHT_LARGE : OUTLINE_HEIGHT;
    }

    private HBox line(RunRow run, boolean foremost, double checksWidth, Runnable goOn) {
        FlowPane title = new FlowPane(
                16, 0, Texts.label(run.part(), "heading"), Texts.label(run.revision(), "middling", "second"));
        Label serial = Texts.label(run.serial(), "middling", "bold");
        VBox said = new VBox(2, title);
        (run.serial().length() <= LONGEST_BESIDE ? title : said).getChildren().add(serial);
        title.setAlignment(Pos.BASELINE_LEFT);
        title.setMinHeight(Region.USE_PREF_SIZE);
        Label where = Texts.label(run.where(), "body", "bold");
        HBox stands = new HBox(10, where);
        run.standing().ifPresent(standing -> stands.getChildren()
                .add(
                        0,
                        pictures.fixed(
                                new VerdictMark(standing, words.say("verdict", standing)), MARK, MARK, Role.SHEET)));
        stands.setAlignment(Pos.CENTER_LEFT);
        if (!run.place().isEmpty() && (!isLarge() || run.summary().run().isImported())) {
            said.getChildren().add(Texts.label(run.place(), "body", "second"));
        }
        run.summary().plan().ifPresent(plan -> said.getChildren().add(checks(run, plan, checksWidth)));
        said.getChildren().add(stands);
        HBox.setHgrow(said, Priority.ALWAYS);

        Label when = Texts.label(run.when(), "body", "second");
        when.setMinWidth(Region.USE_PREF_SIZE);
        Key go = new Key(
                foremost ? Key.Kind.COMMIT : Key.Kind.PLAIN, words.say(run.open() ? "home.go-on" : "home.look"), goOn);
        go.setId("go-" + run.summary().id());
        VBox end = end(go, run.spoken());
        end.getChildren().add(0, when);

        HBox line = new HBox(24, said, end);
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    private PictureView checks(RunRow run, Plan plan, double width) {
        Optional<Step> inHand = run.open() ? run.summary().inHand() : Optional.empty();
        List<StepSummary> asked =
                run.summary().steps().stream().filter(StepSummary::asked).toList();
        List<VerdictKind> standing =
                asked.stream().map(step -> step.verdict().standing()).toList();
        PictureView checks = pictures.small(
                drawn.checks(
                        asked.stream().map(step -> plan.step(step.number())).toList(), standing, inHand),
                width,
                CHECKS_HEIGHT,
                Role.SHEET);
        checks.setMaxWidth(width);
        checks.setMinHeight(CHECKS_HEIGHT);
        return checks;
    }

    /** @param narrow whether the words stand under the picture rather than beside it */
    Region part(PartRow part, boolean narrow, Runnable act) {
        Key begin = new Key(Key.Kind.PLAIN, words.say("home.begin"), act);
        begin.setId("begin-" + part.number() + "-" + part.plan().part().revision());
        VBox end = end(begin, part.number() + " " + part.name());
        FlowPane title = new FlowPane(16, 0, Texts.label(part.number(), "heading"), Texts.label(part.name(), "body"));
        title.setMinHeight(Region.USE_PREF_SIZE);
        VBox said = new VBox(4, title, Texts.label(part.about(), "body", "second"));
        if (!isLarge()) {
            said.getChildren().add(Texts.label(part.checks(), "body", "second"));
        }
        HBox.setHgrow(said, Priority.ALWAYS);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox top = new HBox(24, narrow ? space : said, end);
        top.setAlignment(Pos.CENTER_LEFT);
        drawn.part(part.plan()).ifPresent(picture -> top.getChildren()
                .add(
                        0,
                        pictures.fixed(
                                picture, outlineWidth(), narrow ? OUTLINE_HEIGHT_LARGE : outlineHeight(), Role.SHEET)));
        VBox row = narrow ? new VBox(4, top, said) : new VBox(top);
        row.getStyleClass().addAll("ruled-below", "home-row");
        return spoken(row, words.say("home.part-spoken", part.number(), part.name(), part.about()));
    }

    private static VBox end(Key key, String about) {
        key.getStyleClass().add("home-go");
        key.breakNoWord();
        key.speak(key.getText() + ": " + about);
        VBox end = new VBox(4, key);
        end.setAlignment(Pos.CENTER_RIGHT);
        return end;
    }

    private static <R extends Region> R spoken(R row, String words) {
        row.setAccessibleRole(AccessibleRole.TEXT);
        row.setAccessibleText(words);
        return row;
    }
}
