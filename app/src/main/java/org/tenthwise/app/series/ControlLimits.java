package org.tenthwise.app.series;

import java.math.BigDecimal;
import org.tenthwise.model.compute.statistics.Individuals.LimitsStanding;

/**
 * Limits of single parts with moving ranges of two. They judge the process; the tolerance judges the part.
 *
 * @param n how many parts they rest on
 * @param standing on trial below 25 parts; there are none below ten
 */
public record ControlLimits(
        int n,
        BigDecimal lower,
        BigDecimal centre,
        BigDecimal upper,
        BigDecimal meanMovingRange,
        BigDecimal movingRangeUpper,
        LimitsStanding standing,
        AskedSum asked) {}
