/** Involute teeth of gears and splines: over pins, over several teeth, by chord. */
package org.tenthwise.app.sums.gear;
