package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.model.plan.Outline;

/**
 * A length along the axis, where it is on the part: the stretch of the half section around it, true to scale, the
 * surface it goes to in the accent, and the length as a dimension from the surface it is measured from.
 */
final class LengthSection {

    private static final double TEXT = 22;
    /** For the dimension and its figures. */
    private static final double BAND = 52;

    private static final double LEVEL = 30;
    private static final double EDGE = 14;
    private static final double OVER = 7;
    private static final double STOCK = 9;

    private final SizePicture picture;
    private final SizePicture.Beside.Along part;
    private final Drawing drawing;
    private final Box room;
    private final OutlineWindow window;
    private final Outline outline;
    private final HalfSection section;
    private final OutlineFeature feature;
    private final boolean above;
    private final double level;

    LengthSection(SizePicture picture, SizePicture.Beside.Along part, Drawing drawing, Box room) {
        this.picture = picture;
        this.part = part;
        this.drawing = drawing;
        this.room = room;
        this.window = OutlineWindow.around(
                part.outline(),
                part.span().feature(),
                part.span().reference(),
                part.outline().greatestDiameter().times(new BigDecimal("0.2")));
        this.outline = window.outline();
        double band = drawing.lettered(BAND);
        Box whole = new Box(room.left() + EDGE, room.top() + 8, room.right() - EDGE, room.bottom() - 8);
        OutlineFeature rough = OutlineFeature.at(window.mark(part.mark()), outline, new HalfSection(outline, whole));
        this.above = rough.side() != OutlineFeature.Side.BELOW;
        this.section = new HalfSection(
                outline,
                above
                        ? new Box(whole.left(), whole.top() + band, whole.right(), whole.bottom())
                        : new Box(whole.left(), whole.top(), whole.right(), whole.bottom() - band));
        this.feature = OutlineFeature.at(window.mark(part.mark()), outline, section);
        this.level = above
                ? section.box().top() - drawing.lettered(LEVEL)
                : section.box().bottom() + drawing.lettered(LEVEL);
    }

    void draw() {
        new PartDrawing(outline, drawing, section, window.isBrokenAtLeft(), window.isBrokenAtRight()).draw();
        double from = section.x(window.place(part.span().reference()));
        double to = section.x(window.place(part.span().feature()));
        int metal = to < from ? -1 : 1;
        point(to, metal);
        stock(to, metal);
        surface(to, metal);
        dimension(from, to);
    }

    /** The surface measured to: the face itself, the end of a drilled hole, or where a thread, pocket or hole ends. */
    private void surface(double x, int metal) {
        Box bounds = new Shape.Polyline(feature.line(), false).bounds();
        boolean drilled = part.pointAngle().isPresent();
        double top = drilled ? section.axis() - section.insideRadius(x - metal) : bounds.top();
        double bottom = drilled ? section.axis() : bounds.bottom();
        List<Point> lit = bottom - top > 2 ? List.of(new Point(x, top), new Point(x, bottom)) : feature.line();
        drawing.chain(lit, picture.judged().isPresent() ? Stroke.READ : Stroke.WALL, Role.ACCENT);
    }

    /** What the cut takes off the face, drawn large. */
    private void stock(double x, int metal) {
        Box face = new Shape.Polyline(feature.line(), false).bounds();
        if (picture.cut().isPresent() && face.width() < 0.01 && picture.metalAbove()) {
            List<Point> area = new Box(
                            Math.min(x, x + metal * STOCK), face.top(), Math.max(x, x + metal * STOCK), face.bottom())
                    .corners();
            drawing.area(area, drawing.frame().ground());
            drawing.stock(area);
            drawing.down(x + metal * STOCK, face.top(), face.bottom(), Stroke.AIM, Role.LINE);
        }
    }

    /** What the point of a drill left beyond the full diameter. */
    private void point(double x, int metal) {
        part.pointAngle().ifPresent(angle -> {
            double radius = section.insideRadius(x - metal);
            Point edge = new Point(x, section.axis() - radius);
            Point tip =
                    new Point(x + metal * radius / Math.tan(Math.toRadians(angle.doubleValue() / 2)), section.axis());
            drawing.area(
                    List.of(edge, tip, new Point(x, section.axis())),
                    drawing.frame().ground());
            drawing.line(edge, tip, Stroke.OUTLINE, Role.LINE);
        });
    }

    private void dimension(double from, double to) {
        for (double x : new double[] {from, to}) {
            double edge = above ? section.axis() - section.outsideRadius(x) : section.axis() + section.outsideRadius(x);
            double start = x == to ? end() : edge;
            drawing.down(x, start, level + (above ? -OVER : OVER), Stroke.THIN, Role.LINE);
        }
        Role role = picture.judged().isPresent() ? Role.ACCENT : Role.LINE;
        double least = Math.min(from, to);
        double most = Math.max(from, to);
        Shape.Polyline line = drawing.dimension(new Point(least, level), new Point(most, level), role);
        picture.judged().ifPresent(judged -> {
            Label label = Label.of(judged.figures(), TEXT, Role.ACCENT).bold();
            double width = drawing.width(label);
            if (width + drawing.ruled(40) < most - least) {
                drawing.text(label.onGround(), new Point((least + most) / 2, level), Anchor.CENTRE);
            } else {
                beside(label, width, line.bounds());
            }
        });
    }

    private void beside(Label label, double width, Box line) {
        if (line.right() + width + 8 <= room.right()) {
            drawing.text(label, new Point(line.right() + 6, level), Anchor.LEFT);
        } else if (line.left() - width - 8 >= room.left()) {
            drawing.text(label, new Point(line.left() - 6, level), Anchor.RIGHT);
        }
    }

    /** Of the surface measured to, the end on the side of the dimension. */
    private double end() {
        Box bounds = new Shape.Polyline(feature.line(), false).bounds();
        return above ? bounds.top() : bounds.bottom();
    }
}
