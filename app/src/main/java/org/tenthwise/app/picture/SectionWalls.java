package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.tenthwise.model.quantity.Length;

/**
 * Two surfaces that face each other across a middle line, as the walls of a bore or the two sides of a shaft, put on
 * the sheet through what was read: along the stations from the right inwards, and off the middle of the limits drawn
 * large.
 *
 * @param left where the surfaces end, {@code right} where they begin
 * @param half from the middle line to a surface in the middle of its limits
 * @param tolerance pixels for the width of the tolerance
 */
record SectionWalls(
        SizePicture picture,
        StripScale scale,
        SectionPlaces places,
        double left,
        double right,
        double middle,
        double half,
        double tolerance) {

    double x(SectionPlaces.Station station) {
        return right - station.along() * (right - left);
    }

    /** Height of a surface where it has {@code share} tolerance widths more than the middle of the limits. */
    double y(double share, boolean above) {
        double out = half + share * tolerance;
        return above ? middle - out : middle + out;
    }

    /** How far a surface is off the middle of its limits where {@code column} was read; the size judged by itself. */
    double share(Optional<SizePicture.ReadingColumn> column) {
        return column.flatMap(SizePicture.ReadingColumn::size)
                .or(picture::judged)
                .map(size -> scale.share(size.size()))
                .orElse(0.0);
    }

    Optional<SizePicture.ReadingColumn> reading(SectionPlaces.Station station, boolean above) {
        return above || places.angles().isEmpty() ? station.first() : station.second();
    }

    /**
     * What was read, from the right inwards, each size as {@code of} makes it; where nothing was, the size judged at
     * the right end.
     */
    List<Point> read(boolean above, UnaryOperator<Length> of) {
        List<Point> read = new ArrayList<>();
        for (SectionPlaces.Station station : places.stations()) {
            reading(station, above)
                    .flatMap(SizePicture.ReadingColumn::size)
                    .ifPresent(size -> read.add(new Point(x(station), y(scale.share(of.apply(size.size())), above))));
        }
        read.sort((one, other) -> Double.compare(other.x(), one.x()));
        if (read.isEmpty()) {
            double share = picture.judged()
                    .map(judged -> scale.share(of.apply(judged.size())))
                    .orElse(0.0);
            read.add(new Point(right, y(share, above)));
        }
        return read;
    }

    /** The limits as thin lines along both surfaces. */
    void limits(Drawing drawing, double from, double to) {
        for (SizePicture.Sized limit : picture.limits()) {
            double share = scale.share(limit.size());
            drawing.across(y(share, true), from, to, Stroke.THIN, Role.LINE);
            drawing.across(y(share, false), from, to, Stroke.THIN, Role.LINE);
        }
    }

    /** What lies between a surface as it is and as it then will be. */
    static List<Point> between(List<Point> now, List<Point> then) {
        List<Point> ring = new ArrayList<>(now);
        List<Point> back = new ArrayList<>(then);
        Collections.reverse(back);
        ring.addAll(back);
        return ring;
    }
}
