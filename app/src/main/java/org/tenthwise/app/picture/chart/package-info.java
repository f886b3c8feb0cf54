/**
 * Pictures of what was read on several parts: one characteristic in the order the parts were made, all of them by their
 * tolerance, and how sure it is what a process can hold. Laid out from figures that were worked out elsewhere; nothing
 * is worked out here but where it is drawn. A tolerance is a thick unbroken line, a limit of the process a thin broken
 * one; shape and word say what colour says.
 */
package org.tenthwise.app.picture.chart;
