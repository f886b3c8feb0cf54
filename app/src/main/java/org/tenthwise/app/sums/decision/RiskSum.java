package org.tenthwise.app.sums.decision;

import java.math.BigDecimal;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.uncertainty.GlobalRisk;
import org.tenthwise.model.quantity.Unit;

/** How often a decision is wrong over many parts of one process. */
final class RiskSum implements Sum {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    @Override
    public String name() {
        return "risk";
    }

    @Override
    public Set<String> keys() {
        return Set.of("lower", "upper", "process_mean", "process_sd", "standard_uncertainty", "guard_band");
    }

    /** The figures count from the lower limit, so that a large size with a small tolerance loses nothing. */
    @Override
    public SumResult of(SumInput given) {
        BigDecimal lower = given.figure("lower");
        BigDecimal tolerance = given.figure("upper").subtract(lower);
        if (tolerance.signum() <= 0) {
            throw new CannotAnswer(
                    "upper",
                    "lower is %s and upper is %s: the upper limit must be above the lower one"
                            .formatted(given.text("lower"), given.text("upper")));
        }
        BigDecimal guardBand = given.notNegative("guard_band");
        if (guardBand.multiply(TWO).compareTo(tolerance) > 0) {
            throw new CannotAnswer(
                    "guard_band",
                    "guard_band is %s: it is wider than half of the tolerance, and no size would pass"
                            .formatted(given.text("guard_band")));
        }
        GlobalRisk risk = GlobalRisk.of(
                new GlobalRisk.Zone(0, tolerance.doubleValue(), guardBand.doubleValue()),
                given.figure("process_mean").subtract(lower).doubleValue(),
                given.positive("process_sd").doubleValue(),
                given.positive("standard_uncertainty").doubleValue());
        return SumResult.in(given.unit().orElse(Unit.MILLIMETRE))
                .figure("consumer", risk.consumer())
                .figure("producer", risk.producer())
                .note("Consumer: of all parts, those outside the limits that are accepted. Producer: of all "
                        + "parts, those inside that are not.")
                .on("JCGM 106:2012, 9.3 and 9.5, normal process and normal measurement");
    }
}
