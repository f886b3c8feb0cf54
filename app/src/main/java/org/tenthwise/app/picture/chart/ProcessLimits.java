package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;

/**
 * Between which sizes the process itself keeps, drawn apart from what the drawing allows.
 *
 * @param from place of the first part, from 0
 * @param to place of the last
 * @param trial whether they rest on so few parts that they are tried only
 * @param said what the lines are, with their figures and the number of parts
 */
public record ProcessLimits(
        int from, int to, BigDecimal lower, BigDecimal mean, BigDecimal upper, boolean trial, String said) {}
