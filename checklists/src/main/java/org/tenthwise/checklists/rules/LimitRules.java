package org.tenthwise.checklists.rules;

import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Message;

/**
 * Two limits, of which one may be left out.
 *
 * @param lowerKey key of the lower limit; what a person calls it is a text below {@code plan.limit}
 */
record LimitRules(String lowerKey, String upperKey) {

    static final LimitRules OF_A_SIZE = new LimitRules("lower", "upper");
    static final LimitRules OF_A_CLEARANCE = new LimitRules("clearance_least", "clearance_greatest");

    Optional<Limits> read(TableKeys keys, Unit unit) {
        Optional<Written> lower = keys.ifAny(lowerKey, key -> keys.figure(key, unit));
        Optional<Written> upper = keys.ifAny(upperKey, key -> keys.figure(key, unit));
        if (!keys.has(lowerKey) && !keys.has(upperKey)) {
            keys.problem(keys.spot(), "plan.limits.missing", lowerKey, upperKey);
            return Optional.empty();
        }
        if (keys.has(lowerKey) != lower.isPresent() || keys.has(upperKey) != upper.isPresent()) {
            return Optional.empty();
        }
        if (lower.isPresent()
                && upper.isPresent()
                && upper.get().length().isBelow(lower.get().length())) {
            keys.problem(upperKey, "plan.limits.crossed", named(upperKey), upper.get(), named(lowerKey), lower.get());
            return Optional.empty();
        }
        if (lower.isPresent()
                && upper.isPresent()
                && upper.get().length().equals(lower.get().length())) {
            keys.problemUnlessKept(upperKey, "plan.limits.equal", named(lowerKey), named(upperKey), upper.get());
        }
        return Optional.of(new Limits(lower, upper));
    }

    /** As {@link #read}, of something that cannot be less than zero. */
    Optional<Limits> readOfASize(TableKeys keys, Unit unit) {
        Optional<Limits> limits = read(keys, unit);
        limits.flatMap(Limits::lower)
                .filter(lower -> lower.figure().signum() < 0)
                .ifPresent(lower -> keys.problem(lowerKey, "plan.limits.negative", named(lowerKey), lower));
        limits.flatMap(Limits::upper)
                .filter(upper -> upper.figure().signum() <= 0)
                .ifPresent(upper -> keys.problem(upperKey, "plan.limits.nothing", named(upperKey), upper));
        return limits;
    }

    private static Message named(String key) {
        return Message.of("plan.limit." + key);
    }
}
