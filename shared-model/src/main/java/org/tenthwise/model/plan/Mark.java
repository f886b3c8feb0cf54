package org.tenthwise.model.plan;

import org.tenthwise.model.quantity.Length;

/**
 * A spot on the part's outline.
 *
 * @param at axial position from the left end of the outline
 * @param diameter twice the distance from the axis; zero on the axis
 */
public record Mark(Length at, Length diameter) {}
