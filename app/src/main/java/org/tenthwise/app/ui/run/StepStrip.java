package org.tenthwise.app.ui.run;

import java.util.List;
import java.util.function.IntConsumer;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.run.RunScreenState.Hold;
import org.tenthwise.app.ui.run.RunScreenState.StepLine;
import org.tenthwise.app.ui.theme.Icon;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.Ringed;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * The plan where there is no room for a list: the step in hand, whole, and beside it one other, that which comes next
 * until another is looked for with the keys before and behind it.
 */
final class StepStrip extends Region {

    private static final PseudoClass LONG = PseudoClass.getPseudoClass("long");
    private static final double GAP = ScreenSizes.GAP;
    private static final double MARK = 28;
    private static final double NUMBER_ROOM = 54;
    /** Of the width, for the step in hand where the one beside it needs little, and where it needs much. */
    private static final double MOST = 0.62;

    private static final double LEAST = 0.47;

    private final PictureView mark;
    private final Label number = Texts.label("", "body", "bold", "accent");
    private final Label name = Texts.label("", "strip-name", "bold");
    private final Ringed balloon = new Ringed("body");
    private final StepRow other;
    private final Key earlier;
    private final Key later;
    private final StepBeside beside = new StepBeside();
    private List<StepLine> lines = List.of();
    private VerdictKind drawn = VerdictKind.OPEN;

    StepStrip(PictureFrames pictures, Words words, IntConsumer goTo) {
        getStyleClass().add("step-strip");
        mark = pictures.empty(MARK, MARK);
        mark.show(new VerdictMark(drawn, ""));
        other = new StepRow(pictures, goTo);
        earlier = turning("earlier", Icon.EARLIER, words.say("rows.earlier"), -1);
        later = turning("later", Icon.LATER, words.say("rows.later"), 1);
        name.setId("step-in-hand");
        number.setId("step-number");
        getChildren().addAll(mark, number, balloon, name, earlier, other.key(), later);
    }

    private Key turning(String id, Icon icon, String spoken, int way) {
        Key key = new Key(Key.Kind.PLAIN, icon, spoken, () -> turn(way));
        key.getGraphic().setRotate(-90);
        key.setId(id);
        return key;
    }

    void show(List<StepLine> now) {
        lines = now;
        int inHand = lines.stream().map(StepLine::inHand).toList().indexOf(true);
        beside.show(lines.size(), inHand);
        StepLine line = lines.get(inHand);
        number.setText(String.valueOf(line.number()));
        balloon.show(line.balloon());
        name.setText(line.name());
        if (line.standing() != drawn) {
            drawn = line.standing();
            mark.show(new VerdictMark(drawn, ""));
        }
        fill();
    }

    private void turn(int way) {
        beside.turn(way);
        fill();
    }

    private void fill() {
        for (Node part : List.of(earlier, other.key(), later)) {
            part.setVisible(!beside.isNone());
        }
        if (beside.isNone()) {
            return;
        }
        earlier.setDisable(!beside.hasEarlier());
        later.setDisable(!beside.hasLater());
        int place = beside.place();
        String held = place == 0
                ? ""
                : lines.get(place - 1)
                        .after()
                        .filter(Hold::shut)
                        .map(Hold::words)
                        .orElse("");
        other.show(lines.get(place), held, false, false);
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        Insets in = getInsets();
        double height = getHeight() - in.getTop() - in.getBottom();
        double width = getWidth() - in.getLeft() - in.getRight();
        double ring = balloon.isVisible() ? Math.ceil(balloon.prefWidth(-1)) + GAP : 0;
        double leaves = width - 2 * ScreenSizes.PAGE_KEY - 4 * GAP - other.wholeWidth();
        double most = Math.max(width * LEAST, Math.min(leaves, width * MOST)) - NUMBER_ROOM - ring;
        name.pseudoClassStateChanged(LONG, false);
        name.applyCss();
        double wanted = widthOf(name);
        name.pseudoClassStateChanged(LONG, wanted > most);
        name.applyCss();
        double wide = Math.min(most, Math.max(wanted, Math.min(width / 3, leaves - NUMBER_ROOM - ring)));
        double left = in.getLeft();
        double digits = Math.ceil(number.prefWidth(-1));
        double high = number.prefHeight(-1);
        double top = in.getTop() + (height - MARK - high) / 2;
        mark.resizeRelocate(left + (NUMBER_ROOM - GAP - MARK) / 2, top, MARK, MARK);
        number.resizeRelocate(left + (NUMBER_ROOM - GAP - digits) / 2, top + MARK, digits, high);
        double lines = Math.ceil(name.prefHeight(wide));
        double ringHigh = balloon.prefHeight(-1);
        balloon.resizeRelocate(
                left + NUMBER_ROOM, in.getTop() + (height - ringHigh) / 2, Math.max(0, ring - GAP), ringHigh);
        name.resizeRelocate(left + NUMBER_ROOM + ring, in.getTop() + Math.max(0, (height - lines) / 2), wide, lines);
        double from = left + NUMBER_ROOM + ring + wide + 2 * GAP;
        double to = getWidth() - in.getRight() - ScreenSizes.PAGE_KEY;
        earlier.resizeRelocate(from, in.getTop(), ScreenSizes.PAGE_KEY, height);
        other.key()
                .resizeRelocate(
                        from + ScreenSizes.PAGE_KEY + GAP,
                        in.getTop(),
                        to - from - ScreenSizes.PAGE_KEY - 2 * GAP,
                        height);
        later.resizeRelocate(to, in.getTop(), ScreenSizes.PAGE_KEY, height);
    }

    private static double widthOf(Label label) {
        Text line = new Text(label.getText());
        line.setFont(label.getFont());
        return Math.ceil(line.getLayoutBounds().getWidth()) + 2;
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.max(ScreenSizes.KEY, Math.ceil(other.key().prefHeight(-1)))
                + getInsets().getTop()
                + getInsets().getBottom();
    }
}
