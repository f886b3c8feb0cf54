package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.FreeRoom;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;
import org.tenthwise.app.picture.VerdictShape;

/** A course in its room: the breaks above it, the numbers of the parts and what the lines are below it. */
final class CourseLayout {

    private static final double SMALL = 18;
    private static final double NUMBERS = 26;
    private static final double UNREAD = 26;
    /** Of the height: what the foot takes at most. */
    private static final double FOOT = 0.34;

    private final CoursePicture course;
    private final Drawing drawing;
    private final PartPlaces columns;
    private final BreakHeads heads;
    private final ChartKey key;
    private final boolean anyUnread;
    private final Box plot;
    private final SizeScale scale;

    CourseLayout(CoursePicture course, Drawing drawing) {
        this.course = course;
        this.drawing = drawing;
        this.columns = PartPlaces.of(course, drawing.frame());
        this.heads = BreakHeads.of(course, columns, drawing);
        Box frame = drawing.frame().box();
        this.anyUnread = course.spots().stream().anyMatch(spot -> spot.last().isEmpty());
        this.key = new ChartKey(
                new CourseKey(course, heads.naming()).entries(), 4, frame.width() - 8, FOOT * frame.height(), drawing);
        double foot = drawing.lettered(NUMBERS)
                + (anyUnread ? drawing.lettered(UNREAD) : 0)
                + key.height()
                + drawing.lettered(4);
        double top = Math.max(heads.flags().height(), drawing.lettered(14)) + 2;
        this.plot = new Box(columns.left(), top, columns.right(), Math.max(top + 24, frame.bottom() - foot));
        this.scale = SizeScale.of(course, plot.top(), plot.bottom());
    }

    void draw() {
        FreeRoom room = new FreeRoom(about());
        LimitSteps limits = new LimitSteps(course, columns, scale, plot);
        limits.zone(drawing);
        new DriftBand(course, columns, scale, plot).draw(drawing, room);
        limits.lines(drawing, room);
        course.aim().ifPresent(aim -> line(scale.y(aim.at()), plot.left(), plot.right(), Stroke.CENTRE, room));
        course.process().ifPresent(process -> process(process, room));
        new CourseScale(course, plot, scale).draw(drawing);
        upright(room);
        new CourseMarks(course, columns, scale, plot).draw(drawing, room);
        heads.flags().draw(plot.top() - 2);
        foot();
    }

    /** Where the figure of the part in hand can stand. */
    private Box about() {
        double x = columns.x(course.inHand().orElse(0));
        Box near = new Box(x - 260, plot.top(), x + 260, plot.bottom()).within(plot);
        return near.grown(-2);
    }

    private void process(ProcessLimits limits, FreeRoom room) {
        double from = columns.before(limits.from());
        double to = columns.before(limits.to() + 1);
        inside(limits.upper(), from, to, CourseKey.stroke(limits), room);
        inside(limits.mean(), from, to, CourseKey.MEAN, room);
        inside(limits.lower(), from, to, CourseKey.stroke(limits), room);
    }

    /** One that lies out of the window is told in the key alone. */
    private void inside(BigDecimal size, double from, double to, Stroke stroke, FreeRoom room) {
        if (scale.outside(size.doubleValue()) == 0) {
            line(scale.y(size), from, to, stroke, room);
        }
    }

    private void line(double y, double from, double to, Stroke stroke, FreeRoom room) {
        drawing.across(y, from, to, stroke, Role.INK2);
        room.take(new Box(from, y - 3, to, y + 3));
    }

    /** A break is a thin line with a head over it, a drift's end a thick one. */
    private void upright(FreeRoom room) {
        for (int i = 0; i < heads.marks().size(); i++) {
            Flags.Flag mark = heads.marks().get(i);
            boolean isBreak = i < course.breaks().size();
            double head = Math.min(heads.flags().head(mark, plot.top() - 2), plot.top() - 2);
            Role role = isBreak ? Role.INK : Role.CUTFILL;
            drawing.down(mark.x(), head, plot.bottom(), isBreak ? Stroke.NEIGHBOUR : Stroke.OUTLINE, role);
            if (isBreak) {
                double half = drawing.ruled(6);
                drawing.area(
                        List.of(
                                new Point(mark.x() - half, head - half),
                                new Point(mark.x() + half, head - half),
                                new Point(mark.x(), head + half)),
                        role);
            }
            room.take(new Box(mark.x() - 4, plot.top(), mark.x() + 4, plot.bottom()));
        }
    }

    private void foot() {
        double y = plot.bottom();
        if (anyUnread) {
            y += drawing.lettered(UNREAD);
            double middle = y - drawing.lettered(UNREAD) / 2;
            double radius = Math.min(columns.radius(drawing.frame().lineScale()), drawing.lettered(UNREAD) * 0.34);
            for (int i = 0; i < course.spots().size(); i++) {
                if (course.spots().get(i).last().isEmpty()) {
                    VerdictShape.draw(
                            drawing, course.spots().get(i).verdict(), new Point(columns.x(i), middle), radius);
                }
            }
        }
        numbers(y + drawing.lettered(NUMBERS) / 2 + 2);
        key.draw(y + drawing.lettered(NUMBERS) + drawing.lettered(4));
    }

    private void numbers(double y) {
        List<Label> labels = IntStream.range(0, course.spots().size())
                .mapToObj(i -> label(i))
                .toList();
        new PartNumbers(course.words().part(), labels, course.inHand(), columns).draw(drawing, y);
    }

    private Label label(int place) {
        boolean inHand = course.inHand().isPresent() && course.inHand().getAsInt() == place;
        Label label = Label.of(course.spots().get(place).number(), SMALL, inHand ? Role.ACCENT : Role.INK2);
        return inHand ? label.bold() : label;
    }
}
