package org.tenthwise.model.compute.expression;

import java.math.BigDecimal;

/**
 * What an expression comes to.
 *
 * @param value with the mean size of each name
 * @param least anywhere in the ranges of the names
 * @param greatest anywhere in them
 */
public record Reach(BigDecimal value, BigDecimal least, BigDecimal greatest) {}
