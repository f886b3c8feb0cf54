package org.tenthwise.app.picture;

import java.util.List;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * A pocket seen from above in the cylinder it is milled into, true to scale, its width or its length as a dimension.
 */
final class PocketView {

    private static final double TEXT = 22;
    private static final double SIDE = 20;
    /** Of the length of the pocket: what is shown of the part at either side. */
    private static final double BESIDE = 0.3;

    private static final double LEVEL = 28;
    private static final double OVER = 7;

    private final SizePicture picture;
    private final Drawing drawing;
    private final boolean across;
    private final Outline.Pocket pocket;
    private final Box rim;
    private final Box part;

    PocketView(SizePicture picture, SizePicture.Beside.InPocket beside, Drawing drawing, Box room) {
        this.picture = picture;
        this.drawing = drawing;
        this.across = beside.across();
        this.pocket = beside.pocket();
        Length middle = pocket.from().plus(pocket.to()).half();
        double length = Nanometres.of(pocket.to().minus(pocket.from()));
        double width = Nanometres.of(pocket.width());
        double outside =
                TurnedStretch.diameterAt(beside.outline().outside(), middle).orElse(2 * width);
        double band = RisingDimension.band(drawing);
        Box free = new Box(room.left() + SIDE, room.top() + band, room.right() - SIDE, room.bottom() - 14);
        double scale = Math.min(free.width() / (length * (1 + 2 * BESIDE)), free.height() / outside);
        double x = free.centreX();
        double y = free.centreY();
        this.part = new Box(free.left(), y - scale * outside / 2, free.right(), y + scale * outside / 2);
        this.rim =
                new Box(x - scale * length / 2, y - scale * width / 2, x + scale * length / 2, y + scale * width / 2);
    }

    void draw() {
        drawing.across(part.top(), part.left(), part.right(), Stroke.OUTLINE, Role.LINE);
        drawing.across(part.bottom(), part.left(), part.right(), Stroke.OUTLINE, Role.LINE);
        breakLine(part.left());
        breakLine(part.right());
        drawing.across(part.centreY(), part.left() - 10, part.right() + 10, Stroke.CENTRE, Role.LINE);
        drawing.ring(OutlinePicture.rim(rim, pocket.rounded()), Stroke.OUTLINE, Role.LINE);
        if (across) {
            walls();
            across();
        } else {
            along();
        }
    }

    private void breakLine(double x) {
        double middle = part.top() + part.height() * 0.16;
        drawing.chain(
                List.of(
                        new Point(x, part.top()),
                        new Point(x, middle - 8),
                        new Point(x - 6, middle - 3),
                        new Point(x + 6, middle + 3),
                        new Point(x, middle + 8),
                        new Point(x, part.bottom())),
                Stroke.THIN,
                Role.LINE);
    }

    private Role role() {
        return picture.judged().isPresent() ? Role.ACCENT : Role.LINE;
    }

    private void walls() {
        double ends = pocket.rounded() ? rim.height() / 2 : 0;
        Stroke stroke = picture.judged().isPresent() ? Stroke.READ : Stroke.WALL;
        drawing.across(rim.top(), rim.left() + ends, rim.right() - ends, stroke, Role.ACCENT);
        drawing.across(rim.bottom(), rim.left() + ends, rim.right() - ends, stroke, Role.ACCENT);
    }

    /** Its figures over the part, at the end of the dimension. */
    private void across() {
        RisingDimension.draw(drawing, rim.centreX(), rim.top(), rim.bottom(), part.top(), picture.judged());
    }

    private void along() {
        double level = part.top() - drawing.lettered(LEVEL);
        for (double x : new double[] {rim.left(), rim.right()}) {
            drawing.down(x, rim.centreY(), level - OVER, Stroke.THIN, Role.LINE);
        }
        drawing.dimension(new Point(rim.left(), level), new Point(rim.right(), level), role());
        picture.judged().ifPresent(judged -> {
            Label label = Label.of(judged.figures(), TEXT, Role.ACCENT).bold().onGround();
            if (drawing.width(label) + 40 < rim.width()) {
                drawing.text(label, new Point(rim.centreX(), level), Anchor.CENTRE);
            }
        });
    }
}
