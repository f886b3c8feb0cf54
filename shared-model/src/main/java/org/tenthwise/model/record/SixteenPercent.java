package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import org.tenthwise.model.compute.roughness.RoughnessStanding;
import org.tenthwise.model.compute.roughness.SixteenPercentRule;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * The roughness values of a pass by the 16 % rule, the worst first: a value that was measured counts, whether or not
 * the rule would have asked for it. Where one was struck out, it is measured again before anything passes.
 *
 * <p>No more than so many may lie over the limit where the greatest but so many does not: that one decides.
 *
 * @param stillToMeasure values at the least before it can pass
 * @param deciding while it is open the greatest
 */
record SixteenPercent(int stillToMeasure, Measured deciding) {

    /** @param measured in slot order; not empty */
    static SixteenPercent of(CheckOfDimension check, List<Measured> measured) {
        List<Measured> worstFirst = measured.stream()
                .sorted(Comparator.comparing(Measured::value).reversed())
                .toList();
        RoughnessStanding standing = standing(check, worstFirst);
        boolean failed = standing.verdict() == VerdictKind.FAIL;
        int still = failed ? 0 : Math.max(standing.stillToMeasure(), struckOut(check, measured));
        return new SixteenPercent(still, worstFirst.get(still > 0 ? 0 : standing.allowedOver()));
    }

    /** Values still to measure at the least. */
    static int missing(CheckOfDimension check, List<Measured> measured) {
        return measured.isEmpty() ? 1 : of(check, measured).stillToMeasure;
    }

    private static RoughnessStanding standing(CheckOfDimension check, List<Measured> worstFirst) {
        Written limit = check.limits().upper().orElseThrow();
        List<BigDecimal> values =
                worstFirst.stream().map(read -> read.value().in(limit.unit())).toList();
        return SixteenPercentRule.of(values, limit.figure());
    }

    /** How many places before the last that was read are free again. */
    private static int struckOut(CheckOfDimension check, List<Measured> measured) {
        List<String> slots = check.slots().stream().map(Slot::key).toList();
        int last = slots.indexOf(measured.get(measured.size() - 1).slot().key());
        return last + 1 - measured.size();
    }
}
