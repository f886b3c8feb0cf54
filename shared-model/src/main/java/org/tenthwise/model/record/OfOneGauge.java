package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Run;

/**
 * Of what an indicator shows over a sweep only figures of one gauge stand beside each other: those of another, or of
 * the same one set anew, differ from them by nothing of the work. Those of the gauge that was read last count, place by
 * place where each place is judged, and over all of them where they are judged together; what was read with another is
 * still to be read.
 */
final class OfOneGauge {

    private OfOneGauge() {}

    /** As it is for everything else: a size is the same whatever it was read with. */
    static List<Measured> of(Step step, CheckOfDimension check, List<Measured> measured, Run run) {
        if (check.asIndicated().isEmpty()) {
            return measured;
        }
        boolean together = check.combine() == Combine.RANGE;
        return measured.stream()
                .filter(one -> set(one, step, run)
                        .equals(set(
                                measured.stream()
                                        .filter(other -> together
                                                || other.slot()
                                                        .place()
                                                        .equals(one.slot().place()))
                                        .max(Comparator.comparingLong(
                                                other -> other.reading().entry().seq()))
                                        .orElseThrow(),
                                step,
                                run)))
                .toList();
    }

    private static Optional<Entry> set(Measured measured, Step step, Run run) {
        return run.gauges().setBefore(measured.reading().entry(), step);
    }
}
