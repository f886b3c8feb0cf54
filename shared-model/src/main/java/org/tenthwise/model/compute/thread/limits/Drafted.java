package org.tenthwise.model.compute.thread.limits;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Limits being put together in the unit of their standard. */
final class Drafted {

    private final Unit unit;
    private final List<Remark> remarks = new ArrayList<>();
    private Optional<Length> majorMax = Optional.empty();
    private Optional<Length> majorMin = Optional.empty();
    private Optional<Length> minorMax = Optional.empty();
    private Optional<Length> minorMin = Optional.empty();

    Drafted(Unit unit) {
        this.unit = unit;
    }

    Drafted major(BigDecimal greatest, BigDecimal least) {
        majorMax = Optional.of(length(greatest));
        return majorLeast(least);
    }

    Drafted majorLeast(BigDecimal least) {
        majorMin = Optional.of(length(least));
        return this;
    }

    Drafted minor(BigDecimal greatest, BigDecimal least) {
        minorMin = Optional.of(length(least));
        return minorGreatest(greatest);
    }

    Drafted minorGreatest(BigDecimal greatest) {
        minorMax = Optional.of(length(greatest));
        return this;
    }

    Drafted remark(boolean holds, Remark remark) {
        if (holds) {
            remarks.add(remark);
        }
        return this;
    }

    /** @param sure what the limits rest on if nothing that was remarked makes them a proposal */
    ThreadLimits withPitch(BigDecimal greatest, BigDecimal least, BigDecimal allowance, Standing sure) {
        Standing standing = remarks.stream().anyMatch(Remark::isDoubt) ? Standing.PROPOSAL : sure;
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
