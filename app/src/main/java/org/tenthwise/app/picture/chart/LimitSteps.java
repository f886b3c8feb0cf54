package org.tenthwise.app.picture.chart;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.FreeRoom;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;

/** What the drawing allows, part by part: the tolerance as an area, its limits as thick lines, changes as steps. */
final class LimitSteps {

    /** Limits that change more often have no figures but those of the scale. */
    private static final int LETTERED = 3;

    private final CoursePicture course;
    private final PartPlaces columns;
    private final SizeScale scale;
    private final Box plot;

    LimitSteps(CoursePicture course, PartPlaces columns, SizeScale scale, Box plot) {
        this.course = course;
        this.columns = columns;
        this.scale = scale;
        this.plot = plot;
    }

    /** Whether the limits have their figures at the sides. */
    static boolean areLettered(CoursePicture course) {
        return !course.allowed().isEmpty() && course.allowed().size() <= LETTERED;
    }

    /** Whether those at the end are others than those at the beginning, and stand there. */
    static boolean lettersEnd(CoursePicture course) {
        return areLettered(course) && course.allowed().size() > 1;
    }

    void zone(Drawing drawing) {
        for (int i = 0; i < course.allowed().size(); i++) {
            AllowedSizes now = course.allowed().get(i);
            Box box = new Box(
                    from(i),
                    now.upper().map(limit -> scale.y(limit.at())).orElse(plot.top()),
                    to(i),
                    now.lower()
                            .or(course::floor)
                            .map(limit -> scale.y(limit.at()))
                            .orElse(plot.bottom()));
            if (now.lower().isPresent() || now.upper().isPresent()) {
                drawing.area(box.corners(), Role.ZONE);
            }
            if (now.band().signum() > 0) {
                double band = now.band().doubleValue();
                now.upper()
                        .ifPresent(limit -> drawing.guardBand(
                                new Box(box.left(), box.top(), box.right(), scale.y(limit.at() - band)).corners()));
                now.lower()
                        .ifPresent(limit -> drawing.guardBand(
                                new Box(box.left(), scale.y(limit.at() + band), box.right(), box.bottom()).corners()));
            }
        }
    }

    void lines(Drawing drawing, FreeRoom room) {
        for (Function<AllowedSizes, Optional<ChartFigure>> side :
                List.<Function<AllowedSizes, Optional<ChartFigure>>>of(AllowedSizes::lower, AllowedSizes::upper)) {
            for (int i = 0; i < course.allowed().size(); i++) {
                Optional<ChartFigure> limit = side.apply(course.allowed().get(i));
                if (limit.isPresent()) {
                    double y = scale.y(limit.get().at());
                    drawing.across(y, from(i), to(i), Stroke.OUTLINE, Role.INK);
                    room.take(new Box(from(i), y - 5, to(i), y + 5));
                    riser(drawing, room, side, i, y);
                }
            }
        }
    }

    private void riser(
            Drawing drawing, FreeRoom room, Function<AllowedSizes, Optional<ChartFigure>> side, int i, double y) {
        if (i > 0) {
            side.apply(course.allowed().get(i - 1)).ifPresent(limit -> {
                Point before = new Point(from(i), scale.y(limit.at()));
                drawing.line(before, new Point(from(i), y), Stroke.OUTLINE, Role.INK);
                room.take(new Box(from(i) - 5, Math.min(before.y(), y), from(i) + 5, Math.max(before.y(), y)));
            });
        }
    }

    double from(int stretch) {
        return stretch == 0
                ? columns.left()
                : columns.before(course.allowed().get(stretch).from());
    }

    private double to(int stretch) {
        return stretch + 1 < course.allowed().size() ? from(stretch + 1) : columns.right();
    }
}
