package org.tenthwise.app.series;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.tenthwise.app.history.RunFacts;

/**
 * Counsel a part has to be measured again where sizes drift to a limit. Leave to pass parts over is given only of sizes
 * as they were cut, while nothing changed, every part since the last break is shown to be in, all were read with gauges
 * in date, and the last one within these hours. Everything else says that the next part is measured, or says nothing.
 *
 * @param parts how many may be made unmeasured at {@link Counsel#AFTER}; how many parts behind the last one a limit may
 *     be met at {@link Counsel#ON_PAPER}; otherwise 0
 * @param last the part it is counted from
 */
public record MeasureAgain(Counsel counsel, int parts, PartPoint last) {

    /** What is to be done, or why nothing can be said of more than the next part. */
    public enum Counsel {
        /** After so many parts more, one at least. */
        AFTER,
        /** The next part may be out already. */
        NEXT_MAY_BE_OUT,
        /** One of the parts is out, conceded, unproven, or still to be cut. */
        NOT_ALL_IN,
        /** Somebody told of another tool behind the last reading. */
        TOOL_SINCE,
        /** A part of this number, or any on the same machine, was begun behind the last reading. */
        BEGUN_SINCE,
        /** The last part was read too long ago. */
        LONG_AGO,
        /** One of the parts was read with a gauge, or a gauge on a master, that was past its due day. */
        GAUGE_PAST_DUE,
        /** Read at another station, of which nobody here knows how far it is by now. */
        ELSEWHERE,
        /** Nobody knows when it is read: it says where the line meets the limit and gives no leave. */
        ON_PAPER
    }

    /** Longer than any shift: what stood cold overnight cuts another size. Common practice. */
    private static final Duration OF_A_SHIFT = Duration.ofHours(12);

    /**
     * What is said behind the last part of a series; absent where no drift names a part, and where the parts are not
     * those since the last break.
     *
     * @param begunSince runs on the part or its machine that were begun behind the last reading
     * @param pastDue whether one of the parts was read with a gauge past its due day
     * @param now absent on paper
     */
    public static Optional<MeasureAgain> of(
            Series series, SegmentSums sums, List<RunFacts> begunSince, boolean pastDue, Optional<OffsetDateTime> now) {
        OptionalInt before = before(sums);
        if (before.isEmpty() || sums.of() != SizeOf.AS_CUT || !isSinceTheLastBreak(series, sums.segment())) {
            return Optional.empty();
        }
        PartPoint last = series.points().get(series.points().size() - 1);
        int more = before.getAsInt() - 1 - sums.segment().points().size();
        Counsel counsel = now.map(time -> counsel(series, sums.segment(), last, begunSince, pastDue, more, time))
                .orElse(Counsel.ON_PAPER);
        return Optional.of(
                switch (counsel) {
                    case AFTER -> new MeasureAgain(counsel, more, last);
                    case ON_PAPER -> new MeasureAgain(counsel, Math.max(1, more + 1), last);
                    default -> new MeasureAgain(counsel, 0, last);
                });
    }

    /** The first of the parts that the figures name; absent where one of them is too uncertain. */
    private static OptionalInt before(SegmentSums sums) {
        return sums.tracks().stream().anyMatch(track -> track.drift().uncertain())
                ? OptionalInt.empty()
                : sums.tracks().stream()
                        .flatMap(track -> track.drift().measureBefore().stream())
                        .mapToInt(Integer::intValue)
                        .min();
    }

    private static boolean isSinceTheLastBreak(Series series, Segment segment) {
        return segment.from() + segment.points().size() == series.points().size()
                && series.breaks().stream().allMatch(broken -> broken.before() <= segment.from());
    }

    private static Counsel counsel(
            Series series,
            Segment segment,
            PartPoint last,
            List<RunFacts> begunSince,
            boolean pastDue,
            int more,
            OffsetDateTime now) {
        if (last.run().isImported()) {
            return Counsel.ELSEWHERE;
        }
        if (series.toolSince()) {
            return Counsel.TOOL_SINCE;
        }
        if (!begunSince.isEmpty()) {
            return Counsel.BEGUN_SINCE;
        }
        if (more < 1) {
            return Counsel.NEXT_MAY_BE_OUT;
        }
        if (segment.points().stream().anyMatch(point -> point.standing() != PartStanding.IN || point.isReject())) {
            return Counsel.NOT_ALL_IN;
        }
        if (pastDue) {
            return Counsel.GAUGE_PAST_DUE;
        }
        Duration age = Duration.between(last.at(), now);
        return age.isNegative() || age.compareTo(OF_A_SHIFT) > 0 ? Counsel.LONG_AGO : Counsel.AFTER;
    }
}
