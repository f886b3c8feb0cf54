package org.tenthwise.app.sums.temperature;

import java.util.List;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.checklists.materials.Materials;

/** The sums of this package. */
public final class TemperatureSums {

    private TemperatureSums() {}

    public static List<Sum> all() {
        return List.of(new AtTwentySum(), new TemperatureMattersSum(), new ExpansionSum(Materials.known()));
    }
}
