package org.tenthwise.app.sums.cutting;

import java.util.List;
import org.tenthwise.app.sums.Sum;

/** The sums of this package. */
public final class CuttingSums {

    private CuttingSums() {}

    public static List<Sum> all() {
        return List.of(
                new NextCutSum(),
                new HalfWaySum(),
                new WearAimSum(),
                new CutterWearSum(),
                new DrillSetSum(),
                new DrillPointSum(),
                new PecksSum());
    }
}
