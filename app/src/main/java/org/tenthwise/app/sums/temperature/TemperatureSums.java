package org.tenthwise.app.sums.temperature;

import java.util.List;
import org.tenthwise.app.sums.Sum;

/** The sums of this package. */
public final class TemperatureSums {

    private TemperatureSums() {
    }

    public static List<Sum> all() {
        return List.of();
    }
}
