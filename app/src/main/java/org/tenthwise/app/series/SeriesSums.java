package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.app.history.PartSize;
import org.tenthwise.app.series.Track.Side;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.statistics.ZeroRejectsSum;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;

/** Asks the sums what the parts of a segment show. */
public final class SeriesSums {

    /** What is usually asked for; common practice. */
    public static final BigDecimal USUAL_INDEX = new BigDecimal("1.33");

    private final Sums sums;
    private final TrackSums tracks;

    public SeriesSums(Sums sums) {
        this.sums = sums;
        this.tracks = new TrackSums(sums);
    }

    /** @param required index of capability it is held against, above zero */
    public SegmentSums of(Segment segment, SizeOf which, BigDecimal required) {
        List<Integer> places = new ArrayList<>();
        List<PartPoint> counted = new ArrayList<>();
        for (int i = 0; i < segment.points().size(); i++) {
            if (segment.points().get(i).standing() != PartStanding.STILL_TO_CUT) {
                places.add(i + 1);
                counted.add(segment.points().get(i));
            }
        }
        return new SegmentSums(
                segment,
                which,
                counted.size(),
                segment.points().get(0).unit(),
                counted.isEmpty() ? List.of() : tracks(places, counted, which, required),
                rejects(segment.points()));
    }

    /**
     * Limits of parts of several sizes on one chart; absent below ten, and where all are alike or too coarse to tell.
     *
     * @param standardised whether of the standardised figures; those in a unit make no sense where spreads differ
     */
    public Optional<ControlLimits> of(List<DeviationChart.OffTarget> entries, boolean standardised) {
        return tracks.chartLimits(entries.stream()
                .map(entry -> standardised ? entry.standardised() : entry.deviation())
                .toList());
    }

    private List<Track> tracks(List<Integer> places, List<PartPoint> points, SizeOf which, BigDecimal required) {
        PartPoint any = points.get(0);
        Optional<Length> lower = any.limits().lower().map(Written::length);
        Optional<Length> upper = any.limits().upper().map(Written::length);
        List<Track> all = new ArrayList<>();
        if (points.stream().allMatch(point -> point.size(which).isOne())) {
            all.add(tracks.of(new TrackAsked(
                    Side.ONE, places, points, figures(points, which, PartSize::judged), lower, upper, required)));
            return all;
        }
        lower.ifPresent(limit -> all.add(tracks.of(new TrackAsked(
                Side.LEAST,
                places,
                points,
                figures(points, which, PartSize::least),
                Optional.of(limit),
                Optional.empty(),
                required))));
        upper.ifPresent(limit -> all.add(tracks.of(new TrackAsked(
                Side.GREATEST,
                places,
                points,
                figures(points, which, PartSize::greatest),
                Optional.empty(),
                Optional.of(limit),
                required))));
        return all;
    }

    private static List<BigDecimal> figures(List<PartPoint> points, SizeOf which, Function<PartSize, Length> figure) {
        return points.stream()
                .map(point -> point.figure(figure.apply(point.size(which))))
                .toList();
    }

    private Rejects rejects(List<PartPoint> points) {
        int stillToCut = count(points, PartStanding.STILL_TO_CUT);
        int unproven = (int) points.stream()
                .filter(point -> point.standing() == PartStanding.UNPROVEN && !point.isReject())
                .count();
        int rejects = (int) points.stream()
                .filter(point -> point.standing() != PartStanding.STILL_TO_CUT && point.isReject())
                .count();
        int n = points.size() - stillToCut - unproven;
        return new Rejects(n, rejects, unproven, stillToCut, n == 0 ? Optional.empty() : rate(n, rejects));
    }

    private static int count(List<PartPoint> points, PartStanding standing) {
        return (int)
                points.stream().filter(point -> point.standing() == standing).count();
    }

    private Optional<Rejects.Rate> rate(int n, int rejects) {
        Map<String, SumValue> keys = new LinkedHashMap<>();
        keys.put(ZeroRejectsSum.N.key(), AskedSum.figure(BigDecimal.valueOf(n)));
        keys.put(ZeroRejectsSum.REJECTS.key(), AskedSum.figure(BigDecimal.valueOf(rejects)));
        return AskedSum.of(sums, "zero-rejects", keys)
                .map(asked -> new Rejects.Rate(
                        asked.result().find(ZeroRejectsSum.LOWER).orElseThrow(),
                        asked.result().find(ZeroRejectsSum.UPPER).orElseThrow(),
                        asked));
    }
}
