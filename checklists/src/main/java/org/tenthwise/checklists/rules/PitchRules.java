package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;

/** The pitch of a thread, as a length or as threads per inch, and its starts. */
final class PitchRules {

    private static final String PITCH = "pitch";
    private static final String THREADS_PER_INCH = "threads_per_inch";
    private static final String STARTS = "starts";

    private PitchRules() {}

    static Optional<Length> pitch(TableKeys keys, Unit unit) {
        Optional<Length> pitch = keys.ifAny(PITCH, key -> keys.size(key, unit)).map(Written::length);
        Optional<Length> fromCount = keys.ifAny(THREADS_PER_INCH, keys::number).flatMap(count -> pitch(keys, count));
        if (keys.has(PITCH) == keys.has(THREADS_PER_INCH)) {
            keys.problem(THREADS_PER_INCH, keys.has(PITCH) ? "plan.thread.pitch-twice" : "plan.thread.pitch-missing");
            return Optional.empty();
        }
        return pitch.or(() -> fromCount);
    }

    private static Optional<Length> pitch(TableKeys keys, BigDecimal threadsPerInch) {
        if (threadsPerInch.signum() <= 0) {
            keys.problem(THREADS_PER_INCH, "plan.above-zero", THREADS_PER_INCH, threadsPerInch);
            return Optional.empty();
        }
        return Optional.of(Length.of("1", Unit.INCH).dividedBy(threadsPerInch));
    }

    /** One where the plan is silent; less is noted. */
    static int starts(TableKeys keys) {
        int starts = keys.ifAny(STARTS, keys::whole).orElse(1);
        if (starts < 1) {
            keys.problem(STARTS, "plan.thread.starts", starts);
        }
        return starts;
    }
}
