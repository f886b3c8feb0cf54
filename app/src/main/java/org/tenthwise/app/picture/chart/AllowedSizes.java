package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What the drawing allows from one part on until the next such entry.
 *
 * @param from place of the first part it holds for, from 0
 * @param lower absent where only the other limit is set; so {@code upper}
 * @param band guard band inside each limit, in the unit of the picture; zero where there is none
 */
public record AllowedSizes(int from, Optional<ChartFigure> lower, Optional<ChartFigure> upper, BigDecimal band) {

    boolean allowsTheSame(AllowedSizes other) {
        return lower.equals(other.lower) && upper.equals(other.upper) && band.equals(other.band);
    }
}
