package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.FreeRoom;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;

/** A drift as a line, broken where it looks ahead, in the band it is known to lie in. */
record DriftBand(CoursePicture course, PartPlaces columns, SizeScale scale, Box plot) {

    private static final Stroke AHEAD = new Stroke(3, List.of(12.0, 7.0));

    void draw(Drawing drawing, FreeRoom room) {
        course.drift().ifPresent(drift -> {
            List<Point> most = points(drift.at(), DrawnDrift.At::most);
            List<Point> least = points(drift.at(), DrawnDrift.At::least);
            List<Point> band = new ArrayList<>(most);
            List<Point> back = new ArrayList<>(least);
            Collections.reverse(back);
            band.addAll(back);
            drawing.area(band, Role.PRESSED);
            drawing.chain(most, Stroke.THIN, Role.LINE);
            drawing.chain(least, Stroke.THIN, Role.LINE);
            int last = course.spots().size() - 1;
            line(drawing, drift.at().stream().filter(at -> at.place() <= last).toList(), Stroke.OUTLINE);
            line(drawing, drift.at().stream().filter(at -> at.place() >= last).toList(), AHEAD);
            for (List<Point> edge : List.of(most, least, points(drift.at(), DrawnDrift.At::line))) {
                for (int i = 1; i < edge.size(); i++) {
                    room.take(edge.get(i - 1), edge.get(i));
                }
            }
        });
    }

    private void line(Drawing drawing, List<DrawnDrift.At> stretch, Stroke stroke) {
        if (stretch.size() > 1) {
            drawing.chain(points(stretch, DrawnDrift.At::line), stroke, Role.ACCENT);
        }
    }

    private List<Point> points(List<DrawnDrift.At> stretch, Function<DrawnDrift.At, BigDecimal> size) {
        return stretch.stream()
                .map(at -> new Point(columns.x(at.place()), scale.y(size.apply(at))))
                .toList();
    }
}
