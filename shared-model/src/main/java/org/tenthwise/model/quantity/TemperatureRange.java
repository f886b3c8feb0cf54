package org.tenthwise.model.quantity;

import org.tenthwise.model.words.Refused;

/**
 * From which temperature to which.
 *
 * @param least not above {@code greatest}
 */
public record TemperatureRange(Celsius least, Celsius greatest) {

    public TemperatureRange {
        if (least.isAbove(greatest)) {
            throw new Refused("model.temperature-range.greatest-temperature", greatest, least);
        }
    }
}
