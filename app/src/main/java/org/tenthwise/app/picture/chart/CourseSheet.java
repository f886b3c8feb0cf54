package org.tenthwise.app.picture.chart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.text.SeriesSentences;

/**
 * One characteristic over the parts, ready to be shown or printed.
 *
 * @param from place in the series of the first part in the picture
 * @param inHand place in the series of the part that is looked at; absent where there is none
 * @param since which parts the sentences are about, or why there are none; empty where there is no part
 * @param told what those parts show
 * @param capability with each thing told of it; absent where there is no index
 * @param leftOut what was found and is no part of the series
 */
public record CourseSheet(
        Series series,
        int from,
        OptionalInt inHand,
        CoursePicture picture,
        String since,
        List<SeriesSentences.Told> told,
        List<Optional<CapabilityPicture>> capability,
        List<String> leftOut) {

    public CourseSheet {
        told = List.copyOf(told);
        capability = List.copyOf(capability);
        leftOut = List.copyOf(leftOut);
    }

    /** The same, looking at another of the parts in its picture. */
    public CourseSheet lookingAt(int place) {
        return new CourseSheet(
                series, from, OptionalInt.of(place), picture.lookingAt(place - from), since, told, capability, leftOut);
    }

    /** Whether a part stands in its picture. */
    public boolean shows(int place) {
        return place >= from && place < from + picture.spots().size();
    }
}
