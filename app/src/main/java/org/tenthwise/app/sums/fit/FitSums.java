package org.tenthwise.app.sums.fit;

import java.util.List;
import org.tenthwise.app.sums.Sum;

/** The sums of this package. */
public final class FitSums {

    private FitSums() {}

    public static List<Sum> all() {
        return List.of(new LimitsSum(), new FitSum(), new InchFitSum(), new StandardToleranceSum());
    }
}
