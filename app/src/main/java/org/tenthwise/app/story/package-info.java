/**
 * What was done at a step, chapter by chapter and line by line, each with when and by whom: the passes of this part,
 * what the part before came to, hold points, gauges, what was said and signed. One telling for the step in hand and for
 * a row of the record, from a {@link org.tenthwise.app.session.State} or a sheet alone, without a screen.
 */
package org.tenthwise.app.story;
