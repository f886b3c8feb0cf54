package org.tenthwise.app.sums.temperature;

import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.TemperatureRange;
import org.tenthwise.model.words.Message;

/** Temperatures and expansions as they are given under a key. */
final class TemperatureInputs {

    private TemperatureInputs() {}

    static Input<Celsius> temperature(String key) {
        return Input.figure(key).in(Quantity.TEMPERATURE).as(Celsius::new);
    }

    static Input<Expansion> expansion(String key) {
        return Input.figure(key).in(Quantity.EXPANSION).as(Expansion::new);
    }

    static TemperatureRange range(SumInput given, Input<Celsius> least, Input<Celsius> greatest) {
        Celsius from = given.get(least);
        Celsius to = given.get(greatest);
        if (from.isAbove(to)) {
            throw new CannotAnswer(greatest, Message.of("given.below", greatest, to, least, from));
        }
        return new TemperatureRange(from, to);
    }
}
