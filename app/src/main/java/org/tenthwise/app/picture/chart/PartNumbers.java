package org.tenthwise.app.picture.chart;

import java.util.List;
import java.util.OptionalInt;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;

/** The numbers of the parts under a course: all of them, or every second, fifth, tenth where there is no room. */
record PartNumbers(String name, List<Label> labels, OptionalInt inHand, PartPlaces columns) {

    private static final int[] EVERY = {1, 2, 5, 10, 20, 50, 100, 200, 500};
    private static final double APART = 8;

    void draw(Drawing drawing, double y) {
        drawing.text(Label.of(name, 18, Role.INK2), new Point(4, y), Anchor.LEFT);
        double least = 4 + drawing.width(Label.of(name, 18, Role.INK2)) + APART;
        int every = every(drawing);
        for (int i = 0; i < labels.size(); i++) {
            boolean isHand = inHand.isPresent() && inHand.getAsInt() == i;
            if (isHand || (i + 1) % every == 0 || every == 1) {
                Box box = drawing.boxOf(labels.get(i), new Point(columns.x(i), y), Anchor.CENTRE);
                if (box.left() >= least
                        && box.right() <= drawing.frame().width()
                        && (isHand || isClear(drawing, box))) {
                    drawing.text(labels.get(i), new Point(columns.x(i), y), Anchor.CENTRE);
                }
            }
        }
    }

    private int every(Drawing drawing) {
        double widest = labels.stream().mapToDouble(drawing::width).max().orElse(0) + APART;
        for (int every : EVERY) {
            if (every * columns.pitch() >= widest) {
                return every;
            }
        }
        return Integer.MAX_VALUE;
    }

    /** Of the number of the part in hand, which always stands. */
    private boolean isClear(Drawing drawing, Box box) {
        if (inHand.isEmpty()) {
            return true;
        }
        Label hand = labels.get(inHand.getAsInt());
        Box other = drawing.boxOf(hand, new Point(columns.x(inHand.getAsInt()), box.top()), Anchor.CENTRE);
        return box.right() + APART <= other.left() || other.right() + APART <= box.left();
    }
}
