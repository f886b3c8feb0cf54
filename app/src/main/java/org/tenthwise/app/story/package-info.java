/**
 * What was done at the step in hand, chapter by chapter and line by line, each with when and by whom: the passes of
 * this part, what the part before came to, hold points, gauges, what was said and signed. Told from a
 * {@link org.tenthwise.app.session.State} alone, without a screen.
 */
package org.tenthwise.app.story;
