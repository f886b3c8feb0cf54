package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.thread.limits.LimitsBasis;
import org.tenthwise.model.compute.thread.limits.LimitsRemark;
import org.tenthwise.model.compute.thread.limits.ThreadLimits;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadSide;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.tolerance.Origin;
import org.tenthwise.model.words.Message;

/** An external thread by its designation, in place of its form, sizes and, if it stands in the standard, limits. */
final class DesignationRules {

    static final String DESIGNATION = "designation";

    private DesignationRules() {}

    static Optional<ThreadDesignation> read(TableKeys keys) {
        List.of("form", "diameter", "pitch", "threads_per_inch", "starts")
                .forEach(key -> keys.ifAny(key, there -> {
                    keys.problem(there, "plan.thread.said-by-designation", there);
                    return Optional.empty();
                }));
        return keys.text(DESIGNATION)
                .flatMap(text -> keys.sensible(
                        DESIGNATION, () -> ThreadDesignation.read(text).on(ThreadSide.EXTERNAL)));
    }

    /**
     * Whether limits stand beside the designation, both of them: one from the drawing and one from a standard would not
     * go together.
     */
    static boolean limitsWritten(TableKeys keys) {
        if (keys.has("lower") != keys.has("upper")) {
            keys.problem(DESIGNATION, "plan.thread.both-limits");
        }
        return keys.has("lower") || keys.has("upper");
    }

    /**
     * Limits of the pitch diameter by the standard. A thread the standard does not list has none: what its formulas
     * come to is a proposal, and the drawing has the last word.
     */
    static Optional<Limits> limits(TableKeys keys, ThreadDesignation designation, Unit unit) {
        String standard = designation.thread().form().limitsStandard();
        return keys.sensible(DESIGNATION, () -> ThreadLimits.of(designation)).flatMap(found -> {
            if (!found.unit().equals(unit)) {
                keys.problem(DESIGNATION, "plan.thread.other-unit", standard, found.unit(), unit);
                return Optional.empty();
            }
            Written least = written(found.pitchMin(), found);
            Written most = written(found.pitchMax(), found);
            if (found.standing() == LimitsBasis.PROPOSAL) {
                keys.problem(DESIGNATION, "plan.thread.not-listed", standard, least.text(), most);
                return Optional.empty();
            }
            Message by = Message.ofValue("plan.limits-by", found.standing(), standard);
            Message from =
                    found.remarks().contains(LimitsRemark.RECALLED) ? Message.of("plan.limits-recalled", by) : by;
            return keys.text(DESIGNATION)
                    .map(text ->
                            new Limits(Optional.of(least), Optional.of(most), Optional.of(new Origin(text, from))));
        });
    }

    private static Written written(Length size, ThreadLimits limits) {
        return Written.of(size.in(limits.unit()).setScale(limits.places()), limits.unit());
    }
}
