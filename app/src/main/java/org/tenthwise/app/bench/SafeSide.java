package org.tenthwise.app.bench;

import java.math.RoundingMode;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.chain.StackSum;
import org.tenthwise.app.sums.cutting.DrillSetSum;
import org.tenthwise.app.sums.cutting.NextCutSum;
import org.tenthwise.app.sums.fit.FitSum;
import org.tenthwise.app.sums.fit.LimitsSum;
import org.tenthwise.app.sums.gauging.GaugeToleranceSum;
import org.tenthwise.app.sums.position.PositionSum;
import org.tenthwise.app.sums.thread.ThreadLimitsSum;
import org.tenthwise.app.sums.thread.WireInputs;

/** Which way a figure is rounded, so that whoever works to what is shown is inside what was worked out. */
final class SafeSide {

    private static final Set<String> NO_MORE = keys(
            LimitsSum.GREATEST,
            LimitsSum.UPPER_DEVIATION,
            ThreadLimitsSum.MAJOR_MAX,
            ThreadLimitsSum.PITCH_MAX,
            ThreadLimitsSum.MINOR_MAX,
            WireInputs.WIRE_GREATEST,
            WireInputs.ROOT_CLEARANCE,
            NextCutSum.SAFE_CUT,
            FitSum.CLEARANCE_LEAST,
            FitSum.CLEARANCE_NOW_LEAST,
            PositionSum.ALLOWED,
            PositionSum.BONUS,
            StackSum.WORST_LEAST,
            StackSum.RSS_LEAST,
            GaugeToleranceSum.EACH_MEMBER);

    private static final Set<String> NO_LESS = keys(
            LimitsSum.LEAST,
            LimitsSum.LOWER_DEVIATION,
            ThreadLimitsSum.MAJOR_MIN,
            ThreadLimitsSum.PITCH_MIN,
            ThreadLimitsSum.MINOR_MIN,
            WireInputs.WIRE_LEAST,
            DrillSetSum.LEAST_REACH,
            FitSum.CLEARANCE_GREATEST,
            FitSum.CLEARANCE_NOW_GREATEST,
            PositionSum.DEVIATION,
            StackSum.WORST,
            StackSum.WORST_GREATEST,
            StackSum.ROOT_SUM_SQUARE,
            StackSum.RSS_GREATEST);

    private SafeSide() {}

    private static Set<String> keys(Output<?>... outputs) {
        return Stream.of(outputs).map(Output::key).collect(Collectors.toUnmodifiableSet());
    }

    static RoundingMode of(Output<?> output) {
        return NO_MORE.contains(output.key())
                ? RoundingMode.FLOOR
                : NO_LESS.contains(output.key()) ? RoundingMode.CEILING : RoundingMode.HALF_UP;
    }
}
