package org.tenthwise.app.sums.decision;

import java.math.BigDecimal;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.uncertainty.GuardBand;
import org.tenthwise.model.quantity.Length;

/** The guard band that a stated probability of conforming asks for. */
public final class GuardBandSum implements Sum {

    public static final Input<Length> EXPANDED_UNCERTAINTY = Input.positiveLength("expanded_uncertainty");
    public static final Input<BigDecimal> COVERAGE_FACTOR =
            Input.positive("coverage_factor").usually("2");
    public static final Input<BigDecimal> PROBABILITY =
            Input.figure("probability").usually("0.95");
    public static final Output<Length> GUARD_BAND = Output.length("guard_band");
    private static final SumDescription DESCRIPTION = SumDescription.named("guard-band")
            .takes(EXPANDED_UNCERTAINTY, COVERAGE_FACTOR, PROBABILITY)
            .gives(GUARD_BAND);

    private static final BigDecimal USUAL_PROBABILITY = new BigDecimal("0.95");

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length standard = given.get(EXPANDED_UNCERTAINTY)
                .dividedBy(given.find(COVERAGE_FACTOR).orElse(BigDecimal.valueOf(2)));
        BigDecimal probability = given.find(PROBABILITY).orElse(USUAL_PROBABILITY);
        return DESCRIPTION
                .in(given.inUnit())
                .put(GUARD_BAND, given.about(PROBABILITY, () -> GuardBand.width(probability, standard)))
                .note("probability", probability)
                .done();
    }
}
