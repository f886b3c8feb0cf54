package org.tenthwise.app.picture;

import java.util.List;
import org.tenthwise.model.quantity.Length;

/**
 * A length as it was read and as it is at 20 °C: two rods over one another, flush at the left; the difference at the
 * right is drawn large.
 *
 * @param correction size at 20 °C less reading; its sign says which rod is the longer
 */
public record RodPicture(
        String readName,
        String read,
        String sizeName,
        String size,
        Length correction,
        String correctionFigures,
        String spoken)
        implements Picture {

    private static final double TEXT = 20;
    private static final double NAME_TEXT = 18;
    private static final double SHARE = 0.76;
    private static final double DIFFERENCE = 0.09;
    private static final double LINE = 28;
    /** With fewer lines of height the correction stands beside its dimension or nowhere. */
    private static final double TIGHT_LINES = 5.4;

    private static final double THINNEST = 6;

    @Override
    public void draw(Drawing drawing) {
        Box frame = drawing.frame().box();
        double line = drawing.lettered(LINE);
        boolean tight = frame.height() < TIGHT_LINES * line;
        double between = tight ? line : 2 * line;
        double height = tight
                ? Math.max(THINNEST, (frame.height() - 2.1 * line) / 2)
                : Math.min(70, (frame.height() - 4.2 * line) / 2);
        double left = 6;
        double middle = frame.width() * SHARE;
        double difference = frame.width() * DIFFERENCE * correction.signum() / 2;
        double top = tight ? line : (frame.height() - 2 * height - 4 * line) / 2 + line;
        Box upper = new Box(left, top, middle - difference, top + height);
        Box lower = new Box(left, upper.bottom() + between, middle + difference, upper.bottom() + between + height);
        rod(drawing, upper, readName, read, Role.LINE);
        rod(drawing, lower, sizeName, size, Role.ACCENT);
        double at = upper.bottom() + line / 2;
        for (Box rod : List.of(upper, lower)) {
            double from = rod == upper ? rod.bottom() : at - 8;
            double to = rod == upper ? at + 8 : rod.top();
            drawing.down(rod.right(), from, to, Stroke.THIN, Role.LINE);
        }
        if (correction.signum() != 0) {
            drawing.dimension(new Point(upper.right(), at), new Point(lower.right(), at), Role.ACCENT);
        }
        double after = Math.max(upper.right(), lower.right()) + 34;
        Label figures = Label.of(correctionFigures, TEXT, Role.ACCENT).bold();
        boolean beside = after + drawing.width(figures) <= frame.right();
        if (beside || !tight) {
            drawing.text(
                    figures,
                    new Point(beside ? after : frame.right() - 2, beside ? at : lower.bottom() + line * 0.6),
                    beside ? Anchor.LEFT : Anchor.RIGHT);
        }
    }

    private static void rod(Drawing drawing, Box rod, String name, String figures, Role role) {
        drawing.metal(List.of(rod.corners()));
        drawing.ring(rod.corners(), Stroke.OUTLINE, role);
        double at = rod.top() - drawing.lettered(LINE) * 0.42;
        Label size =
                Label.of(figures, TEXT, role == Role.LINE ? Role.INK : role).bold();
        Label word = Label.of(name, NAME_TEXT, Role.INK2);
        Box written = drawing.text(size, new Point(rod.left(), at), Anchor.LEFT);
        if (written.right() + 16 + drawing.width(word) <= drawing.frame().width()) {
            drawing.text(word, new Point(written.right() + 16, at), Anchor.LEFT);
        }
    }
}
