package org.tenthwise.model.compute.thread.limits;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Limits being put together in the unit of their standard. */
final class LimitsBuilder {

    private final Unit unit;
    private final List<LimitsRemark> remarks = new ArrayList<>();
    private Optional<Length> majorMax = Optional.empty();
    private Optional<Length> majorMin = Optional.empty();
    private Optional<Length> minorMax = Optional.empty();
    private Optional<Length> minorMin = Optional.empty();

    LimitsBuilder(Unit unit) {
        this.unit = unit;
    }

    LimitsBuilder major(BigDecimal greatest, BigDecimal least) {
        majorMax = Optional.of(length(greatest));
        return majorLeast(least);
    }

    LimitsBuilder majorLeast(BigDecimal least) {
        majorMin = Optional.of(length(least));
        return this;
    }

    LimitsBuilder minor(BigDecimal greatest, BigDecimal least) {
        minorMin = Optional.of(length(least));
        return minorGreatest(greatest);
    }

    LimitsBuilder minorGreatest(BigDecimal greatest) {
        minorMax = Optional.of(length(greatest));
        return this;
    }

    LimitsBuilder remark(boolean holds, LimitsRemark remark) {
        if (holds) {
            remarks.add(remark);
        }
        return this;
    }

    /** @param sure what the limits rest on if nothing that was remarked makes them a proposal */
    ThreadLimits withPitch(BigDecimal greatest, BigDecimal least, BigDecimal allowance, LimitsBasis sure) {
        LimitsBasis standing = remarks.stream().anyMatch(LimitsRemark::isDoubt) ? LimitsBasis.PROPOSAL : sure;
        return new ThreadLimits(
                majorMax,
                majorMin,
                length(greatest),
                length(least),
                minorMax,
                minorMin,
                length(allowance),
                unit,
                standing,
                remarks);
    }

    private Length length(BigDecimal figure) {
        return Length.of(figure, unit);
    }
}
