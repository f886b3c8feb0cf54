package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.series.Drift.Shown;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.statistics.TrendSum;
import org.tenthwise.model.compute.statistics.DriftPower;
import org.tenthwise.model.compute.statistics.Trend;

/**
 * Asks the sums whether sizes go anywhere since the last break.
 *
 * <p>A line is drawn from five parts on. A part to measure before is named only where the drift is shown, not barely,
 * and goes to a limit: the lower end of the interval of a single part, rounded down; the limit is taken closer by the
 * uncertainty of a size, and nothing is looked ahead by more than the parts measured so far.
 */
final class DriftSums {

    private static final int FEWEST = 5;

    /** The drift a shop would want to hear of: in standard deviations over the parts measured. */
    private static final double DRIFT = 3;

    private static final double CONFIDENCE = 0.95;

    /** Above it the far ends of the intervals are not to be relied on; as {@code barely} in the sum. */
    private static final double BARELY = 0.2;

    private final Sums sums;

    DriftSums(Sums sums) {
        this.sums = sums;
    }

    Drift of(TrackAsked track, boolean coarse, boolean level) {
        if (track.n() < FEWEST) {
            return Drift.none(Shown.TOO_FEW, track.n());
        }
        if (coarse || level) {
            return Drift.none(level ? Shown.LEVEL : Shown.COARSE, track.n());
        }
        List<BigDecimal> x = track.places().stream().map(BigDecimal::valueOf).toList();
        Trend trend = Trend.of(x, track.figures());
        Map<String, SumValue> keys = new LinkedHashMap<>();
        keys.put(TrendSum.X.key(), AskedSum.figures(x));
        keys.put(TrendSum.Y.key(), AskedSum.figures(track.figures()));
        track.limitAhead(trend.slope().signum() > 0)
                .ifPresent(limit -> keys.put(TrendSum.LIMIT.key(), AskedSum.figure(limit)));
        return AskedSum.of(sums, "trend", keys)
                .map(asked -> drift(track, x, trend, asked))
                .orElseGet(() -> Drift.none(Shown.TOO_FEW, track.n()));
    }

    private static Drift drift(TrackAsked track, List<BigDecimal> x, Trend trend, AskedSum asked) {
        SumResult found = asked.result();
        Drift.SlopeLine line = new Drift.SlopeLine(
                found.find(TrendSum.SLOPE).orElseThrow(),
                found.find(TrendSum.SLOPE_LOW).orElseThrow(),
                found.find(TrendSum.SLOPE_HIGH).orElseThrow(),
                found.find(TrendSum.INTERCEPT).orElseThrow());
        boolean shown = line.low() > 0 || line.high() < 0;
        boolean barely = shown && found.find(TrendSum.G).filter(g -> g > BARELY).isPresent();
        return new Drift(
                shown ? Shown.SHOWN : Shown.NOT_SHOWN,
                track.n(),
                Optional.of(line),
                shown ? Optional.empty() : Optional.of(1 - DriftPower.of(trend, x, DRIFT, CONFIDENCE)),
                shown && !barely ? measureBefore(track, found) : Optional.empty(),
                barely,
                Optional.of(asked));
    }

    private static Optional<Integer> measureBefore(TrackAsked track, SumResult found) {
        int last = track.lastPlace();
        int furthest = last + track.n();
        return found.find(TrendSum.SINGLE_LOW).map(low -> {
            BigDecimal part = new BigDecimal(low).setScale(0, RoundingMode.FLOOR);
            return part.max(BigDecimal.valueOf(last + 1L))
                    .min(BigDecimal.valueOf(furthest))
                    .intValueExact();
        });
    }
}
