package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * One part of a course.
 *
 * @param number of the part in the order made, as it stands under the picture
 * @param first read first after the last cut; absent where it is the size judged or was not read
 * @param last the size judged; absent where nothing was read
 * @param reach from the least to the greatest size of the part, where there is more than one
 */
public record MadePart(
        String number,
        Optional<ChartFigure> first,
        Optional<ChartFigure> last,
        Optional<Extent> reach,
        VerdictKind verdict) {

    /** From the least size to the greatest. */
    public record Extent(BigDecimal least, BigDecimal greatest) {}
}
