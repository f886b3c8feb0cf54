package org.tenthwise.app.sums.temperature;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.temperature.AtTwenty;
import org.tenthwise.model.compute.temperature.CorrectionUncertainty;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** <em>at-20c</em>: the size at 20 °C of a part that was read away from it. */
final class AtTwentySum implements Sum {

    private static final String U_TEMP = "u_temp";
    private static final String U_ALPHA = "u_alpha";
    /**
     * A picometre, and a hundredth of a millionth of a thousandth of an inch: an uncertainty is small beside its size.
     */
    private static final int PLACES_IN_MILLIMETRES = 9;

    private static final int PLACES_IN_INCHES = 11;

    @Override
    public String name() {
        return "at-20c";
    }

    @Override
    public Set<String> keys() {
        return Set.of("reading", "part_temp", "part_alpha", "gauge_temp", "gauge_alpha", U_TEMP, U_ALPHA);
    }

    @Override
    public SumResult of(SumInput given) {
        Length read = given.length("reading");
        Expansion part = TemperatureInputs.expansion(given, "part_alpha");
        Celsius partAt = TemperatureInputs.temperature(given, "part_temp");
        AtTwenty sum = new AtTwenty(
                part,
                partAt,
                TemperatureInputs.expansion(given, "gauge_alpha"),
                TemperatureInputs.temperature(given, "gauge_temp"));
        Length correction = sum.correction(read);
        SumResult.Writing answer =
                SumResult.in(given.inUnit()).length("size", sum.size(read)).length("correction", correction);
        Optional<BigDecimal> ofTemperature = given.ifGiven(U_TEMP, given::notNegative);
        Optional<BigDecimal> ofExpansion = given.ifGiven(U_ALPHA, given::notNegative);
        if (ofTemperature.isPresent() || ofExpansion.isPresent()) {
            answer.length(
                    "u",
                    CorrectionUncertainty.of(
                            read,
                            part,
                            partAt,
                            ofTemperature.orElse(BigDecimal.ZERO),
                            ofExpansion.orElse(BigDecimal.ZERO)),
                    given.inUnit() == Unit.INCH ? PLACES_IN_INCHES : PLACES_IN_MILLIMETRES);
            answer.note("u is the standard uncertainty that comes from the temperature and the expansion of the part; "
                    + "what the gauge and its own temperature add is not in it.");
        }
        if (correction.signum() == 0) {
            answer.note("Part and gauge have grown by the same: there is nothing to correct.");
        }
        return answer.on(
                "ISO 1 (20 °C); JCGM 100:2008, H.1, solved for the part: L20 = m·[1 + αg(tg − 20)] / [1 + αp(tp − "
                        + "20)]");
    }
}
