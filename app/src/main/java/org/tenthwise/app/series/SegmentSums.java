package org.tenthwise.app.series;

import java.util.List;
import org.tenthwise.model.quantity.Unit;

/**
 * What the parts of one segment show.
 *
 * @param n parts whose size is known to be their last; those still to be cut are not among them
 * @param tracks one where every part has one size; that of the least and that of the greatest where parts have several.
 *     Empty where there is no part
 */
public record SegmentSums(Segment segment, SizeOf of, int n, Unit unit, List<Track> tracks, Rejects rejects) {

    public SegmentSums {
        tracks = List.copyOf(tracks);
    }
}
