package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Combine;

/**
 * Of what an indicator shows over a sweep only figures of one gauge stand beside each other: those of another, or of
 * the same one set anew, differ from them by nothing of the work. Those of the gauge that was read last count, place by
 * place where each place is judged, and over all of them where they are judged together; what was read with another is
 * still to be read.
 */
final class OfOneGauge {

    private OfOneGauge() {}

    /** As it is for everything else: a size is the same whatever it was read with. */
    static List<Measured> of(CheckOfDimension check, List<Measured> measured) {
        if (check.asIndicated().isEmpty()) {
            return measured;
        }
        boolean together = check.combine() == Combine.RANGE;
        return measured.stream()
                .filter(one -> setting(one)
                        .equals(setting(measured.stream()
                                .filter(other -> together
                                        || other.slot()
                                                .place()
                                                .equals(one.slot().place()))
                                .max(Comparator.comparingLong(
                                        other -> other.reading().entry().seq()))
                                .orElseThrow())))
                .toList();
    }

    private static Optional<Setting> setting(Measured measured) {
        return measured.reading().setting();
    }
}
