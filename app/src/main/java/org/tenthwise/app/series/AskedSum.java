package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.app.sums.Sums;

/**
 * A question as the batch of sums is asked it, and what it came to. Every figure shown of a series comes from one of
 * these, so that anybody can ask the same again.
 *
 * @param calc name of the sum
 */
public record AskedSum(String calc, SumInput given, SumResult result) {

    /** Absent where the sum has no answer to such figures. */
    static Optional<AskedSum> of(Sums sums, String calc, Map<String, SumValue> keys) {
        SumInput given = new SumInput(Optional.empty(), keys);
        return sums.ask(calc, given)
                .match(result -> Optional.of(new AskedSum(calc, given, result)), problem -> Optional.empty());
    }

    /** A value as the batch writes it; empty where the sum did not give it. */
    public String written(String key) {
        return Optional.ofNullable(result.written().values().get(key))
                .flatMap(SumValue::asText)
                .map(SumValue.Text::text)
                .orElse("");
    }

    static SumValue figures(List<BigDecimal> figures) {
        return SumValue.Many.of(figures.stream().map(BigDecimal::toPlainString).toList());
    }

    static SumValue figure(BigDecimal figure) {
        return new SumValue.Text(figure.toPlainString());
    }
}
