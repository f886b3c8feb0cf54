package org.tenthwise.app.sums.statistics;

import java.util.List;
import org.tenthwise.app.sums.Sum;

/** The sums of this package. */
public final class StatisticsSums {

    private StatisticsSums() {}

    public static List<Sum> all() {
        return List.of(
                new SummarySum(),
                new IndividualsSum(),
                new CapabilitySum(),
                new TrendSum(),
                new GaugeStudySum(),
                new OutlierSum(),
                new ZeroRejectsSum(),
                new ToleranceIntervalSum(),
                new ChartConstantsSum(),
                new TypeOneSum());
    }
}
