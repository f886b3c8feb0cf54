package org.tenthwise.app.sums.decision;

import java.math.BigDecimal;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.uncertainty.GlobalRisk;

/** How often a decision is wrong over many parts of one process. */
public final class RiskSum implements Sum {

    public static final Input<BigDecimal> LOWER = Input.figure("lower");
    public static final Input<BigDecimal> UPPER = Input.figure("upper");
    public static final Input<BigDecimal> PROCESS_MEAN = Input.figure("process_mean");
    public static final Input<BigDecimal> PROCESS_SD = Input.positive("process_sd");
    public static final Input<BigDecimal> STANDARD_UNCERTAINTY = Input.positive("standard_uncertainty");
    public static final Input<BigDecimal> GUARD_BAND = Input.notNegative("guard_band");
    public static final Output<Double> CONSUMER = Output.figure("consumer");
    public static final Output<Double> PRODUCER = Output.figure("producer");
    private static final SumDescription DESCRIPTION = SumDescription.named("risk")
            .takes(LOWER, UPPER, PROCESS_MEAN, PROCESS_SD, STANDARD_UNCERTAINTY, GUARD_BAND)
            .gives(CONSUMER, PRODUCER);

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    /** The figures count from the lower limit, so that a large size with a small tolerance loses nothing. */
    @Override
    public SumResult of(SumInput given) {
        BigDecimal lower = given.get(LOWER);
        BigDecimal tolerance = given.get(UPPER).subtract(lower);
        if (tolerance.signum() <= 0) {
            throw new CannotAnswer(UPPER, "not-above", given.text(LOWER), given.text(UPPER));
        }
        BigDecimal guardBand = given.get(GUARD_BAND);
        if (guardBand.multiply(TWO).compareTo(tolerance) > 0) {
            throw new CannotAnswer(GUARD_BAND, "too-wide", given.text(GUARD_BAND));
        }
        GlobalRisk risk = GlobalRisk.of(
                new GlobalRisk.Zone(0, tolerance.doubleValue(), guardBand.doubleValue()),
                given.get(PROCESS_MEAN).subtract(lower).doubleValue(),
                given.get(PROCESS_SD).doubleValue(),
                given.get(STANDARD_UNCERTAINTY).doubleValue());
        return DESCRIPTION
                .in(given.anyUnit())
                .put(CONSUMER, risk.consumer())
                .put(PRODUCER, risk.producer())
                .note("meaning")
                .done();
    }
}
