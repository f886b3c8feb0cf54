package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Feature;

/**
 * A chamfer, or a radius, as a large corner. A chamfer takes an edge off, so its metal is shown; a radius may be one of
 * an edge or one in a corner, so it is drawn as its line alone, with its centre.
 */
final class EdgeSection {

    private static final double TEXT = 22;
    /** For the dimension over the edge. */
    private static final double BAND = 40;
    /** Of the room: the leg of the chamfer, the radius. */
    private static final double LARGE = 0.42;

    private static final double CROSS = 10;
    private static final double OVER = 7;
    private static final int STEPS_OF_AN_ARC = 24;

    private final SizePicture picture;
    private final Drawing drawing;
    private final Box room;
    private final double size;
    private final Role role;

    EdgeSection(SizePicture picture, Drawing drawing, Box room) {
        this.picture = picture;
        this.drawing = drawing;
        this.room =
                new Box(room.left() + 8, room.top() + drawing.lettered(BAND), room.right() - 24, room.bottom() - 10);
        this.size = Math.min(this.room.width(), this.room.height()) * LARGE;
        this.role = picture.judged().isPresent() ? Role.ACCENT : Role.LINE;
    }

    void draw() {
        if (picture.feature().orElseThrow().form() == Feature.Form.CHAMFER) {
            chamfer();
        } else {
            radius();
        }
    }

    private void chamfer() {
        Point face = new Point(room.right() - size, room.top());
        Point side = new Point(room.right(), room.top() + size);
        Point left = new Point(room.left(), room.top());
        Point bottom = new Point(room.right(), room.bottom());
        Point broken = new Point(room.left() + room.width() * 0.35, room.bottom());
        drawing.metal(List.of(List.of(left, face, side, bottom, broken)));
        drawing.chain(List.of(left, face), Stroke.OUTLINE, Role.LINE);
        drawing.chain(List.of(side, bottom), Stroke.OUTLINE, Role.LINE);
        drawing.chain(List.of(left, broken), Stroke.THIN, Role.LINE);
        drawing.chain(List.of(bottom, broken), Stroke.THIN, Role.LINE);
        drawing.chain(List.of(face, side), picture.judged().isPresent() ? Stroke.READ : Stroke.OUTLINE, role);
        double level = room.top() - drawing.lettered(BAND) / 2;
        drawing.down(face.x(), face.y(), level - OVER, Stroke.THIN, Role.LINE);
        drawing.down(side.x(), side.y(), level - OVER, Stroke.THIN, Role.LINE);
        drawing.dimension(new Point(face.x(), level), new Point(side.x(), level), role);
        overTheEdge(new Point((face.x() + side.x()) / 2, level), face.x());
    }

    private void radius() {
        double out = size * 1.5;
        Point centre = new Point(room.centreX() - out / 2 + size / 4, room.centreY() + out / 4);
        List<Point> arc = IntStream.rangeClosed(0, STEPS_OF_AN_ARC)
                .mapToObj(i -> centre.polar(out * 0.8, 90.0 * i / STEPS_OF_AN_ARC))
                .toList();
        Point first = arc.get(0);
        Point last = arc.get(STEPS_OF_AN_ARC);
        List<Point> line =
                new ArrayList<>(Stream.of(new Point(room.left(), first.y())).toList());
        line.addAll(arc);
        line.add(new Point(last.x(), room.bottom()));
        drawing.chain(line, Stroke.OUTLINE, Role.LINE);
        drawing.chain(arc, picture.judged().isPresent() ? Stroke.READ : Stroke.OUTLINE, role);
        drawing.across(centre.y(), centre.x() - CROSS, centre.x() + CROSS, Stroke.THIN, Role.LINE);
        drawing.down(centre.x(), centre.y() - CROSS, centre.y() + CROSS, Stroke.THIN, Role.LINE);
        Point touch = centre.polar(out * 0.8, 45);
        drawing.line(centre, touch, Stroke.THIN, role);
        drawing.head(centre, touch, role);
        figures("R")
                .ifPresent(label ->
                        drawing.text(label, centre.plus(0, 2 * CROSS + drawing.lettered(TEXT) / 2), Anchor.CENTRE));
    }

    /** In the middle of a dimension that is long enough, else to its left where there is room: the strip has it too. */
    private void overTheEdge(Point middle, double from) {
        figures("").ifPresent(label -> {
            double width = drawing.width(label);
            double beside = from - drawing.ruled(30);
            if (width + drawing.ruled(40) < size) {
                drawing.text(label, middle, Anchor.CENTRE);
            } else if (beside - width >= room.left()) {
                drawing.text(label, new Point(beside, middle.y()), Anchor.RIGHT);
            }
        });
    }

    private Optional<Label> figures(String sign) {
        return picture.judged().map(judged -> Label.of(sign + judged.figures(), TEXT, Role.ACCENT)
                .bold()
                .onGround());
    }
}
