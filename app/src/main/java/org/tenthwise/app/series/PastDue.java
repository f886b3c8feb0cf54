package org.tenthwise.app.series;

import java.util.List;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.Matter;
import org.tenthwise.app.history.MatterKind;

/** Whether parts were read with gauges past their due days, whoever signed for it since. */
public final class PastDue {

    private PastDue() {}

    /** Of a part with such a master in its run it is not told on which check that was: it counts at all of them. */
    public static boolean isAnyOf(History history, Segment segment) {
        List<History.InRun> found = history.matters().stream()
                .filter(open -> open.matter().kind() == MatterKind.GAUGE_PAST_DUE)
                .toList();
        return segment.points().stream().anyMatch(point -> found.stream()
                .filter(open -> open.run().id().equals(point.run().id()))
                .anyMatch(open -> isOf(history, point, open.matter())));
    }

    private static boolean isOf(History history, PartPoint point, Matter past) {
        return point.gauges().stream().anyMatch(gauge -> gauge.mark().equals(past.about()))
                || !history.runsSetOn(past.about()).isEmpty();
    }
}
