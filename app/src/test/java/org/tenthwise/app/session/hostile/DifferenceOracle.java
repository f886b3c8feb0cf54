package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** The greatest of one size less the least of another, and the other way round: both are inside, both sizes whole. */
record DifferenceOracle(Oracle oracle, Facts.Difference demanded) {

    Oracle.Says passed() {
        Facts.Size of = (Facts.Size) oracle.step(demanded.of()).what();
        Facts.Size less = (Facts.Size) oracle.step(demanded.less()).what();
        Optional<List<BigDecimal>> one =
                oracle.sizes(oracle.step(demanded.of()), of).map(sizes -> judged(of, sizes));
        Optional<List<BigDecimal>> other =
                oracle.sizes(oracle.step(demanded.less()), less).map(sizes -> judged(less, sizes));
        if (one.isEmpty() || other.isEmpty()) {
            return Oracle.Says.NOT_PASSED;
        }
        return Oracle.inside(
                List.of(
                        Oracle.least(one.get()).subtract(Oracle.greatest(other.get())),
                        Oracle.greatest(one.get()).subtract(Oracle.least(other.get()))),
                Optional.of(demanded.lower()),
                Optional.of(demanded.upper()),
                isRounded(of) || isRounded(less));
    }

    static boolean isRounded(Facts.Size demanded) {
        return demanded.warm() || demanded.combine().equals("mean");
    }

    /** By what a size is judged. */
    static List<BigDecimal> judged(Facts.Size demanded, List<BigDecimal> sizes) {
        return switch (demanded.combine()) {
            case "mean" ->
                List.of(sizes.stream()
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .divide(BigDecimal.valueOf(sizes.size()), 12, RoundingMode.HALF_EVEN));
            case "largest" -> List.of(Oracle.greatest(sizes));
            case "smallest" -> List.of(Oracle.least(sizes));
            default -> sizes;
        };
    }
}
