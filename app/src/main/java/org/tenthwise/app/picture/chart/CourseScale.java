package org.tenthwise.app.picture.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;

/** The figures at the sides of a course: its limits large, and between them those of the scale. */
record CourseScale(CoursePicture course, Box plot, SizeScale scale) {

    private static final double SMALL = 18;
    private static final double LINE = 26;

    void draw(Drawing drawing) {
        drawing.down(plot.left(), plot.top(), plot.bottom(), Stroke.THIN, Role.LINE);
        List<Double> taken = new ArrayList<>();
        if (LimitSteps.areLettered(course)) {
            List<AllowedSizes> all = course.allowed();
            taken.addAll(side(drawing, all.get(0), plot.left() - 16, Anchor.RIGHT, plot.left()));
            if (LimitSteps.lettersEnd(course)) {
                side(drawing, all.get(all.size() - 1), plot.right() + 16, Anchor.LEFT, plot.right());
            }
        } else {
            course.aim().ifPresent(aim -> taken.add(figure(drawing, aim, scale.y(aim.at()))));
        }
        ticks(drawing, taken);
    }

    private double figure(Drawing drawing, ChartFigure aim, double y) {
        drawing.text(
                fitted(
                        drawing,
                        Label.of(aim.text(), PartPlaces.FIGURES, Role.INK).bold()),
                new Point(plot.left() - 16, y),
                Anchor.RIGHT);
        return y;
    }

    /** @return where the figures stand */
    private List<Double> side(Drawing drawing, AllowedSizes now, double x, Anchor anchor, double edge) {
        double half = drawing.lettered(LINE) / 2;
        Optional<Double> upper = now.upper().map(limit -> scale.y(limit.at()));
        Optional<Double> lower = now.lower().map(limit -> scale.y(limit.at()));
        double middle = (upper.orElse(plot.top()) + lower.orElse(plot.bottom())) / 2;
        List<Double> at = new ArrayList<>();
        upper.ifPresent(y -> at.add(lower.isPresent() ? Math.min(y, middle - half) : y));
        lower.ifPresent(y -> at.add(upper.isPresent() ? Math.max(y, middle + half) : y));
        List<ChartFigure> limits = new ArrayList<>();
        now.upper().ifPresent(limits::add);
        now.lower().ifPresent(limits::add);
        for (int i = 0; i < limits.size(); i++) {
            double y = scale.y(limits.get(i).at());
            drawing.line(
                    new Point(edge, y),
                    new Point(x + (anchor == Anchor.RIGHT ? 4 : -4), at.get(i)),
                    Math.abs(at.get(i) - y) < 1 ? Stroke.OUTLINE : Stroke.THIN,
                    Role.INK);
            drawing.text(
                    fitted(
                            drawing,
                            Label.of(limits.get(i).text(), PartPlaces.FIGURES, Role.INK)
                                    .bold()),
                    new Point(x, at.get(i)),
                    anchor);
        }
        return at;
    }

    /** Smaller where the side is too narrow for it. */
    private Label fitted(Drawing drawing, Label label) {
        double room = plot.left() - 18;
        double width = drawing.width(label);
        return width <= room ? label : label.sized(label.size() * room / width);
    }

    private void ticks(Drawing drawing, List<Double> taken) {
        double apart = drawing.lettered(LINE);
        if (course.places() < 0) {
            return;
        }
        double foot = course.floor().map(zero -> scale.y(zero.at()) + 1).orElse(plot.bottom());
        for (SizeScale.Tick tick : scale.ticks(Math.max(8, apart / 3), course.places())) {
            if (tick.y() > foot) {
                continue;
            }
            drawing.across(tick.y(), plot.left() - 5, plot.left(), Stroke.THIN, Role.INK2);
        }
        for (SizeScale.Tick tick : scale.ticks(1.3 * apart, course.places())) {
            if (tick.y() > foot) {
                continue;
            }
            drawing.across(tick.y(), plot.left() - 10, plot.left(), Stroke.THIN, Role.INK2);
            Label label = Label.of(tick.text(), SMALL, Role.INK2);
            boolean free = taken.stream().allMatch(y -> Math.abs(y - tick.y()) >= apart)
                    && tick.y() >= drawing.height(label) / 2
                    && tick.y() <= plot.bottom() - drawing.height(label) / 2
                    && drawing.width(label) <= plot.left() - 18;
            if (free) {
                drawing.text(label, new Point(plot.left() - 16, tick.y()), Anchor.RIGHT);
            }
        }
    }
}
