package org.tenthwise.app.sums.gauge;

import java.util.List;
import org.tenthwise.app.sums.Sum;

/** The sums of this package. */
public final class GaugeSums {

    private GaugeSums() {}

    public static List<Sum> all() {
        return List.of(
                new FromMasterSum(),
                new ZeroDriftSum(),
                new RunOutFromReadings(),
                new LeverSum(),
                new LobesSum(),
                new RockingSum(),
                new OffCentreSum());
    }
}
