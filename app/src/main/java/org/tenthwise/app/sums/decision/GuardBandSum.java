package org.tenthwise.app.sums.decision;

import java.math.BigDecimal;
import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.uncertainty.GuardBand;
import org.tenthwise.model.quantity.Length;

/** The guard band that a stated probability of conforming asks for. */
final class GuardBandSum implements Sum {

    private static final BigDecimal USUAL_PROBABILITY = new BigDecimal("0.95");

    @Override
    public String name() {
        return "guard-band";
    }

    @Override
    public Set<String> keys() {
        return Set.of("expanded_uncertainty", "coverage_factor", "probability");
    }

    @Override
    public SumResult of(SumInput given) {
        Length standard = given.positiveLength("expanded_uncertainty")
                .dividedBy(given.ifGiven("coverage_factor", given::positive).orElse(BigDecimal.valueOf(2)));
        BigDecimal probability = given.figureIfGiven("probability").orElse(USUAL_PROBABILITY);
        return SumResult.in(given.inUnit())
                .length("guard_band", given.about("probability", () -> GuardBand.width(probability, standard)))
                .note(("A size inside a limit by this much or more conforms with a probability of %s or more, "
                                + "while the other limit is far.")
                        .formatted(probability.toPlainString()))
                .on("JCGM 106:2012, 8.3.2; 95 % unless agreed otherwise, ISO 14253-1:2017");
    }
}
