package org.tenthwise.app.picture.chart;

import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Frame;

/**
 * Where the parts of a course stand from left to right: told by the frame alone, so that what is touched is found
 * without drawing.
 *
 * @param left where the parts begin, behind the figures of the scale
 * @param right where they end
 * @param pitch from one part to the next
 */
record PartPlaces(double left, double right, double pitch, int parts) {

    static final double FIGURES = 22;

    /** No figure of the lettering is wider, in ems. */
    private static final double WIDEST = 0.6;

    private static final double TICK = 18;
    private static final double END = 12;
    /** Of a frame: what figures at the side take at most. */
    private static final double MOST = 0.28;

    static PartPlaces of(CoursePicture course, Frame frame) {
        double figures = Math.min(MOST * frame.width(), widest(course) * WIDEST * FIGURES * frame.textScale() + TICK);
        double left = Math.max(figures, course.words().part().length() * WIDEST * 18 * frame.textScale() + END);
        double right = frame.width() - (LimitSteps.lettersEnd(course) ? figures : END);
        return new PartPlaces(
                left, right, (right - left) / course.columns(), course.spots().size());
    }

    private static int widest(CoursePicture course) {
        return course.allowed().stream()
                .flatMap(allowed -> Stream.of(allowed.lower(), allowed.upper()))
                .flatMap(Optional::stream)
                .mapToInt(limit -> limit.text().length())
                .max()
                .orElseGet(() -> course.spots().stream()
                        .flatMap(spot -> spot.last().stream())
                        .mapToInt(size -> size.text().length())
                        .max()
                        .orElse(1));
    }

    /** Of the part at a place. */
    double x(int place) {
        return left + (place + 0.5) * pitch;
    }

    /** Between the part before and the one at a place. */
    double before(int place) {
        return left + place * pitch;
    }

    int nearest(double x) {
        return (int) Math.max(0, Math.min(parts - 1, Math.floor((x - left) / pitch)));
    }

    /** Half the height of the mark of a part. */
    double radius(double lines) {
        return Math.max(3.2, Math.min(9 * Math.max(0.6, lines), pitch * 0.36));
    }
}
