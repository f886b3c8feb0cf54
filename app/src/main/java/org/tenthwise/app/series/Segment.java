package org.tenthwise.app.series;

import java.util.List;

/**
 * Parts of a series between two breaks.
 *
 * @param from place of the first of them in the series, from 0
 * @param points one at least
 */
public record Segment(int from, List<PartPoint> points) {

    public Segment {
        points = List.copyOf(points);
    }
}
