package org.tenthwise.app.ui.run;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
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
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.workplace.Workplace;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * The run: heading, step list, the step in hand, the panel under the hand, lesser keys.
 *
 * <p>Arranged in three columns across; upright the step in hand lies over the list and the panel. With large text the
 * list gives way to a strip over the step in hand, and upright the words of the step stand beside the panel, so that
 * the picture keeps its room.
 */
public final class RunScreen extends Screen {

    private final RunViewModel model;
    private final Words words;
    private final Look look;
    private final Workplace workplace;
    private final StepList list;
    private final StepStrip strip;
    private final StepSheet sheet;
    private final RunHand hand;
    private final RunKeys keys;
    private Arrangement arrangement = Arrangement.LANDSCAPE;

    public RunScreen(RunViewModel model, PictureFrames pictures, Words words) {
        super(words.say(
                "run.title",
                model.shownProperty().get().heads().part(),
                model.shownProperty().get().heads().serial()));
        this.model = model;
        this.words = words;
        this.look = pictures.look();
        getStyleClass().add("run");
        list = new StepList(pictures, words, model::goTo);
        strip = new StepStrip(pictures, words, model::goTo);
        sheet = new StepSheet(pictures, words);
        hand = new RunHand(model, words);
        keys = new RunKeys(model, words);
        workplace = new Workplace(list, sheet.pane(), hand.pane(), List.of(keys.measuring(), keys.recording()));
        setTop(heading(pictures));
        setCenter(workplace);
        owns(model.shownProperty().subscribe(this::show));
        owns(look.largeTextProperty().subscribe(large -> arrange()));
        owns(look.glovesProperty().subscribe(gloves -> arrange()));
    }

    private void show(RunScreenState shown) {
        list.show(shown.steps());
        strip.show(shown.steps());
        sheet.show(shown.inHand(), shown.found(), shown.picture(), shown.finished());
        hand.show(shown.panel());
    }

    private Heading heading(PictureFrames pictures) {
        Heading heading = new Heading()
                .back(words, model::back)
                .cell(
                        words.say("run.head.part"),
                        model.shownProperty().map(shown -> shown.heads().part()),
                        model.shownProperty().map(shown -> shown.heads().purpose()))
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
    public void arrange(Arrangement now) {
        arrangement = now;
        arrange();
    }

    private void arrange() {
        boolean large = look.largeTextProperty().get();
        boolean gloves = look.glovesProperty().get();
        boolean upright = arrangement == Arrangement.PORTRAIT;
        keys.recording().setMinWidth(upright || large || gloves ? USE_COMPUTED_SIZE : ScreenSizes.RECORD_KEYS);
        keys.arrange(large && upright);
        sheet.showTitle(!large);
        Optional<Region> beside = large && upright ? Optional.of(sheet.takeWords()) : Optional.empty();
        if (beside.isEmpty()) {
            sheet.keepAll();
        }
        if (large) {
            workplace.arrangeStrip(strip, arrangement, look, beside);
        } else {
            workplace.arrange(arrangement, look);
        }
        show(model.shownProperty().get());
    }

    @Override
    public Typing typing() {
        return model;
    }

    @Override
    public void onShown() {
        model.refresh();
    }
}
