package org.tenthwise.app.ui.run;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.run.RunScreenState.Heads;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Heading;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * The run: heading, step list, the step in hand, the panel under the hand, lesser keys.
 *
 * <p>Arranged in three columns across; upright the step in hand lies over the list and the panel. With large text, or
 * upright, method and caution stand over the list, so that the picture keeps its room.
 */
public final class RunScreen implements Screen {

    private static final double LIST = 248;
    private static final double LIST_LARGE = 300;
    /** So that no key of its group is under 64 wide. */
    private static final double RECORDING = 233;

    private static final double PANEL = 352;
    private static final double PANEL_GLOVES = 376;
    private static final double PANEL_GLOVES_LARGE = 400;

    private final RunViewModel model;
    private final Words words;
    private final Look look;
    private final BorderPane root = new BorderPane();
    private final StepList list;
    private final StepSheet sheet;
    private final HandPanel panel;
    private final RunKeys keys;
    private final List<Subscription> following = new ArrayList<>();
    private Arrangement arrangement = Arrangement.LANDSCAPE;

    public RunScreen(RunViewModel model, PictureFrames pictures, Words words) {
        this.model = model;
        this.words = words;
        this.look = pictures.look();
        root.getStyleClass().add("run");
        list = new StepList(model.shownProperty().get().steps(), pictures, words, model::goTo);
        sheet = new StepSheet(pictures, words);
        panel = new HandPanel(model, words);
        keys = new RunKeys(model, words);
        root.setTop(heading(pictures));
        model.shownProperty().subscribe(this::show);
        following.add(look.largeTextProperty().subscribe(large -> arrange()));
        following.add(look.glovesProperty().subscribe(gloves -> arrange()));
    }

    private void show(RunScreenState shown) {
        list.show(shown.steps());
        sheet.show(shown.inHand(), shown.found(), shown.picture());
    }

    private Heading heading(PictureFrames pictures) {
        Heading heading = new Heading()
                .back(words, model::back)
                .cell(words.say("run.head.part"), model.shownProperty().map(shown -> shown.heads()
                        .part()))
                .cell(words.say("run.head.serial"), model.shownProperty().map(shown -> shown.heads()
                        .serial()))
                .cell(words.say("run.head.operation"), model.shownProperty().map(shown -> shown.heads()
                        .operation()))
                .cell(words.say("run.head.by"), model.shownProperty().map(shown -> shown.heads()
                        .by()));
        Heads heads = model.shownProperty().get().heads();
        if (!heads.lot().isEmpty()) {
            heading.cell(words.say("run.head.lot"), model.shownProperty().map(shown -> shown.heads()
                    .lot()));
        }
        Label open = new Label();
        open.getStyleClass().add("middling");
        open.setMinWidth(Region.USE_PREF_SIZE);
        open.textProperty()
                .bind(model.shownProperty().map(shown -> shown.heads().open()));
        PictureView ring = pictures.empty(22, 22);
        ring.lookSmall(1, Role.PAPER);
        ring.show(new VerdictMark(VerdictKind.OPEN, ""));
        HBox cell = new HBox(10, ring, open);
        cell.setAlignment(Pos.CENTER_LEFT);
        Key doubt = new Key(Key.Kind.STOP, words.say("run.doubt"), model::doubt);
        doubt.setId("doubt");
        doubt.setMinWidth(Region.USE_PREF_SIZE);
        doubt.getStyleClass().add("doubt");
        return heading.cell(cell).end(doubt);
    }

    @Override
    public Region root() {
        return root;
    }

    @Override
    public String title() {
        return words.say(
                "run.title",
                model.shownProperty().get().heads().part(),
                model.shownProperty().get().heads().serial());
    }

    @Override
    public void arrange(Arrangement now) {
        arrangement = now;
        arrange();
    }

    private void arrange() {
        boolean large = look.largeTextProperty().get();
        boolean gloves = look.glovesProperty().get();
        double panelWidth = !gloves ? PANEL : large ? PANEL_GLOVES_LARGE : PANEL_GLOVES;
        wide(panel, panelWidth);
        root.setCenter(null);
        root.setBottom(null);
        root.setLeft(null);
        root.setRight(null);
        VBox listColumn = new VBox(list);
        listColumn.getStyleClass().add("list-column");
        VBox.setVgrow(list, Priority.ALWAYS);
        VBox.setVgrow(panel, Priority.ALWAYS);
        VBox.setVgrow(sheet, Priority.ALWAYS);
        if (large || arrangement == Arrangement.PORTRAIT) {
            Region how = sheet.takeHow(large);
            how.getStyleClass().remove("how-over");
            how.getStyleClass().add("how-over");
            how.setMinHeight(Region.USE_PREF_SIZE);
            listColumn.getChildren().add(0, how);
        } else {
            sheet.showHowHere();
        }
        show(model.shownProperty().get());
        if (arrangement == Arrangement.PORTRAIT) {
            upright(listColumn);
        } else {
            across(listColumn, large ? LIST_LARGE : LIST, large || gloves);
        }
    }

    private void across(VBox listColumn, double listWidth, boolean keysUnderSheet) {
        wide(listColumn, listWidth);
        listColumn.getStyleClass().add("lined-right");
        Region under = keysUnderSheet
                ? new HBox(8, grown(keys.measuring()), grown(keys.recording()))
                : new VBox(keys.measuring());
        VBox middle = new VBox(sheet, under);
        VBox right = new VBox(panel);
        right.getStyleClass().add("lined-left");
        under.getStyleClass().add("keys-row");
        keys.recording().setMinWidth(keysUnderSheet ? Region.USE_COMPUTED_SIZE : RECORDING);
        if (!keysUnderSheet) {
            VBox below = new VBox(keys.recording());
            below.getStyleClass().addAll("keys-row", "keys-under-panel");
            right.getChildren().add(below);
        }
        root.setLeft(listColumn);
        root.setCenter(middle);
        root.setRight(right);
    }

    private void upright(VBox listColumn) {
        VBox both = new VBox(8, keys.measuring(), keys.recording());
        both.getStyleClass().add("keys-row");
        listColumn.getChildren().add(both);
        HBox.setHgrow(listColumn, Priority.ALWAYS);
        listColumn.setMinWidth(0);
        HBox lower = new HBox(listColumn, panel);
        lower.getStyleClass().add("lined-above");
        root.setCenter(sheet);
        root.setBottom(lower);
    }

    private static Region grown(Region region) {
        HBox.setHgrow(region, Priority.ALWAYS);
        return region;
    }

    private static void wide(Region region, double width) {
        region.setMinWidth(width);
        region.setPrefWidth(width);
        region.setMaxWidth(width);
    }

    @Override
    public Typing typing() {
        return model;
    }

    @Override
    public void onShown() {
        model.refresh();
    }

    @Override
    public void onGone() {
        following.forEach(Subscription::unsubscribe);
    }
}
