package org.tenthwise.model.compute.roughness;

import org.tenthwise.model.verdict.VerdictKind;

/**
 * Where the values of a surface stand.
 *
 * @param verdict pass, fail or open
 * @param stillToMeasure values at the least before it can pass; zero where it is decided
 * @param allowedOver how many of the values that decide may lie over the limit
 */
public record RoughnessStanding(VerdictKind verdict, int stillToMeasure, int allowedOver) {}
