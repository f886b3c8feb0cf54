package org.tenthwise.app.sums.handbook;

import java.util.List;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.cutting.CuttingSums;
import org.tenthwise.app.sums.decision.DecisionSums;
import org.tenthwise.app.sums.fit.FitSums;
import org.tenthwise.app.sums.gauge.GaugeSums;
import org.tenthwise.app.sums.statistics.StatisticsSums;
import org.tenthwise.app.sums.temperature.TemperatureSums;
import org.tenthwise.app.sums.thread.ThreadSums;

/** Where every sum of the shop can be looked up. */
public final class Handbook {

    private Handbook() {}

    public static Sums sums() {
        return new Sums(List.of(
                ThreadSums.all(),
                FitSums.all(),
                GaugeSums.all(),
                TemperatureSums.all(),
                DecisionSums.all(),
                CuttingSums.all(),
                StatisticsSums.all()));
    }
}
