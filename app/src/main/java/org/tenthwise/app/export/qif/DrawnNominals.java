package org.tenthwise.app.export.qif;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.callout.CalloutPart;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.words.Refused;

/**
 * The nominal size that stands on the drawing, where the words of the plan have it: read only from one callout whose
 * limits are those of the plan, so that no size is made up.
 */
final class DrawnNominals {

    private final CalloutReader reader;

    /** @param unit of the drawing */
    DrawnNominals(Unit unit) {
        this.reader = new CalloutReader(unit, Optional.empty());
    }

    /** In the unit of the limits, angles in degrees; absent where the drawing gives limits alone. */
    Optional<BigDecimal> of(Step step) {
        return step.limits().flatMap(limits -> part(step.drawing().requirement(), limits)
                .flatMap(part -> part.nominal().map(nominal -> inDegrees(nominal, limits.unit()))));
    }

    private static BigDecimal inDegrees(BigDecimal nominal, Unit unit) {
        return unit.hasMarksInside() ? Written.of(nominal, unit).length().in(Unit.DEGREE) : nominal;
    }

    private Optional<CalloutPart> part(String requirement, Limits limits) {
        if (requirement.isBlank()) {
            return Optional.empty();
        }
        try {
            List<CalloutPart> parts = reader.read(requirement).parts();
            return parts.stream().findFirst().filter(part -> parts.size() == 1).filter(part -> part.limits()
                    .filter(read -> isSame(read, limits))
                    .isPresent());
        } catch (Refused e) {
            return Optional.empty();
        }
    }

    private static boolean isSame(Limits read, Limits planned) {
        return read.unit().equals(planned.unit())
                && isSame(read.lower(), planned.lower())
                && isSame(read.upper(), planned.upper());
    }

    private static boolean isSame(Optional<Written> one, Optional<Written> other) {
        return one.isPresent() == other.isPresent()
                && one.flatMap(here -> other.map(there -> here.length().compareTo(there.length()) == 0))
                        .orElse(true);
    }
}
