package org.tenthwise.checklists.rules;

import java.util.Optional;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/**
 * Two limits, of which one may be left out.
 *
 * @param lowerKey key of the lower limit
 * @param lowerWords what a person calls it: "lower limit"
 */
record LimitRules(String lowerKey, String lowerWords, String upperKey, String upperWords) {

    static final LimitRules OF_A_SIZE = new LimitRules("lower", "lower limit", "upper", "upper limit");
    static final LimitRules OF_A_CLEARANCE =
            new LimitRules("clearance_least", "least clearance", "clearance_greatest", "greatest clearance");

    Optional<Limits> read(TableKeys keys, Unit unit) {
        Optional<Written> lower = keys.ifAny(lowerKey, key -> keys.figure(key, unit));
        Optional<Written> upper = keys.ifAny(upperKey, key -> keys.figure(key, unit));
        if (!keys.has(lowerKey) && !keys.has(upperKey)) {
            keys.problem(
                    keys.spot(),
                    "\"%s\" and \"%s\" are missing; one of them at least is needed".formatted(lowerKey, upperKey));
            return Optional.empty();
        }
        if (keys.has(lowerKey) != lower.isPresent() || keys.has(upperKey) != upper.isPresent()) {
            return Optional.empty();
        }
        if (lower.isPresent()
                && upper.isPresent()
                && upper.get().length().isBelow(lower.get().length())) {
            keys.problem(upperKey, "%s %s is below %s %s".formatted(upperWords, upper.get(), lowerWords, lower.get()));
            return Optional.empty();
        }
        if (lower.isPresent()
                && upper.isPresent()
                && upper.get().length().equals(lower.get().length())) {
            keys.problemUnlessKept(
                    upperKey,
                    "%s and %s are both %s, which leaves no tolerance; write both as the drawing has them"
                            .formatted(lowerWords, upperWords, upper.get()));
        }
        return Optional.of(new Limits(lower, upper));
    }

    /** As {@link #read}, of something that cannot be less than zero. */
    Optional<Limits> readOfASize(TableKeys keys, Unit unit) {
        Optional<Limits> limits = read(keys, unit);
        limits.flatMap(Limits::lower)
                .filter(lower -> lower.figure().signum() < 0)
                .ifPresent(lower -> keys.problem(lowerKey, "%s %s is below nought".formatted(lowerWords, lower)));
        limits.flatMap(Limits::upper)
                .filter(upper -> upper.figure().signum() <= 0)
                .ifPresent(upper -> keys.problem(upperKey, "%s %s is not above nought".formatted(upperWords, upper)));
        return limits;
    }
}
