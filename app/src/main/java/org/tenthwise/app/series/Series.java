package org.tenthwise.app.series;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * One characteristic over the parts, in the order they were made.
 *
 * @param points a part each
 * @param breaks in their order; none before the first point
 * @param leftOut what was found of it and is no point
 * @param toolSince whether another tool was told of behind the last point
 */
public record Series(
        Characteristic characteristic,
        List<PartPoint> points,
        List<Break> breaks,
        List<NotInSeries> leftOut,
        boolean toolSince) {

    public Series {
        points = List.copyOf(points);
        breaks = List.copyOf(breaks);
        leftOut = List.copyOf(leftOut);
    }

    /** Broken at everything that changed. The last of them is what was made since the last break. */
    public List<Segment> segments() {
        return segments(Set.of());
    }

    /**
     * Broken but at some reasons, which somebody asked to look across; other limits and another dimension break it
     * whatever is asked.
     */
    public List<Segment> segments(Set<Break.Reason> across) {
        List<Segment> segments = new ArrayList<>();
        int from = 0;
        for (Break broken : breaks) {
            if (broken.stands(across)) {
                segments.add(new Segment(from, points.subList(from, broken.before())));
                from = broken.before();
            }
        }
        if (from < points.size()) {
            segments.add(new Segment(from, points.subList(from, points.size())));
        }
        return segments;
    }
}
