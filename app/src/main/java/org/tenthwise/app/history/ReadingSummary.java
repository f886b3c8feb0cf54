package org.tenthwise.app.history;

import java.time.OffsetDateTime;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * One reading of a run, whether it counts or not.
 *
 * @param seq place in the ledger
 * @param step number of the step
 * @param pass number of the pass it belongs to
 * @param replaced whether another pass came after that
 * @param value the size it stands for; absent where it does not count
 * @param places the size is written with
 * @param alone the verdict on it by itself; absent where it does not count, or several are judged together
 * @param struck why it was struck out, by itself or with the setting of its gauge
 */
public record ReadingSummary(
        long seq,
        int step,
        int pass,
        boolean replaced,
        String place,
        int repeat,
        Written typed,
        Optional<Length> value,
        int places,
        Optional<VerdictKind> alone,
        Optional<GaugeMark> gauge,
        String by,
        OffsetDateTime at,
        Optional<String> struck) {

    /** A gauge as people know it. */
    public record GaugeMark(String kind, String mark) {}
}
