package org.tenthwise.app.sums.temperature;

import java.math.BigDecimal;
import java.util.function.Function;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.TemperatureRange;

/** Temperatures and expansions as they are given under a key. */
final class TemperatureInputs {

    private TemperatureInputs() {}

    static Celsius temperature(SumInput given, String key) {
        return read(given, key, Celsius::new);
    }

    static Expansion expansion(SumInput given, String key) {
        return read(given, key, Expansion::new);
    }

    static TemperatureRange range(SumInput given, String least, String greatest) {
        Celsius from = temperature(given, least);
        Celsius to = temperature(given, greatest);
        if (from.isAbove(to)) {
            throw new CannotAnswer(greatest, "%s is %s: that is below %s, %s".formatted(greatest, to, least, from));
        }
        return new TemperatureRange(from, to);
    }

    private static <T> T read(SumInput given, String key, Function<BigDecimal, T> make) {
        BigDecimal figure = given.figure(key);
        return given.about(key, () -> make.apply(figure));
    }
}
