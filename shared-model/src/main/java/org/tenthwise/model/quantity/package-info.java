/**
 * Lengths, exactly, with the unit they were written in; temperatures, and how much a material grows with them.
 *
 * <p>A {@link org.tenthwise.model.quantity.Length} is a value to reckon with; a
 * {@link org.tenthwise.model.quantity.Written} is what stood on the drawing or was typed from the gauge, to the last
 * zero. Nothing here knows a limit or a gauge.
 */
package org.tenthwise.model.quantity;
