package org.tenthwise.app.series;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A mean, never without its number.
 *
 * @param n three or more
 * @param sd absent where all are alike, or the gauge is too coarse to tell
 */
public record Mean(int n, BigDecimal mean, Optional<BigDecimal> sd, AskedSum asked) {}
