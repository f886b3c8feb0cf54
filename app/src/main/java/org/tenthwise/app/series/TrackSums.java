package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.series.CapabilityShown.Furthest;
import org.tenthwise.app.series.CapabilityShown.Standing;
import org.tenthwise.app.series.Drift.Shown;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.statistics.CapabilitySum;
import org.tenthwise.app.sums.statistics.IndividualsSum;
import org.tenthwise.app.sums.statistics.SampleInputs;
import org.tenthwise.app.sums.statistics.SummarySum;
import org.tenthwise.model.compute.statistics.CapabilityVerdict;
import org.tenthwise.model.compute.statistics.Individuals.LimitsStanding;
import org.tenthwise.model.compute.statistics.Interval;
import org.tenthwise.model.compute.statistics.Steadiness;
import org.tenthwise.model.compute.statistics.Summary;

/** Asks the sums what one figure of each part shows, and keeps to itself what means nothing of so few parts. */
final class TrackSums {

    /** Below it a mean is hardly more than one of the parts. */
    private static final int FEWEST_FOR_A_MEAN = 3;

    /** Below it the interval of an index is wider than anything it could be held against. */
    private static final int FEWEST_FOR_AN_INDEX = 10;

    private final Sums sums;
    private final DriftSums drifts;

    TrackSums(Sums sums) {
        this.sums = sums;
        this.drifts = new DriftSums(sums);
    }

    Track of(TrackAsked track) {
        Summary summary = Summary.of(track.figures());
        boolean level = track.n() > 1 && summary.range().signum() == 0;
        boolean coarse = summary.coarse() && !level;
        Drift drift = drifts.of(track, coarse, level);
        return new Track(
                track.side(),
                track.places(),
                track.figures(),
                track.lowerFigure(),
                track.upperFigure(),
                coarse,
                level,
                mean(track, coarse || level),
                drift,
                coarse || level ? Optional.empty() : limits(track.figures()),
                capability(track, drift, coarse || level));
    }

    private Optional<Mean> mean(TrackAsked track, boolean noSpread) {
        return track.n() < FEWEST_FOR_A_MEAN
                ? Optional.empty()
                : AskedSum.of(sums, "summary", values(track.figures()))
                        .map(asked -> new Mean(
                                track.n(),
                                asked.result().find(SummarySum.MEAN).orElseThrow(),
                                asked.result().find(SummarySum.SD).filter(sd -> !noSpread),
                                asked));
    }

    /** Of figures of several sizes: absent where they are coarse or level, too. */
    Optional<ControlLimits> chartLimits(List<BigDecimal> figures) {
        return figures.isEmpty()
                        || Summary.of(figures).coarse()
                        || Summary.of(figures).range().signum() == 0
                ? Optional.empty()
                : limits(figures);
    }

    /** Absent below ten figures. */
    private Optional<ControlLimits> limits(List<BigDecimal> figures) {
        return figures.size() < 2
                ? Optional.empty()
                : AskedSum.of(sums, "individuals", values(figures)).flatMap(asked -> limits(figures.size(), asked));
    }

    private static Optional<ControlLimits> limits(int n, AskedSum asked) {
        SumResult found = asked.result();
        LimitsStanding standing = found.find(IndividualsSum.STANDING).orElseThrow();
        return standing == LimitsStanding.NONE
                ? Optional.empty()
                : Optional.of(new ControlLimits(
                        n,
                        found.find(IndividualsSum.LOWER).orElseThrow(),
                        found.find(IndividualsSum.CENTRE).orElseThrow(),
                        found.find(IndividualsSum.UPPER).orElseThrow(),
                        found.find(IndividualsSum.MEAN_MOVING_RANGE).orElseThrow(),
                        found.find(IndividualsSum.MOVING_RANGE_UPPER).orElseThrow(),
                        standing,
                        asked));
    }

    private CapabilityShown capability(TrackAsked track, Drift drift, boolean noSpread) {
        int n = track.n();
        Optional<Furthest> furthest = furthest(track);
        if (!track.canHaveAnIndex()) {
            return CapabilityShown.none(Standing.NOT_FOR_THIS, n, track.required(), furthest);
        }
        if (n < FEWEST_FOR_AN_INDEX) {
            return CapabilityShown.none(Standing.NO_INDEX_YET, n, track.required(), furthest);
        }
        if (noSpread) {
            return CapabilityShown.none(Standing.COARSE, n, track.required(), furthest);
        }
        Map<String, SumValue> keys = values(track.figures());
        track.lowerFigure().ifPresent(limit -> keys.put(CapabilitySum.LOWER.key(), AskedSum.figure(limit)));
        track.upperFigure().ifPresent(limit -> keys.put(CapabilitySum.UPPER.key(), AskedSum.figure(limit)));
        keys.put(CapabilitySum.REQUIRED.key(), AskedSum.figure(track.required()));
        boolean drifting = drift.shown() == Shown.SHOWN || Steadiness.unsteady(track.figures());
        return AskedSum.of(sums, "capability", keys)
                .map(asked -> shown(track, drifting, furthest, asked))
                .orElseGet(() -> CapabilityShown.none(Standing.NOT_FOR_THIS, n, track.required(), furthest));
    }

    private static CapabilityShown shown(
            TrackAsked track, boolean drifting, Optional<Furthest> furthest, AskedSum asked) {
        SumResult found = asked.result();
        Standing said =
                switch (found.find(CapabilitySum.VERDICT).orElse(CapabilityVerdict.TOO_FEW)) {
                    case SUPPORTS -> Standing.SUPPORTS;
                    case CONTRADICTS -> Standing.CONTRADICTS;
                    case TOO_FEW -> Standing.TOO_FEW;
                };
        return new CapabilityShown(
                drifting ? Standing.DRIFTING : said,
                track.n(),
                found.find(CapabilitySum.CPK),
                Optional.of(new Interval(
                        found.find(CapabilitySum.CPK_LOW).orElseThrow(),
                        found.find(CapabilitySum.CPK_HIGH).orElseThrow())),
                track.required(),
                furthest,
                Optional.of(asked));
    }

    private static Optional<Furthest> furthest(TrackAsked track) {
        return track.lowerFigure().flatMap(lower -> track.upperFigure()
                .filter(upper -> lower.compareTo(upper) < 0)
                .map(upper -> Furthest.of(track.figures(), lower, upper)));
    }

    private static Map<String, SumValue> values(List<BigDecimal> figures) {
        Map<String, SumValue> keys = new LinkedHashMap<>();
        keys.put(SampleInputs.VALUES.key(), AskedSum.figures(figures));
        return keys;
    }
}
