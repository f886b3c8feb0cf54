package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;

/**
 * The strip lying down, for a row of the record: a line with a bar at each limit and a mark where the size lies,
 * greater sizes to the right. A size too far out to be drawn to scale stands at the end, with an arrow that way.
 *
 * @param lower least size allowed; one of the two limits may be absent
 * @param judged absent before there is a size
 * @param inside how the mark is coloured: in ink inside, in the colour of a fail outside
 */
public record RowMark(
        Optional<Length> lower, Optional<Length> upper, Optional<Length> judged, boolean inside, String spoken)
        implements Picture {

    /** Of the width between the limits, on either side of them. */
    private static final double BEYOND = 0.16;

    @Override
    public void draw(Drawing drawing) {
        Box frame = drawing.frame().box().grown(-1);
        double y = frame.centreY() + frame.height() * 0.1;
        double bar = frame.height() * 0.34;
        drawing.across(y, frame.left(), frame.right(), Stroke.NEIGHBOUR, Role.RULE);
        for (Optional<Double> x : List.of(lower.map(limit -> left(frame)), upper.map(limit -> right(frame)))) {
            x.ifPresent(at -> drawing.down(at, y - bar, y + bar, Stroke.OUTLINE, Role.INK));
        }
        judged.ifPresent(size -> mark(drawing, frame, y, size));
    }

    private static double left(Box frame) {
        return frame.left() + frame.width() * BEYOND;
    }

    private static double right(Box frame) {
        return frame.right() - frame.width() * BEYOND;
    }

    private void mark(Drawing drawing, Box frame, double y, Length size) {
        Role role = inside ? Role.INK : Role.FAIL;
        double x = x(frame, size);
        double half = Math.min(5, frame.height() * 0.22);
        double reached = Math.min(Math.max(x, frame.left() + 2 * half), frame.right() - 2 * half);
        if (x != reached) {
            double way = Math.signum(x - reached);
            drawing.area(
                    List.of(
                            new Point(reached + way * 2 * half, y),
                            new Point(reached, y - half),
                            new Point(reached, y + half)),
                    role);
            return;
        }
        drawing.area(
                List.of(new Point(x, y), new Point(x - half, y - 1.9 * half), new Point(x + half, y - 1.9 * half)),
                role);
    }

    /** To scale between two limits. With one, only on which side: half-way into the free side, or at its end. */
    private double x(Box frame, Length size) {
        if (lower.isPresent() && upper.isPresent()) {
            double width = upper.get().minus(lower.get()).base().doubleValue();
            double off = size.minus(lower.get()).base().doubleValue();
            double share = width == 0 ? (off == 0 ? 0.5 : Math.signum(off) * 2) : off / width;
            return left(frame) + share * (right(frame) - left(frame));
        }
        Length limit = lower.or(() -> upper).orElseThrow();
        double at = lower.isPresent() ? left(frame) : right(frame);
        int side = size.compareTo(limit);
        return at + side * frame.width() * (inside ? 0.35 : BEYOND * 0.6);
    }
}
