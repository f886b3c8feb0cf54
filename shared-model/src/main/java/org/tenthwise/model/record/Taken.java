package org.tenthwise.model.record;

import java.util.Optional;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;

/**
 * Something taken in a pass: a reading, a temperature, an answer or a paper.
 *
 * @param setting of the gauge it was taken with; absent where there is none, or none was set
 * @param calibrated by what certificates; absent where {@code setting} is
 * @param struck absent where it was not struck out
 * @param counts whether the pass is judged by it
 */
public record Taken<T>(
        Entry entry,
        T what,
        Optional<Setting> setting,
        Optional<Calibrated> calibrated,
        Optional<Pass.Struck> struck,
        boolean counts) {

    /** Whether it does not count though nobody struck it out: it was taken again, or read on after it was answered. */
    public boolean isReplaced() {
        return !counts && struck.isEmpty();
    }
}
