package org.tenthwise.app.sums.thread;

import java.util.List;
import org.tenthwise.app.sums.Sum;

/** The sums of this package. */
public final class ThreadSums {

    private ThreadSums() {}

    public static List<Sum> all() {
        return List.of(
                new ThreadLimitsSum(),
                new OverWiresSum(),
                new OneWireSum(),
                new WireSensitivitySum(),
                new WireConstantsSum());
    }
}
