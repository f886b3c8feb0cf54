package org.tenthwise.app.sums.temperature;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.temperature.AtTwenty;
import org.tenthwise.model.compute.temperature.CorrectionUncertainty;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** <em>at-20c</em>: the size at 20 °C of a part that was read away from it. */
public final class AtTwentySum implements Sum {

    public static final String NAME = "at-20c";
    public static final Input<Length> READING = Input.length("reading");
    public static final Input<Celsius> PART_TEMP = TemperatureInputs.temperature("part_temp");
    public static final Input<Expansion> PART_ALPHA = TemperatureInputs.expansion("part_alpha");
    public static final Input<Celsius> GAUGE_TEMP = TemperatureInputs.temperature("gauge_temp");
    public static final Input<Expansion> GAUGE_ALPHA = TemperatureInputs.expansion("gauge_alpha");
    public static final Input<BigDecimal> U_TEMP =
            Input.notNegative("u_temp").in(Quantity.TEMPERATURE).optional();
    public static final Input<BigDecimal> U_ALPHA =
            Input.notNegative("u_alpha").in(Quantity.EXPANSION).optional();
    public static final Output<Length> SIZE = Output.length("size");
    public static final Output<Length> CORRECTION = Output.length("correction").withSign();
    public static final Output<Length> U = Output.length("u").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(READING, PART_TEMP, PART_ALPHA, GAUGE_TEMP, GAUGE_ALPHA, U_TEMP, U_ALPHA)
            .gives(SIZE, CORRECTION, U);

    /**
     * A picometre, and a hundredth of a millionth of a thousandth of an inch: an uncertainty is small beside its size.
     */
    private static final int PLACES_IN_MILLIMETRES = 9;

    private static final int PLACES_IN_INCHES = 11;

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length read = given.get(READING);
        Expansion part = given.get(PART_ALPHA);
        Celsius partAt = given.get(PART_TEMP);
        AtTwenty sum = new AtTwenty(part, partAt, given.get(GAUGE_ALPHA), given.get(GAUGE_TEMP));
        Length correction = sum.correction(read);
        SumResult.Writing answer =
                DESCRIPTION.in(given.inUnit()).put(SIZE, sum.size(read)).put(CORRECTION, correction);
        Optional<BigDecimal> ofTemperature = given.find(U_TEMP);
        Optional<BigDecimal> ofExpansion = given.find(U_ALPHA);
        if (ofTemperature.isPresent() || ofExpansion.isPresent()) {
            answer.put(
                    U,
                    CorrectionUncertainty.of(
                            read,
                            part,
                            partAt,
                            ofTemperature.orElse(BigDecimal.ZERO),
                            ofExpansion.orElse(BigDecimal.ZERO)),
                    given.inUnit() == Unit.INCH ? PLACES_IN_INCHES : PLACES_IN_MILLIMETRES);
            answer.note("uncertainty");
        }
        if (correction.signum() == 0) {
            answer.note("alike");
        }
        return answer.done();
    }
}
