package org.tenthwise.app.picture.chart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Point;

/**
 * One characteristic over the parts in the order made, or the deviations of several from where each is aimed at,
 * against what the drawing allows.
 *
 * @param spots a part each; may be none
 * @param allowed by where it begins; empty where no limit is known
 * @param breaks by where they lie
 * @param aim a line that everything is aimed at
 * @param process drawn only where there are such limits
 * @param drift drawn only where one was shown
 * @param inHand place of the part that is looked at
 * @param places decimals of the figures at the side; negative where the scale has no figures but its limits
 */
public record CoursePicture(
        List<MadePart> spots,
        List<AllowedSizes> allowed,
        List<BreakMark> breaks,
        Optional<ChartFigure> aim,
        Optional<ProcessLimits> process,
        Optional<DrawnDrift> drift,
        OptionalInt inHand,
        int places,
        CourseWords words,
        String spoken)
        implements Picture {

    public CoursePicture {
        spots = List.copyOf(spots);
        allowed = List.copyOf(allowed);
        breaks = List.copyOf(breaks);
    }

    /** The same, looking at another part. */
    public CoursePicture lookingAt(int place) {
        return new CoursePicture(
                spots, allowed, breaks, aim, process, drift, OptionalInt.of(place), places, words, spoken);
    }

    @Override
    public void draw(Drawing drawing) {
        if (spots.isEmpty()) {
            EmptyPicture.draw(drawing, words.none());
        } else {
            new CourseLayout(this, drawing).draw();
        }
    }

    /**
     * The part nearest to a spot of the picture.
     *
     * @param frame the picture is laid out for
     */
    public OptionalInt nearest(Frame frame, Point touched) {
        if (spots.isEmpty()) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(PartPlaces.of(this, frame).nearest(touched.x()));
    }

    /** Whether some part has one limit only, or none is known. */
    boolean isOpen() {
        return allowed.isEmpty()
                || allowed.stream()
                        .anyMatch(now -> now.lower().isEmpty() || now.upper().isEmpty());
    }

    /** Zero, where nothing lies below it: no size is allowed there, and none is shown. */
    Optional<ChartFigure> floor() {
        return aim.filter(zero -> allowed.stream().allMatch(now -> now.lower().isEmpty()));
    }

    /** Places the picture has room for: the parts there are, and those a drift looks ahead to. */
    int columns() {
        return drift.map(line -> Math.max(line.lastPlace() + 1, spots.size())).orElse(spots.size());
    }

    DoubleStream processFigures() {
        return process.stream()
                .flatMapToDouble(limits -> DoubleStream.of(
                        limits.lower().doubleValue(), limits.upper().doubleValue()));
    }

    DoubleStream reaches() {
        return spots.stream()
                .flatMap(spot -> spot.reach().stream())
                .flatMapToDouble(reach -> DoubleStream.of(
                        reach.least().doubleValue(), reach.greatest().doubleValue()));
    }

    boolean isBroken(int before) {
        return breaks.stream().anyMatch(mark -> mark.before() == before);
    }
}
