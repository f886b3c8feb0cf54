package org.tenthwise.app.picture.chart;

/**
 * Where a course is not the same any more.
 *
 * @param before place of the first part behind it, from 0
 * @param reason in words
 */
public record BreakMark(int before, String reason) {}
