package org.tenthwise.model.quantity;

/**
 * From which temperature to which.
 *
 * @param least not above {@code greatest}
 */
public record TemperatureRange(Celsius least, Celsius greatest) {

    public TemperatureRange {
        if (least.isAbove(greatest)) {
            throw new IllegalArgumentException("Greatest temperature %s is below least %s".formatted(greatest, least));
        }
    }
}
