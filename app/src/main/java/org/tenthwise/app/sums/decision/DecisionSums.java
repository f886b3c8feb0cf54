package org.tenthwise.app.sums.decision;

import java.util.List;
import org.tenthwise.app.sums.Sum;

/** The sums of this package. */
public final class DecisionSums {

    private DecisionSums() {}

    public static List<Sum> all() {
        return List.of(
                new JudgeSum(),
                new RiskSum(),
                new UncertaintySum(),
                new GuardBandSum(),
                new RoundingMethodSum(),
                new ResolutionSum());
    }
}
