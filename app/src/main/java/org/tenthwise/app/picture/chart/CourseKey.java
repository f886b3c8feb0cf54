package org.tenthwise.app.picture.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;
import org.tenthwise.app.picture.VerdictShape;
import org.tenthwise.model.verdict.VerdictKind;

/** What stands at the foot of a course: the letters of its breaks, its lines and its marks. */
record CourseKey(CoursePicture course, BreakHeads.Naming naming) {

    /** Limits of a process, never drawn as a tolerance is. */
    private static final Stroke USUAL = new Stroke(1.5, List.of(16.0, 5.0));

    private static final Stroke TRIAL = new Stroke(1.5, List.of(4.0, 5.0));
    static final Stroke MEAN = new Stroke(1, List.of(2.0, 4.0));

    static Stroke stroke(ProcessLimits limits) {
        return limits.trial() ? TRIAL : USUAL;
    }

    /** a, b … z, aa, ab … */
    static String letter(int place) {
        String last = String.valueOf((char) ('a' + place % 26));
        return place < 26 ? last : letter(place / 26 - 1) + last;
    }

    List<ChartKey.Told> entries() {
        List<ChartKey.Told> entries = new ArrayList<>();
        if (naming != BreakHeads.Naming.WORDS && !course.breaks().isEmpty()) {
            entries.add(ChartKey.Told.of(IntStream.range(0, course.breaks().size())
                    .mapToObj(i -> letter(i) + "\u00a0" + course.breaks().get(i).reason())
                    .collect(Collectors.joining(" \u00b7 "))));
        }
        course.drift().ifPresent(drift -> entries.add(ChartKey.Told.of(CourseKey::drift, drift(drift))));
        course.process()
                .ifPresent(process -> entries.add(
                        ChartKey.Told.of((drawing, at) -> line(drawing, at, stroke(process)), process.said())));
        if (course.spots().stream().anyMatch(spot -> spot.first().isPresent())) {
            entries.add(ChartKey.Told.of(
                    (drawing, at) -> CourseMarks.first(drawing, at, drawing.ruled(5)),
                    course.words().first()));
        }
        if (course.spots().stream().anyMatch(spot -> spot.last().isEmpty())) {
            entries.add(ChartKey.Told.of(
                    (drawing, at) -> VerdictShape.draw(drawing, VerdictKind.OPEN, at, drawing.ruled(7)),
                    course.words().unread()));
        }
        if (course.allowed().stream().anyMatch(now -> now.band().signum() > 0)) {
            entries.add(ChartKey.Told.of(CourseKey::band, course.words().band()));
        }
        return entries;
    }

    /** What is done at its line stands there, or here. */
    private String drift(DrawnDrift drift) {
        boolean isNamed = naming == BreakHeads.Naming.WORDS || naming == BreakHeads.Naming.LETTERS;
        return isNamed || drift.before().isEmpty() ? drift.said() : drift.again() + ": " + drift.said();
    }

    private static void line(Drawing drawing, Point at, Stroke stroke) {
        drawing.across(at.y(), at.x() - ChartKey.half(drawing), at.x() + ChartKey.half(drawing), stroke, Role.INK2);
    }

    private static void drift(Drawing drawing, Point at) {
        double half = ChartKey.half(drawing);
        drawing.area(new Box(at.x() - half, at.y() - 8, at.x() + half, at.y() + 8).corners(), Role.PRESSED);
        drawing.across(at.y(), at.x() - half, at.x() + half, Stroke.OUTLINE, Role.ACCENT);
    }

    private static void band(Drawing drawing, Point at) {
        double half = ChartKey.half(drawing);
        drawing.guardBand(new Box(at.x() - half, at.y() - 8, at.x() + half, at.y() + 8).corners());
    }
}
